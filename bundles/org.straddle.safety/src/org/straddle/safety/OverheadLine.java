package org.straddle.safety;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * How near anything that people hold or raise may come to a power line. The figures are those of US rules for
 * equipment at work; the owner of the line and the local code may ask for more, and only they know the voltage.
 */
public final class OverheadLine {

    /** Metres in an international foot. */
    static final double M_PER_FT = 0.3048;

    /** Highest voltage in kV to least approach in ft (29 CFR 1926.1408, table A). */
    private static final TreeMap<Double, Double> TABLE_FT = new TreeMap<>(
            Map.of(50.0, 10.0, 200.0, 15.0, 350.0, 20.0, 500.0, 25.0, 750.0, 35.0, 1000.0, 45.0));

    /** A mast stays this many times its height away from a line (US CPSC advice on antennas). */
    private static final double HEIGHTS_AWAY = 1.5;

    private OverheadLine() {
    }

    /**
     * Least approach by the table.
     *
     * @param kilovolts voltage of the line, 0 or more
     * @return feet; empty above 1000 kV, where the table leaves it to the line's owner
     */
    public static OptionalDouble approachFt(double kilovolts) {
        Map.Entry<Double, Double> row = TABLE_FT.ceilingEntry(notNegative(kilovolts));
        return row == null ? OptionalDouble.empty() : OptionalDouble.of(row.getValue());
    }

    /**
     * Least approach for people and what they hold: 10 ft, and 4 in more for each 10 kV above 50 kV, parts counted in
     * proportion (29 CFR 1910.333(c)(3)).
     *
     * @param kilovolts voltage of the line to ground, 0 or more
     * @return feet
     */
    public static double approachByVoltageFt(double kilovolts) {
        return 10 + Math.max(0, notNegative(kilovolts) - 50) / 10 * 4 / 12;
    }

    /**
     * How far an antenna with its mast stays away from the line, so that it misses it when it falls: one and a half
     * times its height, and never so near that a part could come within 10 ft.
     *
     * @param heightM height of mast and antenna above the ground, metres, 0 or more
     * @return metres
     */
    public static double antennaDistanceM(double heightM) {
        return Math.max(HEIGHTS_AWAY * notNegative(heightM), heightM + 10 * M_PER_FT);
    }

    /**
     * How high mast and antenna may be together at a distance from the line: what {@link #antennaDistanceM} allows.
     *
     * @param distanceM along the ground from the foot of the mast to below the line, metres, 0 or more
     * @return metres above the ground, 0 where nothing may be raised
     */
    public static double highestAntennaM(double distanceM) {
        return Math.max(0, Math.min(notNegative(distanceM) / HEIGHTS_AWAY, distanceM - 10 * M_PER_FT));
    }

    private static double notNegative(double value) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("A voltage, a height or a distance is 0 or more, not " + value + ".");
        }
        return value;
    }
}
