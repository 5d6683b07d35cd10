package org.straddle.outlook.itinerary;

import org.straddle.outlook.HoldFigures;

/** How long a team may stay at one stop before others take over. */
public final class Relief {

    private Relief() {
    }

    public static boolean isMissing(Stay stay, HoldFigures figures) {
        return stay.window().duration().compareTo(figures.longestStop()) > 0;
    }
}
