package org.straddle.plan.bound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.junit.jupiter.api.Test;

class GlopProgramTest {

    private static final int STEPS = 12;

    /** A warm start that is given up at once ends at the optimum that a patient one finds. */
    @Test
    void whoeverGivesUpAWarmStartStillFindsTheOptimum() {
        assertTrue(NativeSolvers.load());
        for (long seed = 1; seed <= 5; seed++) {
            try (GlopProgram patient = new GlopProgram(true, 1000); GlopProgram hasty = new GlopProgram(true, 1e-9)) {
                Random random = new Random(seed);
                int rows = 6;
                for (int row = 0; row < rows; row++) {
                    patient.addRow(Double.NEGATIVE_INFINITY, 1 + row);
                    hasty.addRow(Double.NEGATIVE_INFINITY, 1 + row);
                }
                double before = 0;
                for (int step = 0; step < STEPS; step++) {
                    double worth = 1 + random.nextDouble();
                    int one = patient.addColumn(worth, 1);
                    int other = hasty.addColumn(worth, 1);
                    for (int row = 0; row < rows; row++) {
                        double factor = random.nextInt(4);
                        patient.set(row, one, factor);
                        hasty.set(row, other, factor);
                    }
                    double found = patient.solve().worth();
                    assertEquals(found, hasty.solve().worth(), 1e-9);
                    assertTrue(found >= before - 1e-9, "a column more takes nothing away");
                    before = found;
                }
                assertTrue(before > 1, "something was to be gained");
            }
        }
    }
}
