package org.straddle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.straddle.model.Policies;
import org.straddle.model.RiskLevel;
import org.straddle.model.RiskProbability;
import org.straddle.model.RiskSeverity;

class RiskMatrixTest {

    /**
     * MIL-STD-882E, table III, cell by cell; from memory, no copy of the standard at hand. Of three renderings in public
     * repositories one agrees in 19 of 20 cells and has low for improbable and marginal; the others differ more, from each other too.
     * Ours is nowhere milder than any of them.
     */
    @ParameterizedTest
    @CsvSource({"FREQUENT,HIGH,HIGH,SERIOUS,MEDIUM", "PROBABLE,HIGH,HIGH,SERIOUS,MEDIUM", "OCCASIONAL,HIGH,SERIOUS,MEDIUM,LOW",
        "REMOTE,SERIOUS,MEDIUM,MEDIUM,LOW", "IMPROBABLE,MEDIUM,MEDIUM,MEDIUM,LOW"})
    void theStandardsCells(RiskProbability row, RiskLevel catastrophic, RiskLevel critical, RiskLevel marginal, RiskLevel negligible) {
        RiskMatrix matrix = RiskMatrix.standard();
        assertEquals(Optional.of(catastrophic), matrix.level(RiskSeverity.CATASTROPHIC, row));
        assertEquals(Optional.of(critical), matrix.level(RiskSeverity.CRITICAL, row));
        assertEquals(Optional.of(marginal), matrix.level(RiskSeverity.MARGINAL, row));
        assertEquals(Optional.of(negligible), matrix.level(RiskSeverity.NEGLIGIBLE, row));
    }

    @Test
    void whatIsNotRatedOrGoneHasNoLevel() {
        assertEquals(Optional.empty(), RiskMatrix.standard().level(RiskSeverity.NOT_RATED, RiskProbability.FREQUENT));
        assertEquals(Optional.empty(), RiskMatrix.standard().level(RiskSeverity.CRITICAL, RiskProbability.NOT_RATED));
        assertEquals(Optional.empty(), RiskMatrix.standard().level(RiskSeverity.CRITICAL, RiskProbability.ELIMINATED));
    }

    @Test
    void aClubMayHaveItsOwn() {
        Policies policies = SiteNotation.policies();
        policies.setRiskMatrix("HHHH hhhs HHSM, HSML MMLL");
        assertEquals(Optional.of(RiskLevel.SERIOUS), RiskMatrix.of(policies).level(RiskSeverity.NEGLIGIBLE, RiskProbability.PROBABLE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"HHSM", "HHSM HHSM HSML SMML MMMX", "HHSM HHSM HSML SMML MMM", "HHSM HHSM HSML SMML MMLM",
        "MMML SMML HSML HHSM HHSM"})
    void refusesAMatrixThatCannotBe(String text) {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> RiskMatrix.parse(text)).getMessage().contains("risk matrix"));
    }
}
