// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class RanksTest {

    @Test
    void tiesShareTheMeanOfTheirRanks() {
        Ranks ranks = Ranks.of(new double[] {30, 10, 20, 20, 40, 20}, 0);
        assertArrayEquals(new int[] {10, 2, 6, 6, 12, 6}, ranks.doubled());
        assertEquals(27 - 3, ranks.tieSum());
        assertEquals(22, ranks.doubledSum(1, 5) - 4);
    }

    @Test
    void whatDiffersByRoundingIsTied() {
        double tenth = 0.3 - 0.2;
        assertArrayEquals(
                new int[] {3, 3}, Ranks.of(new double[] {0.1, tenth}, 0).doubled());
        assertArrayEquals(
                new int[] {2, 4}, Ranks.of(new double[] {0.1, 0.1 + 1e-11}, 0).doubled());
    }

    @Test
    void sizeDoesNotDecideATie() {
        assertArrayEquals(
                new int[] {2, 4, 6}, Ranks.of(new double[] {0, 1.01, 1e15}, 0).doubled());
        assertArrayEquals(
                new int[] {3, 3}, Ranks.of(new double[] {0, 1e-13}, 1e-12).doubled());
    }

    @Test
    void endlessValuesAreTiedWithTheirLikeAlone() {
        double low = Double.NEGATIVE_INFINITY;
        assertArrayEquals(
                new int[] {3, 6, 3},
                Ranks.of(new double[] {low, -5, low}, 1e-12).doubled());
    }
}
