package org.straddle.publish.site;

import java.util.Map;

import org.straddle.publish.template.Templates;
import org.straddle.words.Catalogue;

/** The page for a browser and its printer, A4 or Letter, black on white, without any other file. */
public final class SiteSheetHtml {

    private static final Templates TEMPLATES = Templates.beside(SiteSheetHtml.class, Catalogue.of(SiteSheetHtml.class));

    private SiteSheetHtml() {
    }

    public static String of(SiteSheet sheet) {
        return TEMPLATES.set("site.html.ftlh", Map.of("sheet", sheet, "lines", StationSketch.lines(sheet.station()),
                "spots", StationSketch.spots(sheet.station()), "sketch", StationSketch.words(sheet.station())));
    }
}
