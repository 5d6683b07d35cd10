package org.straddle.sky.track;

import java.util.Arrays;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.orekit.time.AbsoluteDate;

/**
 * The turn from TEME to the Earth-fixed frame along a stretch of time. The full transform, which costs
 * more than the orbit model, is taken twice an hour; between, the Earth turns evenly about the axis of
 * TEME, as sidereal time does, and the little that is then missing (its pole moves, and so does that of
 * TEME) grows evenly. Differs from the full transform by some millimetres (measured). Keeps state: one
 * per thread.
 */
public final class EarthTurn {

    private static final double BLOCK_S = EarthFrames.TURN_STEP_S;

    private final EarthFrames frames;
    private AbsoluteDate start;
    private double[][] atStart;
    private double rate;
    /** What is missing after one second: a small turn about the Earth-fixed axes, radians. */
    private final double[] missing = new double[3];

    public EarthTurn(EarthFrames frames) {
        this.frames = frames;
    }

    /**
     * Turns a state.
     *
     * @param p    position in TEME, metres
     * @param v    velocity in TEME, m/s
     * @param into position (m) in 0–2, velocity relative to the ground (m/s) in 3–5. The frame's turning is
     *             taken as the mean rate about its own axis: precession and polar motion change velocities by
     *             less than 0.1 mm/s
     */
    public void apply(Vector3D p, Vector3D v, AbsoluteDate date, double[] into) {
        double since = start == null ? -1 : date.durationFrom(start);
        if (!(since >= 0 && since <= BLOCK_S)) {
            begin((long) Math.floor(date.durationFrom(AbsoluteDate.J2000_EPOCH) / BLOCK_S));
            since = date.durationFrom(start);
        }
        double cos = Math.cos(rate * since);
        double sin = Math.sin(rate * since);
        turned(p, cos, sin, since, into, 0);
        turned(v, cos, sin, since, into, 3);
        into[3] += EarthFrames.TURN_RATE * into[1];
        into[4] -= EarthFrames.TURN_RATE * into[0];
    }

    private void begin(long block) {
        start = EarthFrames.turnDate(block);
        atStart = frames.turn(block);
        double[][] atEnd = frames.turn(block + 1);
        double cos = 0;
        double sin = 0;
        for (int row = 0; row < 3; row++) {
            cos += atStart[row][0] * atEnd[row][0];
            sin += atStart[row][0] * atEnd[row][1];
        }
        rate = Math.atan2(sin, cos) / BLOCK_S;
        Arrays.fill(missing, 0);
        double[] rest = new double[3];
        for (Vector3D axis : new Vector3D[] {Vector3D.PLUS_I, Vector3D.PLUS_J, Vector3D.PLUS_K}) {
            double[] even = new double[3];
            turned(axis, Math.cos(rate * BLOCK_S), Math.sin(rate * BLOCK_S), 0, even, 0);
            double[] full = new double[3];
            for (int row = 0; row < 3; row++) {
                full[row] = atEnd[row][0] * axis.getX() + atEnd[row][1] * axis.getY() + atEnd[row][2] * axis.getZ();
            }
            // Of a small turn, half the sum of the cross products of the axes before and after.
            rest[0] += (even[1] * full[2] - even[2] * full[1]) / 2;
            rest[1] += (even[2] * full[0] - even[0] * full[2]) / 2;
            rest[2] += (even[0] * full[1] - even[1] * full[0]) / 2;
        }
        for (int k = 0; k < 3; k++) {
            missing[k] = rest[k] / BLOCK_S;
        }
    }

    private void turned(Vector3D vector, double cos, double sin, double since, double[] into, int at) {
        double px = vector.getX() * cos + vector.getY() * sin;
        double py = vector.getY() * cos - vector.getX() * sin;
        double pz = vector.getZ();
        double x = atStart[0][0] * px + atStart[0][1] * py + atStart[0][2] * pz;
        double y = atStart[1][0] * px + atStart[1][1] * py + atStart[1][2] * pz;
        double z = atStart[2][0] * px + atStart[2][1] * py + atStart[2][2] * pz;
        into[at] = x + since * (missing[1] * z - missing[2] * y);
        into[at + 1] = y + since * (missing[2] * x - missing[0] * z);
        into[at + 2] = z + since * (missing[0] * y - missing[1] * x);
    }
}
