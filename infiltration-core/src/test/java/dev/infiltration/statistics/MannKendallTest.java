// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.hipparchus.stat.correlation.KendallsCorrelation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MannKendallTest {

    static MannKendall series(String name) {
        return MannKendall.of(
                Published.column("trend-series.csv", name, 1), Published.column("trend-series.csv", name, 2));
    }

    @ParameterizedTest(name = "{0}: {5}")
    @CsvSource(delimiter = '|', textBlock = """
        # case       | S     | variance           | z                  | p                    | source and mark
        epa-sulfate  | 194   | 1428               | 5.107321596840894  | 3.26757357071795e-07 | EPA 530/R-09-007 example 17-6: z 5.107322, p 3.267574e-07, ties 2, 2, 3 (seen, EnvStats)
        epa-sodium   | 25    | 125                | 2.1466252583998    | 0.03182312738649           | EPA 530/R-09-007 example 17-7 data (seen, EnvStats), recomputed
        sen-1968     | 21    | 44.333333333333336 | 3.00375704593055      | 0.002666681793614           | Sen 1968 data (seen, scipy), variance 133/3, z 20/sqrt of it (derived)
        smwr-16      | 58    | 493.3333333333333  | 2.56628346267727   | 0.01027947848521           | USGS smwrStats data (seen), recomputed
        nile         | -1387 | 112728.33333333333 | -4.128066522844101 | 3.65826292166433e-05 | R 4.2.2 cor.test of datasets Nile: z -4.1280665228441, 11 tie groups (seen)
        precip-gl    | 989   | 74398.33333333333  | 3.62222431276352   | 2.92080673912498e-04 | Great Lakes 1900-1986, p 0.00029 (memory; data seen, Kendall), recomputed
        """)
    void agreesWithPublishedCases(String name, long s, double variance, double z, double p, String source) {
        MannKendall test = series(name);
        assertEquals(s, test.statistic(), source);
        assertEquals(variance, test.variance(), 1e-9);
        assertEquals(z, test.z(), 1e-10);
        assertEquals(p, test.approximate(), p * 1e-10);
    }

    @ParameterizedTest(name = "{0}: {3}")
    @CsvSource(delimiter = '|', textBlock = """
        # case            | S  | one-sided     | source and mark
        epa-sodium        | 25 | 17303/1209600 | EPA 530/R-09-007 example 17-7 data (seen), exact (derived)
        hwc-cloud-seeding | -6 | 7/60          | Hollander, Wolfe & Chicken 2014 example 9.1: C -6 (seen, NSM3)
        gilbert-16.1      | 4  | 1/6           | Gilbert 1987 ch. 16: S 4, P 0.167 (memory)
        helsel-hirsch-10.1| 19 | 1/720         | Helsel & Hirsch 2002 sec. 10.1 data (memory), exact (derived)
        tuna              | 16 | 21671/362880  | Hollander & Wolfe 1973 p. 187: exact .05972 (seen, R 4.2.2 cor.test)
        """)
    void countsLikePublishedCases(String name, long s, String tail, String source) {
        MannKendall test = name.equals("tuna")
                ? MannKendall.of(Published.group("hw-tuna", "hunterL"), Published.group("hw-tuna", "panel"))
                : series(name);
        String[] parts = tail.split("/", -1);
        ExactProbability one = ExactProbability.of(Long.parseLong(parts[0]), Long.parseLong(parts[1]));
        assertEquals(s, test.statistic(), source);
        assertEquals(one, test.exactTail().orElseThrow());
        assertEquals(2 * one.value(), test.exact().orElseThrow().value(), 1e-15);
        assertEquals(test.exact().orElseThrow().value(), test.pValue());
    }

    @ParameterizedTest(name = "{0}: {4}")
    @CsvSource(delimiter = '|', textBlock = """
        # case             | tau-a             | tau-b              | tolerance | source and mark
        epa-sulfate        | 0.766798418972332 | 0.774489668813809  | 1e-14     | EnvStats prints tau-a 0.7667984 (seen); tau-b recomputed
        helsel-hirsch-10.1 | 0.904761904761905 | 0.904761904761905  | 1e-14     | Helsel & Hirsch 2002 sec. 10.1: 0.90 (memory)
        smwr-16            | 0.483333333333333 | 0.483333333333333  | 1e-14     | USGS smwrStats: 0.483333333 (seen)
        nile               | -0.28020202       | -0.280741334724613 | 1e-8      | R 4.2.2 cor.test: tau-b (seen)
        precip-gl          | 0.26436781609     | 0.264580074509200  | 1e-10     | Kendall: 0.265 (memory), recomputed
        """)
    void tausAgreeWithPublishedCases(String name, double a, double b, double tolerance, String source) {
        assertEquals(a, series(name).tauA(), tolerance, source);
        assertEquals(b, series(name).tauB(), tolerance);
    }

    @Test
    void smallSeriesAgreeWithTheCountedProbability() {
        // Sen 1968: P(S >= 13) 0.0345238 (derived); smwr-16 two-sided 0.00859466758633064 (derived)
        assertEquals(
                0.0345238095238095, KendallDistribution.ofDifferent(7).atMost(4).value(), 1e-15);
        assertEquals(0.00859466758633064, series("smwr-16").pValue(), 1e-16);
    }

    @Test
    void fourDatesCannotTellAndFiveCan() {
        assertEquals(Conclusion.INSUFFICIENT_DATA, MannKendall.of(4, 3, 2, 1).conclusion());
        assertEquals(Conclusion.LOWER, MannKendall.of(5, 4, 3, 2, 1).conclusion());
        assertEquals(Conclusion.HIGHER, MannKendall.of(1, 2, 3, 4, 5).conclusion());
        assertEquals(Conclusion.NOT_SIGNIFICANT, MannKendall.of(1, 2, 5, 4, 3).conclusion());
    }

    @Test
    void tiesTakeFromWhatCanBeShown() {
        // 2 of 5!/(4!) orders (derived)
        assertEquals(0.4, MannKendall.of(1, 1, 1, 1, 2).smallestPValue(), 1e-15);
        assertEquals(1, MannKendall.of(3, 3, 3).pValue());
        assertEquals(0, MannKendall.of(3, 3, 3).z());
    }

    @Test
    void severalValuesAtOneTimeAreApproximated() {
        MannKendall test = MannKendall.of(new double[] {1, 1, 2, 2, 3}, new double[] {9, 8, 7, 6, 5});
        assertEquals(-8, test.statistic());
        assertTrue(test.exact().isEmpty());
        assertEquals(test.approximate(), test.pValue());
    }

    @Test
    void refusesWhatAreNoPairs() {
        assertThrows(IllegalArgumentException.class, () -> MannKendall.of(new double[] {1}, new double[] {1, 2}));
        assertEquals(0, MannKendall.of().statistic());
    }

    @Property(tries = 2000)
    void tauAgreesWithHipparchus(
            @ForAll @Size(min = 2, max = 40) List<@IntRange(min = 0, max = 15) Integer> values,
            @ForAll @IntRange(min = 1, max = 4) int each) {
        double[] y = values.stream().mapToDouble(Integer::doubleValue).toArray();
        double[] x = IntStream.range(0, y.length)
                .mapToDouble(i -> Math.floorDiv(i, each))
                .toArray();
        double tau = MannKendall.of(x, y).tauB();
        if (!Double.isNaN(tau)) {
            assertEquals(new KendallsCorrelation().correlation(x, y), tau, 1e-12);
        }
    }

    @Property(tries = 1000)
    void varianceWithTiesAgreesWithTryingAllOrders(
            @ForAll @Size(min = 3, max = 6) List<@IntRange(min = 0, max = 3) Integer> values,
            @ForAll @IntRange(min = 1, max = 2) int each) {
        double[] y = values.stream().mapToDouble(Integer::doubleValue).toArray();
        double[] x = IntStream.range(0, y.length)
                .mapToDouble(i -> Math.floorDiv(i, each))
                .toArray();
        double[] squares = {0, 0};
        permute(x, y, 0, squares);
        assertEquals(squares[0] / squares[1], MannKendall.of(x, y).variance(), 1e-9);
    }

    private static void permute(double[] x, double[] y, int from, double[] squares) {
        if (from == y.length) {
            squares[0] += Math.pow((double) MannKendall.of(x, y).statistic(), 2);
            squares[1]++;
            return;
        }
        for (int i = from; i < y.length; i++) {
            double[] swapped = y.clone();
            swapped[from] = y[i];
            swapped[i] = y[from];
            permute(x, swapped, from + 1, squares);
        }
    }

    @Property(tries = 1000)
    void turningTheSeriesRoundTurnsTheSign(
            @ForAll @Size(min = 1, max = 20) List<@IntRange(min = 0, max = 9) Integer> values) {
        double[] y = values.stream().mapToDouble(Integer::doubleValue).toArray();
        double[] back = IntStream.range(0, y.length)
                .mapToDouble(i -> y[y.length - 1 - i])
                .toArray();
        assertEquals(-MannKendall.of(y).statistic(), MannKendall.of(back).statistic());
        assertEquals(MannKendall.of(y).exact(), MannKendall.of(back).exact());
        double[] inInches = Arrays.stream(y).map(v -> v / 25.4).toArray();
        assertEquals(MannKendall.of(y).exact(), MannKendall.of(inInches).exact());
    }

    /** 0.1 + 0.2 and 0.3 are one value in other digits (derived). */
    @Test
    void valuesThatDifferByRoundingAloneAreOne() {
        MannKendall rounded = MannKendall.of(0.1 + 0.2, 0.3, 0.5, 0.6, 0.7);
        MannKendall exact = MannKendall.of(0.3, 0.3, 0.5, 0.6, 0.7);
        assertEquals(exact.statistic(), rounded.statistic());
        assertEquals(exact.pValue(), rounded.pValue());
        assertThrows(IllegalArgumentException.class, () -> MannKendall.of(1, Double.NaN, 3));
    }
}
