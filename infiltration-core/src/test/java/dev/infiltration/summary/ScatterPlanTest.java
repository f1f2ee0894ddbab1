// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.statistics.Quantile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScatterPlanTest {

    @ParameterizedTest(name = "n {0}")
    @CsvSource({"3, 7.9", "10, 1.8", "19, 1.5"})
    void aVariationOfOneGivesTheFactorsOfPractice(int n, double factor) {
        // exp(t·s/√n), s² = ln 2: ×/÷ 7.9 at n = 3, 1.8 at 10; 1.5 needs 19 (derived)
        assertEquals(factor, ScatterPlan.ofCv(1).factor(n, 0.95), 0.05);
    }

    @Test
    void aFactorOfOneAndAHalfNeedsNineteen() {
        ScatterPlan plan = ScatterPlan.ofCv(1);
        assertEquals(19, plan.locationsFor(1.5, 0.95).orElseThrow());
        assertTrue(plan.factor(18, 0.95) > 1.5 && plan.factor(19, 0.95) <= 1.5);
        assertTrue(plan.locationsFor(1.001, 0.95).isEmpty());
        assertEquals(2, plan.locationsFor(1e9, 0.95).orElseThrow());
    }

    @Test
    void theArithmeticMeanNeedsMore() {
        ScatterPlan plan = ScatterPlan.ofCv(1);
        int mean = plan.locationsForMean(1.5, 0.95).orElseThrow();
        assertTrue(mean > 19);
        // t·√(s²/n + s⁴/(2(n − 1))) just within ln 1.5 (derived)
        double s2 = Math.log(2);
        double t = Quantile.studentTwoSided(0.95, mean - 1.0);
        assertTrue(t * Math.sqrt(s2 / mean + s2 * s2 / (2 * (mean - 1.0))) <= Math.log(1.5));
    }

    @Test
    void aCautiousPlanTakesAPilotsScatterLarger() {
        // s·√(df/χ²): df 4, χ²(0.2) 1.64877662 (NIST/SEMATECH handbook table, memory)
        ScatterPlan plan = ScatterPlan.cautious(0.5, 4, 0.8);
        assertEquals(0.5 * Math.sqrt(4 / 1.64877662), plan.logSd(), 1e-8);
    }

    @Test
    void refusesWhatIsNoScatter() {
        assertThrows(IllegalArgumentException.class, () -> new ScatterPlan(-1));
        assertThrows(IllegalArgumentException.class, () -> new ScatterPlan(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new ScatterPlan(Double.POSITIVE_INFINITY));
    }
}
