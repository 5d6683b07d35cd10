package org.straddle.safety.explain;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

import org.straddle.model.Event;
import org.straddle.model.Site;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.safety.ColdLevel;
import org.straddle.safety.ForecastWarnings;
import org.straddle.safety.HeatIndex;
import org.straddle.safety.HeatLevel;
import org.straddle.safety.WeatherHour;
import org.straddle.safety.WindChill;
import org.straddle.safety.WindLevel;
import org.straddle.words.FigureText;
import org.straddle.words.TimeText;

/** What follows from the forecasts for the hours of the stays, or for the day as a whole where a forecast has no hours. */
final class WeatherFigures {

    private final FigureText figures = FigureText.inCurrent();
    private final List<Figure> found = new ArrayList<>();
    private final TimeText times;
    private final List<WeatherHour> hours;

    private WeatherFigures(TimeText times, List<WeatherHour> hours) {
        this.times = times;
        this.hours = hours;
    }

    static List<Figure> of(Outlook outlook, Site site, List<Stay> stays, LocalDate day) {
        Event event = outlook.event();
        if (ForecastWarnings.hours(event, site, day, Optional.empty()).isEmpty()) {
            String why = event.getForecasts().isEmpty() ? "forecast" : "forecast.day";
            return Stream.of("heat", "chill", "wind", "thunder").map(key -> FigureWords.refused(key, why, "day", day)).toList();
        }
        TimeText times = TimeText.of(outlook.zone());
        List<Stay> there = stays.stream().filter(stay -> times.date(stay.window().start()).equals(day)).toList();
        WeatherFigures all = new WeatherFigures(times, there.isEmpty() ? ForecastWarnings.hours(event, site, day, Optional.empty())
                : there.stream().flatMap(stay -> ForecastWarnings.hours(event, site, day, Optional.of(stay.window())).stream()).distinct().toList());
        all.thunder();
        all.heat();
        all.chill();
        all.wind();
        return List.copyOf(all.found);
    }

    private void thunder() {
        hours.stream().filter(WeatherHour::speaksOfThunder).max(Comparator.comparingDouble(WeatherHour::thunderPercent))
                .ifPresent(hour -> found.add(FigureWords.known("thunder", "hourly", hourly(hour), "at", at(hour), "percent",
                        figures.atMost(0, Math.ceil(hour.thunderPercent())))));
    }

    private void heat() {
        List<WeatherHour> known = hours.stream().filter(hour -> hour.temperatureC() > -100 && hour.humidityPercent() >= 0
                && hour.humidityPercent() <= 100).toList();
        if (known.isEmpty()) {
            found.add(FigureWords.refused("heat", "heat"));
            return;
        }
        WeatherHour hottest = known.stream().max(Comparator.comparing(WeatherHour::heat).thenComparingDouble(WeatherFigures::felt)).orElseThrow();
        if (hottest.temperatureC() * 9 / 5 + 32 > HeatIndex.HOTTEST_F) {
            found.add(FigureWords.refused("heat", "heat.range", "celsius", figures.atMost(1, hottest.temperatureC())));
        } else if (hottest.heat() != HeatLevel.NONE) {
            found.add(FigureWords.known("heat", "hourly", hourly(hottest), "at", at(hottest), "celsius", figures.atMost(1, hottest.temperatureC()),
                    "humidity", figures.atMost(0, hottest.humidityPercent()), "index",
                    figures.atMost(0, Math.ceil(felt(hottest))), "level", hottest.heat().words()));
        }
    }

    private static double felt(WeatherHour hour) {
        return HeatIndex.celsius(hour.temperatureC(), hour.humidityPercent());
    }

    private void chill() {
        List<WeatherHour> known = hours.stream().filter(hour -> hour.temperatureC() > -100 && hour.windKmh() >= 0).toList();
        if (known.isEmpty()) {
            found.add(FigureWords.refused("chill", "chill"));
            return;
        }
        known.stream().filter(hour -> WindChill.celsius(hour.temperatureC(), hour.windKmh()).isPresent())
                .min(Comparator.comparingDouble(WeatherFigures::chilled)).ifPresent(hour -> found.add(FigureWords.known("chill", "hourly",
                        hourly(hour), "at", at(hour), "celsius", figures.atMost(1, hour.temperatureC()), "wind", figures.atMost(0, hour.windKmh()), "chill",
                        figures.atMost(0, Math.floor(chilled(hour))), "level", ColdLevel.of(hour.temperatureC(), hour.windKmh()).name())));
    }

    private static double chilled(WeatherHour hour) {
        return WindChill.celsius(hour.temperatureC(), hour.windKmh()).orElseThrow();
    }

    private void wind() {
        if (hours.stream().noneMatch(hour -> hour.windKmh() >= 0 || hour.gustKmh() >= 0)) {
            found.add(FigureWords.refused("wind", "wind"));
            return;
        }
        hours.stream().filter(hour -> hour.wind() != WindLevel.NONE)
                .max(Comparator.comparing(WeatherHour::wind).thenComparingDouble(hour -> Math.max(or0(hour, WeatherHour::windKmh), or0(hour, WeatherHour::gustKmh))))
                .ifPresent(hour -> found.add(FigureWords.known("wind", "hourly", hourly(hour), "at", at(hour), "wind",
                        figures.atMost(0, Math.ceil(or0(hour, WeatherHour::windKmh))), "gust", figures.atMost(0, Math.ceil(or0(hour, WeatherHour::gustKmh))),
                        "level", hour.wind().name())));
    }

    private static double or0(WeatherHour hour, ToDoubleFunction<WeatherHour> figure) {
        double value = figure.applyAsDouble(hour);
        return Double.isNaN(value) ? 0 : value;
    }

    private static String hourly(WeatherHour hour) {
        return hour.at().isPresent() ? "yes" : "no";
    }

    private String at(WeatherHour hour) {
        return hour.at().map(times::clock).orElse("");
    }
}
