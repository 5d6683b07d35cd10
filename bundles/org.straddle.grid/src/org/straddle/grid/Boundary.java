package org.straddle.grid;

/** Where squares meet: along a line of the graticule, or at the corner of four. */
public sealed interface Boundary permits GridLine, GridCorner {

    /**
     * Reads the notation that {@code toString} prints: {@code 20°W} or {@code 64°N} for a line,
     * {@code 64°N 20°W} for a corner; the degree sign may be left out.
     *
     * @throws IllegalArgumentException if the text is neither
     */
    static Boundary parse(String text) {
        boolean twoLines = text != null && text.strip().matches("(?i).{1,12}[NSEW].{1,12}[NSEW]");
        return twoLines ? GridCorner.parse(text) : GridLine.parse(text);
    }
}
