package org.straddle.safety;

import java.util.OptionalDouble;

/**
 * How high anything raised may be near overhead wires, so that it misses them when it falls. Two rules count together:
 * it stays one and a half times its height away (US CPSC advice on antennas), and when it lies on the ground no part is
 * nearer than the approach for the voltage. The owner of the wires and the local code may ask for more.
 *
 * <p>What counts is the distance that is left when mark and station are where they hurt most: the distance that
 * somebody measured from the mark, less the error of the mark, less half of what the station spans.
 */
public final class OverheadWires {

    /** Times its height (US CPSC advice on antennas). */
    private static final double HEIGHTS_AWAY = 1.5;

    private OverheadWires() {
    }

    /**
     * Least approach for people and what they hold: 10 ft, and 4 in more for each 10 kV above 50 kV, parts counted in
     * proportion (29 CFR 1910.333(c)(3)). Never more than table A of 29 CFR 1926.1408 asks for, so that one is used.
     *
     * @param kilovolts voltage of the wires to ground, 0 or more
     * @return feet
     */
    public static double approachByVoltageFt(double kilovolts) {
        return 10 + Math.max(0, notNegative(kilovolts) - 50) / 10 * 4 / 12;
    }

    /**
     * How far mast and antenna stay away from the wires along the ground.
     *
     * @param heightM height of everything raised, above the ground, metres, 0 or more
     * @return metres; empty above 1000 kV, where only the owner of the wires says it
     */
    public static OptionalDouble leastDistanceM(double heightM, WireVoltage voltage) {
        notNegative(heightM);
        OptionalDouble approach = voltage.approachM();
        return approach.isEmpty() ? approach
                : OptionalDouble.of(Math.max(HEIGHTS_AWAY * heightM, heightM + approach.getAsDouble()));
    }

    /**
     * The distance that counts.
     *
     * @param measuredM along the ground from the mark to below the nearest wire, metres, 0 or more
     * @param markErrorM how far the station may be from the mark that was measured from, metres, 0 or more
     * @param spanM longest distance between two parts of the station, metres, 0 or more
     * @return metres, 0 or more
     */
    public static double countedDistanceM(double measuredM, double markErrorM, double spanM) {
        return Math.max(0, notNegative(measuredM) - notNegative(markErrorM) - notNegative(spanM) / 2);
    }

    /**
     * How high anything may be at a distance that counts: the largest height whose {@link #leastDistanceM} it is.
     *
     * @param countedM see {@link #countedDistanceM}
     * @return metres above the ground, 0 where nothing may be raised
     */
    public static double highestM(double countedM, WireVoltage voltage) {
        notNegative(countedM);
        OptionalDouble approach = voltage.approachM();
        return approach.isEmpty() ? 0
                : Math.max(0, Math.min(countedM / HEIGHTS_AWAY, countedM - approach.getAsDouble()));
    }

    private static double notNegative(double value) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("A voltage, a height or a distance is 0 or more, not " + value + ".");
        }
        return value;
    }
}
