package org.straddle.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FixAveragingTest {

    /** The standard error of a mean: four independent fixes halve the error, nine make a third of it. */
    @ParameterizedTest
    @CsvSource({"8, 1, 8", "8, 4, 4", "9, 9, 3", "5, 25, 1"})
    void independentErrorsFallWithTheRoot(double one, int fixes, double mean) {
        assertEquals(mean, FixAveraging.r95M(one, 0, fixes), 1e-12);
        assertEquals(OptionalInt.of(fixes), FixAveraging.fixesFor(mean, one, 0));
    }

    /** 5² = 3² + 4²: of 5 m with 3 m in common, 4 m are random, and 16 fixes leave √(9 + 1) m. */
    @Test
    void theCommonPartStays() {
        assertEquals(Math.sqrt(10), FixAveraging.r95M(5, 3, 16), 1e-12);
        assertEquals(OptionalInt.of(16), FixAveraging.fixesFor(Math.sqrt(10), 5, 3));
        assertEquals(OptionalInt.empty(), FixAveraging.fixesFor(3, 5, 3));
        assertTrue(FixAveraging.r95M(5, 3, 1_000_000) > 3);
    }

    @Test
    void aReceiverThatIsBetterThanTheCommonPartIsBelievedAndGainsNothing() {
        assertEquals(0.02, FixAveraging.r95M(0.02, 3, 100), 1e-12);
        assertEquals(OptionalInt.empty(), FixAveraging.fixesFor(0.01, 0.02, 3));
        assertEquals(OptionalInt.of(1), FixAveraging.fixesFor(0.02, 0.02, 3));
    }

    /** Draws fixes with an error in common and one of their own; 20 000 draws settle R95 to about 1 %. */
    @Test
    void agreesWithDrawnErrors() {
        Random random = new Random(11);
        double perSigma = 2.4477;
        int draws = 20_000;
        int within = 0;
        double expected = FixAveraging.r95M(8, 3, 10);
        for (int i = 0; i < draws; i++) {
            double east = random.nextGaussian() * 3 / perSigma;
            double north = random.nextGaussian() * 3 / perSigma;
            for (int fix = 0; fix < 10; fix++) {
                east += random.nextGaussian() * Math.sqrt(64 - 9) / perSigma / 10;
                north += random.nextGaussian() * Math.sqrt(64 - 9) / perSigma / 10;
            }
            within += Math.hypot(east, north) <= expected ? 1 : 0;
        }
        assertEquals(0.95, (double) within / draws, 0.006);
    }

    @Test
    void edges() {
        assertEquals(OptionalInt.empty(), FixAveraging.fixesFor(0.1, 5, 0), "2500 fixes are more than anybody takes");
        assertEquals(OptionalInt.empty(), FixAveraging.fixesFor(0, 5, 0));
        assertThrows(IllegalArgumentException.class, () -> FixAveraging.r95M(5, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> FixAveraging.r95M(-1, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> FixAveraging.r95M(Double.NaN, 0, 1));
    }
}
