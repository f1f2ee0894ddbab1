// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class RootsTest {

    @Test
    void findsTheZeroOnEitherSide() {
        assertEquals(Math.sqrt(7), Roots.beyond(0, 0.3, x -> 7 - x * x), 1e-13);
        assertEquals(-Math.sqrt(7), Roots.beyond(0, -0.3, x -> 7 - x * x), 1e-13);
        assertEquals(-1000, Roots.beyond(5, -1, x -> x * x * x + 1e9), 1e-9);
    }

    @Test
    void isInfiniteWhereThereIsNone() {
        assertEquals(Double.POSITIVE_INFINITY, Roots.beyond(0, 1, x -> 1));
        assertEquals(Double.NEGATIVE_INFINITY, Roots.beyond(0, -1, x -> 1));
    }
}
