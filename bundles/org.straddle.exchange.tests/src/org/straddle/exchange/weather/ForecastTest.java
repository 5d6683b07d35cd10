package org.straddle.exchange.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.model.Event;
import org.straddle.model.Forecast;
import org.straddle.model.Fresh;
import org.straddle.model.Site;
import org.straddle.model.provider.StraddleItemProviderAdapterFactory;

class ForecastTest {

    private static final String HEAD = """
            # latitude: 64.1
            # longitude: -21.9
            # source: Invented office
            # issued: 2031-06-20T06:00Z
            """;
    private static final String GOOD = HEAD + """
            time,temperature_c,humidity_percent,wind_kmh,gust_kmh,thunder_percent
            2031-06-20T12:00Z,31,60,20,35,0
            2031-06-20T13:00Z,33,55,25,40,5
            2031-06-20T14:00+02:00,28,,,,40
            """.replace("14:00+02:00", "16:00+02:00");

    private final Event event = Fresh.event("Ridge rove", "UTC", LocalDate.parse("2031-06-20"), LocalDate.parse("2031-06-22"));
    private final Site site = Fresh.site();

    @BeforeEach
    void make() {
        site.setLatitudeDeg(64.15);
        site.setLongitudeDeg(-21.8);
        site.setName("Gate");
        event.getSites().add(site);
    }

    private static ForecastTable table(String text) throws ReadException {
        return ForecastTable.read(new SourceFile("f.csv", text.getBytes(StandardCharsets.UTF_8)));
    }

    private ForecastImport into(String text) throws ReadException {
        return ForecastImport.into(event, site, table(text), "f.csv");
    }

    @Test
    void bringsTheHoursAndTheMostCarefulFiguresOfTheDay() throws ReadException {
        ForecastImport found = into(GOOD);
        assertEquals("Forecast for Gate on 1 day: 3 hours.", found.summary());
        Forecast day = found.days().get(0);
        assertEquals(33, day.getWarmestDegC());
        assertEquals(55, day.getHumidityPercent(), "that of the warmest hour");
        assertEquals(28, day.getColdestDegC());
        assertEquals(25, day.getWindKmh());
        assertTrue(day.isThunder());
        assertEquals(Instant.parse("2031-06-20T06:00:00Z"), day.getIssued());
        assertEquals(Instant.parse("2031-06-20T14:00:00Z"), day.getHours().get(2).getAt());
        assertNull(day.getHours().get(2).getWindKmh(), "an empty cell is not a calm");
        assertEquals(40, day.getHours().get(1).getGustKmh());
    }

    @Test
    void anImportIsOneUndoAndReplacesOnlyTheSameDayAndSite() throws ReadException {
        var domain = new AdapterFactoryEditingDomain(new StraddleItemProviderAdapterFactory(), new BasicCommandStack());
        domain.getCommandStack().execute(into(GOOD).command(domain));
        domain.getCommandStack().execute(into(GOOD.replace("2031-06-20T12", "2031-06-21T12")).command(domain));
        assertEquals(2, event.getForecasts().size(), "the day of before, and one more");
        domain.getCommandStack().undo();
        assertEquals(1, event.getForecasts().size());
        assertEquals(3, event.getForecasts().get(0).getHours().size());
    }

    /** 30 °C with a dew point of 20 °C is 55 % by tables of psychrometry; 25/15 is 54 %, 10/5 71 % (from memory, to 1 %). */
    @ParameterizedTest
    @CsvSource({"30, 20, 55", "25, 15, 54", "10, 5, 71", "20, 20, 100", "20, 20.5, 100"})
    void humidityFollowsFromTheDewPoint(double warm, double dew, double percent) {
        assertEquals(percent, DewPoint.humidityPercent(warm, dew), 1);
    }

    @ParameterizedTest
    @CsvSource({"temperature_f, 86, 30, temperature", "wind_ms, 10, 36, wind", "wind_kn, 20, 37.04, wind", "wind_mph, 10, 16.09, wind"})
    void unitsAreTurnedIntoThoseOfTheModel(String heading, String cell, double expected, String figure) throws ReadException {
        Forecast day = into(HEAD + "time," + heading + "\n2031-06-20T12:00Z," + cell + "\n").days().get(0);
        assertEquals(expected, figure.equals("wind") ? day.getWindKmh() : day.getWarmestDegC(), 0.01);
    }

    @ParameterizedTest
    @ValueSource(strings = {"2031-06-20T12:00Z,61,50,5,5,0", "2031-06-20T12:00Z,20,101,5,5,0", "2031-06-20T12:00Z,20,50,-1,5,0",
        "2031-06-20T12:00Z,20,50,5,5,101", "2031-06-20T12:00Z,NaN,50,5,5,0", "2031-06-20T12:00Z,warm,50,5,5,0", "2031-06-20T12:00Z,20,50,5,5",
        "2031-06-20 12:00,20,50,5,5,0", "2031-06-20T12:00,20,50,5,5,0", "noon,20,50,5,5,0"})
    void whatNoWeatherHasIsRefusedWithItsLine(String row) {
        ReadException refused = assertThrows(ReadException.class,
                () -> table(HEAD + "time,temperature_c,humidity_percent,wind_kmh,gust_kmh,thunder_percent\n" + row + "\n"));
        assertEquals(6, refused.line(), refused.getMessage());
        assertEquals(2, refused.getMessage().lines().count(), refused.getMessage());
    }

    @ParameterizedTest
    @ValueSource(strings = {"time,temperature\n2031-06-20T12:00Z,20\n", "time,wind_kmh,wind_ms\n2031-06-20T12:00Z,20,5\n", "hour,temperature_c\n12,20\n",
        "time,temperature_c,dew_point_c\n2031-06-20T12:00Z,20,25\n", "time,temperature_c\n2031-06-20T12:00Z,20\n2031-06-20T12:00Z,21\n",
        "time,temperature_c\n"})
    void aTableWithoutUnitsOrWithDoublesIsRefused(String table) {
        ReadException refused = assertThrows(ReadException.class, () -> table(HEAD + table));
        assertFalse(refused.whatToDo().isBlank());
    }

    @Test
    void aFileSaysWhereAndWhenItWasMade() {
        for (String line : HEAD.lines().toList()) {
            assertThrows(ReadException.class, () -> table(GOOD.replace(line + "\n", "")), line);
        }
        assertThrows(ReadException.class, () -> table(GOOD.replace("64.1", "91")));
        assertThrows(ReadException.class, () -> table(GOOD.replace("64.1", "north")));
    }

    @Test
    void aForecastOfAnotherDayOrPlaceIsRefusedInWordsAndChangesNothing() {
        ReadException day = assertThrows(ReadException.class, () -> into(GOOD.replace("2031-06-20T", "2031-07-20T")));
        assertTrue(day.what().contains("20 Jul 2031"), day.what());
        ReadException place = assertThrows(ReadException.class, () -> into(GOOD.replace("64.1", "65.9")));
        assertTrue(place.what().matches("This forecast is for a place 19\\d km away from Gate."), place.what());
        assertEquals(List.of(), event.getForecasts());
    }
}
