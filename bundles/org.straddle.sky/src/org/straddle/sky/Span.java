package org.straddle.sky;

/** A stretch of time in seconds from some origin. */
record Span(double from, double to) {

    double length() {
        return to - from;
    }
}
