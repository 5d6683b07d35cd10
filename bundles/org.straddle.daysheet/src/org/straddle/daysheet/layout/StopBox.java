package org.straddle.daysheet.layout;

import java.util.List;
import java.util.Optional;

import org.straddle.daysheet.sheet.PlacedStop;

/**
 * A stop: a bar with the shape of its site, its name and squares, and its turns.
 *
 * @param kind the square for the site's shape
 * @param pin  the square for the mark of a pinned stop
 */
public record StopBox(PlacedStop stop, Box box, Optional<Box> kind, Optional<Label> title, Optional<Box> pin,
        Optional<MarkBox> mark, List<TurnBox> turns) implements SheetPart {

    static final int BAND = 6;

    /** The band at the left edge that shows the team; empty on a bar that is too narrow. */
    public Box band() {
        return new Box(box.x(), box.y(), box.width() > 2 * BAND ? BAND : 0, box.height());
    }
}
