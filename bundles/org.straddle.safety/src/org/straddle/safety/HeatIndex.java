package org.straddle.safety;

import org.straddle.words.Catalogue;

/**
 * How hot it feels in the shade: the regression by Rothfusz with both of its adjustments (NOAA Weather Prediction
 * Center, "The Heat Index Equation"). Below an index of 80 °F a simple formula, averaged with the temperature, takes
 * its place. The printed chart rounds differently here and there, by up to 1 °F. In full sun it can feel up to 15 °F
 * hotter (the same source's note to the chart, from memory).
 */
public final class HeatIndex {

    private static final Catalogue TEXTS = Catalogue.of(HeatIndex.class);

    /** Hottest column of the published chart, °F. */
    public static final double HOTTEST_F = 110;

    private HeatIndex() {
    }

    /**
     * @param temperatureF dry-bulb temperature in the shade, °F
     * @param humidityPercent relative humidity, 0 to 100
     * @return °F, not rounded
     */
    public static double fahrenheit(double temperatureF, double humidityPercent) {
        if (!(humidityPercent >= 0 && humidityPercent <= 100) || !Double.isFinite(temperatureF)) {
            throw new IllegalArgumentException(TEXTS.text("heatIndex.relativeHumidityNot",
                    "humidityPercent", humidityPercent, "temperatureF", temperatureF));
        }
        double simple = 0.5 * (temperatureF + 61 + (temperatureF - 68) * 1.2 + humidityPercent * 0.094);
        double averaged = (simple + temperatureF) / 2;
        // In dry air the regression begins up to 2.5 °F below 80 °F, where it takes over: no index falls while it gets hotter.
        return averaged < 80 ? averaged
                : Math.max(80, regression(temperatureF, humidityPercent) + adjustment(temperatureF, humidityPercent));
    }

    /**
     * @param temperatureC dry-bulb temperature in the shade, °C
     * @param humidityPercent relative humidity, 0 to 100
     * @return °C, not rounded
     */
    public static double celsius(double temperatureC, double humidityPercent) {
        return Temperature.celsius(fahrenheit(Temperature.fahrenheit(temperatureC), humidityPercent));
    }

    private static double regression(double t, double r) {
        return -42.379 + 2.04901523 * t + 10.14333127 * r - 0.22475541 * t * r - 0.00683783 * t * t
                - 0.05481717 * r * r + 0.00122874 * t * t * r + 0.00085282 * t * r * r - 0.00000199 * t * t * r * r;
    }

    private static double adjustment(double t, double r) {
        if (r < 13 && t >= 80 && t <= 112) {
            return -(13 - r) / 4 * Math.sqrt((17 - Math.abs(t - 95)) / 17);
        }
        if (r > 85 && t >= 80 && t <= 87) {
            return (r - 85) / 10 * ((87 - t) / 5);
        }
        return 0;
    }
}
