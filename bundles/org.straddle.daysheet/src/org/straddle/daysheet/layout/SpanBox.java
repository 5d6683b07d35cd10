package org.straddle.daysheet.layout;

import java.util.Optional;

import org.straddle.daysheet.sheet.OpenSpan;

/** The time in which a team may be out, with its bases where there is room. */
public record SpanBox(OpenSpan span, Box box, Optional<BaseBox> start, Optional<BaseBox> end) implements SheetPart {
}
