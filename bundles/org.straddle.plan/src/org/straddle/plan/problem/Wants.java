package org.straddle.plan.problem;

import java.util.Arrays;

/** How many chasers of each group need each square. */
public final class Wants {

    private final double[][] needed;
    private final int groups;

    /** @param needed by square and group, not negative */
    public Wants(double[][] needed, int groups) {
        this.needed = Arrays.stream(needed).map(double[]::clone).toArray(double[][]::new);
        this.groups = groups;
        for (double[] ofSquare : needed) {
            if (ofSquare.length != groups || Arrays.stream(ofSquare).anyMatch(n -> !(n >= 0) || Double.isInfinite(n))) {
                throw new IllegalArgumentException("no number of chasers by group: " + Arrays.toString(ofSquare));
            }
        }
    }

    /** One group that needs the squares so much. */
    public static Wants ofOneGroup(double... needed) {
        return new Wants(Arrays.stream(needed).mapToObj(n -> new double[] { n }).toArray(double[][]::new), 1);
    }

    public int squares() {
        return needed.length;
    }

    public int groups() {
        return groups;
    }

    public double of(int square, int group) {
        return needed[square][group];
    }

    /** In all groups together. */
    public double of(int square) {
        return Arrays.stream(needed[square]).sum();
    }

    public boolean isAnything() {
        return Arrays.stream(needed).flatMapToDouble(Arrays::stream).anyMatch(n -> n > 0);
    }
}
