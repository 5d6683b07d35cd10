package org.straddle.ui.horizon;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.straddle.sky.Horizon;

/**
 * A mask while somebody draws it: its points, and which of them is chosen. Every change gives a new drawing; azimuths
 * stay apart, so that the mask stays one.
 *
 * @param points by rising azimuth; none is a flat horizon at 0
 * @param chosen index of the chosen point, −1 for none
 */
record MaskDrawing(List<Horizon.Point> points, int chosen) {

    /** Points keep this distance, degrees. */
    static final double LEAST_APART_DEG = 0.1;

    private static final double LOWEST_DEG = -30;
    private static final double HIGHEST_DEG = 90;

    MaskDrawing {
        points = List.copyOf(points);
    }

    static MaskDrawing of(List<Horizon.Point> points) {
        return new MaskDrawing(points.stream().sorted(Comparator.comparingDouble(Horizon.Point::azimuthDeg)).toList(), -1);
    }

    /** Empty for a flat horizon at 0. */
    Optional<Horizon> horizon() {
        return points.isEmpty() ? Optional.empty() : Optional.of(new Horizon(points));
    }

    double elevationDegAt(double azimuthDeg) {
        return horizon().map(horizon -> horizon.elevationDegAt(azimuthDeg)).orElse(0.0);
    }

    MaskDrawing choose(int index) {
        return new MaskDrawing(points, index < -1 || index >= points.size() ? -1 : index);
    }

    /** The next point to the right, or to the left, around the circle. */
    MaskDrawing step(int by) {
        return points.isEmpty() ? this : choose(Math.floorMod(chosen < 0 ? by > 0 ? 0 : -1 : chosen + by, points.size()));
    }

    /** A new point, which is then chosen; the same drawing where there is one already. */
    MaskDrawing add(double azimuthDeg, double elevationDeg) {
        double azimuth = tenths(Math.floorMod((long) Math.round(azimuthDeg * 10), 3600L) / 10.0);
        if (points.stream().anyMatch(point -> Math.abs(point.azimuthDeg() - azimuth) < LEAST_APART_DEG / 2)) {
            return this;
        }
        Horizon.Point added = new Horizon.Point(azimuth, elevation(elevationDeg));
        List<Horizon.Point> all = new ArrayList<>(points);
        all.add(added);
        all.sort(Comparator.comparingDouble(Horizon.Point::azimuthDeg));
        return new MaskDrawing(all, all.indexOf(added));
    }

    /** A point in the middle between the chosen one and the next, on the line. */
    MaskDrawing addAfterChosen() {
        if (points.isEmpty() || chosen < 0) {
            return add(0, elevationDegAt(0));
        }
        double from = points.get(chosen).azimuthDeg();
        double to = points.size() == 1 ? from + 360 : points.get((chosen + 1) % points.size()).azimuthDeg();
        double middle = from + (to <= from ? to + 360 - from : to - from) / 2;
        return add(middle, elevationDegAt(middle));
    }

    /** The chosen point elsewhere, but not past its neighbours. */
    MaskDrawing move(double azimuthDeg, double elevationDeg) {
        if (chosen < 0) {
            return this;
        }
        double least = chosen == 0 ? 0 : points.get(chosen - 1).azimuthDeg() + LEAST_APART_DEG;
        double most = chosen == points.size() - 1 ? 360 - LEAST_APART_DEG : points.get(chosen + 1).azimuthDeg() - LEAST_APART_DEG;
        List<Horizon.Point> all = new ArrayList<>(points);
        all.set(chosen, new Horizon.Point(tenths(Math.max(least, Math.min(most, azimuthDeg))), elevation(elevationDeg)));
        return new MaskDrawing(all, chosen);
    }

    /** The chosen point a little elsewhere. */
    MaskDrawing nudge(double azimuthDeg, double elevationDeg) {
        return chosen < 0 ? this
                : move(points.get(chosen).azimuthDeg() + azimuthDeg, points.get(chosen).elevationDeg() + elevationDeg);
    }

    /** Without the chosen point; its left neighbour is then chosen. */
    MaskDrawing remove() {
        if (chosen < 0) {
            return this;
        }
        List<Horizon.Point> all = new ArrayList<>(points);
        all.remove(chosen);
        return new MaskDrawing(all, Math.min(all.size() - 1, Math.max(0, chosen - 1)));
    }

    /** The point within a distance of a place, nearest first in units of the given reach; −1 for none. */
    int near(double azimuthDeg, double elevationDeg, double reachAzimuthDeg, double reachElevationDeg) {
        int best = -1;
        double nearest = 1;
        for (int i = 0; i < points.size(); i++) {
            double east = Math.IEEEremainder(points.get(i).azimuthDeg() - azimuthDeg, 360) / reachAzimuthDeg;
            double up = (points.get(i).elevationDeg() - elevationDeg) / reachElevationDeg;
            if (Math.hypot(east, up) <= nearest) {
                nearest = Math.hypot(east, up);
                best = i;
            }
        }
        return best;
    }

    private static double elevation(double degrees) {
        return tenths(Math.max(LOWEST_DEG, Math.min(HIGHEST_DEG, degrees)));
    }

    private static double tenths(double degrees) {
        return Math.round(degrees * 10) / 10.0;
    }
}
