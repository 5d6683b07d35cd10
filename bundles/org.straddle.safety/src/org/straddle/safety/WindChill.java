package org.straddle.safety;

import java.util.OptionalDouble;

/**
 * How cold the wind makes it for bare skin (US National Weather Service, formula of 2001). It is defined for 50 °F and
 * below, with wind above 3 mph; elsewhere there is no answer.
 */
public final class WindChill {

    private static final double KMH_PER_MPH = 1.609344;

    private WindChill() {
    }

    /**
     * @param temperatureF air temperature, °F
     * @param windMph wind at 10 m above the ground, mph
     * @return °F, not rounded; empty outside the range of the formula
     */
    public static OptionalDouble fahrenheit(double temperatureF, double windMph) {
        if (!(temperatureF <= 50 && windMph > 3)) {
            return OptionalDouble.empty();
        }
        double power = Math.pow(windMph, 0.16);
        return OptionalDouble.of(35.74 + 0.6215 * temperatureF - 35.75 * power + 0.4275 * temperatureF * power);
    }

    /**
     * @param temperatureC air temperature, °C
     * @param windKmh wind at 10 m above the ground, km/h
     * @return °C, not rounded; empty outside the range of the formula
     */
    public static OptionalDouble celsius(double temperatureC, double windKmh) {
        if (!(temperatureC <= 10 && windKmh > 3 * KMH_PER_MPH)) {
            return OptionalDouble.empty();
        }
        double power = Math.pow(windKmh, 0.16);
        return OptionalDouble.of(13.12 + 0.6215 * temperatureC - 11.37 * power + 0.3965 * temperatureC * power);
    }
}
