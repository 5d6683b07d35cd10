package org.straddle.atlas.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Parallel lines that fill an area: drawn as lines, because not every painter has patterns. */
final class Hatching {

    private Hatching() {
    }

    /**
     * Lines that run down to the right at 45°, where x − y is the phase plus a multiple of the pitch.
     *
     * @param rings closed, pixels; inside is what an odd number of them surrounds
     * @param pitch distance between lines along the x axis, pixels
     */
    static List<float[]> falling(List<float[]> rings, double pitch, double phase) {
        return of(rings, 1, -1, pitch, phase);
    }

    /** Lines that run up to the right at 45°, where x + y is the phase plus a multiple of the pitch. */
    static List<float[]> rising(List<float[]> rings, double pitch, double phase) {
        return of(rings, 1, 1, pitch, phase);
    }

    /** Level lines, where y is the phase plus a multiple of the pitch. */
    static List<float[]> level(List<float[]> rings, double pitch, double phase) {
        return of(rings, 0, 1, pitch, phase);
    }

    /** Lines a·x + b·y = phase + k·pitch. */
    private static List<float[]> of(List<float[]> rings, double a, double b, double pitch, double phase) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (float[] ring : rings) {
            for (int i = 0; i < ring.length; i += 2) {
                double value = a * ring[i] + b * ring[i + 1];
                least = Math.min(least, value);
                most = Math.max(most, value);
            }
        }
        List<float[]> lines = new ArrayList<>();
        if (least <= most) {
            double first = phase + Math.ceil((least - phase) / pitch) * pitch;
            for (double value = first; value < most; value += pitch) {
                across(rings, a, b, value, lines);
            }
        }
        return lines;
    }

    private static void across(List<float[]> rings, double a, double b, double value, List<float[]> lines) {
        // No line runs upright, so x tells the place along each.
        double[] crossings = new double[8];
        int count = 0;
        for (float[] ring : rings) {
            for (int i = 2; i < ring.length; i += 2) {
                double from = a * ring[i - 2] + b * ring[i - 1] - value;
                double to = a * ring[i] + b * ring[i + 1] - value;
                // Half-open, so that a line through a corner counts once.
                if (from < 0 != to < 0) {
                    if (count == crossings.length) {
                        crossings = Arrays.copyOf(crossings, 2 * count);
                    }
                    crossings[count++] = ring[i - 2] + from / (from - to) * (ring[i] - ring[i - 2]);
                }
            }
        }
        Arrays.sort(crossings, 0, count);
        for (int i = 0; i + 1 < count; i += 2) {
            lines.add(new float[] {(float) crossings[i], (float) ((value - a * crossings[i]) / b),
                    (float) crossings[i + 1], (float) ((value - a * crossings[i + 1]) / b)});
        }
    }
}
