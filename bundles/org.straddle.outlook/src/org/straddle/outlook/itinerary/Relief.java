package org.straddle.outlook.itinerary;

import org.straddle.outlook.HoldFigures;

/** How long a team may be at one site before others take over. */
public final class Relief {

    private Relief() {
    }

    public static boolean isMissing(Sitting sitting, HoldFigures figures) {
        return sitting.window().duration().compareTo(figures.longestStop()) > 0;
    }
}
