// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class BootstrapIntervalTest {

    private static final double[] VALUES = {3.1, 4.0, 4.4, 5.2, 5.9, 6.0, 6.8, 7.7, 8.1, 9.9};

    @Test
    void aSeedGivesTheSameInterval() {
        assertEquals(BootstrapInterval.interval(VALUES, 0.95, 1), BootstrapInterval.interval(VALUES, 0.95, 1));
        assertNotEquals(BootstrapInterval.interval(VALUES, 0.95, 1), BootstrapInterval.interval(VALUES, 0.95, 2));
    }

    @Test
    void manyNormalValuesGiveStudentsInterval() {
        double[] normal = IntStream.range(0, 400)
                .mapToDouble(i -> Quantile.normal((i + 0.5) / 400))
                .toArray();
        Interval student = SampleStatistics.of(normal).interval(0.95).orElseThrow();
        Interval drawn = BootstrapInterval.interval(normal, 0.95, 3);
        assertEquals(student.low(), drawn.low(), 0.012);
        assertEquals(student.high(), drawn.high(), 0.012);
    }

    @Test
    void skewedValuesReachFartherUp() {
        double[] skewed = {1, 1.1, 1.2, 1.3, 1.5, 1.8, 2.5, 9};
        double mean = SampleStatistics.of(skewed).mean();
        Interval drawn = BootstrapInterval.interval(skewed, 0.95, 3);
        assertTrue(drawn.high() - mean > 2 * (mean - drawn.low()));
    }

    @Test
    void ahigherLevelIsWider() {
        Interval narrow = BootstrapInterval.interval(VALUES, 0.5, 1);
        Interval wide = BootstrapInterval.interval(VALUES, 0.99, 1);
        assertTrue(wide.low() < narrow.low() && narrow.high() < wide.high());
    }

    @Test
    void valuesAllAlikeLeaveNoDoubt() {
        assertEquals(new Interval(4, 4, 0.95), BootstrapInterval.interval(new double[] {4, 4, 4}, 0.95, 1));
    }
}
