// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TTestPowerTest {

    /** Own quadrature with 25 digits; second way scipy 1.17.1 (recomputed). */
    static Stream<Panel.Value> noncentral() {
        return Panel.values("power.csv").filter(value -> value.name().startsWith("nct_cdf"));
    }

    @ParameterizedTest
    @MethodSource("noncentral")
    void noncentralProbabilityAgrees(Panel.Value value) {
        String name = value.name();
        assertEquals(value.number(), TTestPower.cumulative(part(name, "t"), part(name, "df"), part(name, "ncp")), 1e-9);
    }

    static double part(String name, String key) {
        return Double.parseDouble(name.replaceAll("(.* )?" + key + "=", "").replaceAll("[ ].*", ""));
    }

    /** power.t.test(n = 20, delta = 1, sd = 1, strict = TRUE) of R 4.2.2; own quadrature (recomputed). */
    @Test
    void countsBothTails() {
        assertEquals(0.8689530277239897, TTestPower.of(Math.sqrt(10), 38, 0.05), 1e-9);
        assertEquals(0.05, TTestPower.of(0, 7, 0.05), 1e-11);
    }

    /** Power 0.90 for one standard deviation: 23 in each group (R 4.2.2 gives 22.021 as a real number; recomputed). */
    @Test
    void findsTheSmallestNumber() {
        assertEquals(
                23,
                TTestPower.smallest(n -> TTestPower.of(Math.sqrt(n / 2.0), 2.0 * n - 2, 0.05), 2, 0.9)
                        .orElseThrow());
        assertTrue(TTestPower.smallest(n -> 0.05, 2, 0.9).isEmpty());
    }

    @Test
    void refusesArgumentsOutOfRange() {
        assertThrows(IllegalArgumentException.class, () -> TTestPower.of(1, 5, 0));
        assertThrows(IllegalArgumentException.class, () -> TTestPower.cumulative(1, 0.5, 1));
        assertThrows(IllegalArgumentException.class, () -> TTestPower.smallest(n -> 1, 2, 1));
    }
}
