package org.straddle.daysheet.sheet;

import java.util.List;
import java.util.Optional;

import org.straddle.atlas.scene.SiteSpot;
import org.straddle.check.Finding;
import org.straddle.model.Stop;
import org.straddle.sky.Window;

/**
 * A stop in its lane with its turns, by time.
 *
 * @param shape    how many squares meet at its site and how they lie, as on the map; empty without a site
 * @param window   from arrival to departure
 * @param extent   the stop and its turns, one of which may stick out by mistake
 * @param row      row of the lane, from 0; stops that overlap are in different rows
 * @param turnRows rows that the turns need, at least 1
 */
public record PlacedStop(Stop stop, Optional<SiteSpot.Kind> shape, Window window, Window extent, int row, List<PlacedTurn> turns, int turnRows,
        List<Finding> findings) implements SheetItem {

    @Override
    public Stop thing() {
        return stop;
    }
}
