package org.straddle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;

import org.junit.jupiter.api.Test;

/** NOAA/NWS guidance: shelter at 30 s or less, 30 min after the last thunder, 5 s for a mile. */
class LightningTest {

    @Test
    void thirtySeconds() {
        assertTrue(Lightning.shelterNow(Duration.ofSeconds(30)));
        assertFalse(Lightning.shelterNow(Duration.ofSeconds(31)));
    }

    @Test
    void thirtyMinutes() {
        assertEquals(Instant.parse("2031-06-20T12:30:00Z"), Lightning.notBefore(Instant.parse("2031-06-20T12:00:00Z")));
    }

    @Test
    void fiveSecondsForAMile() {
        assertEquals(6 * 1.609344, Lightning.distanceKm(Duration.ofSeconds(30)), 1e-9);
    }
}
