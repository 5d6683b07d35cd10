package org.straddle.sky.track;

import java.time.Instant;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.orekit.errors.OrekitException;
import org.orekit.propagation.analytical.tle.TLE;
import org.orekit.propagation.analytical.tle.TLEPropagator;
import org.orekit.time.AbsoluteDate;
import org.orekit.utils.PVCoordinates;
import org.straddle.sky.ElementSet;
import org.straddle.sky.ElementSetException;
import org.straddle.sky.Wgs72;
import org.straddle.words.Catalogue;

/**
 * The SGP4/SDP4 model (Hoots and Roehrich, Spacetrack Report 3; Vallado et al., AIAA 2006-6753) of
 * one element set, as Orekit computes it. Keeps state: one per thread.
 */
public final class Sgp4 {

    private static final Catalogue TEXTS = Catalogue.of(Sgp4.class);

    /** Half the base of the slope; a tenth of a millimetre a second is lost over it. */
    private static final double HALF_S = 0.25;

    private final EarthFrames frames;
    private final EarthTurn turn;
    private final TLEPropagator propagator;

    /** @throws ElementSetException when the model refuses the elements */
    public Sgp4(ElementSet set, EarthFrames frames) {
        this.frames = frames;
        this.turn = new EarthTurn(frames);
        try {
            propagator = TLEPropagator.selectExtrapolator(tle(set, frames), frames.teme());
        } catch (OrekitException e) {
            throw new ElementSetException(TEXTS.text("propagation.refused", "set", set.label(),
                    "reason", e.getMessage()), e);
        }
    }

    /** Number, designator and revolution do not enter the model, and large ones do not fit the class. */
    private static TLE tle(ElementSet set, EarthFrames frames) {
        double perDay = 2 * Math.PI / 86_400;
        return new TLE(0, 'U', 2000, 1, "A", TLE.DEFAULT, 0, frames.date(set.epoch()),
                set.meanMotionRevPerDay() * perDay, 0, 0, set.eccentricity(), Math.toRadians(set.inclinationDeg()),
                Math.toRadians(set.argumentOfPerigeeDeg()), Math.toRadians(set.raanDeg()),
                Math.toRadians(set.meanAnomalyDeg()), 0, set.bstar(), frames.utc());
    }

    /** State in TEME, metres and m/s. */
    public PVCoordinates teme(Instant instant) {
        return propagator.getPVCoordinates(frames.date(instant));
    }

    /** The state of {@link #earthFixed(AbsoluteDate, double[])} as vectors. */
    public PVCoordinates earthFixed(Instant instant) {
        double[] state = new double[6];
        earthFixed(frames.date(instant), state);
        return new PVCoordinates(new Vector3D(state[0], state[1], state[2]), new Vector3D(state[3], state[4], state[5]));
    }

    /**
     * State in the Earth-fixed frame: position (m) in 0–2, velocity (m/s) in 3–5. The velocity is the slope
     * of the positions: the model's own leaves out the rates of many periodic terms and is off by
     * millimetres a second for a round low orbit, by 0.6 m/s at an eccentricity of 0.06 and by 1 m/s for
     * deep-space birds (measured), which interpolation would turn into metres. The position is the middle of those two,
     * less what the bird falls meanwhile: 0.3 m at most, and the pull of a round Earth gives it to less than a millimetre
     * (measured).
     */
    void earthFixed(AbsoluteDate date, double[] into) {
        Vector3D before = position(date.shiftedBy(-HALF_S));
        Vector3D after = position(date.shiftedBy(HALF_S));
        Vector3D middle = new Vector3D(0.5, before, 0.5, after);
        double r = middle.getNorm();
        double fallen = Wgs72.MU_KM3_S2 * 1e9 / (r * r * r) * HALF_S * HALF_S / 2;
        turn.apply(middle.scalarMultiply(1 + fallen), after.subtract(before).scalarMultiply(0.5 / HALF_S), date, into);
    }

    private Vector3D position(AbsoluteDate date) {
        return propagator.getPVCoordinates(date).getPosition();
    }

    public TLEPropagator propagator() {
        return propagator;
    }
}
