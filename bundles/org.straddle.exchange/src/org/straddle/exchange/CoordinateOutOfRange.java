package org.straddle.exchange;

/** The cause of a {@link ReadException} when a position is nowhere on Earth; tells whether to offer {@link CoordinateOrder#SWAPPED}. */
public final class CoordinateOutOfRange extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final boolean fitsSwapped;

    public CoordinateOutOfRange(String what, boolean fitsSwapped) {
        super(what);
        this.fitsSwapped = fitsSwapped;
    }

    /** Whether the position would be in range if latitude and longitude changed places. */
    public boolean fitsSwapped() {
        return fitsSwapped;
    }
}
