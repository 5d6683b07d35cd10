package org.straddle.sky.prediction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

import org.straddle.sky.ElementSet;
import org.straddle.sky.Horizon;
import org.straddle.sky.Invented;
import org.straddle.sky.Pass;
import org.straddle.sky.Place;
import org.straddle.sky.Window;
import org.straddle.sky.track.Track;

/** What must hold for every bird, place and mask. Run by {@link PassPropertiesTest}. */
@Domain(InventedSky.class)
@Domain(DomainContext.Global.class)
class PassProperties {

    private static final int TRIES = 150;
    private static final String SEED = "20310621";
    /** States are interpolated on another grid, or turned by another angle: a metre or so, see {@link Track}. */
    private static final Duration TOLERANCE = Duration.ofMillis(30);
    /** Nothing but rounding. */
    private static final Duration ROUNDING = Duration.ofNanos(20_000);
    /** A graze of seconds may fall to either side of an error of a metre. */
    private static final Duration GRAZE = Duration.ofSeconds(10);

    /** Time shift: the same bird, told by another window. Nothing but the cut passes may change. */
    @Property(tries = TRIES, seed = SEED)
    void passesDoNotDependOnTheWindow(@ForAll ElementSet bird, @ForAll Place place, @ForAll Horizon mask,
            @ForAll @IntRange(min = 1, max = 7_200_000) int earlierMs) {
        Window shifted = Window.of(Invented.DAY.start().minusMillis(earlierMs), Duration.ofDays(1));
        Window both = Invented.DAY.intersection(shifted).orElseThrow();
        Window inner = new Window(both.start().plusSeconds(1), both.end().minusSeconds(1));
        assertSame(within(inner, Ephemeris.of(bird, Invented.DAY, null).passes(place, mask)),
                within(inner, Ephemeris.of(bird, shifted, null).passes(place, mask)), Duration.ZERO);
    }

    /** Time shift of the orbit: a sidereal day later the Earth stands as before, and low orbits of SGP4 know no date. */
    @Property(tries = TRIES, seed = SEED)
    void aSiderealDayLaterTheSameOrbitPassesAlike(@ForAll ElementSet bird, @ForAll Place place, @ForAll Horizon mask) {
        Duration day = Duration.ofNanos(Math.round(86_400e9 / 1.002737909350795));
        ElementSet later = new ElementSet(bird.name(), bird.catalogueNumber(), "", bird.epoch().plus(day),
                bird.meanMotionRevPerDay(), bird.eccentricity(), bird.inclinationDeg(), bird.raanDeg(),
                bird.argumentOfPerigeeDeg(), bird.meanAnomalyDeg(), bird.bstar(), 0, 0, 1, 1);
        Window then = Window.of(Invented.DAY.start().plus(day), Duration.ofDays(1));
        assertSame(longer(Ephemeris.of(bird, Invented.DAY, null).passes(place, mask)),
                longer(Ephemeris.of(later, then, null).passes(place, mask)), day);
    }

    /** Turn the orbit's node and the place by the same angle about the Earth's axis: low orbits know no longitude. */
    @Property(tries = TRIES, seed = SEED)
    void turningOrbitAndPlaceTogetherChangesNothing(@ForAll ElementSet bird, @ForAll Place place, @ForAll Horizon mask,
            @ForAll @DoubleRange(min = 1, max = 359) double turnDeg) {
        ElementSet turned = new ElementSet(bird.name(), bird.catalogueNumber(), "", bird.epoch(), bird.meanMotionRevPerDay(),
                bird.eccentricity(), bird.inclinationDeg(), (bird.raanDeg() + turnDeg) % 360, bird.argumentOfPerigeeDeg(),
                bird.meanAnomalyDeg(), bird.bstar(), 0, 0, 1, 1);
        Place moved = new Place(place.latitudeDeg(), (place.longitudeDeg() + 180 + turnDeg) % 360 - 180, place.altitudeM());
        assertSame(longer(Ephemeris.of(bird, Invented.DAY, null).passes(place, mask)),
                longer(Ephemeris.of(turned, Invented.DAY, null).passes(moved, mask)), Duration.ZERO);
    }

    /**
     * Site mirroring: track, place and mask mirrored in the plane of the equator. (The track, not the elements: the
     * Earth of the model is a little pear-shaped.)
     */
    @Property(tries = TRIES, seed = SEED)
    void mirroredInTheEquator(@ForAll ElementSet bird, @ForAll Place place, @ForAll Horizon mask) {
        Place mirrored = new Place(-place.latitudeDeg(), place.longitudeDeg(), place.altitudeM());
        assertMirrored(bird, place, mask, 2, mirrored, azimuthDeg -> 180 - azimuthDeg, true);
    }

    /** The same in the plane of the prime meridian: the Earth turns the other way, and so do the passes. */
    @Property(tries = TRIES, seed = SEED)
    void mirroredInTheMeridian(@ForAll ElementSet bird, @ForAll Place place, @ForAll Horizon mask) {
        Place mirrored = new Place(place.latitudeDeg(), -place.longitudeDeg(), place.altitudeM());
        assertMirrored(bird, place, mask, 1, mirrored, azimuthDeg -> -azimuthDeg, false);
    }

    private static void assertMirrored(ElementSet bird, Place place, Horizon mask, int coordinate, Place mirroredPlace,
            DoubleUnaryOperator mirroredDeg, boolean northIsSouth) {
        Ephemeris ephemeris = Ephemeris.of(bird, Invented.DAY, null);
        Track track = ephemeris.track();
        double[][] nodes = track.nodes().clone();
        nodes[coordinate] = negated(nodes[coordinate]);
        nodes[coordinate + 3] = negated(nodes[coordinate + 3]);
        Ephemeris mirrored = new Ephemeris(bird, Invented.DAY, EarthOrientation.none(),
                new Track(track.stepS(), track.lengthS(), nodes, null));
        Horizon mirroredMask = new Horizon(mask.points().stream().map(p -> new Horizon.Point(
                whole(mirroredDeg.applyAsDouble(p.azimuthDeg())), p.elevationDeg())).toList());

        List<Pass> before = ephemeris.passes(place, mask);
        List<Pass> after = mirrored.passes(mirroredPlace, mirroredMask);
        assertEquals(before.size(), after.size(), before + "\n" + after);
        for (int i = 0; i < before.size(); i++) {
            Pass a = before.get(i);
            Pass b = after.get(i);
            // The slope at the edge of a graze is so flat that rounding shows.
            Duration apart = a.duration().compareTo(GRAZE) > 0 ? ROUNDING : TOLERANCE;
            assertNear(a, b, Duration.ZERO, apart);
            assertEquals(a.minRangeKm(), b.minRangeKm(), 1e-6);
            assertAzimuth(mirroredDeg.applyAsDouble(a.aosAzimuthDeg()), b.aosAzimuthDeg(), a);
            assertAzimuth(mirroredDeg.applyAsDouble(a.losAzimuthDeg()), b.losAzimuthDeg(), a);
            assertAzimuth(mirroredDeg.applyAsDouble(a.tcaAzimuthDeg()), b.tcaAzimuthDeg(), a);
            assertEquals(northIsSouth, a.ascending() != b.ascending(), a.toString());
            assertEquals(a.startsBefore(), b.startsBefore());
            assertEquals(a.endsAfter(), b.endsAfter());
        }
    }

    /** Mask monotonicity: a higher mask never lengthens a pass, and never makes one where there was none. */
    @Property(tries = TRIES, seed = SEED)
    void aHigherMaskNeverLengthensAPass(@ForAll ElementSet bird, @ForAll Place place, @ForAll InventedSky.Raised masks) {
        Ephemeris ephemeris = Ephemeris.of(bird, Invented.DAY, null);
        List<Pass> before = ephemeris.passes(place, masks.low());
        for (Pass pass : ephemeris.passes(place, masks.high())) {
            assertTrue(before.stream().anyMatch(whole -> !pass.aos().isBefore(whole.aos().minus(ROUNDING))
                    && !pass.los().isAfter(whole.los().plus(ROUNDING))), pass + " is no part of " + before);
        }
    }

    private static List<Pass> within(Window inner, List<Pass> passes) {
        return longer(passes).stream().filter(pass -> inner.contains(pass.window())).toList();
    }

    private static List<Pass> longer(List<Pass> passes) {
        return passes.stream().filter(pass -> pass.duration().compareTo(GRAZE) > 0).toList();
    }

    private static void assertSame(List<Pass> one, List<Pass> two, Duration later) {
        assertEquals(one.size(), two.size(), one + "\n" + two);
        for (int i = 0; i < one.size(); i++) {
            assertNear(one.get(i), two.get(i), later, TOLERANCE);
        }
    }

    private static void assertNear(Pass a, Pass b, Duration later, Duration apart) {
        String both = a + " and " + b;
        assertTrue(Duration.between(a.aos(), b.aos()).minus(later).abs().compareTo(apart) <= 0, both);
        assertTrue(Duration.between(a.los(), b.los()).minus(later).abs().compareTo(apart) <= 0, both);
        assertEquals(a.peakElevationDeg(), b.peakElevationDeg(), 0.001, both);
    }

    /** Near the zenith directions mean little. */
    private static void assertAzimuth(double expectedDeg, double actualDeg, Pass pass) {
        double turned = Math.abs(whole(expectedDeg - actualDeg + 180) - 180);
        assertEquals(0, turned * Math.cos(Math.toRadians(pass.peakElevationDeg())), 1e-3, pass.toString());
    }

    private static double whole(double degrees) {
        double within = degrees - 360 * Math.floor(degrees / 360);
        return within >= 360 ? 0 : within;
    }

    private static double[] negated(double[] numbers) {
        return java.util.Arrays.stream(numbers).map(x -> -x).toArray();
    }
}
