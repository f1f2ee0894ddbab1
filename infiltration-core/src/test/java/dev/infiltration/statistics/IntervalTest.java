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
    void upperLimitBeyondAHundredEstimatesIsNotPrinted() {
        // a limit of a hundred times the estimate is the project's own convention (derived)
        Interval wide = new Interval(812.3, 150_001, 0.95);
        assertEquals(
                "at least 812 (lower limit of the 95 % interval; too few locations for an upper limit)",
                wide.text(1500, TextTable::rate, "locations"));
        assertEquals("812 to 150000 (95 %)", wide.text(1500.01, TextTable::rate, "locations"));
        assertEquals(
                "at least 3 (lower limit of the 95 % interval; too few values for an upper limit)",
                new Interval(3, Double.POSITIVE_INFINITY, 0.95).text(10, TextTable::number, "values"));
    }

    @Test
    void refusesWhatIsNoInterval() {
        assertThrows(IllegalArgumentException.class, () -> new Interval(2, 1, 0.95));
        assertThrows(IllegalArgumentException.class, () -> new Interval(Double.NaN, 1, 0.95));
        assertThrows(IllegalArgumentException.class, () -> new Interval(1, 2, 95));
        assertThrows(IllegalArgumentException.class, () -> new Interval(1, 2, 0));
    }
}
