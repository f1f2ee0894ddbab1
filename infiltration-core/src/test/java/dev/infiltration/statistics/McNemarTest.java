// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class McNemarTest {

    @ParameterizedTest(name = "{0}, {1}: {7}")
    @CsvSource(delimiter = '|', textBlock = """
        # gained | lost | exact                | corrected         | its p                | plain             | its p                | source and mark
        150      | 86   | 3.71593613957142e-05 | 16.8177966101695  | 4.11456228134594e-05 | 17.3559322033898  | 3.09929344104522e-05 | Agresti 1990 p. 350, approval (seen, R 4.2.2 mcnemar.test)
        13       | 7    | 0.263175964355469    | 1.25              | 0.263552477282973    | 1.8               | 0.179712494878999    | StatXact-6 p. 306: z 1.342, .1797, exact .2632 (seen, coin); corrected (derived)
        """)
    void agreesWithPublishedCases(
            int gained, int lost, double exact, double cc, double ccP, double plain, double plainP, String source) {
        McNemar test = new McNemar(gained, lost);
        assertEquals(exact, test.exact().value(), 1e-14 * exact, source);
        assertEquals(cc, test.chiSquared(Continuity.CORRECTED), 1e-12);
        assertEquals(ccP, test.approximate(Continuity.CORRECTED), 1e-12);
        assertEquals(plain, test.chiSquared(Continuity.UNCORRECTED), 1e-12);
        assertEquals(plainP, test.approximate(Continuity.UNCORRECTED), 1e-12);
    }

    @Test
    void noChangeShowsNothing() {
        McNemar none = new McNemar(0, 0);
        assertEquals(1, none.exact().value());
        assertEquals(0, none.chiSquared(Continuity.CORRECTED));
        assertEquals(1, none.approximate(Continuity.CORRECTED));
        assertEquals(Conclusion.INSUFFICIENT_DATA, none.conclusion());
        assertThrows(IllegalArgumentException.class, () -> new McNemar(1, -1));
    }

    @Test
    void sixChangesOneWayAreTheFewestThatShow() {
        assertEquals(Conclusion.INSUFFICIENT_DATA, new McNemar(5, 0).conclusion());
        assertEquals(Conclusion.HIGHER, new McNemar(6, 0).conclusion());
        assertEquals(Conclusion.LOWER, new McNemar(0, 6).conclusion());
        assertEquals(Conclusion.NOT_SIGNIFICANT, new McNemar(5, 1).conclusion());
    }

    @Test
    void theCorrectionNeverTurnsTheDifferenceRound() {
        assertEquals(0, new McNemar(3, 3).chiSquared(Continuity.CORRECTED));
    }
}
