package org.straddle.exchange.weather;

/**
 * Relative humidity from temperature and dew point, by Magnus' formula with the constants of Alduchov and Eskridge (1996), from
 * memory: good to 0.4 % from -40 to 50 °C.
 */
final class DewPoint {

    private static final double A = 17.625;
    private static final double B_DEG_C = 243.04;

    private DewPoint() {
    }

    /** @return per cent, 100 at most */
    static double humidityPercent(double temperatureDegC, double dewPointDegC) {
        return Math.min(100, 100 * Math.exp(pressure(dewPointDegC) - pressure(temperatureDegC)));
    }

    /** Logarithm of the vapour pressure at saturation, up to a constant. */
    private static double pressure(double degC) {
        return A * degC / (B_DEG_C + degC);
    }
}
