package org.straddle.exchange.weather;

import java.time.Instant;
import java.util.Map;
import java.util.OptionalDouble;

/** One hour of a forecast that was read; what it does not name is absent. */
record ForecastRow(Instant at, Map<Quantity.Figure, Double> figures) {

    ForecastRow {
        figures = Map.copyOf(figures);
    }

    OptionalDouble figure(Quantity.Figure figure) {
        Double value = figures.get(figure);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** As it stands there, or from the dew point. */
    OptionalDouble humidityPercent() {
        OptionalDouble written = figure(Quantity.Figure.HUMIDITY);
        OptionalDouble dew = figure(Quantity.Figure.DEW_POINT);
        OptionalDouble warm = figure(Quantity.Figure.TEMPERATURE);
        return written.isPresent() || dew.isEmpty() || warm.isEmpty() ? written
                : OptionalDouble.of(DewPoint.humidityPercent(warm.getAsDouble(), dew.getAsDouble()));
    }
}
