package org.straddle.guide;

import java.util.List;

/**
 * What the guide says of one rule.
 *
 * @param rule     id of the rule
 * @param title    what holds when the rule finds nothing
 * @param sections in the order of {@link Guide#HEADINGS}
 * @param seeAlso  ids of rules that are easily mistaken for this one or come with it; may be empty
 */
public record GuidePage(String rule, String title, List<Section> sections, List<String> seeAlso) {

    public GuidePage {
        sections = List.copyOf(sections);
        seeAlso = List.copyOf(seeAlso);
    }

    /** A heading and the plain text under it. */
    public record Section(String heading, String text) {
    }
}
