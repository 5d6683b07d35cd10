package org.straddle.publish.site;

import java.util.List;

import org.straddle.outlook.StationPart;
import org.straddle.words.Language;

/** The page for a browser and its printer, A4 or Letter, black on white, without any other file. */
public final class SiteSheetHtml {

    private static final String STYLE = """
            @page { margin: 11mm; }
            body { font: 9.5pt/1.25 sans-serif; color: #000; background: #fff; max-width: 190mm; margin: 0 auto; }
            h1 { font-size: 14pt; margin: 0 0 3pt; }
            h2 { font-size: 10pt; margin: 5pt 0 0; border-bottom: 1px solid #000; }
            p { margin: 1pt 0; white-space: pre-wrap; }
            .held { border: 3px solid #000; font-size: 13pt; font-weight: bold; padding: 3pt; margin: 3pt 0; }
            footer { font-size: 8pt; margin-top: 5pt; border-top: 1px solid #000; }
            @media screen and (max-width: 600px) { body { font-size: 13pt; margin: 8px; } h2 { font-size: 14pt; } p { overflow-wrap: anywhere; } footer { font-size: 10pt; } }
            """;

    private SiteSheetHtml() {
    }

    public static String of(SiteSheet sheet) {
        StringBuilder page = new StringBuilder("<!DOCTYPE html>\n<html lang=\"" + Language.current().tag() + "\">\n<head>\n<meta charset=\"utf-8\">\n"
                + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>");
        page.append(escaped(sheet.title())).append("</title>\n<style>\n").append(STYLE).append("</style>\n</head>\n<body>\n<main>\n<h1>")
                .append(escaped(sheet.title())).append("</h1>\n");
        if (!sheet.held().isEmpty()) {
            page.append("<p class=\"held\">").append(escaped(sheet.held())).append("</p>\n");
        }
        for (SiteSheet.Part part : sheet.parts()) {
            page.append("<section>\n<h2>").append(escaped(part.heading())).append("</h2>\n");
            part.lines().forEach(line -> page.append("<p>").append(escaped(line)).append("</p>\n"));
            page.append("</section>\n");
        }
        if (!sheet.station().isEmpty()) {
            page.append(sketch(sheet.station()));
        }
        return page.append("</main>\n<footer><p>").append(escaped(sheet.foot())).append("</p></footer>\n</body>\n</html>\n").toString();
    }

    private static String sketch(List<StationPart> parts) {
        StringBuilder svg = new StringBuilder(
                "<svg role=\"img\" aria-label=\"").append(escaped(StationSketch.words(parts)))
                .append("\" width=\"240\" height=\"120\" viewBox=\"-120 -60 240 120\" xmlns=\"http://www.w3.org/2000/svg\">\n");
        for (float[] line : StationSketch.lines(parts)) {
            svg.append("<path d=\"M").append(line[0]).append(' ').append(line[1]).append(" L").append(line[2]).append(' ').append(line[3])
                    .append("\" stroke=\"#000\" stroke-width=\"1.5\" stroke-dasharray=\"6 3\"/>\n");
        }
        for (StationSketch.Spot spot : StationSketch.spots(parts)) {
            svg.append("<circle cx=\"").append(spot.x()).append(
                    "\" cy=\"").append(spot.y()).append("\" r=\"3\"/>\n");
            svg.append("<text x=\"").append(spot.x()).append("\" y=\"").append(spot.y() - 8)
                    .append("\" font-size=\"10\" text-anchor=\"middle\">").append(escaped(spot.square())).append("</text>\n");
            svg.append("<text x=\"").append(spot.x()).append("\" y=\"").append(spot.y() + 14)
                    .append("\" font-size=\"8\" text-anchor=\"middle\">").append(escaped(spot.part())).append("</text>\n");
        }
        return svg.append("</svg>\n").toString();
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }
}
