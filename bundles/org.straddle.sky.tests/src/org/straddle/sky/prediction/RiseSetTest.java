package org.straddle.sky.prediction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.straddle.sky.ElementSet;
import org.straddle.sky.Fixture;
import org.straddle.sky.Horizon;
import org.straddle.sky.Place;
import org.straddle.sky.Window;

/**
 * Rise and set of 30 invented birds over 20 invented sites against skyfield's altitudes (Debian's
 * python3-skyfield; releng/fixtures/sky_rise_set.py says how).
 */
class RiseSetTest {

    private static final double TOLERANCE_S = 0.05;

    @Test
    void everyRiseAndSetIsWhereSkyfieldHasIt() {
        Instant start = Instant.parse("2031-06-21T00:00:00Z");
        Window window = new Window(start, start.plusSeconds(8 * 3600));
        List<Place> places = new ArrayList<>();
        String one = null;
        Ephemeris ephemeris = null;
        int events = 0;
        for (String line : Fixture.lines("rise-set.txt")) {
            if (line.startsWith("site ")) {
                double[] n = Fixture.numbers(line.substring(5));
                places.add(new Place(n[0], n[1], n[2]));
            } else if (line.startsWith("1 99")) {
                one = line;
            } else if (line.startsWith("2 99")) {
                ephemeris = Ephemeris.of(ElementSet.ofTle("", one, line), window, null);
            } else {
                String[] parts = line.trim().split(" ");
                Place place = places.get(Integer.parseInt(parts[0]));
                List<Double> ours = StockDetectors.riseAndSet(ephemeris.passes(place, Horizon.flat(0)), start);
                String where = ephemeris.elements().catalogueNumber() + " over " + place + ": " + line + " / " + ours;
                assertEquals(parts.length - 1, ours.size(), where);
                for (int i = 1; i < parts.length; i++) {
                    double theirs = Double.parseDouble(parts[i]);
                    assertEquals(theirs, ours.get(i - 1), TOLERANCE_S, where);
                    events++;
                }
            }
        }
        assertTrue(events >= 500, "events compared: " + events);
    }
}
