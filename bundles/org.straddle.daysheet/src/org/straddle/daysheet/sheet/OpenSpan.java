package org.straddle.daysheet.sheet;

import java.util.Optional;

import org.straddle.model.Base;
import org.straddle.sky.Window;

/** The time on one day in which a team may be out. */
public record OpenSpan(Window window, Optional<Base> start, Optional<Base> end) {
}
