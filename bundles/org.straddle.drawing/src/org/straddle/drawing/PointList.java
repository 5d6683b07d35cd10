package org.straddle.drawing;

import java.util.Arrays;
import java.util.List;

/** Points in order, growing: x and y in turn. */
public final class PointList {

    private double[] values;
    private int length;

    public PointList(int points) {
        values = new double[2 * Math.max(4, points)];
    }

    public void add(double x, double y) {
        if (length == values.length) {
            values = Arrays.copyOf(values, 2 * length);
        }
        values[length++] = x;
        values[length++] = y;
    }

    /** Number of points. */
    public int size() {
        return length / 2;
    }

    public double[] toArray() {
        return Arrays.copyOf(values, length);
    }

    /** The points as a ring, the first one again at its end; empty without points. */
    public double[] closed() {
        if (length > 0) {
            add(values[0], values[1]);
        }
        return toArray();
    }

    /** Appends what is here to the parts, if it is a line, and begins anew. */
    public void moveTo(List<double[]> parts) {
        if (size() > 1) {
            parts.add(toArray());
        }
        length = 0;
    }
}
