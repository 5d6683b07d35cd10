package org.straddle.sky.track;

/** A smooth function of time together with its slope: most of the work for the one serves the other. Keeps state. */
interface Curve {

    /** The value at a time in seconds; {@link #slope} then speaks of that time. */
    double at(double timeS);

    /** Change of the value a second, at the time last asked about. */
    double slope();
}
