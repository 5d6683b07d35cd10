package org.straddle.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PresenceTest {

    /** The factor of the circular normal distribution to five digits, √(−2 ln 0.05); computed, not published. */
    @Test
    void ninetyFivePercentRadius() {
        assertEquals(2.4477, Presence.R95_PER_SIGMA, 5e-5);
    }

    /** Computed from the stated formulas apart from this code: Φ(d/σ)² and 2Φ(d/σ) − 1. */
    @ParameterizedTest
    @CsvSource({"5, 3, .8631, .8581", "8, 1, .3846, .2404", "8, 5, .8779, .8739"})
    void tabledValues(double r95, double margin, double independent, double common) {
        Presence presence = Presence.acrossLine(r95, margin, margin);
        assertEquals(independent, presence.independent(), 5e-5);
        assertEquals(common, presence.common(), 5e-5);
        assertEquals(presence.common(), presence.least());
    }

    /** Standard normal table: Φ(1) = 0.8413, Φ(2) = 0.9772, Φ(1.96) = 0.9750. */
    @Test
    void onePartAgainstTheNormalTable() {
        double sigma = 1 / Presence.R95_PER_SIGMA;
        double far = 1000;
        assertEquals(0.8413, Presence.acrossLine(1, sigma, far).independent(), 5e-5);
        assertEquals(0.9772, Presence.acrossLine(1, 2 * sigma, far).common(), 5e-5);
        assertEquals(0.9750, Presence.acrossLine(1, 1.96 * sigma, far).common(), 5e-5);
        assertEquals(0.1587, Presence.acrossLine(1, -sigma, far).common(), 5e-5);
    }

    /** Draws errors and counts; 400 000 draws leave a standard deviation below 0.0008. */
    @Test
    void agreesWithDrawnErrors() {
        Random random = new Random(5);
        double r95 = 6;
        double sigma = r95 / 2.4477;
        double[] m = {2.0, 3.5, 1.5, 4.0};
        int draws = 400_000;
        int line = 0;
        int lineCommon = 0;
        int corner = 0;
        int cornerCommon = 0;
        for (int i = 0; i < draws; i++) {
            double east = random.nextGaussian() * sigma;
            double north = random.nextGaussian() * sigma;
            lineCommon += -m[0] + east < 0 && m[1] + east > 0 ? 1 : 0;
            line += -m[0] + random.nextGaussian() * sigma < 0 && m[1] + random.nextGaussian() * sigma > 0 ? 1 : 0;
            cornerCommon += -m[0] + east < 0 && m[1] + east > 0 && -m[2] + north < 0 && m[3] + north > 0 ? 1 : 0;
            boolean all = true;
            for (int part = 0; part < 4; part++) {
                double x = part % 2 == 0 ? m[0] : m[1];
                double y = part < 2 ? m[2] : m[3];
                all &= x + random.nextGaussian() * sigma > 0;
                all &= y + random.nextGaussian() * sigma > 0;
            }
            corner += all ? 1 : 0;
        }
        Presence onLine = Presence.acrossLine(r95, m[0], m[1]);
        Presence onCorner = Presence.acrossCorner(r95, m[0], m[1], m[2], m[3]);
        assertEquals((double) line / draws, onLine.independent(), 0.004);
        assertEquals((double) lineCommon / draws, onLine.common(), 0.004);
        assertEquals((double) corner / draws, onCorner.independent(), 0.004);
        assertEquals((double) cornerCommon / draws, onCorner.common(), 0.004);
    }

    @Test
    void edges() {
        assertEquals(new Presence(1, 1), Presence.acrossLine(0, 1, 1));
        assertEquals(new Presence(0, 0), Presence.acrossLine(0, 0, 1));
        assertEquals(new Presence(0.25, 0), Presence.acrossLine(5, 0, 0));
        assertEquals(0, Presence.acrossLine(5, -100, 100).common(), 1e-9);
        assertThrows(IllegalArgumentException.class, () -> Presence.acrossLine(-1, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> Presence.acrossLine(Double.NaN, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> Presence.acrossLine(5, Double.NaN, 1));
        assertThrows(IllegalArgumentException.class, () -> Presence.acrossCorner(5, 1, 1, 1, Double.NEGATIVE_INFINITY));
    }

    @Test
    void moreRoomIsNeverWorse() {
        Random random = new Random(6);
        for (int i = 0; i < 1000; i++) {
            double r95 = random.nextDouble() * 20 + 0.1;
            double d = random.nextDouble() * 20;
            Presence less = Presence.acrossLine(r95, d, d);
            Presence more = Presence.acrossLine(r95, d + 0.5, d);
            assertTrue(more.independent() >= less.independent() && more.common() >= less.common());
            assertTrue(less.common() <= less.independent());
            Presence corner = Presence.acrossCorner(r95, d, d, d, d);
            assertTrue(corner.independent() <= less.independent() && corner.common() <= less.common());
        }
    }
}
