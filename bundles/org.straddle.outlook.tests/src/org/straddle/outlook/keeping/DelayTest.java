package org.straddle.outlook.keeping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;

import org.junit.jupiter.api.Test;

class DelayTest {

    /** Table of the standard normal distribution: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1. */
    @Test
    void oneDriveIsNormallyDistributed() {
        Delay delay = Delay.none().plus(min(0), min(10));
        assertEquals(0.5, delay.chance(min(0)), 0.001);
        assertEquals(0.84134, delay.chance(min(10)), 0.001);
        assertEquals(0.97725, delay.chance(min(20)), 0.001);
        assertEquals(0.15866, delay.chance(min(-10)), 0.001);
    }

    /** Variances of independent times add up: 6² + 8² = 10². */
    @Test
    void twoDrivesAddUp() {
        Delay delay = Delay.none().plus(min(-3), min(6)).plus(min(5), min(8));
        assertEquals(0.84134, delay.chance(min(12)), 0.002);
        assertEquals(0.5, delay.chance(min(2)), 0.002);
    }

    @Test
    void whoIsEarlyWaits() {
        Delay delay = Delay.none().plus(min(0), min(10)).waiting();
        assertEquals(0, delay.chance(min(-1)), 1e-12);
        assertEquals(0.84134, delay.chance(min(10)), 0.001);
        assertEquals(1, Delay.none().plus(min(-30), min(5)).waiting().chance(min(1)), 1e-6);
    }

    @Test
    void whatIsSureIsExact() {
        assertEquals(1, Delay.none().chance(min(0)), 0);
        assertEquals(0, Delay.none().chance(Duration.ofSeconds(-1)), 0);
        assertEquals(1, Delay.none().plus(min(7)).chance(min(7)), 0);
        assertEquals(0, Delay.none().plus(min(7)).chance(Duration.ofSeconds(419)), 0);
    }

    @Test
    void nothingIsLostAtTheEnds() {
        Delay delay = Delay.none().plus(min(590), min(60)).plus(min(-1000), min(30)).plus(min(2000), min(1));
        assertEquals(1, delay.chance(Duration.ofDays(2)), 1e-9);
        assertTrue(delay.chance(min(0)) < 1e-9);
    }

    private static Duration min(long minutes) {
        return Duration.ofMinutes(minutes);
    }
}
