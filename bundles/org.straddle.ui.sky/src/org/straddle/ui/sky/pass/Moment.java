package org.straddle.ui.sky.pass;

import java.time.Instant;

import org.straddle.words.Catalogue;

/**
 * AOS, TCA or LOS.
 *
 * @param cut whether it is only the end of the time searched, not a rise or set
 * @param sun the sun at that time
 */
public record Moment(String word, Instant at, ArcPoint look, SunSeen sun, Light light, boolean cut) {

    private static final Catalogue TEXTS = Catalogue.of(Moment.class);

    /** What to say before the time of a cut end: the rise or set itself is not known. */
    public String prefixed(String time) {
        return !cut ? time : TEXTS.text("moment.cut", "before", word.equals("AOS"), "time", time);
    }

    /** Between the bird and the sun, degrees. */
    public double sunSeparationDeg() {
        return sun.separationDeg(look.azimuthDeg(), look.elevationDeg());
    }
}
