package org.straddle.sky;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;

/** What must hold for every bird, place and mask, tried on invented ones from fixed seeds. */
class PassPropertiesTest {

    private static final Duration TOLERANCE = Duration.ofMillis(30);

    private Random dice;

    private ElementSet bird() {
        double perigeeKm = dice.nextDouble(300, 1400);
        double apogeeKm = perigeeKm + (dice.nextInt(3) == 0 ? dice.nextDouble(100, 8000) : dice.nextDouble(0, 30));
        return Invented.orbit("Auk", perigeeKm, apogeeKm, dice.nextDouble(0, 180), dice.nextDouble(0, 360),
                dice.nextDouble(0, 360), dice.nextDouble(0, 360));
    }

    private Place place() {
        return new Place(dice.nextDouble(-85, 85), dice.nextDouble(-179, 179), dice.nextDouble(0, 3000));
    }

    private Horizon mask() {
        List<Horizon.Point> points = new ArrayList<>();
        int corners = dice.nextInt(1, 20);
        for (int i = 0; i < corners; i++) {
            points.add(new Horizon.Point((i + 0.9 * dice.nextDouble()) * 360 / corners, dice.nextDouble(-1, 30)));
        }
        return new Horizon(points);
    }

    /** The same bird, told by another window: nothing but the cut passes may change. */
    @RepeatedTest(20)
    void passesDoNotDependOnTheWindow(RepetitionInfo run) {
        dice = new Random(run.getCurrentRepetition());
        ElementSet bird = bird();
        Place place = place();
        Horizon mask = mask();
        Window shifted = Window.of(Invented.DAY.start().minusMillis(dice.nextInt(1, 7_200_000)), Duration.ofDays(1));
        List<Pass> one = within(Ephemeris.of(bird, Invented.DAY, null).passes(place, mask), Invented.DAY, shifted);
        List<Pass> two = within(Ephemeris.of(bird, shifted, null).passes(place, mask), Invented.DAY, shifted);
        assertSame(one, two, Duration.ZERO, bird + " over " + place + " above " + mask);
    }

    private static List<Pass> within(List<Pass> passes, Window a, Window b) {
        Window both = a.intersection(b).orElseThrow();
        Window inner = new Window(both.start().plusSeconds(1), both.end().minusSeconds(1));
        // A graze of seconds may fall to either side of an error of a metre.
        return passes.stream().filter(pass -> inner.contains(pass.window())
                && pass.duration().compareTo(Duration.ofSeconds(10)) > 0).toList();
    }

    private static void assertSame(List<Pass> one, List<Pass> two, Duration later, String what) {
        assertEquals(one.size(), two.size(), what + "\n" + one + "\n" + two);
        for (int i = 0; i < one.size(); i++) {
            Pass a = one.get(i);
            Pass b = two.get(i);
            assertNear(Duration.between(a.aos(), b.aos()).minus(later), a, b);
            assertNear(Duration.between(a.los(), b.los()).minus(later), a, b);
            assertEquals(a.peakElevationDeg(), b.peakElevationDeg(), 0.001, what);
        }
    }

    private static void assertNear(Duration apart, Pass a, Pass b) {
        assertTrue(apart.abs().compareTo(TOLERANCE) < 0, a + " and " + b + ": " + apart);
    }

    /**
     * Turn the orbit's node and the place by the same angle about the Earth's axis: every pass stays. SGP4's low
     * orbits know no longitude.
     */
    @RepeatedTest(20)
    void turningOrbitAndPlaceTogetherChangesNothing(RepetitionInfo run) {
        dice = new Random(100 + run.getCurrentRepetition());
        ElementSet bird = Invented.low("Auk", dice.nextDouble(400, 1400), dice.nextDouble(0, 180), dice.nextDouble(0, 180),
                dice.nextDouble(0, 360));
        double turn = dice.nextDouble(1, 170);
        ElementSet turned = withNode(bird, bird.raanDeg() + turn);
        Place place = new Place(dice.nextDouble(-85, 85), dice.nextDouble(-179, 0), 100);
        Place moved = new Place(place.latitudeDeg(), place.longitudeDeg() + turn, 100);
        Horizon mask = mask();
        assertSame(longer(Ephemeris.of(bird, Invented.DAY, null).passes(place, mask)),
                longer(Ephemeris.of(turned, Invented.DAY, null).passes(moved, mask)), Duration.ZERO, bird + " by " + turn);
    }

    private static List<Pass> longer(List<Pass> passes) {
        return passes.stream().filter(pass -> pass.duration().compareTo(Duration.ofSeconds(10)) > 0).toList();
    }

    private static ElementSet withNode(ElementSet bird, double raanDeg) {
        return new ElementSet(bird.name(), bird.catalogueNumber(), "", bird.epoch(), bird.meanMotionRevPerDay(),
                bird.eccentricity(), bird.inclinationDeg(), raanDeg, bird.argumentOfPerigeeDeg(), bird.meanAnomalyDeg(),
                bird.bstar(), 0, 0, 1, 1);
    }

    /** A later epoch, and everything else of the orbit the same: the Earth alone is elsewhere, by a whole sidereal day nearly nowhere. */
    @RepeatedTest(10)
    void aSiderealDayLaterTheSameOrbitPassesAlike(RepetitionInfo run) {
        dice = new Random(200 + run.getCurrentRepetition());
        ElementSet bird = bird();
        Place place = place();
        Duration day = Duration.ofNanos(Math.round(86_400e9 / 1.002737909350795));
        ElementSet later = new ElementSet(bird.name(), bird.catalogueNumber(), "", bird.epoch().plus(day),
                bird.meanMotionRevPerDay(), bird.eccentricity(), bird.inclinationDeg(), bird.raanDeg(),
                bird.argumentOfPerigeeDeg(), bird.meanAnomalyDeg(), bird.bstar(), 0, 0, 1, 1);
        Window then = Window.of(Invented.DAY.start().plus(day), Duration.ofDays(1));
        assertSame(longer(Ephemeris.of(bird, Invented.DAY, null).passes(place, Horizon.flat(2))),
                longer(Ephemeris.of(later, then, null).passes(place, Horizon.flat(2))), day, bird.toString());
    }

    /** Raising a mask never lengthens a pass, and never makes one where there was none. */
    @RepeatedTest(20)
    void aHigherMaskNeverLengthensAPass(RepetitionInfo run) {
        dice = new Random(300 + run.getCurrentRepetition());
        Ephemeris ephemeris = Ephemeris.of(bird(), Invented.DAY, null);
        Place place = place();
        Horizon low = mask();
        Horizon high = new Horizon(low.points().stream().map(p -> new Horizon.Point(p.azimuthDeg(),
                p.elevationDeg() + (dice.nextBoolean() ? 0 : dice.nextDouble(0, 30)))).toList());
        List<Pass> before = ephemeris.passes(place, low);
        for (Pass pass : ephemeris.passes(place, high)) {
            assertTrue(before.stream().anyMatch(whole -> !pass.aos().isBefore(whole.aos().minusMillis(1))
                    && !pass.los().isAfter(whole.los().plusMillis(1))), pass + " above " + high + " is no part of " + before);
        }
    }
}
