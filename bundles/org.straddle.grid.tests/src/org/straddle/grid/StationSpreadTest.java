package org.straddle.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.straddle.grid.Standing.Kind;

class StationSpreadTest {

    private static StationSpread line(double spanM, double offM) {
        return new StationSpread(Kind.LINE, spanM, offM, 0);
    }

    /** R95/d: 5/3 .8631/.8581; 8/1 .3846/.2404; 8/5 .8779/.8739, computed from Φ(d/σ)² and 2Φ(d/σ) − 1. */
    @ParameterizedTest
    @CsvSource({"5, 3, .8631, .8581", "8, 1, .3846, .2404", "8, 5, .8779, .8739"})
    void aStationStraightAcrossTheLineHasTheTabledPresence(double r95, double margin, double independent, double common) {
        Presence presence = line(2 * margin, 0).presence(r95);
        assertEquals(independent, presence.independent(), 5e-5);
        assertEquals(common, presence.common(), 5e-5);
    }

    /**
     * Standard normal table: Φ(1.645) = 0.9500, Φ(1.960) = 0.9750. So 2Φ − 1 = 0.90 and 0.95 ask for margins of
     * 1.645 σ and 1.960 σ.
     */
    @ParameterizedTest
    @CsvSource({"0.90, 1.645", "0.95, 1.960"})
    void errorAndSpanAgainstTheNormalTable(double level, double sigmas) {
        double sigma = 5 / Presence.R95_PER_SIGMA;
        assertEquals(2 * sigmas * sigma, line(1, 0).spanFor(level, 5).orElseThrow(), 0.005);
        assertEquals(5, line(2 * sigmas * sigma, 0).errorFor(level).orElseThrow(), 0.005);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.7, 0.9, 0.99, 0.999})
    void whatIsAskedForIsJustEnough(double level) {
        for (StationSpread spread : new StationSpread[] {line(10, 0), line(10, 2), line(30, 14.9),
                new StationSpread(Kind.CORNER, 20, 0, 0), new StationSpread(Kind.CORNER, 20, 1, 3)}) {
            double error = spread.errorFor(level).orElseThrow();
            assertTrue(spread.presence(error).least() >= level);
            assertTrue(spread.presence(error + 1e-6).least() < level);
            double span = spread.spanFor(level, 6).orElseThrow();
            assertTrue(with(spread, span).presence(6).least() >= level);
            assertTrue(with(spread, span - 1e-6).presence(6).least() < level);
        }
    }

    private static StationSpread with(StationSpread spread, double spanM) {
        return new StationSpread(spread.kind(), spanM, spread.offM(), spread.otherOffM());
    }

    @Test
    void nothingLiftsWhatCannotBeLifted() {
        assertEquals(OptionalDouble.empty(), line(10, 5).errorFor(0.9), "an end on the line is in neither square");
        assertEquals(OptionalDouble.empty(), line(10, 260).spanFor(0.9, 1));
        StationSpread inside = new StationSpread(Kind.INSIDE, 10, 3, 0);
        assertEquals(OptionalDouble.empty(), inside.spanFor(0.9, 50));
        assertTrue(inside.errorFor(0.9).isPresent());
        assertThrows(IllegalArgumentException.class, () -> line(10, 0).errorFor(0));
        assertThrows(IllegalArgumentException.class, () -> line(10, Double.NaN));
    }

    @Test
    void theMiddleOfTheLineIsTheBestPlace() {
        assertTrue(line(10, 3).centred().presence(5).least() > line(10, 3).presence(5).least());
    }
}
