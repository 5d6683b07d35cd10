package org.straddle.safety;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.straddle.model.Forecast;
import org.straddle.model.ForecastHour;
import org.straddle.sky.Window;

/**
 * What a forecast says of an hour, or of a day as a whole. A figure that is not known is NaN.
 *
 * @param at when the hour begins; empty for a day as a whole
 */
public record WeatherHour(Optional<Instant> at, double temperatureC, double humidityPercent, double windKmh, double gustKmh,
        double thunderPercent) {

    private static final Duration LENGTH = Duration.ofHours(1);

    /** A day that speaks of thunder without a probability. */
    private static final double SOME_THUNDER_PERCENT = 100;

    /** From this probability on thunder counts, per cent. Common practice, no source. */
    private static final double THUNDER_COUNTS_PERCENT = 10;

    /**
     * The hours of a forecast that touch a stay, or the day as a whole where it has none of them: its warmest and its coldest time.
     *
     * @param stay empty for all hours
     */
    public static List<WeatherHour> of(Forecast forecast, Optional<Window> stay) {
        List<WeatherHour> hours = forecast.getHours().stream().filter(hour -> hour.getAt() != null)
                .filter(hour -> stay.isEmpty() || hour.getAt().isBefore(stay.get().end()) && hour.getAt().plus(LENGTH).isAfter(stay.get().start()))
                .map(WeatherHour::of).toList();
        return hours.isEmpty() ? ofDay(forecast) : hours;
    }

    private static WeatherHour of(ForecastHour hour) {
        return new WeatherHour(Optional.of(hour.getAt()), known(hour.getTemperatureDegC()), known(hour.getHumidityPercent()),
                known(hour.getWindKmh()), known(hour.getGustKmh()), known(hour.getThunderPercent()));
    }

    private static List<WeatherHour> ofDay(Forecast day) {
        double thunder = day.isThunder() ? SOME_THUNDER_PERCENT : Double.NaN;
        double wind = known(day.getWindKmh());
        return Stream.of(new WeatherHour(Optional.empty(), known(day.getWarmestDegC()), known(day.getHumidityPercent()), wind, Double.NaN, thunder),
                new WeatherHour(Optional.empty(), known(day.getColdestDegC()), Double.NaN, wind, Double.NaN, thunder)).toList();
    }

    private static double known(Double figure) {
        return figure == null || !Double.isFinite(figure) ? Double.NaN : figure;
    }

    public boolean speaksOfThunder() {
        return thunderPercent >= THUNDER_COUNTS_PERCENT;
    }

    /** {@link HeatLevel#NONE} where temperature or humidity is not known. */
    public HeatLevel heat() {
        if (Double.isNaN(temperatureC) || !(humidityPercent >= 0 && humidityPercent <= 100)) {
            return HeatLevel.NONE;
        }
        double fahrenheit = Temperature.fahrenheit(temperatureC);
        // The chart ends there, and nothing beyond it is milder.
        return fahrenheit > HeatIndex.HOTTEST_F ? HeatLevel.EXTREME_DANGER : HeatLevel.of(HeatIndex.fahrenheit(fahrenheit, humidityPercent));
    }

    public ColdLevel cold() {
        return Double.isNaN(temperatureC) ? ColdLevel.NONE : ColdLevel.of(temperatureC, windKmh);
    }

    public WindLevel wind() {
        return WindLevel.of(windKmh, gustKmh);
    }
}
