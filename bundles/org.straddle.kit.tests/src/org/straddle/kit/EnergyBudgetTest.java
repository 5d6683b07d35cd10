package org.straddle.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.straddle.kit.KitNotation.team;

import java.time.Duration;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EnergyBudgetTest {

    private static EnergyBudget budget(String kit, double usable, double coldestDegC) {
        return new EnergyBudget(PackingList.of(team(kit)).energy(), usable, coldestDegC);
    }

    /** 10 °C and 0 °C: manufacturer's FAQ, slow discharge; 20 °C from memory; the rest computed from these. */
    @ParameterizedTest
    @CsvSource({"25, 1", "20, 1", "15, 0.95", "10, 0.90", "5, 0.87", "0, 0.84", "-10, 0.78", "-200, 0"})
    void coldTakesFromWhatIsStored(double temperatureDegC, double left) {
        assertEquals(left, EnergyBudget.leftAt(temperatureDegC), 1e-9);
    }

    /**
     * Common practice, no source: a 12 Ah battery runs a station of about 10 W for more than 60 passes. At 12.8 V, 80 %
     * and 10 min a pass it does up to 12.288 W; with half of a lead-acid battery of 12 V at 0 °C it does not.
     */
    @Test
    void sixtyPassesFromTwelveAmpereHours() {
        Duration passes = Duration.ofMinutes(60 * 10);
        assertFalse(budget("power lithium 153.6Wh; radio rig 12.288W", 0.8, 20).isShortFor(passes));
        assertTrue(budget("power lithium 153.6Wh; radio rig 12.3W", 0.8, 20).isShortFor(passes));
        assertTrue(budget("power lead 144Wh; radio rig 10W", 0.5, 0).isShortFor(passes));
    }

    @Test
    void saysWhatItReckonsWith() {
        EnergyBudget cold = budget("power lead 144Wh; radio rig 10W", 0.5, 0);
        assertEquals("60.5 Wh: 144 Wh stored, 50 % of it counted on, less 16 % in the cold (0 °C)", cold.sentence());
        assertEquals(6.048, cold.lasts().orElseThrow().toSeconds() / 3600.0, 0.001);
        assertEquals("115.2 Wh: 144 Wh stored, 80 % of it counted on",
                budget("power lead 144Wh; radio rig 10W", 0.8, 25).sentence());
    }

    @Test
    void tellsNothingWhereNothingIsWrittenDown() {
        assertFalse(budget("radio rig 10W", 0.8, 20).isShortFor(Duration.ofDays(9)));
        assertFalse(budget("power lead 144Wh", 0.8, 20).isShortFor(Duration.ofDays(9)));
        assertEquals(Optional.empty(), budget("radio rig 10W", 0.8, 20).lasts());
    }
}
