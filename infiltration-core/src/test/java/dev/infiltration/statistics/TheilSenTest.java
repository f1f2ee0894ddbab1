// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TheilSenTest {

    static TheilSen series(String name) {
        return TheilSen.of(
                Published.column("trend-series.csv", name, 1), Published.column("trend-series.csv", name, 2));
    }

    @ParameterizedTest(name = "{0}: {3}")
    @CsvSource(delimiter = '|', textBlock = """
        # case             | slope             | intercept         | source and mark
        epa-sulfate        | 26.66666666666667 | -1909.33333333333 | EPA 530/R-09-007 example 17-6: 26.6666667, -1909.3333 (seen, EnvStats)
        epa-sodium         | 1.333333333333333 | -65.9666666666667 | EPA 530/R-09-007 example 17-7: 1.33 (memory; data seen)
        sen-1968           | 4                 | 4                 | Sen 1968: slope 4, intercept 4 (seen, scipy)
        hwc-cloud-seeding  | -0.05625          | 1.32875           | Hollander, Wolfe & Chicken 2014 example 9.1: -0.056 (memory; data seen)
        gilbert-16.1       | 2.916666666666667 | 7.208333333333333 | Gilbert 1987 ch. 16 data (memory), 35/12 (derived)
        helsel-hirsch-10.1 | 1                 | 0                 | Helsel & Hirsch 2002 sec. 10.1: 1 (memory)
        smwr-16            | 0.781746031746032 | 1.855158730158730 | USGS smwrStats data (seen), 197/252 (derived)
        nile               | -2.6              | 5886.8            | R 4.2.2 datasets Nile (seen), recomputed
        precip-gl          | 0.04              | -46.03            | Great Lakes 1900-1986 data (seen, Kendall), recomputed
        """)
    void agreesWithPublishedCases(String name, double slope, double intercept, String source) {
        assertEquals(slope, series(name).slope(), 1e-13, source);
        assertEquals(intercept, series(name).intercept(), 1e-9);
    }

    @ParameterizedTest(name = "{0}: {4}")
    @CsvSource(delimiter = '|', textBlock = """
        # case       | level | low               | high              | source and mark
        epa-sulfate  | 0.95  | 20                | 35.8490566038     | ranks 89 and 165, rounded (recomputed); EnvStats interpolates at 89.47 and 164.53: 20, 35.71182 (seen)
        nile         | 0.95  | -3.62790697674419 | -1.42857142857143 | R 4.2.2 datasets Nile (seen), rounded ranks (recomputed)
        precip-gl    | 0.95  | 0.0195238095238   | 0.0621739130435   | Great Lakes 1900-1986 (seen), rounded ranks (recomputed)
        """)
    void intervalsByRoundedRanksAgree(String name, double level, double low, double high, String source) {
        Interval interval = series(name).interval(level).orElseThrow();
        assertEquals(low, interval.low(), 1e-9, source);
        assertEquals(high, interval.high(), 1e-9);
        assertEquals(level, interval.level());
    }

    @ParameterizedTest(name = "{0}: {6}")
    @CsvSource(delimiter = '|', textBlock = """
        # case     | level | low by rounding   | high by rounding  | low               | high              | source and mark
        sen-1968   | 0.93  | 3.714285714285714 | 4.375             | 3.75              | 4.181818181818182 | Sen 1968: (3.71, 4.38) at ranks 4 and 18 (seen, scipy); exact 5 and 17 (derived)
        epa-sodium | 0.95  | 0.454545454545    | 2.33333333333     | 0.454545454545    | 2.33333333333     | ranks 12 and 34 both ways (derived)
        """)
    void exactRanksLieNextToRoundedOnes(
            String name, double level, double low, double high, double exactLow, double exactHigh, String source) {
        Interval rounded =
                series(name).byNormalRanks(MannKendallTest.series(name), level).orElseThrow();
        assertEquals(low, rounded.low(), 1e-9, source);
        assertEquals(high, rounded.high(), 1e-9);
        Interval exact = series(name).interval(level).orElseThrow();
        assertEquals(exactLow, exact.low(), 1e-9);
        assertEquals(exactHigh, exact.high(), 1e-9);
        assertTrue(exact.level() >= level);
    }

    @Test
    void levelReachedIsCountedOut() {
        // 7 points, 4 or fewer of 21 pairs out of order: 0.0345238 (derived)
        assertEquals(
                1 - 2 * 0.0345238095238095,
                series("sen-1968").interval(0.93).orElseThrow().level(),
                1e-14);
    }

    @Test
    void fourPointsReachNoInterval() {
        assertTrue(series("gilbert-16.1").interval(0.95).isEmpty());
        Interval five = series("hwc-cloud-seeding").interval(0.95).orElseThrow();
        assertEquals(1 - 2.0 / 120, five.level(), 1e-15);
    }

    @Test
    void oneWildPointDoesNotMoveIt() {
        double[] x = {0, 1, 2, 3, 4, 5};
        assertEquals(2, TheilSen.of(x, new double[] {1, 3, 5, 700, 9, 11}).slope());
    }

    @Test
    void refusesWhatAreNoPairs() {
        assertThrows(IllegalArgumentException.class, () -> TheilSen.of(new double[] {1}, new double[] {1}));
        assertThrows(IllegalArgumentException.class, () -> TheilSen.of(new double[] {1, 2}, new double[] {1}));
        assertTrue(Double.isNaN(
                TheilSen.of(new double[] {1, 1}, new double[] {1, 2}).slope()));
    }

    @Property(tries = 500)
    void pointsOnALineGiveIt(
            @ForAll @IntRange(min = -20, max = 20) int slope,
            @ForAll @IntRange(min = -9, max = 9) int height,
            @ForAll @IntRange(min = 2, max = 400) int n) {
        double[] x = IntStream.range(0, n).asDoubleStream().toArray();
        double[] y = IntStream.range(0, n).mapToDouble(i -> height + slope * i).toArray();
        assertEquals(slope, TheilSen.of(x, y).slope(), 1e-9);
        assertEquals(height, TheilSen.of(x, y).intercept(), 1e-6);
    }
}
