package org.straddle.safety;

/**
 * What cold means for people who sit still outdoors, by the wind chill, or by the temperature where no wind chill is defined. From
 * -27 °C on bare skin freezes within 30 min (Environment Canada, from memory); below 0 °C fingers grow numb (common practice, no source).
 */
public enum ColdLevel {
    NONE, NUMB, FROSTBITE;

    private static final double NUMB_DEG_C = 0;
    private static final double FROSTBITE_DEG_C = -27;

    /** @param windKmh NaN when nobody knows it */
    public static ColdLevel of(double temperatureC, double windKmh) {
        double felt = Math.min(temperatureC, WindChill.celsius(temperatureC, windKmh).orElse(temperatureC));
        return felt <= FROSTBITE_DEG_C ? FROSTBITE : felt <= NUMB_DEG_C ? NUMB : NONE;
    }
}
