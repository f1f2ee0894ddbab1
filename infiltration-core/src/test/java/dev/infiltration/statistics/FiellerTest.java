// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class FiellerTest {

    @Test
    void aCertainBottomGivesThePlainInterval() {
        Fieller limits = new Fieller.Estimates(6, 2, 1, 0, 0).limits(2, 0.95);
        assertEquals(Fieller.Shape.WITHIN, limits.shape());
        assertEquals(3, limits.ratio());
        assertEquals(2, limits.low(), 1e-15);
        assertEquals(4, limits.high(), 1e-15);
    }

    @Test
    void aBottomThatMayBeNothingGivesNoBounds() {
        Fieller outside = new Fieller.Estimates(10, 1, 1, 0, 1).limits(2, 0.95);
        assertEquals(Fieller.Shape.OUTSIDE, outside.shape());
        assertTrue(outside.fits(10));
        assertFalse(outside.fits(0));
        assertFalse(outside.interval().isBounded());
        Fieller everything = new Fieller.Estimates(1, 1, 1, 0, 1).limits(2, 0.95);
        assertEquals(Fieller.Shape.EVERYTHING, everything.shape());
        assertTrue(everything.fits(-1e9));
        assertFalse(everything.interval().isBounded());
    }

    @Property(tries = 3000)
    void limitsEncloseTheRatiosThatFit(
            @ForAll @DoubleRange(min = -10, max = 10) double top,
            @ForAll @DoubleRange(min = -10, max = 10) double bottom,
            @ForAll @DoubleRange(min = 0.1, max = 5) double topSd,
            @ForAll @DoubleRange(min = 0.1, max = 5) double bottomSd,
            @ForAll @DoubleRange(min = -0.9, max = 0.9) double correlation,
            @ForAll @DoubleRange(min = -20, max = 20) double candidate) {
        double covariance = correlation * topSd * bottomSd;
        Fieller limits =
                new Fieller.Estimates(top, bottom, topSd * topSd, covariance, bottomSd * bottomSd).limits(2, 0.95);
        double variance = topSd * topSd - 2 * candidate * covariance + candidate * candidate * bottomSd * bottomSd;
        double off = Math.abs(top - candidate * bottom) / Math.sqrt(variance);
        boolean betweenShapes = Math.abs(Math.abs(bottom) - 2 * bottomSd) < 1e-9;
        if (Math.abs(off - 2) > 1e-6 && !betweenShapes) {
            assertEquals(off < 2, limits.fits(candidate), () -> limits + " at " + off);
        }
    }
}
