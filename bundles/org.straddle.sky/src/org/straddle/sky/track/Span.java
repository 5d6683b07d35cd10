package org.straddle.sky.track;

/** A stretch of time in seconds from some origin. */
public record Span(double from, double to) {

    public double length() {
        return to - from;
    }
}
