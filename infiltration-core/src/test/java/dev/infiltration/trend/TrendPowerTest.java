// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.trend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TrendPowerTest {

    /** Own quadrature with 25 digits, both tails; second way R 4.2.2 (recomputed). */
    @ParameterizedTest
    @CsvSource({
        "10, 0 1 2 3, 0.085, 0.12, 0.99799284878395281",
        "5, 0 1 2, 0.10, 0.15, 0.46923430785115446",
        "10, 0 0.5 1 2, 0.2231435513, 0.35, 0.8217051223722969",
        "3, 0 1, 0.3, 0.2, 0.19412331494278413"
    })
    void powerAgreesWithReferenceValues(int locations, String years, double slope, double logSd, double expected) {
        TrendPower power = new TrendPower(
                logSd, Arrays.stream(years.split(" ")).map(Double::valueOf).toList());
        assertEquals(expected, power.power(StrictMath.exp(-slope), locations), 1e-9);
    }

    /** As above: 9.83 as a real number, rounded up (recomputed). */
    @Test
    void locationsForEightyPercent() {
        TrendPower power = new TrendPower(0.15, List.of(0.0, 1.0, 2.0));
        assertEquals(10, power.locationsFor(StrictMath.exp(-0.1), 0.8).orElseThrow());
    }

    @Test
    void refusesArgumentsOutOfRange() {
        assertThrows(IllegalArgumentException.class, () -> new TrendPower(0, List.of(0.0, 1.0)));
        assertThrows(IllegalArgumentException.class, () -> new TrendPower(0.1, List.of(1.0, 1.0)));
        TrendPower power = new TrendPower(0.1, List.of(0.0, 1.0));
        assertThrows(IllegalArgumentException.class, () -> power.power(0.9, 1));
        assertThrows(IllegalArgumentException.class, () -> power.power(-1, 5));
    }
}
