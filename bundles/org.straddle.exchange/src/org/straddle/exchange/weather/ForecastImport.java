package org.straddle.exchange.weather;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.exchange.ReadException;
import org.straddle.grid.Geodesic;
import org.straddle.grid.GeoPosition;
import org.straddle.model.Event;
import org.straddle.model.Forecast;
import org.straddle.model.ForecastHour;
import org.straddle.model.Site;
import org.straddle.model.StraddleFactory;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.words.Catalogue;

/**
 * A forecast on its way into an event: one for each day, in the place of what the event had for that day and site. It is refused
 * when none of its hours lies in the event, or when it is for another place.
 *
 * @param site the site that it is for
 * @param days what comes in, one for each local day of the event
 * @param replaced what goes
 */
public record ForecastImport(Event event, Site site, List<Forecast> days, List<Forecast> replaced) {

    private static final Catalogue TEXTS = Catalogue.of(ForecastImport.class);

    /** A forecast for a place farther away says little of the weather at the site, m. Common practice, no source. */
    private static final double FARTHEST_M = 30_000;

    /** From this probability on, per cent, a day counts as one with thunder. Common practice, no source. */
    private static final double THUNDER_PERCENT = 10;

    public ForecastImport {
        days = List.copyOf(days);
        replaced = List.copyOf(replaced);
    }

    /**
     * @param file name of the file, for what is refused
     * @throws ReadException for a forecast of another day or place
     */
    public static ForecastImport into(Event event, Site site, ForecastTable table, String file) throws ReadException {
        double awayM = Geodesic.distanceM(table.place(), new GeoPosition(site.getLatitudeDeg(), site.getLongitudeDeg()));
        if (awayM > FARTHEST_M) {
            throw new ReadException(file, 0, TEXTS.text("weather.elsewhere", "km", Math.round(awayM / 1000), "site", Naming.name(site)),
                    TEXTS.text("weather.elsewhere.choose", "km", Math.round(FARTHEST_M / 1000)));
        }
        ZoneId zone = Outlook.zoneOf(event);
        Map<LocalDate, List<ForecastRow>> days = new TreeMap<>();
        table.rows().stream().filter(row -> isOfEvent(event, row.at().atZone(zone).toLocalDate()))
                .forEach(row -> days.computeIfAbsent(row.at().atZone(zone).toLocalDate(), any -> new ArrayList<>()).add(row));
        if (days.isEmpty()) {
            throw new ReadException(file, 0, TEXTS.text("weather.otherDay", "first", table.rows().get(0).at().atZone(zone).toLocalDate(),
                    "last", table.rows().get(table.rows().size() - 1).at().atZone(zone).toLocalDate()), TEXTS.text("weather.otherDay.choose"));
        }
        List<Forecast> replaced = event.getForecasts().stream().filter(old -> old.getSite() == site && days.containsKey(old.getDay())).toList();
        return new ForecastImport(event, site, days.entrySet().stream().map(day -> forecast(site, table, day.getKey(), day.getValue())).toList(),
                replaced);
    }

    private static boolean isOfEvent(Event event, LocalDate day) {
        return event.getFirstDay() != null && event.getLastDay() != null && !day.isBefore(event.getFirstDay()) && !day.isAfter(event.getLastDay());
    }

    /** One undo. */
    public Command command(EditingDomain domain) {
        CompoundCommand all = new CompoundCommand(TEXTS.text("weather.command", "site", Naming.name(site)));
        if (!replaced.isEmpty()) {
            all.append(RemoveCommand.create(domain, event, Literals.EVENT__FORECASTS, replaced));
        }
        all.append(AddCommand.create(domain, event, Literals.EVENT__FORECASTS, days));
        return all;
    }

    /** {@code Forecast for Basalt Mark on 2 days: 48 hours.} */
    public String summary() {
        return TEXTS.text("weather.summary", "site", Naming.name(site), "days", days.size(), "hours",
                days.stream().mapToInt(day -> day.getHours().size()).sum());
    }

    private static Forecast forecast(Site site, ForecastTable table, LocalDate day, List<ForecastRow> rows) {
        Forecast forecast = StraddleFactory.eINSTANCE.createForecast();
        forecast.setDay(day);
        forecast.setSite(site);
        forecast.setSource(table.source());
        forecast.setIssued(table.issued());
        rows.forEach(row -> forecast.getHours().add(hour(row)));
        List<ForecastHour> hours = forecast.getHours();
        most(hours, ForecastHour::getTemperatureDegC).ifPresent(forecast::setWarmestDegC);
        hours.stream().map(ForecastHour::getTemperatureDegC).filter(known -> known != null).min(Comparator.naturalOrder())
                .ifPresent(forecast::setColdestDegC);
        hours.stream().filter(hour -> hour.getTemperatureDegC() != null && hour.getHumidityPercent() != null)
                .max(Comparator.comparing(ForecastHour::getTemperatureDegC).thenComparing(ForecastHour::getHumidityPercent))
                .ifPresent(hour -> forecast.setHumidityPercent(hour.getHumidityPercent()));
        most(hours, ForecastHour::getWindKmh).ifPresent(forecast::setWindKmh);
        forecast.setThunder(most(hours, ForecastHour::getThunderPercent).filter(percent -> percent >= THUNDER_PERCENT).isPresent());
        return forecast;
    }

    private static Optional<Double> most(List<ForecastHour> hours, Function<ForecastHour, Double> figure) {
        return hours.stream().map(figure).filter(known -> known != null).max(Comparator.naturalOrder());
    }

    private static ForecastHour hour(ForecastRow row) {
        ForecastHour hour = StraddleFactory.eINSTANCE.createForecastHour();
        hour.setAt(row.at());
        row.figure(Quantity.Figure.TEMPERATURE).ifPresent(hour::setTemperatureDegC);
        row.humidityPercent().ifPresent(hour::setHumidityPercent);
        row.figure(Quantity.Figure.WIND).ifPresent(hour::setWindKmh);
        row.figure(Quantity.Figure.GUST).ifPresent(hour::setGustKmh);
        row.figure(Quantity.Figure.THUNDER).ifPresent(hour::setThunderPercent);
        return hour;
    }
}
