package org.straddle.sky.prediction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.straddle.sky.ElementSet;
import org.straddle.sky.Horizon;
import org.straddle.sky.Invented;
import org.straddle.sky.Look;
import org.straddle.sky.Pass;
import org.straddle.sky.Place;
import org.straddle.sky.Subpoint;
import org.straddle.sky.Window;
import org.straddle.sky.track.Seconds;

/** Passes against Orekit's own event detectors, and against a plain look at every second. */
class PassFinderTest {

    private static final double TOLERANCE_S = 0.02;

    private final Random dice = new Random(20310621);

    private Place place() {
        return new Place(dice.nextDouble(-80, 80), dice.nextDouble(-180, 180), dice.nextDouble(0, 2000));
    }

    private Horizon jagged(int corners, double highestDeg) {
        List<Horizon.Point> points = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            points.add(new Horizon.Point((i + 0.9 * dice.nextDouble()) * 360 / corners, dice.nextDouble(0, highestDeg)));
        }
        return new Horizon(points);
    }

    /** Level but for narrow masts (or, turned over, narrow gaps), each a degree or two wide. */
    private Horizon masts(int count, double levelDeg, double topDeg) {
        List<Horizon.Point> points = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double foot = (i + 0.5 * dice.nextDouble()) * 360 / count;
            points.add(new Horizon.Point(foot, levelDeg));
            points.add(new Horizon.Point(foot + dice.nextDouble(0.5, 1), topDeg));
            points.add(new Horizon.Point(foot + dice.nextDouble(1, 2), levelDeg));
        }
        return new Horizon(points);
    }

    private static void compare(ElementSet bird, Window window, Place place, Horizon horizon, double stepS) {
        List<Double> stock = StockDetectors.riseAndSet(bird, window, place, horizon, stepS);
        List<Double> ours = StockDetectors.riseAndSet(Ephemeris.of(bird, window, null).passes(place, horizon),
                window.start());
        String both = bird.label() + " over " + place + " above " + horizon + ": stock " + StockDetectors.text(stock)
                + "/ ours " + StockDetectors.text(ours);
        assertEquals(stock.size(), ours.size(), both);
        for (int i = 0; i < stock.size(); i++) {
            assertEquals(stock.get(i), ours.get(i), TOLERANCE_S, both);
        }
    }

    @Test
    void lowBirdsOverLevelHorizons() {
        for (int i = 0; i < 8; i++) {
            ElementSet bird = Invented.orbit("Tern-" + i, 400 + 130 * i, 400 + 130 * i + 20 * i, 20 + 11 * i, 40 * i, 50 * i,
                    45 * i);
            compare(bird, Invented.DAY, place(), Horizon.flat(i % 4 * 4), 10);
        }
    }

    /** Orekit interpolates its masks as we do: straight in azimuth, wrapping at north. It looks every second, or misses dips. */
    @Test
    void lowBirdsOverJaggedHorizons() {
        for (int i = 0; i < 5; i++) {
            ElementSet bird = Invented.low("Fulmar-" + i, 450 + 170 * i, 60 + 12 * i, 40 * i, 50 * i);
            compare(bird, Invented.DAY, place(), jagged(6 + 5 * i, 25), 1);
        }
    }

    /** A bird flies on through the leap second at the end of 2016 (IERS Bulletin C 52), and so must the grid. */
    @Test
    void acrossALeapSecond() {
        Window newYear = Window.parse("2016-12-31T12:00:00Z/PT24H");
        ElementSet now = Invented.low("Tern-1", 700, 98, 30, 0);
        ElementSet then = new ElementSet(now.name(), now.catalogueNumber(), "", newYear.start(), now.meanMotionRevPerDay(),
                now.eccentricity(), now.inclinationDeg(), now.raanDeg(), 0, 0, now.bstar(), 0, 0, 0, 0);
        for (int i = 0; i < 12; i++) {
            compare(then, newYear, place(), Horizon.flat(0), 10);
        }
        Instant midnight = Instant.parse("2017-01-01T00:00:00Z");
        Instant before = midnight.minusSeconds(10);
        assertEquals(21, Seconds.between(before, midnight.plusSeconds(10)));
        assertEquals(-21, Seconds.between(midnight.plusSeconds(10), before));
        assertEquals(midnight.minusSeconds(1), Seconds.after(before, 9));
        assertEquals(midnight, Seconds.after(before, 10.5));
        assertEquals(midnight.plusSeconds(10), Seconds.after(before, 21));
    }

    /** Perigee 300 km, apogee 40 000 km: fast below, slow above, passes of hours and of minutes. */
    @Test
    void eccentricBird() {
        Window days = new Window(Invented.DAY.start(), Invented.DAY.start().plus(Duration.ofDays(2)));
        for (int i = 0; i < 6; i++) {
            ElementSet bird = Invented.orbit("Shearwater-" + i, 300, 40_000, 10 + 25 * (i % 4), 60 * i, 60 * i, 70 * i);
            compare(bird, days, place(), i % 2 == 0 ? Horizon.flat(5) : jagged(8, 20), 10);
        }
    }

    /** Passes that barely clear the mask last seconds; a grid of a minute must not lose them. */
    @Test
    void grazingPasses() {
        ElementSet bird = Invented.low("Tern-1", 700, 98, 30, 0);
        int grazes = 0;
        for (int i = 0; i < 12; i++) {
            Place place = place();
            Ephemeris ephemeris = Ephemeris.of(bird, Invented.DAY, null);
            for (Pass whole : ephemeris.passes(place, Horizon.flat(0))) {
                double below = 0.0005 * (1 + grazes % 7);
                if (!whole.isWhole() || whole.peakElevationDeg() < 1) {
                    continue;
                }
                Horizon mask = Horizon.flat(whole.peakElevationDeg() - below);
                Window around = new Window(whole.tca().minusSeconds(90), whole.tca().plusSeconds(90));
                List<Window> ours = ephemeris.above(place, around, mask);
                assertEquals(1, ours.size(), whole + " less " + below + "°");
                List<Double> stock = StockDetectors.riseAndSet(bird, around, place, mask, 0.2);
                assertEquals(2, stock.size(), whole.toString());
                // The top is flat: 0.1 m of height is seconds of time there, so the length is compared loosely.
                double length = -stock.get(1) - stock.get(0);
                assertEquals(length, ours.get(0).duration().toNanos() / 1e9, 0.05 * length + 0.02, whole.toString());
                grazes++;
            }
        }
        assertTrue(grazes >= 30, "grazing passes compared: " + grazes);
    }

    /** Jagged masks, masts and gaps against the plain definition, looked at every second for six hours. */
    @Test
    void isUpExactlyWhileAboveTheMask() {
        Window hours = new Window(Invented.DAY.start(), Invented.DAY.start().plus(Duration.ofHours(6)));
        for (int i = 0; i < 9; i++) {
            Ephemeris ephemeris = Ephemeris.of(Invented.low("Auk-" + i, 420 + 90 * i, 98, 36 * i, 30 * i), hours, null);
            Place place = place();
            Horizon horizon = i % 3 == 0 ? jagged(3 + 4 * i, 40) : i % 3 == 1 ? masts(40, 2, 70) : masts(40, 50, 1);
            List<Window> up = ephemeris.above(place, hours, horizon);
            for (Instant t = hours.start(); t.isBefore(hours.end()); t = t.plusSeconds(1)) {
                Instant at = t;
                Look look = ephemeris.lookAt(place, t);
                double clearance = look.elevationDeg() - horizon.elevationDegAt(look.azimuthDeg());
                if (Math.abs(clearance) > 1e-6) {
                    assertEquals(clearance > 0, up.stream().anyMatch(w -> w.contains(at)),
                            () -> horizon + " at " + at + ": " + look);
                }
            }
        }
    }

    /** A pass through the zenith swings half round in seconds: high corners count there too. */
    @Test
    void throughTheZenith() {
        Horizon crown = Horizon.parse("0:60 30:88 60:60 90:88 120:60 150:88 180:60 210:88 240:60 270:88 300:60 330:88");
        for (int i = 0; i < 40; i++) {
            ElementSet bird = Invented.low("Auk-" + i, 400 + 20 * i, 98, 9 * i, 9 * i);
            Instant top = Invented.DAY.start().plusSeconds(600 * i);
            Window around = new Window(top.minusSeconds(95), top.plusSeconds(95));
            Ephemeris ephemeris = Ephemeris.of(bird, around, null);
            Subpoint below = ephemeris.subpoint(top);
            Place place = Place.of(below.latitudeDeg() + 0.01 * dice.nextDouble(), below.longitudeDeg());
            List<Window> up = ephemeris.above(place, around, crown);
            for (Instant t = around.start(); t.isBefore(around.end()); t = t.plusMillis(100)) {
                Instant at = t;
                Look look = ephemeris.lookAt(place, t);
                double clearance = look.elevationDeg() - crown.elevationDegAt(look.azimuthDeg());
                if (Math.abs(clearance) > 1e-4) {
                    assertEquals(clearance > 0, up.stream().anyMatch(w -> w.contains(at)), () -> at + ": " + look + up);
                }
            }
        }
    }

    /** Raising a mask can only take time away. */
    @Test
    void aHigherMaskNeverAddsTime() {
        int looked = 0;
        for (int i = 0; i < 10; i++) {
            Ephemeris ephemeris = Ephemeris.of(Invented.low("Auk-" + i, 420 + 90 * i, 98, 36 * i, 30 * i), Invented.DAY, null);
            Place place = place();
            Horizon low = jagged(5 + i, 15);
            Horizon high = new Horizon(low.points().stream().map(p -> new Horizon.Point(p.azimuthDeg(),
                    p.elevationDeg() + dice.nextDouble(0, 10))).toList());
            List<Window> more = ephemeris.above(place, Invented.DAY, low);
            for (Window less : ephemeris.above(place, Invented.DAY, high)) {
                looked++;
                Window inner = new Window(less.start().plusMillis(1), less.end().minusMillis(1));
                assertTrue(more.stream().anyMatch(w -> w.contains(inner)), less + " above " + high + " but not above " + low);
            }
        }
        assertTrue(looked > 5, "times above the higher masks: " + looked);
    }

    @Test
    void aFullyBlockedViewHasNoPasses() {
        Ephemeris ephemeris = Ephemeris.of(Invented.low("Auk-1", 500, 98, 0, 0), Invented.DAY, null);
        assertTrue(ephemeris.passes(Invented.SKERRY, Horizon.flat(90)).isEmpty());
        assertFalse(ephemeris.passes(Invented.SKERRY, Horizon.flat(-2)).isEmpty());
    }
}
