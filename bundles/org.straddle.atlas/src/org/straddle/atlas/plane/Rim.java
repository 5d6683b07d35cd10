package org.straddle.atlas.plane;

import java.util.ArrayList;
import java.util.List;

import org.straddle.drawing.PointList;

/**
 * Cuts lines and rings at the rim of a plane, before which they would run off to the infinite.
 *
 * <p>Positions beyond the rim are drawn in to it, straight towards the centre, and a ring goes along it from one to
 * the next. That moves a ring without letting it pass over any place within the rim, so what it surrounds there stays
 * the same: cheaper and sturdier than a clipping of polygons, which has to join the cut ends in the right order.
 */
final class Rim {

    /** Steps along the rim, radians: the gap between rim and chord is 0.1 % of the radius. */
    private static final double STEP = Math.toRadians(5);

    private final double radius;

    Rim(Plane plane) {
        radius = plane.rimM();
    }

    /**
     * A ring within the rim that surrounds the same places within it; empty when it surrounds none.
     *
     * @param mayBeWorld whether a ring that goes round the map outside the rim surrounds all of it, or, as small areas
     *     do, the place opposite
     */
    List<double[]> ring(double[] ring, boolean mayBeWorld) {
        boolean[] out = beyond(ring);
        if (out == null) {
            return List.of(ring);
        }
        PointList drawn = new PointList(ring.length + 16);
        boolean inside = false;
        for (int i = 0; i < ring.length; i += 2) {
            if (!out[i / 2]) {
                inside = true;
                drawn.add(ring[i], ring[i + 1]);
            } else {
                double angle = angle(ring, i);
                if (i > 0 && out[i / 2 - 1]) {
                    along(drawn, angle(ring, i - 2), angle);
                }
                drawn.add(radius * Math.cos(angle), radius * Math.sin(angle));
            }
        }
        double[] closed = drawn.toArray();
        return inside || mayBeWorld && Math.abs(turns(closed)) > 0.5 ? List.of(closed) : List.of();
    }

    /** The parts of a line within the rim. */
    List<double[]> line(double[] line) {
        boolean[] out = beyond(line);
        if (out == null) {
            return List.of(line);
        }
        List<double[]> parts = new ArrayList<>();
        PointList part = new PointList(16);
        for (int i = 0; i < line.length; i += 2) {
            if (!out[i / 2]) {
                part.add(line[i], line[i + 1]);
            } else {
                part.moveTo(parts);
            }
        }
        part.moveTo(parts);
        return parts;
    }

    /** The rim itself as a ring. */
    double[] circle() {
        PointList circle = new PointList(160);
        circle.add(radius, 0);
        along(circle, 0, Math.PI);
        circle.add(-radius, 0);
        along(circle, -Math.PI, 0);
        circle.add(radius, 0);
        return circle.toArray();
    }

    /** How often a ring goes round the centre, anticlockwise. */
    static double turns(double[] ring) {
        double sum = 0;
        for (int i = 2; i < ring.length; i += 2) {
            sum += Math.IEEEremainder(angle(ring, i) - angle(ring, i - 2), 2 * Math.PI);
        }
        return sum / (2 * Math.PI);
    }

    private static double angle(double[] points, int i) {
        double angle = Math.atan2(points[i + 1], points[i]);
        return Double.isNaN(angle) ? 0 : angle;
    }

    private void along(PointList drawn, double from, double to) {
        double way = Math.IEEEremainder(to - from, 2 * Math.PI);
        int steps = (int) Math.ceil(Math.abs(way) / STEP);
        for (int step = 1; step < steps; step++) {
            double angle = from + way * step / steps;
            drawn.add(radius * Math.cos(angle), radius * Math.sin(angle));
        }
    }

    /** Which positions lie beyond the rim; null when none does. */
    private boolean[] beyond(double[] points) {
        boolean[] out = null;
        for (int i = 0; i < points.length; i += 2) {
            // So written that a position at infinity, or one that is no number, is beyond.
            if (!(points[i] * points[i] + points[i + 1] * points[i + 1] <= radius * radius)) {
                out = out == null ? new boolean[points.length / 2] : out;
                out[i / 2] = true;
            }
        }
        return out;
    }
}
