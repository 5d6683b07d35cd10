package org.straddle.guide;

import java.util.List;

/**
 * What the guide says of one rule.
 *
 * @param rule     id of the rule
 * @param title    what holds when the rule finds nothing
 * @param sections in the order of {@link Guide#HEADINGS}
 */
public record GuidePage(String rule, String title, List<Section> sections) {

    public GuidePage {
        sections = List.copyOf(sections);
    }

    /** A heading and the plain text under it. */
    public record Section(String heading, String text) {
    }
}
