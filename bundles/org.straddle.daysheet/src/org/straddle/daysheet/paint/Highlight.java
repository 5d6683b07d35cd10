package org.straddle.daysheet.paint;

import java.util.Set;

/**
 * What stands out.
 *
 * @param ids     the things that are selected in the workbench: stops, turns, teams, sites or birds
 * @param focused whether keys go to the sheet
 */
public record Highlight(Set<String> ids, boolean focused) {

    public static final Highlight NONE = new Highlight(Set.of(), false);

    public Highlight {
        ids = Set.copyOf(ids);
    }
}
