package org.straddle.sky.prediction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.ode.events.Action;
import org.hipparchus.CalculusFieldElement;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.junit.jupiter.api.Test;
import org.orekit.frames.Frame;
import org.orekit.propagation.events.EclipseDetector;
import org.orekit.time.AbsoluteDate;
import org.orekit.time.FieldAbsoluteDate;
import org.orekit.utils.Constants;
import org.orekit.utils.ExtendedPositionProvider;
import org.straddle.sky.ElementSet;
import org.straddle.sky.ErrorGrowth;
import org.straddle.sky.Horizon;
import org.straddle.sky.Illumination;
import org.straddle.sky.Invented;
import org.straddle.sky.Look;
import org.straddle.sky.Pass;
import org.straddle.sky.Place;
import org.straddle.sky.Window;
import org.straddle.sky.track.EarthFrames;
import org.straddle.sky.track.Seconds;
import org.straddle.sky.track.Sgp4;
import org.straddle.sky.track.Track;

class EphemerisTest {

    private final ElementSet tern = Invented.low("Tern-1", 700, 98, 30, 0);

    private static ElementSet geostationary(double longitudeDeg) {
        // Greenwich's sidereal angle at the epoch: the node is put so that the bird stands over the longitude.
        Ephemeris trial = Ephemeris.of(synchronous(0), new Window(Invented.EPOCH, Invented.EPOCH.plusSeconds(60)), null);
        double turn = longitudeDeg - trial.subpoint(Invented.EPOCH).longitudeDeg();
        return synchronous(((turn % 360) + 360) % 360);
    }

    private static ElementSet synchronous(double anomalyDeg) {
        return new ElementSet("Gannet-S (demo)", 99_002, "", Invented.EPOCH, 1.00271, 1e-5, 0.01, 0, 0, anomalyDeg, 0, 0, 0, 1, 1);
    }

    /** What lies between grid nodes, against the model itself. */
    @Test
    void interpolatesToTwoMetres() {
        for (ElementSet bird : List.of(tern, Invented.low("Auk-1", 400, 51, 0, 0),
                Invented.orbit("Shearwater-1", 300, 40_000, 63, 0, 270, 10), Invented.orbit("Skua-1", 200, 1000, 30, 0, 0, 0),
                geostationary(-20))) {
            Track track = Track.of(bird, Invented.DAY, EarthOrientation.none().frames(), new NullProgressMonitor());
            Sgp4 model = new Sgp4(bird, EarthOrientation.none().frames());
            double[] state = new double[6];
            for (double t = 0.2 * track.stepS(); t < 86_400; t += 7.3 * track.stepS()) {
                track.state(t, state);
                var exact = model.earthFixed(Seconds.after(Invented.DAY.start(), t));
                assertEquals(0, new Vector3D(state[0], state[1], state[2]).subtract(exact.getPosition()).getNorm(), 1.5,
                        bird.label() + " at " + t);
                assertEquals(0, new Vector3D(state[3], state[4], state[5]).subtract(exact.getVelocity()).getNorm(), 0.1,
                        bird.label() + " at " + t);
            }
        }
    }

    /** Azimuth, elevation, range and its rate against Orekit's topocentric frame. */
    @Test
    void looksWhereOrekitLooks() {
        EarthFrames frames = EarthOrientation.none().frames();
        Ephemeris ephemeris = Ephemeris.of(tern, Invented.DAY, null);
        Place place = new Place(-33.3, 151.2, 1234);
        var site = new org.orekit.frames.TopocentricFrame(frames.ellipsoid(), new org.orekit.bodies.GeodeticPoint(
                Math.toRadians(-33.3), Math.toRadians(151.2), 1234), "site");
        Sgp4 model = new Sgp4(tern, frames);
        for (int minute = 0; minute < 1440; minute += 7) {
            Instant t = Invented.DAY.start().plusSeconds(60L * minute);
            Look look = ephemeris.lookAt(place, t);
            AbsoluteDate date = frames.date(t);
            var pv = new org.orekit.utils.TimeStampedPVCoordinates(date, model.teme(t));
            assertEquals(Math.toDegrees(site.getElevation(pv.getPosition(), frames.teme(), date)), look.elevationDeg(), 2e-4);
            double azimuth = Math.toDegrees(site.getAzimuth(pv.getPosition(), frames.teme(), date));
            assertEquals(0, Math.abs((azimuth - look.azimuthDeg() + 540) % 360 - 180)
                    * Math.cos(Math.toRadians(look.elevationDeg())), 2e-4);
            assertEquals(site.getRange(pv.getPosition(), frames.teme(), date) / 1000, look.rangeKm(), 0.002);
            assertEquals(site.getRangeRate(pv, frames.teme(), date) / 1000, look.rangeRateKmS(), 1e-4);
            assertEquals(look.rangeRateKmS() > 0, look.dopplerHz(435) < 0);
        }
    }

    @Test
    void aPassIsHighestAtTca() {
        Ephemeris ephemeris = Ephemeris.of(tern, Invented.DAY, null);
        Horizon horizon = Horizon.parse("0:5 90:12 180:3 250:25");
        List<Pass> passes = ephemeris.passes(Invented.SKERRY, horizon);
        assertTrue(passes.size() >= 5, passes.toString());
        for (Pass pass : passes) {
            Look best = ephemeris.lookAt(Invented.SKERRY, pass.tca());
            assertEquals(best.elevationDeg(), pass.peakElevationDeg(), 1e-5);
            assertEquals(best.azimuthDeg(), pass.tcaAzimuthDeg(), 1e-3);
            double nearest = Double.MAX_VALUE;
            for (Instant t = pass.aos(); !t.isAfter(pass.los()); t = t.plusMillis(500)) {
                Look look = ephemeris.lookAt(Invented.SKERRY, t);
                assertTrue(look.elevationDeg() <= pass.peakElevationDeg() + 1e-6, pass + " at " + t);
                nearest = Math.min(nearest, look.rangeKm());
            }
            assertEquals(nearest, pass.minRangeKm(), 0.02);
            assertTrue(pass.minRangeKm() <= nearest + 1e-6);
            if (!pass.startsBefore()) {
                assertEquals(horizon.elevationDegAt(pass.aosAzimuthDeg()),
                        ephemeris.lookAt(Invented.SKERRY, pass.aos()).elevationDeg(), 1e-5);
            }
            double north = ephemeris.subpoint(pass.tca().plusSeconds(1)).latitudeDeg()
                    - ephemeris.subpoint(pass.tca().minusSeconds(1)).latitudeDeg();
            assertEquals(north > 0, pass.ascending(), pass.toString());
        }
    }

    @Test
    void passesCutByTheWindowSaySo() {
        Pass whole = Ephemeris.of(tern, Invented.DAY, null).passes(Invented.SKERRY, Horizon.flat(0)).stream()
                .filter(p -> p.isWhole() && p.peakElevationDeg() > 20).findFirst().orElseThrow();
        Pass late = only(new Window(whole.aos().plusSeconds(60), whole.los().plusSeconds(60)));
        assertTrue(late.startsBefore() && !late.endsAfter());
        assertEquals(whole.aos().plusSeconds(60), late.aos());
        assertEquals(0, Seconds.between(whole.los(), late.los()), 0.02);
        Pass early = only(new Window(whole.aos().minusSeconds(60), whole.tca().minusSeconds(30)));
        assertTrue(!early.startsBefore() && early.endsAfter());
        assertEquals(whole.tca().minusSeconds(30), early.tca());
        assertEquals(early.los(), early.tca());
    }

    private Pass only(Window window) {
        List<Pass> passes = Ephemeris.of(tern, window, null).passes(Invented.SKERRY, Horizon.flat(0));
        assertEquals(1, passes.size(), passes.toString());
        return passes.get(0);
    }

    /** Placed over 20° west: up all day in Iceland, down all day on the far side. */
    @Test
    void geostationary() {
        Ephemeris ephemeris = Ephemeris.of(geostationary(-20), Invented.DAY, null);
        assertEquals(35_786, ephemeris.subpoint(Invented.DAY.start()).altitudeKm(), 30);
        assertEquals(-20, ephemeris.subpoint(Invented.DAY.start()).longitudeDeg(), 0.5);
        var up = assertInstanceOf(Visibility.UpThroughout.class,
                ephemeris.visibility(Invented.SKERRY, Horizon.flat(5)));
        assertTrue(up.pass().startsBefore() && up.pass().endsAfter());
        // Elevation of a geostationary bird from its own meridian at latitude 63.5°, spherical formula: 18°.
        assertEquals(18, up.pass().peakElevationDeg(), 1);
        var down = assertInstanceOf(Visibility.DownThroughout.class,
                ephemeris.visibility(Place.of(0, 160), Horizon.flat(0)));
        assertEquals(-90, down.highestDeg(), 2);
    }

    @Test
    void neverRising() {
        Ephemeris ephemeris = Ephemeris.of(Invented.low("Auk-1", 500, 10, 0, 0), Invented.DAY, null);
        var down = assertInstanceOf(Visibility.DownThroughout.class,
                ephemeris.visibility(Invented.SKERRY, Horizon.flat(0)));
        assertTrue(down.highestDeg() < -5 && down.highestDeg() > -40, down.toString());
    }

    /** A strong drag term at 170 km: the model brings the bird down within days. */
    @Test
    void comesDown() {
        ElementSet low = Invented.low("Puffin-1", 170, 65, 0, 0);
        ElementSet sinking = new ElementSet(low.name(), low.catalogueNumber(), "", low.epoch(), low.meanMotionRevPerDay(),
                low.eccentricity(), low.inclinationDeg(), low.raanDeg(), 0, 0, 0.02, 0, 0, 0, 0);
        Window week = new Window(low.epoch(), low.epoch().plus(Duration.ofDays(7)));
        Ephemeris ephemeris = Ephemeris.of(sinking, week, null);
        Instant end = ephemeris.predictionEnd().orElseThrow();
        assertTrue(week.contains(end), end.toString());
        var decayed = assertInstanceOf(Visibility.Decayed.class,
                ephemeris.visibility(Invented.SKERRY, Horizon.flat(0)));
        assertEquals(end, decayed.from());
        assertTrue(decayed.reason().contains("Puffin-1 (demo)") && decayed.reason().contains("100 km"), decayed.reason());
        assertTrue(decayed.passes().stream().noneMatch(p -> p.los().isAfter(end)));
        ephemeris.lookAt(Invented.SKERRY, end);
        Exception e = assertThrows(IllegalArgumentException.class,
                () -> ephemeris.lookAt(Invented.SKERRY, end.plusSeconds(1)));
        assertEquals(decayed.reason(), e.getMessage());

        Ephemeris tooLate = Ephemeris.of(sinking, new Window(end.plusSeconds(86_400), end.plusSeconds(90_000)), null);
        assertEquals(tooLate.window().start(), tooLate.predictionEnd().orElseThrow());
        assertTrue(tooLate.passes(Invented.SKERRY, Horizon.flat(0)).isEmpty());
        assertTrue(tooLate.above(Invented.SKERRY, tooLate.window(), 0).isEmpty());
        assertTrue(tooLate.sunlit(tooLate.window()).isEmpty());
        assertInstanceOf(Visibility.Decayed.class, tooLate.visibility(Invented.SKERRY, Horizon.flat(0)));
    }

    @Test
    void commonVisibilityIsWhenBothAreUp() {
        Ephemeris ephemeris = Ephemeris.of(tern, Invented.DAY, null);
        Place other = Place.of(51, 4);
        List<Window> common = ephemeris.commonVisibility(Invented.SKERRY, other, Invented.DAY, 5);
        assertFalse(common.isEmpty());
        for (Instant t = Invented.DAY.start(); t.isBefore(Invented.DAY.end()); t = t.plusSeconds(5)) {
            Instant at = t;
            assertEquals(ephemeris.above(Invented.SKERRY, t, 5) && ephemeris.above(other, t, 5),
                    common.stream().anyMatch(w -> w.contains(at)));
        }
    }

    @Test
    void clipsToTheTimeAsked() {
        Ephemeris ephemeris = Ephemeris.of(tern, Invented.DAY, null);
        Window before = new Window(Invented.DAY.start().minusSeconds(3600), Invented.DAY.start());
        assertTrue(ephemeris.above(Invented.SKERRY, before, 0).isEmpty());
        assertThrows(IllegalArgumentException.class, () -> ephemeris.lookAt(Invented.SKERRY, before.start()));
        ephemeris.lookAt(Invented.SKERRY, Invented.DAY.end());
    }

    /** The shadow against Orekit's eclipse detector, which follows the ellipsoid's edge in another way. */
    @Test
    void eclipses() {
        for (ElementSet bird : List.of(Invented.low("Tern-2", 500, 30, 0, 0), Invented.low("Tern-3", 1200, 98, 200, 0),
                Invented.orbit("Shearwater-1", 300, 40_000, 10, 0, 0, 10))) {
            Ephemeris ephemeris = Ephemeris.of(bird, Invented.DAY, null);
            compareEdges(bird, ephemeris.sunlit(Invented.DAY), false);
            List<Window> dark = ephemeris.illuminated(Invented.DAY, Illumination.UMBRA);
            compareEdges(bird, dark, true);
            assertFalse(dark.isEmpty());
            Window first = dark.get(0);
            assertEquals(Illumination.UMBRA, ephemeris.illumination(first.start().plusSeconds(1)));
            long seconds = 0;
            for (Illumination light : Illumination.values()) {
                seconds += ephemeris.illuminated(Invented.DAY, light).stream().mapToLong(w -> w.duration().toMillis()).sum();
            }
            assertEquals(86_400_000, seconds, 500);
        }
    }

    private static void compareEdges(ElementSet bird, List<Window> ours, boolean umbra) {
        EarthFrames frames = EarthOrientation.none().frames();
        List<Double> stock = new ArrayList<>();
        EclipseDetector detector = new EclipseDetector(new SunOfDate(frames), Constants.SUN_RADIUS, frames.ellipsoid())
                .withMaxCheck(10).withThreshold(1e-3);
        StockDetectors.run(bird, Invented.DAY, (umbra ? detector.withUmbra() : detector.withPenumbra())
                .withHandler((s, d, increasing) -> {
                    stock.add(s.getDate().durationFrom(frames.date(Invented.DAY.start())));
                    return Action.CONTINUE;
                }));
        List<Double> edges = new ArrayList<>();
        for (Window w : ours) {
            for (Instant t : List.of(w.start(), w.end())) {
                if (!t.equals(Invented.DAY.start()) && !t.equals(Invented.DAY.end())) {
                    edges.add(Seconds.between(Invented.DAY.start(), t));
                }
            }
        }
        assertEquals(stock.size(), edges.size(), bird.label() + " " + stock + edges);
        for (int i = 0; i < edges.size(); i++) {
            assertEquals(stock.get(i), edges.get(i), 1.0, bird.label());
        }
    }

    private record SunOfDate(EarthFrames frames) implements ExtendedPositionProvider {
        @Override
        public Vector3D getPosition(AbsoluteDate date, Frame frame) {
            Instant instant = date.toDate(frames.utc()).toInstant();
            return frames.earthFixed().getStaticTransformTo(frame, date).transformPosition(frames.sun(instant));
        }

        @Override
        public <T extends CalculusFieldElement<T>> FieldVector3D<T> getPosition(FieldAbsoluteDate<T> date, Frame frame) {
            throw new UnsupportedOperationException();
        }
    }

    @Test
    void refusesToLookYearsAhead() {
        Window decades = Window.of(Invented.DAY.start(), Duration.ofDays(20_000));
        assertThrows(IllegalArgumentException.class, () -> Ephemeris.of(tern, decades, null));
    }

    @Test
    void stopsWhenCancelled() {
        NullProgressMonitor cancelled = new NullProgressMonitor();
        cancelled.setCanceled(true);
        assertThrows(OperationCanceledException.class, () -> Ephemeris.of(tern, Invented.DAY, cancelled));
    }

    /** One kilometre at the epoch, three a day, at the bird's 7.5 km/s; a tenth of a second for the Earth's turning. */
    @Test
    void errorOfAnAgedElementSet() {
        Pass pass = Ephemeris.of(tern, Invented.DAY, null).passes(Invented.SKERRY, Horizon.flat(0)).get(0);
        double days = Duration.between(tern.epoch(), pass.tca()).toSeconds() / 86_400.0;
        PassError usual = PassError.of(pass);
        assertEquals(1 + 3 * days, usual.alongTrackKm(), 1e-3);
        assertEquals((1 + 3 * days) / 7.504, usual.ageTimeS(), 1e-3);
        assertEquals((1 + 3 * days) / 7.504 + 0.1 + 0.05, usual.timeErrorS(), 1e-3);
        ErrorGrowth fresh = new ErrorGrowth(2, 0);
        assertEquals(2 / 7.504, PassError.of(pass, fresh, EarthOrientation.none()).ageTimeS(), 1e-3);
    }

    /** A window half a second long, and one that ends within its first step. */
    @Test
    void shortWindows() {
        for (long millis : new long[] {1, 500, 30_000}) {
            Window window = new Window(Invented.DAY.start(), Invented.DAY.start().plusMillis(millis));
            Ephemeris ephemeris = Ephemeris.of(tern, window, null);
            Look look = ephemeris.lookAt(Invented.SKERRY, window.start().plusMillis(millis / 2));
            assertEquals(look.elevationDeg() > 0 ? 1 : 0, ephemeris.passes(Invented.SKERRY, Horizon.flat(0)).size());
        }
    }
}
