package org.straddle.terrain;

import java.util.ArrayList;
import java.util.List;

import org.straddle.sky.Horizon;

/**
 * A skyline of many evenly spaced directions as a mask with few points that is nowhere lower.
 *
 * <p>Points are left out after Douglas and Peucker (1973) where the straight line between their neighbours is within
 * a tolerance; what is left is raised by the tolerance. So the mask is at least as high as the skyline in every
 * direction, and at most twice the tolerance higher.
 */
final class HorizonReduction {

    /** Degrees: half of it is the Sun's radius, and less than a bush in the way. */
    static final double TOLERANCE_DEG = 0.1;

    /** What a mask can hold. */
    private static final double LOWEST_DEG = -30;
    private static final double HIGHEST_DEG = 90;

    private final double[] skylineDeg;
    private final List<Integer> kept = new ArrayList<>();

    private HorizonReduction(double[] skylineDeg) {
        this.skylineDeg = skylineDeg;
    }

    /** @param skylineDeg elevations in degrees, evenly around the circle from north over east */
    static Horizon of(double[] skylineDeg) {
        HorizonReduction reduction = new HorizonReduction(skylineDeg);
        int opposite = skylineDeg.length / 2;
        reduction.keep(0);
        reduction.between(0, opposite);
        reduction.keep(opposite);
        reduction.between(opposite, skylineDeg.length);
        return new Horizon(reduction.kept.stream().map(reduction::point).toList());
    }

    private void between(int first, int last) {
        int farthest = -1;
        double off = TOLERANCE_DEG;
        for (int i = first + 1; i < last; i++) {
            double line = at(first) + (at(last) - at(first)) * (i - first) / (last - first);
            if (Math.abs(at(i) - line) > off) {
                off = Math.abs(at(i) - line);
                farthest = i;
            }
        }
        if (farthest >= 0) {
            between(first, farthest);
            keep(farthest);
            between(farthest, last);
        }
    }

    private void keep(int index) {
        kept.add(index);
    }

    private double at(int index) {
        return skylineDeg[index % skylineDeg.length];
    }

    private Horizon.Point point(int index) {
        // Hundredths, upwards: nobody aims better.
        double raised = Math.ceil((at(index) + TOLERANCE_DEG) * 100 - 1e-6) / 100;
        return new Horizon.Point(360.0 * index / skylineDeg.length, Math.max(LOWEST_DEG, Math.min(HIGHEST_DEG, raised)));
    }
}
