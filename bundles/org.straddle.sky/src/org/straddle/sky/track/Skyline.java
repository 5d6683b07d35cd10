package org.straddle.sky.track;

import java.util.Arrays;
import java.util.List;

import org.straddle.sky.Horizon;

/**
 * A horizon mask in radians: straight pieces between corners, by azimuth. Piece {@code i} ends, going clockwise, with
 * corner {@code i}. Immutable.
 */
public final class Skyline {

    private static final double WHOLE = 2 * Math.PI;
    /** Azimuths nearer to each other than this are one. */
    private static final double SAME_RAD = 1e-11;

    private final double sinLowest;
    private final double sinHighest;
    private final double[] azimuth;
    private final double[] sinElevation;
    /** Of each piece: azimuth and elevation of its middle, and elevation by azimuth. */
    private final double[] middle;
    private final double[] height;
    private final double[] slope;

    public Skyline(Horizon horizon) {
        sinLowest = Math.sin(Math.toRadians(horizon.lowestDeg()));
        sinHighest = Math.sin(Math.toRadians(horizon.highestDeg()));
        List<Horizon.Point> corners = isLevel() ? List.of() : horizon.points();
        int count = corners.size();
        azimuth = new double[count];
        sinElevation = new double[count];
        middle = new double[count];
        height = new double[count];
        slope = new double[count];
        for (int i = 0; i < count; i++) {
            Horizon.Point right = corners.get(i);
            Horizon.Point left = corners.get((i + count - 1) % count);
            double widthDeg = right.azimuthDeg() - left.azimuthDeg() + (i == 0 ? 360 : 0);
            azimuth[i] = Math.toRadians(right.azimuthDeg());
            sinElevation[i] = Math.sin(Math.toRadians(right.elevationDeg()));
            middle[i] = Math.toRadians((left.azimuthDeg() + widthDeg / 2) % 360);
            height[i] = Math.toRadians((left.elevationDeg() + right.elevationDeg()) / 2);
            slope[i] = (right.elevationDeg() - left.elevationDeg()) / widthDeg;
        }
    }

    boolean isLevel() {
        return sinLowest == sinHighest;
    }

    /** Sine of the lowest corner. */
    double sinLowest() {
        return sinLowest;
    }

    /** Sine of the highest corner. */
    double sinHighest() {
        return sinHighest;
    }

    int cornerCount() {
        return azimuth.length;
    }

    double cornerAzimuth(int corner) {
        return azimuth[corner];
    }

    double cornerSinElevation(int corner) {
        return sinElevation[corner];
    }

    /** The piece over an azimuth; of two that meet there, the one on the right. */
    int pieceAt(double anyAzimuth) {
        int found = Arrays.binarySearch(azimuth, anyAzimuth - WHOLE * Math.floor(anyAzimuth / WHOLE));
        return (found >= 0 ? found + 1 : -found - 1) % azimuth.length;
    }

    /** Elevation of a piece at an azimuth over it. */
    double elevation(int piece, double atAzimuth) {
        return height[piece] + slope[piece] * turn(middle[piece], atAzimuth);
    }

    /** Change of elevation by azimuth along a piece. */
    double slope(int piece) {
        return slope[piece];
    }

    /**
     * The first corner strictly inside a turn.
     *
     * @param turned signed angle from there
     * @return its number; −1 when there is none
     */
    int nextCorner(double from, double turned) {
        int nearest = -1;
        double best = Math.abs(turned);
        double way = Math.signum(turned);
        for (int i = 0; i < azimuth.length; i++) {
            double d = turn(from, azimuth[i]) * way;
            if (d > SAME_RAD && d < best) {
                best = d;
                nearest = i;
            }
        }
        return nearest;
    }

    /** Signed angle from one azimuth to another, −π to π. */
    static double turn(double from, double to) {
        double d = to - from;
        return d > Math.PI ? d - WHOLE : d < -Math.PI ? d + WHOLE : d;
    }
}
