package org.straddle.sky;

import java.time.Duration;

/**
 * How far the real pass may be from the computed one, because element sets age. An estimate: nobody
 * publishes an error with an element set.
 *
 * @param age          of the element set at TCA; negative before its epoch
 * @param alongTrackKm the bird may be so far ahead or behind
 * @param timeErrorS   and so much early or late: that distance at the bird's mean speed, seconds
 */
public record PassError(Duration age, double alongTrackKm, double timeErrorS) {

    /** With {@link ErrorGrowth#USUAL}. */
    public static PassError of(Pass pass) {
        return of(pass, ErrorGrowth.USUAL);
    }

    public static PassError of(Pass pass, ErrorGrowth growth) {
        Duration age = pass.elements().ageAt(pass.tca());
        double alongTrackKm = growth.alongTrackKm(age);
        double speedKmS = 2 * Math.PI * pass.elements().semiMajorAxisKm()
                / (pass.elements().period().toNanos() / 1e9);
        return new PassError(age, alongTrackKm, alongTrackKm / speedKmS);
    }
}
