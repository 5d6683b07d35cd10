package org.straddle.sky.prediction;

import java.time.Duration;

import org.straddle.sky.ErrorGrowth;
import org.straddle.sky.Pass;

/**
 * How far the real pass may be from the computed one. An estimate: nobody publishes an error with an
 * element set. Its parts are added, not squared: they need not be independent.
 *
 * @param age               of the element set at TCA; negative before its epoch
 * @param alongTrackKm      the bird may be so far ahead or behind, because element sets age
 * @param ageTimeS          and so much early or late: that distance at the bird's mean speed, seconds
 * @param orientationTimeS  time of rise and set, for not knowing how the Earth turns, seconds
 * @param computationTimeS  time of rise and set, for interpolation and rounding, seconds
 */
public record PassError(Duration age, double alongTrackKm, double ageTimeS, double orientationTimeS,
        double computationTimeS) {

    /** Largest difference to skyfield's rise and set times in the tests, seconds. */
    private static final double COMPUTATION_S = 0.05;

    /** With {@link ErrorGrowth#USUAL}, and no Earth orientation data. */
    public static PassError of(Pass pass) {
        return of(pass, ErrorGrowth.USUAL, EarthOrientation.none());
    }

    /** @param orientation that the pass was computed with */
    public static PassError of(Pass pass, ErrorGrowth growth, EarthOrientation orientation) {
        Duration age = pass.elements().ageAt(pass.tca());
        double alongTrackKm = growth.alongTrackKm(age);
        double speedKmS = 2 * Math.PI * pass.elements().semiMajorAxisKm()
                / (pass.elements().period().toNanos() / 1e9);
        return new PassError(age, alongTrackKm, alongTrackKm / speedKmS,
                orientation.notice(pass.window()).isPresent() ? EarthOrientation.IGNORED_TIME_ERROR_S : 0, COMPUTATION_S);
    }

    /** All of it: the pass may be so much early or late, seconds. */
    public double timeErrorS() {
        return ageTimeS + orientationTimeS + computationTimeS;
    }
}
