package org.straddle.sky.track;

import java.time.Duration;
import java.util.Arrays;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.orekit.errors.OrekitException;
import org.orekit.time.AbsoluteDate;
import org.straddle.sky.ElementSet;
import org.straddle.sky.Wgs72;
import org.straddle.sky.Window;
import org.straddle.words.Catalogue;

/**
 * A bird's Earth-fixed states on an even time grid; between them it moves by cubic Hermite
 * interpolation of position and velocity.
 *
 * <p>Asking the model again at every trial time of every site would cost a thousand times more than
 * all sites reading one shared table. The table is one plain array for each coordinate, so that a site
 * runs through it as fast as memory allows. The step follows from the orbit: the interpolation error is
 * h⁴/384 times the fourth derivative of position, largest at perigee, and is held below
 * {@link #INTERPOLATION_ERROR_M}. Immutable once built; times are {@link Seconds} from the window's start.
 */
public final class Track {

    private static final Catalogue TEXTS = Catalogue.of(Track.class);

    /** Bound on the interpolation error aimed at, metres: 0.15 ms of motion in a low orbit. */
    private static final double INTERPOLATION_ERROR_M = 1;
    /** So many steps a revolution at least, or a short pass could hide between two nodes. */
    private static final int STEPS_PER_REVOLUTION = 90;
    private static final double LONGEST_STEP_S = 300;
    private static final double SHORTEST_STEP_S = 5;
    /** Below this height nothing completes another revolution: the Kármán line. */
    private static final double LOWEST_ALTITUDE_M = 100_000;
    /** No element set is worth anything so long, and the table would not fit. */
    private static final Duration LONGEST = Duration.ofDays(400);
    private static final int NODES_PER_CANCEL_CHECK = 64;
    /** The extreme node may not be the extreme instant. */
    private static final double EXTREME_MARGIN = 1.05;
    /** Numbers of one node: position and velocity. */
    private static final int STRIDE = 6;

    private final double[][] nodes;
    private final double stepS;
    private final double lengthS;
    private final double farthestM;
    private final double strongestMS2;
    private final String endReason;

    /**
     * A track of given states.
     *
     * @param stepS     from one node to the next, seconds
     * @param lengthS   from the first node to the end of the prediction, seconds
     * @param nodes     at least two: Earth-fixed positions (m) in 0–2, velocities (m/s) in 3–5, by node
     * @param endReason why the prediction ends before it should; null when it does not
     */
    public Track(double stepS, double lengthS, double[][] nodes, String endReason) {
        this.stepS = stepS;
        this.lengthS = lengthS;
        this.nodes = nodes;
        double fastest = 0;
        double lowest = Double.MAX_VALUE;
        double highest = 0;
        for (int i = 0; i < nodeCount(); i++) {
            fastest = Math.max(fastest, square(i, 3));
            lowest = Math.min(lowest, square(i, 0));
            highest = Math.max(highest, square(i, 0));
        }
        this.farthestM = EXTREME_MARGIN * Math.sqrt(highest);
        this.strongestMS2 = EXTREME_MARGIN * (Wgs72.MU_KM3_S2 * 1e9 / lowest
                + 2 * EarthFrames.TURN_RATE * EXTREME_MARGIN * Math.sqrt(fastest)
                + EarthFrames.TURN_RATE * EarthFrames.TURN_RATE * farthestM);
        this.endReason = endReason;
    }

    public static Track of(ElementSet set, Window window, EarthFrames frames, IProgressMonitor monitor) {
        if (window.duration().compareTo(LONGEST) > 0) {
            throw new IllegalArgumentException(TEXTS.text("track.nothingPredictedMore", "toDays", LONGEST.toDays(),
                    "window", window));
        }
        double step = stepS(set);
        double length = Seconds.between(window.start(), window.end());
        int count = (int) Math.ceil(length / step) + 1;
        double[][] nodes = new double[STRIDE][count];
        double[] state = new double[STRIDE];
        Sgp4 model = new Sgp4(set, frames);
        AbsoluteDate start = frames.date(window.start());
        for (int i = 0; i < count; i++) {
            if (i % NODES_PER_CANCEL_CHECK == 0 && monitor.isCanceled()) {
                throw new OperationCanceledException();
            }
            String trouble = state(model, start.shiftedBy(i * step), frames, state);
            if (trouble != null) {
                double end = Math.max(0, (i - 1) * step);
                int predicted = i;
                return new Track(step, end, Arrays.stream(nodes).map(k -> Arrays.copyOf(k, predicted))
                        .toArray(double[][]::new), TEXTS.text("track.hasPredictionAfter", "set", set.label(),
                                "after", Seconds.after(window.start(), end), "trouble", trouble));
            }
            for (int k = 0; k < STRIDE; k++) {
                nodes[k][i] = state[k];
            }
        }
        return new Track(step, length, nodes, null);
    }

    /** Fills in one state; returns why there is none, or null. */
    private static String state(Sgp4 model, AbsoluteDate date, EarthFrames frames, double[] state) {
        try {
            model.earthFixed(date, state);
        } catch (OrekitException e) {
            return TEXTS.text("track.modelFails", "reason", e.getMessage());
        }
        double away = Math.sqrt(state[0] * state[0] + state[1] * state[1] + state[2] * state[2]);
        if (!(away < 1e10)) {
            return TEXTS.text("track.modelFailsIts");
        }
        // Only near the atmosphere is the ellipsoid worth the time.
        if (away < Wgs72.EARTH_RADIUS_KM * 1000 + LOWEST_ALTITUDE_M && frames.subpoint(
                new Vector3D(state[0], state[1], state[2])).altitudeKm() * 1000 < LOWEST_ALTITUDE_M) {
            return TEXTS.text("track.itsElementSet");
        }
        return null;
    }

    /** Step from period, perigee and eccentricity, seconds. */
    static double stepS(ElementSet set) {
        double mu = Wgs72.MU_KM3_S2 * 1e9;
        double a = set.semiMajorAxisKm() * 1000;
        double e = set.eccentricity();
        double perigee = Math.max(a * (1 - e), Wgs72.EARTH_RADIUS_KM * 1000);
        double turnRate = Math.sqrt(mu * (1 + e) / perigee) / perigee;
        double fourthDerivative = mu / (perigee * perigee) * turnRate * turnRate * (1 + 6 * e);
        double byError = Math.pow(384 * INTERPOLATION_ERROR_M / fourthDerivative, 0.25);
        double byPeriod = set.period().toNanos() / 1e9 / STEPS_PER_REVOLUTION;
        return Math.max(SHORTEST_STEP_S, Math.min(LONGEST_STEP_S, Math.min(byError, byPeriod)));
    }

    /** Positions (m) in 0–2 and velocities (m/s) in 3–5, by node; not to be written to. */
    public double[][] nodes() {
        return nodes;
    }

    /** Grid step, seconds. */
    public double stepS() {
        return stepS;
    }

    /** Seconds from the window's start that the prediction reaches: the window's length, or less after a decay. */
    public double lengthS() {
        return lengthS;
    }

    /** Why the prediction ends before the window does; null when it does not. */
    public String endReason() {
        return endReason;
    }

    public boolean isEmpty() {
        return lengthS <= 0;
    }

    /** Bound on the distance from the Earth's centre, metres. */
    double farthestM() {
        return farthestM;
    }

    /** Bound on the acceleration over the ground, m/s²: gravity at the lowest node, and the Earth's turning. */
    double strongestMS2() {
        return strongestMS2;
    }

    public int nodeCount() {
        return nodes[0].length;
    }

    /** The step that holds a time: it runs from the node of this number to the next. */
    int stepAt(double timeS) {
        return Math.max(0, Math.min(nodeCount() - 2, (int) (timeS / stepS)));
    }

    /** State at a time: position (m) in 0–2, velocity (m/s) in 3–5. */
    public void state(double timeS, double[] into) {
        int i = stepAt(timeS);
        double s = timeS / stepS - i;
        double s2 = s * s;
        double s3 = s2 * s;
        double h01 = 3 * s2 - 2 * s3;
        double h10 = (s - 2 * s2 + s3) * stepS;
        double h11 = (s3 - s2) * stepS;
        double d01 = 6 * (s - s2) / stepS;
        double d10 = 1 - 4 * s + 3 * s2;
        double d11 = 3 * s2 - 2 * s;
        for (int k = 0; k < 3; k++) {
            double p0 = nodes[k][i];
            double v0 = nodes[k + 3][i];
            double difference = nodes[k][i + 1] - p0;
            double v1 = nodes[k + 3][i + 1];
            into[k] = p0 + h01 * difference + h10 * v0 + h11 * v1;
            into[k + 3] = d01 * difference + d10 * v0 + d11 * v1;
        }
    }

    private double square(int node, int first) {
        double x = nodes[first][node];
        double y = nodes[first + 1][node];
        double z = nodes[first + 2][node];
        return x * x + y * y + z * z;
    }
}
