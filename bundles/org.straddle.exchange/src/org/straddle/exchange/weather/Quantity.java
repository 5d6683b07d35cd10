package org.straddle.exchange.weather;

import java.util.function.DoubleUnaryOperator;

/**
 * A column of a forecast with its unit, and how it becomes the unit of the model. The bounds are wider than any weather that was
 * measured, so what lies outside is a slip.
 */
enum Quantity {
    TEMPERATURE_C("temperature_c", Figure.TEMPERATURE, value -> value),
    TEMPERATURE_F("temperature_f", Figure.TEMPERATURE, value -> (value - 32) * 5 / 9),
    DEW_POINT_C("dew_point_c", Figure.DEW_POINT, value -> value),
    DEW_POINT_F("dew_point_f", Figure.DEW_POINT, value -> (value - 32) * 5 / 9),
    HUMIDITY_PERCENT("humidity_percent", Figure.HUMIDITY, value -> value),
    WIND_KMH("wind_kmh", Figure.WIND, value -> value),
    WIND_MS("wind_ms", Figure.WIND, value -> value * 3.6),
    WIND_MPH("wind_mph", Figure.WIND, value -> value * 1.609344),
    WIND_KN("wind_kn", Figure.WIND, value -> value * 1.852),
    GUST_KMH("gust_kmh", Figure.GUST, value -> value),
    GUST_MS("gust_ms", Figure.GUST, value -> value * 3.6),
    GUST_MPH("gust_mph", Figure.GUST, value -> value * 1.609344),
    GUST_KN("gust_kn", Figure.GUST, value -> value * 1.852),
    THUNDER_PERCENT("thunder_percent", Figure.THUNDER, value -> value);

    /** What a column tells, in the unit of the model. */
    enum Figure {
        TEMPERATURE(-90, 60), DEW_POINT(-100, 40), HUMIDITY(0, 100), WIND(0, 400), GUST(0, 500), THUNDER(0, 100);

        private final double least;
        private final double most;

        Figure(double least, double most) {
            this.least = least;
            this.most = most;
        }

        boolean holds(double value) {
            return value >= least && value <= most;
        }
    }

    private final String heading;
    private final Figure figure;
    private final DoubleUnaryOperator inModel;

    Quantity(String heading, Figure figure, DoubleUnaryOperator inModel) {
        this.heading = heading;
        this.figure = figure;
        this.inModel = inModel;
    }

    String heading() {
        return heading;
    }

    Figure figure() {
        return figure;
    }

    /** In °C, per cent or km/h. */
    double inModel(double written) {
        return inModel.applyAsDouble(written);
    }
}
