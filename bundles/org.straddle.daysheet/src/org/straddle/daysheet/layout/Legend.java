package org.straddle.daysheet.layout;

import java.util.List;

/** What the drawings mean, at the bottom of the sheet; a box of no height when it is hidden. */
public record Legend(Box box, List<Entry> entries) {

    /** A sample and its words. */
    public record Entry(Swatch swatch, Box sample, Label words) {
    }
}
