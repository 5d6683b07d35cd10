package org.straddle.publish.packing;

import java.util.Map;

import org.straddle.publish.template.Templates;
import org.straddle.words.Catalogue;

/** A packing list as a page to print, as plain text, and as a page for a phone; none needs another file. */
public final class PackingSheet {

    private static final Templates TEMPLATES = Templates.beside(PackingSheet.class,
            Catalogue.of(PackingSheet.class, "sheets"));

    private PackingSheet() {
    }

    /** To print, A4 or Letter, with boxes. */
    public static String html(PackingPage page) {
        return TEMPLATES.set("packing.html.ftlh", Map.of("page", page));
    }

    public static String text(PackingPage page) {
        return TEMPLATES.set("packing.txt.ftl", Map.of("page", page));
    }

    /** To tick on a phone without a network; what is ticked stays on that phone until somebody sends it on. */
    public static String phone(PackingPage page) {
        return TEMPLATES.set("phone.html.ftlh", Map.of("page", page));
    }
}
