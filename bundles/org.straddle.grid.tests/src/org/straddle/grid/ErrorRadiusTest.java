package org.straddle.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ErrorRadiusTest {

    /** CEP 1.1774 σ, DRMS 1.4142 σ, R95 2.4477 σ, 2DRMS 2.8284 σ: the usual table; R68 from the formula. */
    @ParameterizedTest
    @CsvSource({"CEP,1.1774", "DRMS,1.4142", "R68,1.5096", "R95,2.4477", "TWO_DRMS,2.8284"})
    void radiusOverSigma(ErrorRadius kind, double perSigma) {
        assertEquals(perSigma, kind.perSigma(), 5e-5);
    }

    /** 2DRMS is 2.4 CEP (NAP 4920). */
    @Test
    void twoDrmsOverCep() {
        assertEquals(2.4, ErrorRadius.TWO_DRMS.perSigma() / ErrorRadius.CEP.perSigma(), 0.01);
    }

    /** A phone's 5 m are 8.1 m at 95 %: 2.4477 / 1.5096 = 1.62. */
    @Test
    void aPhonesRadiusIsWorseThanItLooks() {
        assertEquals(8.11, ErrorRadius.R68.toR95M(5), 0.005);
        assertEquals(5, ErrorRadius.R95.toR95M(5));
        assertEquals(0, ErrorRadius.CEP.toR95M(0));
    }

    @ParameterizedTest
    @EnumSource(ErrorRadius.class)
    void whatIsNotSaidIsTakenForTheWorst(ErrorRadius kind) {
        assertTrue(ErrorRadius.NOT_SAID.toR95M(5) >= kind.toR95M(5));
        assertTrue(kind.toR95M(6) > kind.toR95M(5));
        assertThrows(IllegalArgumentException.class, () -> kind.toR95M(-1));
        assertThrows(IllegalArgumentException.class, () -> kind.toR95M(Double.NaN));
    }
}
