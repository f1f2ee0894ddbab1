// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class IntervalTest {

    @Test
    void holdsItsLimits() {
        Interval interval = Interval.around(10, 2, 0.9);
        assertTrue(interval.contains(8));
        assertTrue(interval.contains(12));
        assertFalse(interval.contains(12.0001));
        assertFalse(interval.contains(Double.NaN));
        assertTrue(interval.isBounded());
    }

    @Test
    void mayBeUnbounded() {
        Interval open = new Interval(3, Double.POSITIVE_INFINITY, 0.95);
        assertFalse(open.isBounded());
        assertEquals("3 to no upper limit (95 %)", open.toString());
    }

    @Test
    void goesThroughTheExponential() {
        Interval interval = new Interval(0, StrictMath.log(2), 0.95).exp();
        assertEquals(1, interval.low());
        assertEquals(2, interval.high(), 1e-15);
    }

    @Test
    void refusesWhatIsNoInterval() {
        assertThrows(IllegalArgumentException.class, () -> new Interval(2, 1, 0.95));
        assertThrows(IllegalArgumentException.class, () -> new Interval(Double.NaN, 1, 0.95));
        assertThrows(IllegalArgumentException.class, () -> new Interval(1, 2, 95));
        assertThrows(IllegalArgumentException.class, () -> new Interval(1, 2, 0));
    }
}
