package org.straddle.daysheet.sheet;

import java.time.Duration;

import org.straddle.outlook.Road;
import org.straddle.sky.Window;

/**
 * A drive from a base or stop to the next.
 *
 * @param from   name of the place it leaves
 * @param to     name of the place it leads to
 * @param road   what is known of the way
 * @param window when it is drawn: as long as the drive takes, or all the time there is when it does not fit
 * @param room   the time there is
 */
public record PlacedDrive(String from, String to, Road road, Window window, Duration room, int row) {

    public boolean fits() {
        return road.total().compareTo(room) <= 0;
    }
}
