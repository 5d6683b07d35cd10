package org.straddle.drawing;

/** Sizes of letters on a map. */
public enum Face {
    SMALL(0.85, false), PLAIN(1, false), STRONG(1, true), LARGE(1.3, true);

    private final double size;
    private final boolean bold;

    Face(double size, boolean bold) {
        this.size = size;
        this.bold = bold;
    }

    /** As a part of the usual size. */
    public double size() {
        return size;
    }

    public boolean bold() {
        return bold;
    }
}
