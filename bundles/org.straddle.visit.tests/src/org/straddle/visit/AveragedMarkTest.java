package org.straddle.visit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.straddle.exchange.fixes.FixLog.Reading;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.Geodesic;
import org.straddle.model.Mark;
import org.straddle.model.MarkMethod;

class AveragedMarkTest {

    private static final Instant NOON = Instant.parse("2026-06-20T12:00:00Z");

    private static Reading fix(int minute, GeoPosition position, double r95) {
        return new Reading(Optional.of(NOON.plusSeconds(60L * minute)), position, OptionalDouble.empty(),
                r95 > 0 ? OptionalDouble.of(r95) : OptionalDouble.empty());
    }

    /** Places around a middle, at distances east and north in metres. */
    private static GeoPosition off(GeoPosition middle, double east, double north) {
        return Geodesic.destination(middle, Math.toDegrees(Math.atan2(east, north)), Math.hypot(east, north));
    }

    /** Four corners of a square have its middle for their mean, wherever on Earth it lies. */
    @ParameterizedTest
    @CsvSource({"64, -20", "0, 180", "-16.5, -180", "89.9999, 40", "-90, 0"})
    void theMeanOfASquareIsItsMiddle(double latitude, double longitude) {
        GeoPosition middle = new GeoPosition(latitude, longitude);
        AveragedMark mark = AveragedMark.of(List.of(fix(0, off(middle, 3, 3), 0), fix(1, off(middle, -3, 3), 0),
                fix(2, off(middle, -3, -3), 0), fix(3, off(middle, 3, -3), 0)));
        assertEquals(0, Geodesic.distanceM(middle, mark.position()), 0.001);
    }

    /** Weights by the inverse square: 2 m against 4 m is 4 : 1, so the mean of 0 and 10 m lies at 2 m. */
    @Test
    void reportedErrorsWeigh() {
        GeoPosition middle = new GeoPosition(50, 10);
        AveragedMark mark = AveragedMark.of(List.of(fix(0, middle, 2), fix(1, off(middle, 10, 0), 4)));
        assertEquals(2, Geodesic.distanceM(middle, mark.position()), 0.001);
    }

    /**
     * Sixteen fixes of 5 m, of which 3 m are common and 4 m of their own: 4/√16 = 1 m stays of these, √(9 + 1) m of all.
     */
    @Test
    void theErrorOfTheMeanHasAPartThatStays() {
        GeoPosition middle = new GeoPosition(50, 10);
        List<Reading> fixes = new ArrayList<>();
        for (int i = 0; i < 16; i++) {
            fixes.add(fix(i, middle, 5));
        }
        AveragedMark mark = AveragedMark.of(fixes);
        assertEquals(1, mark.scatterR95M(), 1e-9);
        assertEquals(3, mark.commonR95M(), 1e-9);
        assertEquals(Math.sqrt(10), mark.r95M(), 1e-9);
    }

    /** A scatter of σ = 2 m on each axis: R95 of the mean of n is 2.4477 · 2/√n, if the scatter is all there is. */
    @Test
    void theScatterCountsWhereTheReceiverReportsLessOrNothing() {
        Random random = new Random(8);
        GeoPosition middle = new GeoPosition(-33, 179.9999);
        List<Reading> fixes = new ArrayList<>();
        for (int i = 0; i < 400; i++) {
            fixes.add(fix(i, off(middle, 2 * random.nextGaussian(), 2 * random.nextGaussian()), 0));
        }
        AveragedMark mark = AveragedMark.of(fixes);
        assertEquals(2.4477 * 2 / 20, mark.scatterR95M(), 0.02);
        assertTrue(Geodesic.distanceM(middle, mark.position()) < 3 * mark.scatterR95M());
    }

    @Test
    void aReceiverWithCorrectionsIsBelieved() {
        AveragedMark mark = AveragedMark.of(List.of(fix(0, new GeoPosition(50, 10), 0.05), fix(1, new GeoPosition(50, 10), 0.05)));
        assertEquals(0.05, mark.r95M(), 1e-9);
    }

    @Test
    void readingsOfOneMinuteCountAsOneFix() {
        List<Reading> readings = new ArrayList<>();
        for (int second = 0; second < 180; second++) {
            readings.add(new Reading(Optional.of(NOON.plusSeconds(second)), new GeoPosition(64, -20 + second % 2 * 1e-5),
                    OptionalDouble.of(100 + second % 2), OptionalDouble.empty()));
        }
        AveragedMark mark = AveragedMark.of(readings);
        assertEquals(3, mark.fixes().size());
        assertEquals(180, mark.readings());
        assertEquals(100.5, mark.altitudeM().orElseThrow(), 1e-9);
        assertTrue(mark.sentences().get(0).contains("180 readings"), mark.sentences().toString());
        // Three fixes without a reported error: one is taken to be good to 9 m, 3 m of it common; √(72/3 + 9).
        assertEquals(Math.sqrt(33), mark.r95M(), 0.01);
    }

    @Test
    void outliersAreLeftOutAndNamed() {
        GeoPosition middle = new GeoPosition(64, -20);
        List<Reading> fixes = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            fixes.add(fix(i, off(middle, i % 5 - 2, i / 5 - 1.5), 0));
        }
        fixes.add(fix(20, off(middle, 40, 0), 0));
        AveragedMark mark = AveragedMark.of(fixes);
        assertEquals(1, mark.outliers().size());
        assertTrue(mark.sentences().toString().contains("2026-06-20T12:20:00Z 40 m off"), mark.sentences().toString());
        assertTrue(Geodesic.distanceM(middle, mark.position()) < 0.01);
    }

    @Test
    void whatIsNoSpotIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> AveragedMark.of(List.of()));
        String message = assertThrows(IllegalArgumentException.class, () -> AveragedMark.of(
                List.of(fix(0, new GeoPosition(64, -20), 0), fix(1, new GeoPosition(64.1, -20), 0)))).getMessage();
        assertTrue(message.contains("not of one spot"), message);
    }

    @Test
    void asAPartOfAVisit() {
        Mark mark = AveragedMark.of(List.of(fix(0, new GeoPosition(64, -20), 4), fix(1, new GeoPosition(64, -20), 4))).mark(77);
        assertEquals(MarkMethod.AVERAGED, mark.getMethod());
        assertEquals("WGS 84", mark.getDatum());
        assertEquals(77, mark.getAltitudeM());
        assertEquals(2, mark.getFixes().size());
        // √(9 + 7/2), rounded up.
        assertEquals(3.54, mark.getErrorM());
    }
}
