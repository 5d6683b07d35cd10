package org.straddle.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.straddle.kit.KitNotation.team;

import java.time.Duration;
import java.util.Optional;

import org.junit.jupiter.api.Test;

class EnergyTest {

    private static Energy energy(String kit) {
        return PackingList.of(team(kit)).energy();
    }

    /**
     * Common practice, no source: a 12 Ah battery runs a station of about 10 W for more than 60 passes. By computation
     * (12.8 V, 80 % usable, 10 min a pass) that holds up to 12.288 W and no further.
     */
    @Test
    void sixtyPassesFromTwelveAmpereHours() {
        Duration sixtyPasses = Duration.ofMinutes(60 * 10);
        assertEquals(Optional.of(sixtyPasses), energy("power lithium 153.6Wh; radio rig 12.288W").lasts(0.8));
        assertTrue(energy("power lithium 153.6Wh; radio rig 12.4W").lasts(0.8).orElseThrow().compareTo(sixtyPasses) < 0);
    }

    /** The same claim fails with lead-acid in the cold: 12 V, half usable, 16 % less at 0 °C (manufacturer's FAQ). */
    @Test
    void leadInTheColdDoesNotLastSixtyPasses() {
        Duration lasts = energy("power lead 144Wh; radio rig 10W")
                .lasts(Energy.LEAD_ACID_USABLE * Energy.LEAD_ACID_LEFT_AT_FREEZING).orElseThrow();
        assertEquals(6.048, lasts.toSeconds() / 3600.0, 0.001);
    }

    @Test
    void aSpareNeitherCountsAsCapacityNorDraws() {
        assertEquals(new Energy(300, 12),
                energy("power a x3 100Wh; power b 100Wh ->a; radio rig x2 10W; radio old 8W ->rig; computer c 2W"));
    }

    @Test
    void aSpareDrawsWhenWhatItReplacesStaysAtHome() {
        assertEquals(new Energy(0, 8), energy("radio rig x0 10W; radio old 8W ->rig"));
        assertEquals(new Energy(0, 18), energy("radio a 10W ->b; radio b 8W ->a"), "in a ring all count");
    }

    @Test
    void saysWhatItAssumesOrLacks() {
        assertEquals("Energy (estimate): 120 Wh stored, 10 W drawn on average: about 6 h of work if half of it is usable"
                + " (lead-acid, less in the cold), 9.6 h if 80 % is (lithium iron phosphate).",
                energy("power p 120Wh; radio r 10W").sentence());
        assertTrue(energy("radio r 10W").sentence().contains("how much it stores"));
        assertTrue(energy("power p 120Wh").sentence().contains("what it draws"));
        assertEquals(Optional.empty(), energy("power p 120Wh").lasts(0.8));
    }
}
