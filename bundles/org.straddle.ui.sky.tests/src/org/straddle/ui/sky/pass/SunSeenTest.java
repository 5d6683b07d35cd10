package org.straddle.ui.sky.pass;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;

import org.junit.jupiter.api.Test;

class SunSeenTest {

    /**
     * Two directions on a sphere whose distance is published: Arcturus and Spica, 32.7930°, in J. Meeus, Astronomical
     * Algorithms (2nd ed. 1998), example 17.a; figures from memory.
     */
    @Test
    void separationIsThatOfThePublishedExample() {
        assertEquals(32.7930, new SunSeen(Instant.EPOCH, 213.9154, 19.1825).separationDeg(201.2983, -11.1614), 1e-4);
    }

    @Test
    void smallAnglesAndTheWayOverNorthAreKept() {
        assertEquals(0.001, new SunSeen(Instant.EPOCH, 10, 30).separationDeg(10, 30.001), 1e-9);
        assertEquals(2, new SunSeen(Instant.EPOCH, 359, 0).separationDeg(361, 0), 1e-9);
        assertEquals(20, new SunSeen(Instant.EPOCH, 90, 80).separationDeg(270, 80), 1e-9);
    }
}
