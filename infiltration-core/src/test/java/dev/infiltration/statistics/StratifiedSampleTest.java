// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.statistics.StratifiedSample.Stratum;
import java.util.List;
import org.junit.jupiter.api.Test;

class StratifiedSampleTest {

    private static final SampleStatistics EDGE = new SampleStatistics(4, 5, 0.8);
    private static final SampleStatistics INTERIOR = new SampleStatistics(6, 7, 0.5);

    @Test
    void onePartIsStudents() {
        double[] logs = {4.1, 5.0, 5.2, 6.1};
        assertEquals(
                SampleStatistics.of(logs).interval(0.9),
                StratifiedSample.of(logs).logMeanInterval(0.9));
    }

    @Test
    void partsWeighByTheirShareOfTheArea() {
        StratifiedSample strata = new StratifiedSample(List.of(new Stratum(0.25, EDGE), new Stratum(0.75, INTERIOR)));
        assertEquals(0.25 * 5 + 0.75 * 7, strata.logMean());
        // variances 0.01, 0.0234375; Satterthwaite degrees 0.0334375² / (0.01²/3 + 0.0234375²/5) (derived)
        double variance = 0.0625 * 0.64 / 4 + 0.5625 * 0.25 / 6;
        double degrees = variance * variance / (1e-4 / 3 + Math.pow(0.5625 * 0.25 / 6, 2) / 5);
        Interval interval = strata.logMeanInterval(0.95).orElseThrow();
        assertEquals(6.5 + Quantile.studentTwoSided(0.95, degrees) * Math.sqrt(variance), interval.high(), 1e-12);
    }

    @Test
    void limitsOfTheMeanAreRecoveredFromThoseOfTheParts() {
        StratifiedSample strata = new StratifiedSample(List.of(new Stratum(0.25, EDGE), new Stratum(0.75, INTERIOR)));
        double edge = Math.exp(5 + 0.32);
        double interior = Math.exp(7 + 0.125);
        double mean = 0.25 * edge + 0.75 * interior;
        assertEquals(mean, strata.logNormalMean(), 1e-9);
        double edgeOff = 0.25 * (Math.exp(new LogNormalMean(4, 5, 0.8).limit(0.025)) - edge);
        double interiorOff = 0.75 * (Math.exp(new LogNormalMean(6, 7, 0.5).limit(0.025)) - interior);
        assertEquals(
                mean - Math.hypot(edgeOff, interiorOff),
                strata.logNormalMeanInterval(0.95).orElseThrow().low(),
                1e-8);
    }

    @Test
    void aPartOfOneLocationLeavesNoInterval() {
        StratifiedSample strata =
                new StratifiedSample(List.of(new Stratum(0.5, SampleStatistics.of(5)), new Stratum(0.5, INTERIOR)));
        assertTrue(strata.logMeanInterval(0.95).isEmpty());
        assertTrue(strata.logNormalMeanInterval(0.95).isEmpty());
        assertTrue(StratifiedSample.of(5, 6).logMeanInterval(0.95).isPresent());
        assertTrue(StratifiedSample.of(5, 6).logNormalMeanInterval(0.95).isEmpty());
    }

    @Test
    void noScatterLeavesNoDoubt() {
        assertEquals(
                new Interval(5, 5, 0.95),
                StratifiedSample.of(5, 5, 5).logMeanInterval(0.95).orElseThrow());
    }
}
