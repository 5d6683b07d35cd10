package org.straddle.safety;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.straddle.model.Event;
import org.straddle.model.Site;
import org.straddle.sky.Window;

/** The gravest that all forecasts for a site warn of on a day, or during a stay. */
public record ForecastWarnings(HeatLevel heat, ColdLevel cold, WindLevel wind, boolean thunder) {

    /** @param stay empty for the whole day */
    public static ForecastWarnings of(Event event, Site site, LocalDate day, Optional<Window> stay) {
        List<WeatherHour> hours = hours(event, site, day, stay);
        return new ForecastWarnings(gravest(hours, WeatherHour::heat, HeatLevel.NONE), gravest(hours, WeatherHour::cold, ColdLevel.NONE),
                gravest(hours, WeatherHour::wind, WindLevel.NONE), hours.stream().anyMatch(WeatherHour::speaksOfThunder));
    }

    /** What all forecasts for the site say of the day or of the stay. */
    public static List<WeatherHour> hours(Event event, Site site, LocalDate day, Optional<Window> stay) {
        return event.getForecasts().stream().filter(forecast -> day.equals(forecast.getDay()))
                .filter(forecast -> forecast.getSite() == null || forecast.getSite() == site)
                .flatMap(forecast -> WeatherHour.of(forecast, stay).stream()).toList();
    }

    private static <L extends Comparable<? super L>> L gravest(List<WeatherHour> hours, Function<WeatherHour, L> level, L none) {
        return hours.stream().map(level).max(Comparator.naturalOrder()).orElse(none);
    }
}
