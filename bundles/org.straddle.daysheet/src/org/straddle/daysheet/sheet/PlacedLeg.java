package org.straddle.daysheet.sheet;

import java.time.Duration;

import org.straddle.outlook.Leg;
import org.straddle.sky.Window;

/**
 * A drive from a base or stop to the next.
 *
 * @param from   name of the place it leaves
 * @param to     name of the place it leads to
 * @param window when it is drawn: as long as the leg takes, or all the time there is when it does not fit
 * @param room   the time there is
 */
public record PlacedLeg(String from, String to, Leg leg, Window window, Duration room, int row) {

    public boolean fits() {
        return leg.total().compareTo(room) <= 0;
    }
}
