package org.straddle.sky.prediction;

import java.time.Instant;
import java.util.BitSet;

import org.straddle.sky.Window;

/**
 * How much of an area has a bird up while somebody elsewhere works it: whom a pass can reach.
 *
 * <p>The time is cut into equal slices of at most {@value #SLICE_S} s, and each counts as its middle. In such a slice
 * a low bird's footprint moves by some 70 km.
 *
 * @param mean   part of the area that has the bird up, on average over the time, 0 to 1: the chance of somebody
 *               there to hear the pass at a moment of it
 * @param ever   part that has the bird up at some time
 * @param best   greatest part that has it up at once
 * @param bestAt when that is: the first such slice
 */
public record AreaReach(double mean, double ever, double best, Instant bestAt) {

    private static final double SLICE_S = 10;

    /**
     * @param during   the pass, or the part of it that is worked
     * @param leastDeg elevation that the bird must stand above in the area
     * @throws IllegalArgumentException when {@code during} lies outside the predicted time
     */
    public static AreaReach of(Ephemeris ephemeris, Window during, Area area, double leastDeg) {
        double sinLeast = Math.sin(Math.toRadians(leastDeg));
        double from = ephemeris.seconds(during.start());
        double length = ephemeris.seconds(during.end()) - from;
        int slices = slices(length);
        double[] state = new double[6];
        BitSet seen = new BitSet();
        BitSet ever = new BitSet();
        double sum = 0;
        double best = -1;
        double bestAt = from;
        for (int i = 0; i < slices; i++) {
            double t = middle(from, length, i, slices);
            ephemeris.track().state(t, state);
            seen.clear();
            double part = area.partAbove(state, sinLeast, seen);
            ever.or(seen);
            sum += part;
            if (part > best) {
                best = part;
                bestAt = t;
            }
        }
        double everPart = ever.stream().mapToDouble(area::part).sum();
        return new AreaReach(sum / slices, Math.min(1, everPart), best, ephemeris.instant(bestAt));
    }

    /**
     * Has any of the area the bird up at some time? As {@code of(…).ever() > 0} says, and sooner: often the first look tells.
     *
     * @throws IllegalArgumentException when {@code during} lies outside the predicted time
     */
    public static boolean isEver(Ephemeris ephemeris, Window during, Area area, double leastDeg) {
        double sinLeast = Math.sin(Math.toRadians(leastDeg));
        double from = ephemeris.seconds(during.start());
        double length = ephemeris.seconds(during.end()) - from;
        int slices = slices(length);
        double[] state = new double[6];
        for (int i = 0; i < slices; i++) {
            ephemeris.track().state(middle(from, length, i, slices), state);
            if (area.isAnyAbove(state, sinLeast)) {
                return true;
            }
        }
        return false;
    }

    private static int slices(double length) {
        return (int) Math.ceil(length / SLICE_S);
    }

    private static double middle(double from, double length, int slice, int slices) {
        return from + (slice + 0.5) * length / slices;
    }
}
