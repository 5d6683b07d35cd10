package org.straddle.ui.sky.pass;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.straddle.sky.ElementSet;
import org.straddle.sky.Horizon;
import org.straddle.sky.Pass;
import org.straddle.sky.Place;
import org.straddle.sky.Window;
import org.straddle.sky.prediction.Ephemeris;

/** The arc holds what {@link Ephemeris#lookAt} says, which is checked against outside sources in sky's own tests. */
class ArcTest {

    /** A synthetic low polar orbit. */
    private static final ElementSet BIRD = ElementSet.ofTle("Tern-1 (demo)",
            line("1 99001U 27001A   27167.50000000  .00000000  00000-0  10000-4 0  9990"),
            line("2 99001  98.0000  30.0000 0010000  90.0000 270.0000 14.60000000    10"));
    private static final Place PLACE = Place.of(64.1, -20);
    private static final Ephemeris TRACK = Ephemeris.of(BIRD, Window.of(Instant.parse("2027-06-17T00:00:00Z"),
            Duration.ofDays(3)), null);
    private static final Horizon MASK = Horizon.parse("0:5 90:12 180:3 270:8");

    private static String line(String withoutSum) {
        String body = withoutSum.substring(0, 68);
        int sum = body.chars().map(c -> c == '-' ? 1 : Character.isDigit(c) ? c - '0' : 0).sum() % 10;
        return body + sum;
    }

    private static List<Pass> passes(Horizon horizon) {
        List<Pass> passes = TRACK.passes(PLACE, horizon);
        assertTrue(passes.size() > 10);
        return passes;
    }

    @Test
    void anArcHasNoJumpOverNorthNorNearTheZenith() {
        boolean overNorth = false;
        for (Pass pass : passes(Horizon.flat(0))) {
            Arc arc = Arc.of(TRACK, PLACE, Horizon.flat(0), pass);
            List<ArcPoint> points = arc.points().toList();
            for (int i = 1; i < points.size(); i++) {
                assertTrue(Math.abs(points.get(i).azimuthDeg() - points.get(i - 1).azimuthDeg()) <= 3.01,
                        pass + " jumps at " + points.get(i));
            }
            overNorth |= arc.leastAzimuthDeg() < 0 || arc.mostAzimuthDeg() > 360;
        }
        assertTrue(overNorth, "no pass over north among them: the test would prove nothing");
    }

    @Test
    void whatIsBetweenTheLooksIsNearTheTruth() {
        for (Pass pass : passes(Horizon.flat(0)).subList(0, 8)) {
            Arc arc = Arc.of(TRACK, PLACE, Horizon.flat(0), pass);
            for (Instant at = pass.aos().plusSeconds(1); at.isBefore(pass.los()); at = at.plusSeconds(13)) {
                assertEquals(TRACK.lookAt(PLACE, at).elevationDeg(), arc.at(at).elevationDeg(), 0.02);
                assertEquals(TRACK.lookAt(PLACE, at).rangeKm(), arc.at(at).rangeKm(), 0.5);
            }
        }
    }

    @Test
    void theMaskCutsTheArcWhereThePassBeginsAndEnds() {
        List<Pass> whole = passes(MASK).stream().filter(Pass::isWhole).toList();
        assertFalse(whole.isEmpty());
        for (Pass pass : whole) {
            Arc arc = Arc.of(TRACK, PLACE, MASK, pass);
            assertEquals(Light.HIDDEN, arc.light(pass.aos().minusSeconds(1)), pass.toString());
            assertTrue(arc.light(pass.aos().plusSeconds(1)) != Light.HIDDEN, pass.toString());
            assertTrue(arc.light(pass.los().minusSeconds(1)) != Light.HIDDEN, pass.toString());
            assertEquals(Light.HIDDEN, arc.light(pass.los().plusSeconds(1)), pass.toString());
            assertTrue(arc.start().isBefore(pass.aos()) && arc.end().isAfter(pass.los()));
            assertEquals(0, arc.at(arc.start()).elevationDeg(), 0.05);
        }
    }

    @Test
    void piecesFollowOneAnother() {
        assertTrue(passes(MASK).stream().anyMatch(pass -> Arc.of(TRACK, PLACE, MASK, pass).pieces().size() > 1));
        for (Pass pass : passes(MASK)) {
            List<ArcPiece> pieces = Arc.of(TRACK, PLACE, MASK, pass).pieces();
            for (int i = 1; i < pieces.size(); i++) {
                List<ArcPoint> before = pieces.get(i - 1).points();
                assertEquals(before.get(before.size() - 1), pieces.get(i).points().get(0));
            }
        }
    }

    @Test
    void shadowIsWhereTheEphemerisSaysSo() {
        Place south = Place.of(-40, 10);
        boolean shaded = false;
        for (Pass pass : TRACK.passes(south, Horizon.flat(0))) {
            Arc arc = Arc.of(TRACK, south, Horizon.flat(0), pass);
            List<Window> lit = TRACK.sunlit(pass.window());
            for (Instant at = pass.aos().plusSeconds(2); at.isBefore(pass.los().minusSeconds(2)); at = at.plusSeconds(20)) {
                Instant asked = at;
                boolean isLit = lit.stream().anyMatch(w -> w.contains(asked));
                boolean nearEdge = lit.stream().anyMatch(w -> Duration.between(w.start(), asked).abs().toMillis() < 100
                        || Duration.between(w.end(), asked).abs().toMillis() < 100);
                if (!nearEdge) {
                    assertEquals(isLit ? Light.LIT : Light.SHADED, arc.light(at), pass + " at " + at);
                }
                shaded |= !isLit;
            }
        }
        assertTrue(shaded, "no pass in shadow among them: the test would prove nothing");
    }

    @Test
    void aPassAtTheEdgeOfTheTimeSearchedKeepsToIt() {
        Pass first = passes(Horizon.flat(0)).get(0);
        Instant middle = first.aos().plus(first.duration().dividedBy(2));
        Ephemeris cut = Ephemeris.of(BIRD, Window.of(middle, Duration.ofHours(1)), null);
        Pass pass = cut.passes(PLACE, Horizon.flat(0)).get(0);
        assertTrue(pass.startsBefore());
        Arc arc = Arc.of(cut, PLACE, Horizon.flat(0), pass);
        assertEquals(middle, arc.start());
    }
}
