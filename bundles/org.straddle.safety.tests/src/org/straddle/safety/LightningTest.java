package org.straddle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;

import org.junit.jupiter.api.Test;
import org.straddle.model.HazardKind;

/** US National Weather Service, "When thunder roars, go indoors": any thunder, and 30 min after the last one. */
class LightningTest {

    @Test
    void thirtyMinutes() {
        assertEquals(Instant.parse("2031-06-20T12:30:00Z"), Lightning.notBefore(Instant.parse("2031-06-20T12:00:00Z")));
    }

    @Test
    void anyThunderAndNoCounting() {
        String cautions = String.join(" ", Cautions.of(HazardKind.LIGHTNING));
        assertTrue(cautions.startsWith("Any thunder: stop"), cautions);
        assertFalse(cautions.contains("30 s") || cautions.contains("flash"), cautions);
        assertTrue(cautions.contains("at least 30 min after the last thunder"), cautions);
    }

    /** Who takes a mast down while it thunders holds it. */
    @Test
    void nobodyTakesMastsDownOnceItThunders() {
        String cautions = String.join(" ", Cautions.of(HazardKind.LIGHTNING));
        assertTrue(cautions.contains("leave masts and antennas as they are"), cautions);
        assertTrue(cautions.contains("hands off radio, microphone and coax"), cautions);
        assertTrue(cautions.contains("on the forecast: nobody touches one once it thunders"), cautions);
    }
}
