package org.straddle.daysheet.sheet;

import java.util.List;

import org.straddle.check.Finding;
import org.straddle.model.Identified;
import org.straddle.sky.Window;

/** What can be chosen on the sheet: a stop or a turn. */
public sealed interface SheetItem permits PlacedStop, PlacedTurn {

    /** The stop or turn, an object of the snapshot. */
    Identified thing();

    Window window();

    /** Those that name the thing itself. */
    List<Finding> findings();

    default String id() {
        return thing().getId();
    }
}
