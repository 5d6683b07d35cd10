package org.straddle.ui.sky.pass;

import java.time.Instant;

/**
 * AOS, TCA or LOS.
 *
 * @param cut whether it is only the end of the time searched, not a rise or set
 * @param sun the sun at that time
 */
public record Moment(String word, Instant at, ArcPoint look, SunSeen sun, Light light, boolean cut) {

    /** What to say before the time of a cut end: the rise or set itself is not known. */
    public String prefix() {
        return !cut ? "" : word.equals("AOS") ? "before " : "after ";
    }

    /** Between the bird and the sun, degrees. */
    public double sunSeparationDeg() {
        return sun.separationDeg(look.azimuthDeg(), look.elevationDeg());
    }
}
