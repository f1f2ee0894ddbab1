// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import org.junit.jupiter.api.Test;

class OutliersTest {

    @Test
    void flagsWhatLiesBeyondThreeAndAHalf() {
        // median 5, deviations 4 3 2 1 0 1 2 3 4, their median 2: far is more than 3.5 · 2 / 0.6745 = 10.38 (derived)
        assertArrayEquals(new int[0], Outliers.of(new double[] {1, 2, 3, 4, 5, 6, 7, 8, 15.3}));
        assertArrayEquals(new int[] {8}, Outliers.of(new double[] {1, 2, 3, 4, 5, 6, 7, 8, 15.4}));
        assertArrayEquals(new int[] {0, 8}, Outliers.of(new double[] {-5.4, 2, 3, 4, 5, 6, 7, 8, 15.4}));
    }

    @Test
    void withoutScatterFlagsNone() {
        assertArrayEquals(new int[0], Outliers.of(new double[] {5, 5, 5, 5, 5, 99}));
    }
}
