package org.straddle.daysheet.layout;

import java.util.Optional;

import org.straddle.daysheet.sheet.PlacedLeg;

/** A drive; the label stands in a gap of the connector. */
public record LegBox(PlacedLeg leg, Box box, Optional<Label> label) implements SheetPart {
}
