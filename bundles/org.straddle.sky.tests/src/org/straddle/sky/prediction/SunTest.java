package org.straddle.sky.prediction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.straddle.sky.Fixture;
import org.straddle.sky.Invented;
import org.straddle.sky.Place;
import org.straddle.sky.Window;

class SunTest {

    /** npm's astronomy-engine at 300 places and times of 1995 to 2044. */
    @Test
    void standsWhereAnotherProgramHasIt() {
        int compared = 0;
        for (String line : Fixture.lines("sun.txt")) {
            String[] w = line.split(" ");
            Instant instant = Instant.parse(w[0]);
            Place place = new Place(Double.parseDouble(w[1]), Double.parseDouble(w[2]), Double.parseDouble(w[3]));
            double elevation = Double.parseDouble(w[5]);
            double turned = Math.abs((Sun.azimuthDeg(place, instant) - Double.parseDouble(w[4]) + 540) % 360 - 180);
            assertEquals(elevation, Sun.elevationDeg(place, instant), 0.02, line);
            assertEquals(0, turned * Math.cos(Math.toRadians(elevation)), 0.02, line);
            compared++;
        }
        assertEquals(300, compared);
    }

    /** Daylight begins and ends where the elevation passes the value asked for, and nowhere else. */
    @Test
    void daylight() {
        for (double latitude : new double[] {-60, -23, 0, 45, 64}) {
            Place place = Place.of(latitude, 20);
            List<Window> days = Sun.daylight(place, Invented.DAY, Sun.SUNRISE_DEG);
            for (Instant t = Invented.DAY.start(); t.isBefore(Invented.DAY.end()); t = t.plusSeconds(60)) {
                Instant at = t;
                assertEquals(Sun.elevationDeg(place, t) > Sun.SUNRISE_DEG, days.stream().anyMatch(d -> d.contains(at)),
                        latitude + " at " + t);
            }
        }
    }

    @Test
    void polarDayAndNight() {
        assertEquals(List.of(Invented.DAY), Sun.daylight(Place.of(75, 0), Invented.DAY, Sun.SUNRISE_DEG));
        assertTrue(Sun.daylight(Place.of(-75, 0), Invented.DAY, Sun.SUNRISE_DEG).isEmpty());
    }

    /** Just inside the polar circle around midsummer the night is short: it lies within one step and is still found. */
    @Test
    void shortNight() {
        double latitude = 65.8;
        Window day = Invented.DAY;
        List<Window> days = List.of();
        while (days.size() < 2 && latitude > 65) {
            latitude -= 0.002;
            days = Sun.daylight(Place.of(latitude, 0), new Window(day.start().minusSeconds(43_200),
                    day.start().plusSeconds(43_200)), Sun.SUNRISE_DEG);
        }
        assertEquals(2, days.size());
        assertTrue(days.get(0).gapTo(days.get(1)).compareTo(Duration.ofMinutes(20)) < 0, days.toString());
    }
}
