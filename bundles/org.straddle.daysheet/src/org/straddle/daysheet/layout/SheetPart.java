package org.straddle.daysheet.layout;

/** Something on the canvas that can be pointed at. */
public sealed interface SheetPart permits LaneBox, SpanBox, DriveBox, StopBox, TurnBox, DayTab {

    /** Where it is, also where that is scrolled out of sight. */
    Box box();
}
