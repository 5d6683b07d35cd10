package org.straddle.daysheet.fits;

import org.straddle.sky.Window;

/**
 * A place that is right for what is carried.
 *
 * @param teamId of the lane
 * @param window what can be covered there
 * @param range  where what is carried may begin, or where the end that is held may go
 */
public record FittingPlace(String teamId, Window window, FittingRange range) {
}
