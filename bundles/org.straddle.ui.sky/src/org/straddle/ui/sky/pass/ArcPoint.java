package org.straddle.ui.sky.pass;

import java.time.Instant;

import org.straddle.sky.Look;

/**
 * One look along a pass.
 *
 * @param azimuthDeg unrolled: it runs on past 0 and 360, so that an arc over north has no jump
 */
public record ArcPoint(Instant at, double azimuthDeg, double elevationDeg, double rangeKm, double rangeRateKmS) {

    static ArcPoint of(Instant at, Look look) {
        return new ArcPoint(at, look.azimuthDeg(), look.elevationDeg(), look.rangeKm(), look.rangeRateKmS());
    }

    /** The same look with the azimuth whose distance from another is least. */
    ArcPoint unrolledAfter(double neighbourDeg) {
        double turns = Math.rint((neighbourDeg - azimuthDeg) / 360);
        return turns == 0 ? this
                : new ArcPoint(at, azimuthDeg + 360 * turns, elevationDeg, rangeKm, rangeRateKmS);
    }
}
