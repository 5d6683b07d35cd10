package org.straddle.publish;

import java.util.Map;

import org.straddle.publish.template.Templates;
import org.straddle.words.Catalogue;

/** Sets briefs and announcements. */
final class Pages {

    private final Templates templates = Templates.beside(Pages.class, Catalogue.of(Pages.class, "sheets"));

    String html(Brief brief) {
        return templates.set("brief.html.ftlh", Map.of("brief", brief));
    }

    String text(Brief brief) {
        return templates.set("brief.txt.ftl", Map.of("brief", brief));
    }

    String html(Announcement announcement) {
        return templates.set("announcement.html.ftlh", Map.of("announcement", announcement));
    }

    String text(Announcement announcement) {
        return templates.set("announcement.txt.ftl", Map.of("announcement", announcement));
    }

    String html(SourceList sources) {
        return templates.set("sources.html.ftlh", Map.of("sources", sources));
    }

    String text(SourceList sources) {
        return templates.set("sources.txt.ftl", Map.of("sources", sources));
    }
}
