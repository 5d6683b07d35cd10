package org.straddle.sky.prediction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.straddle.sky.Footprint;
import org.straddle.sky.Horizon;
import org.straddle.sky.Invented;
import org.straddle.sky.Look;
import org.straddle.sky.Pass;
import org.straddle.sky.Place;
import org.straddle.sky.Subpoint;
import org.straddle.sky.Viewpoint;
import org.straddle.sky.Window;

/** Who can be worked through a pass, against the plain definition looked at every second. */
class ReachTest {

    private final Ephemeris ephemeris = Ephemeris.of(Invented.low("Tern-1", 700, 98, 30, 0), Invented.DAY, null);
    private final Viewpoint skerry = new Viewpoint(Invented.SKERRY, Horizon.parse("0:5 90:12 180:3 250:25"));
    private final Place far = Place.of(51.5, 4);

    private double lower(Instant t) {
        return Math.min(ephemeris.lookAt(Invented.SKERRY, t).elevationDeg(), ephemeris.lookAt(far, t).elevationDeg());
    }

    @Test
    void aCommonViewIsWhenBothHaveTheBirdUp() {
        List<CommonView> views = CommonView.of(ephemeris, skerry, Area.of(far), 4, Invented.DAY);
        assertTrue(views.size() >= 3, views.toString());
        for (Instant t = Invented.DAY.start(); t.isBefore(Invented.DAY.end()); t = t.plusSeconds(1)) {
            Instant at = t;
            Look here = ephemeris.lookAt(Invented.SKERRY, t);
            double spare = Math.min(here.elevationDeg() - Math.max(4, skerry.horizon().elevationDegAt(here.azimuthDeg())),
                    ephemeris.lookAt(far, t).elevationDeg() - 4);
            if (Math.abs(spare) > 1e-4) {
                assertEquals(spare > 0, views.stream().anyMatch(v -> v.window().contains(at)), t.toString());
            }
        }
    }

    @Test
    void theBestInstantHasTheHighestLowerElevation() {
        List<CommonView> views = CommonView.of(ephemeris, skerry, Area.of(far), 0, Invented.DAY);
        assertFalse(views.isEmpty());
        for (CommonView view : views) {
            assertEquals(ephemeris.lookAt(Invented.SKERRY, view.best()).elevationDeg(), view.hereDeg(), 1e-6);
            assertEquals(ephemeris.lookAt(far, view.best()).elevationDeg(), view.thereDeg(), 1e-6);
            assertEquals(lower(view.best()), view.lowerDeg(), 1e-6);
            for (Instant t = view.window().start(); t.isBefore(view.window().end()); t = t.plusSeconds(1)) {
                assertTrue(lower(t) <= view.lowerDeg() + 0.01, view + " at " + t);
            }
        }
    }

    /** An area is reached as soon as one of its places is. */
    @Test
    void anAreaIsAsGoodAsItsBestPlace() {
        List<Place> coast = List.of(far, Place.of(53, 5), Place.of(50.5, 1));
        List<Window> any = CommonView.of(ephemeris, skerry, Area.of(coast, new double[] {1, 1, 1}), 4, Invented.DAY).stream()
                .map(CommonView::window).toList();
        assertFalse(any.isEmpty());
        for (Place place : coast) {
            for (CommonView one : CommonView.of(ephemeris, skerry, Area.of(place), 4, Invented.DAY)) {
                Window inner = new Window(one.window().start().plusMillis(2), one.window().end().minusMillis(2));
                assertTrue(any.stream().anyMatch(w -> w.contains(inner)), one.toString());
            }
        }
    }

    /** By weight and time, against every place looked at every second. */
    @Test
    void sharesOfAnArea() {
        Random dice = new Random(7);
        List<Place> places = new ArrayList<>();
        double[] weights = new double[60];
        for (int i = 0; i < weights.length; i++) {
            places.add(Place.of(dice.nextDouble(45, 60), dice.nextDouble(-10, 25)));
            weights[i] = dice.nextDouble(0.2, 2);
        }
        Area area = Area.of(places, weights);
        assertEquals(1, IntStream.range(0, weights.length).mapToDouble(area::part).sum(), 1e-9);
        for (Pass pass : ephemeris.passes(Invented.SKERRY, Horizon.flat(0))) {
            double time = 0;
            double sum = 0;
            double best = 0;
            boolean[] ever = new boolean[weights.length];
            for (Instant t = pass.aos(); t.isBefore(pass.los()); t = t.plusSeconds(1)) {
                double part = 0;
                for (int i = 0; i < weights.length; i++) {
                    if (ephemeris.above(places.get(i), t, 5)) {
                        part += area.part(i);
                        ever[i] = true;
                    }
                }
                sum += part;
                time++;
                best = Math.max(best, part);
            }
            AreaReach reach = AreaReach.of(ephemeris, pass.window(), area, 5);
            assertEquals(sum / time, reach.mean(), 0.01, pass.toString());
            assertEquals(best, reach.best(), 0.05, pass.toString());
            assertEquals(IntStream.range(0, ever.length).filter(i -> ever[i]).mapToDouble(area::part).sum(), reach.ever(), 0.05,
                    pass.toString());
            assertTrue(pass.window().contains(reach.bestAt()));
        }
    }

    /** Whether any of it is reached is told without the shares, and is the same. */
    @Test
    void anyOfAnAreaIsReachedWhenAPartOfItIs() {
        Random dice = new Random(11);
        List<Window> passes = ephemeris.passes(Invented.SKERRY, Horizon.flat(0)).stream().map(Pass::window).toList();
        int reached = 0;
        for (int i = 0; i < 300; i++) {
            double north = dice.nextDouble(-80, 80);
            double east = dice.nextDouble(-180, 175);
            Area area = Area.of(List.of(Place.of(north, east), Place.of(north + 3, east + 5)), new double[] {1, 2});
            Window pass = passes.get(i % passes.size());
            boolean ever = AreaReach.isEver(ephemeris, pass, area, 3);
            assertEquals(AreaReach.of(ephemeris, pass, area, 3).ever() > 0, ever, pass + " " + area.places());
            reached += ever ? 1 : 0;
        }
        assertTrue(reached > 20 && reached < 280, "reached: " + reached);
    }

    /** Reference geometry: a bird 420 km up is above 10° within 12.497° of arc (sphere of 6371 km, see FootprintTest). */
    @Test
    void reachesAsFarAsItsFootprint() {
        Ephemeris low = Ephemeris.of(Invented.low("Auk-1", 420, 0.01, 0, 0), Invented.DAY, null);
        Instant t = Invented.DAY.start();
        Subpoint below = low.subpoint(t);
        double angle = Footprint.centralAngleDeg(below.altitudeKm(), 10);
        Window moment = new Window(t, t.plusMillis(2));
        for (double off : new double[] {-0.15, 0.15}) {
            Place place = Place.of(angle + off, below.longitudeDeg());
            assertEquals(off < 0 ? 1 : 0, AreaReach.of(low, moment, Area.of(place), 10).mean());
        }
    }

    @Test
    void refusesAnEmptyArea() {
        assertThrows(IllegalArgumentException.class, () -> Area.of(List.of(), new double[0]));
        assertThrows(IllegalArgumentException.class, () -> Area.of(List.of(far), new double[] {0}));
        assertThrows(IllegalArgumentException.class, () -> Area.of(List.of(far), new double[] {1, 2}));
        assertFalse(Area.of(far).places().isEmpty());
    }
}
