package org.straddle.daysheet.layout;

import java.util.Optional;

import org.straddle.daysheet.sheet.PlacedDrive;

/** A drive; the label stands in a gap of the connector. */
public record DriveBox(PlacedDrive drive, Box box, Optional<Label> label) implements SheetPart {
}
