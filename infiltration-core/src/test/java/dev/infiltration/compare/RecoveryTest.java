// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.statistics.Fieller;
import dev.infiltration.statistics.Interval;
import dev.infiltration.statistics.SampleStatistics;
import org.junit.jupiter.api.Test;

class RecoveryTest {

    private static final double[] BEFORE = {100, 200, 150, 120};
    private static final double[] AFTER = {550, 640, 575, 530};

    @Test
    void isTheShareOfTheLossBroughtBack() {
        // means 142.5, 573.75, 1000: 431.25 / 857.5 (derived)
        assertEquals(431.25 / 857.5, Recovery.of(1000, BEFORE, AFTER).share(), 1e-15);
        assertEquals(0, Recovery.of(1000, BEFORE, BEFORE).share());
        assertEquals(1, Recovery.of(AFTER, BEFORE, AFTER).share());
    }

    @Test
    void aLossTakenAsKnownGivesThePlainInterval() {
        double[] before = {100, 100, 100};
        double[] after = {400, 500, 600};
        Interval gain = SampleStatistics.of(300, 400, 500).interval(0.95).orElseThrow();
        Interval share = Recovery.of(1100, before, after).interval(0.95).orElseThrow();
        assertEquals(gain.low() / 1000, share.low(), 1e-14);
        assertEquals(gain.high() / 1000, share.high(), 1e-14);
    }

    @Test
    void limitsAreWhereTheDifferenceIsJustNotShown() {
        Fieller limits = Recovery.of(1000, BEFORE, AFTER).limits(0.95).orElseThrow();
        for (double share : new double[] {limits.low(), limits.high()}) {
            double[] rest = new double[BEFORE.length];
            for (int i = 0; i < rest.length; i++) {
                rest[i] = AFTER[i] - BEFORE[i] - share * (1000 - BEFORE[i]);
            }
            assertEquals(0.05, SampleStatistics.of(rest).pValue(), 1e-10);
        }
    }

    @Test
    void hasNoBoundsWhereTheLossIsNotShown() {
        Recovery recovery =
                Recovery.of(new double[] {150, 90, 140}, new double[] {100, 130, 120}, new double[] {200, 210, 180});
        assertFalse(recovery.interval(0.95).orElseThrow().isBounded());
        assertTrue(recovery.toString().contains("no lower limit to no upper limit"));
    }

    @Test
    void oneLocationHasNoInterval() {
        Recovery one = Recovery.of(1000, new double[] {100}, new double[] {400});
        assertTrue(one.interval(0.95).isEmpty());
        assertTrue(one.toString().contains("too few locations"));
        assertThrows(IllegalArgumentException.class, () -> Recovery.of(1000, BEFORE, new double[] {1}));
        assertThrows(IllegalArgumentException.class, () -> Recovery.of(new double[] {1}, BEFORE, AFTER));
    }
}
