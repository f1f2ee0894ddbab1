// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.infiltration.compare.RatioPower.Design;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RatioPowerTest {

    /** Own quadrature with 25 digits; second way power.t.test of R 4.2.2, the tail of the effect alone (recomputed). */
    @ParameterizedTest
    @CsvSource({
        "TWO_GROUPS, 0.5, 0.6, 6, 0.4398863447837232",
        "PAIRS, 0.5, 0.6, 6, 0.62319078993732618",
        "TWO_GROUPS, 0.5, 0.6, 10, 0.68569293643890773",
        "PAIRS, 0.5, 0.6, 10, 0.90033019452364949",
        "TWO_GROUPS, 0.7, 0.45, 12, 0.45883232133386798",
        "PAIRS, 0.7, 0.45, 12, 0.70572915245316057",
        "TWO_GROUPS, 0.8, 0.3, 8, 0.28315709273202814",
        "PAIRS, 0.8, 0.3, 8, 0.44260067463974348"
    })
    void powerAgreesWithReferenceValues(Design design, double ratio, double logSd, int locations, double oneTail) {
        RatioPower power = new RatioPower(design, logSd);
        assertEquals(oneTail, power.power(ratio, locations), 5e-4, "the other tail adds less than 0.0005");
        assertEquals(power.power(ratio, locations), power.power(1 / ratio, locations), 1e-12);
    }

    /** As above: the real-valued numbers 12.80, 8.008, 25.98 and 14.53, rounded up (recomputed). */
    @ParameterizedTest
    @CsvSource({"TWO_GROUPS, 0.5, 0.6, 13", "PAIRS, 0.5, 0.6, 9", "TWO_GROUPS, 0.7, 0.45, 26", "PAIRS, 0.7, 0.45, 15"})
    void locationsForEightyPercent(Design design, double ratio, double logSd, int locations) {
        assertEquals(
                locations,
                new RatioPower(design, logSd).locationsFor(ratio, 0.8).orElseThrow());
    }

    /** As above: 2.124035729669651, from the tail of the effect alone (recomputed). */
    @Test
    void detectableRatioAgrees() {
        RatioPower power = new RatioPower(Design.TWO_GROUPS, 0.5);
        double ratio = power.detectableRatio(8, 0.8).orElseThrow();
        assertEquals(2.124035729669651, ratio, 1e-5);
        assertEquals(0.8, power.power(ratio, 8), 1e-12);
    }

    /** sd 0.47238072707743884 for a coefficient of variation of 0.5 (recomputed). */
    @Test
    void standardDeviationOfACoefficientOfVariation() {
        assertEquals(0.4723807270774388, RatioPower.ofCv(0.5).logSd(), 1e-15);
    }

    @Test
    void refusesArgumentsOutOfRange() {
        assertThrows(IllegalArgumentException.class, () -> new RatioPower(Design.PAIRS, 0));
        RatioPower power = new RatioPower(Design.PAIRS, 0.5);
        assertThrows(IllegalArgumentException.class, () -> power.power(0, 5));
        assertThrows(IllegalArgumentException.class, () -> power.power(0.5, 1));
        assertThrows(IllegalArgumentException.class, () -> power.detectableRatio(5, 1));
        assertEquals(java.util.OptionalInt.empty(), power.locationsFor(1, 0.8));
    }
}
