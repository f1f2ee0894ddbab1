// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantileTest {

    @ParameterizedTest(name = "t {0}, {1}")
    @CsvSource(delimiter = '|', textBlock = """
        # p   | degrees          | quantile           | source and mark
        0.995 | 16               | 2.9207816224250996 | JCGM 100:2008 H.1 prints 2.92 (published), 17 digits by mpmath (derived)
        0.975 | 1                | 12.706204736174705 | tan(0.475 pi) (derived)
        0.975 | 2                | 4.3026527297494618 | mpmath, 30 digits (derived)
        0.95  | 4                | 2.1318467863266495 | mpmath, 30 digits (derived)
        """)
    void studentAgrees(double p, double degrees, double quantile, String source) {
        assertEquals(quantile, Quantile.student(p, degrees), 1e-12 * quantile, source);
        assertEquals(quantile, Quantile.studentTwoSided(2 * p - 1, degrees), 1e-12 * quantile, source);
    }

    @Test
    void othersAgreeWithThirtyDigitArithmetic() {
        // mpmath 1.3 by inversion of the incomplete gamma, beta and error functions (derived)
        assertEquals(1.959963984540054, Quantile.normal(0.975), 1e-15);
        assertEquals(9.82069117175256e-4, Quantile.chiSquared(0.025, 1), 1e-15);
        assertEquals(5.628726103039732, Quantile.chiSquared(0.025, 14), 1e-12);
        assertEquals(Math.cbrt(0.05), Quantile.beta(0.05, 3, 1), 1e-13);
    }

    @Test
    void refusesWhatIsNoProbability() {
        assertThrows(IllegalArgumentException.class, () -> Quantile.student(95, 3));
        assertThrows(IllegalArgumentException.class, () -> Quantile.student(0.95, 0));
    }
}
