package org.straddle.daysheet.sheet;

import java.util.List;
import java.util.Optional;

import org.straddle.check.Finding;
import org.straddle.model.Turn;
import org.straddle.sky.Pass;
import org.straddle.sky.Window;

/**
 * A turn in its stop.
 *
 * @param row  from 0; turns that overlap are in different rows
 * @param pass the pass that it works, if the bird is up at that time
 */
public record PlacedTurn(Turn turn, Window window, int row, BirdMark bird, Optional<Pass> pass,
        List<Finding> findings) implements SheetItem {

    @Override
    public Turn thing() {
        return turn;
    }
}
