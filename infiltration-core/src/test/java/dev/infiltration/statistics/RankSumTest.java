// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.UniqueElements;
import org.apache.commons.statistics.inference.MannWhitneyUTest;
import org.apache.commons.statistics.inference.PValueMethod;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RankSumTest {

    @ParameterizedTest(name = "{0}: {7}")
    @CsvSource(delimiter = '|', textBlock = """
        # case         | group     | against    | pairs | two-sided | one-sided | shift | source and mark
        hw-placenta    | term      | weeks12-26 | 35    | 764/3003  | 382/3003  | 0.305 | Hollander & Wolfe 1973 p. 69: W 35, .1272, .2544, HL 0.305 (seen, R 4.2.2 wilcox.test)
        hw-ex4.2       | control   | SST        | 106   | 164/88179 | 82/88179  | 410   | Hollander & Wolfe 1999 p. 110 data (seen); R 4.2.2: HL 410
        rotarod        | control   | treatment  | 102   | 6/161     | 3/161     | 0     | Bergmann et al. 2000: .0373, .0186, heavy ties (seen)
        statxact-bloodp| group1    | group2     | 35    | 9/91      | 74/1365   | 9.5   | StatXact-5 manual p. 227: .0989, .0542, HL 9.5, ties (seen)
        """)
    void agreesWithPublishedCases(
            String name,
            String group,
            String against,
            double pairs,
            String both,
            String one,
            double shift,
            String source) {
        RankSum test = RankSum.of(Published.group(name, group), Published.group(name, against));
        assertEquals(pairs, test.statistic(), source);
        assertEquals(Fractions.of(both), test.exact().orElseThrow());
        assertEquals(Fractions.of(one), test.exactGreater().orElseThrow());
        assertEquals(shift, test.shift().orElseThrow(), 1e-12);
    }

    @ParameterizedTest(name = "{0}: {5}")
    @CsvSource(delimiter = '|', textBlock = """
        # case          | group   | against    | low   | high | source and mark
        hw-placenta     | term    | weeks12-26 | -0.15 | 0.76 | Hollander & Wolfe 1973 p. 79 by R 4.2.2 (seen)
        hw-ex4.2        | control | SST        | 168   | 690  | R 4.2.2 wilcox.test (seen)
        statxact-bloodp | group1  | group2     | 0     | 22   | 7th from either end as without ties (derived); StatXact, which counts with them, prints [-4, 22] (seen)
        """)
    void intervalsAgreeWithPublishedCases(
            String name, String group, String against, double low, double high, String source) {
        RankSum test = RankSum.of(Published.group(name, group), Published.group(name, against));
        Interval interval = test.interval(0.95).orElseThrow();
        assertEquals(low, interval.low(), 1e-12, source);
        assertEquals(high, interval.high(), 1e-12, source);
        assertTrue(interval.level() >= 0.95);
    }

    @Test
    void levelReachedIsCountedOut() {
        // Hollander & Wolfe placenta data, level 961/1001: counted (derived)
        RankSum test = RankSum.of(Published.group("hw-placenta", "term"), Published.group("hw-placenta", "weeks12-26"));
        assertEquals(961 / 1001.0, test.interval(0.95).orElseThrow().level(), 1e-15);
    }

    @ParameterizedTest(name = "{0} against {1} at {2}: {5}")
    @CsvSource(delimiter = '|', textBlock = """
        # smaller | larger | level | rank sum | reached     | source and mark
        3         | 3      | 0.90  | 6        | 18/20       | table of smallest rank sums, two-sided 0.10 (seen); 1 of 20 choices at each end: exactly 90 % (derived)
        3         | 4      | 0.90  | 6        | 33/35       | the same table (seen)
        3         | 5      | 0.90  | 7        | 52/56       | the same table (seen)
        3         | 8      | 0.90  | 9        | 151/165     | the same table (seen)
        3         | 9      | 0.90  | 10       | 198/220     | the same table (seen); 11 of 220 choices at each end: exactly 90 % (derived)
        4         | 9      | 0.90  | 16       | 661/715     | the same table (seen)
        3         | 9      | 0.95  | 8        | 212/220     | the same table, two-sided 0.05 (seen)
        3         | 3      | 0.80  | 7        | 16/20       | the same table, two-sided 0.20 (seen); exactly 80 % (derived)
        """)
    void intervalsReachPublishedCriticalRankSums(
            int smaller, int larger, double level, int rankSum, String reached, String source) {
        double[] group = IntStream.rangeClosed(1, smaller).mapToDouble(i -> i).toArray();
        double[] against =
                IntStream.rangeClosed(1, larger).mapToDouble(i -> 0.01 * i * i).toArray();
        double[] differences = Arrays.stream(group)
                .flatMap(one -> Arrays.stream(against).map(other -> one - other))
                .sorted()
                .toArray();
        int count = rankSum - smaller * (smaller + 1) / 2 + 1;
        Interval interval = RankSum.of(group, against).interval(level).orElseThrow(() -> new AssertionError(source));
        assertEquals(differences[count - 1], interval.low(), source);
        assertEquals(differences[differences.length - count], interval.high());
        assertEquals(Fractions.of(reached).value(), interval.level());
    }

    @Test
    void probabilityOfExactlyFivePercentIsSignificant() {
        // one value above 39 others: 2 of 40 choices (derived); a risk of 5 % includes its limit (common practice)
        RankSum test = RankSum.of(
                new double[] {100}, IntStream.range(0, 39).asDoubleStream().toArray());
        assertEquals(ExactProbability.of(1, 20), test.exact().orElseThrow());
        assertEquals(Conclusion.HIGHER, test.conclusion());
    }

    @ParameterizedTest(name = "{0}: {4}")
    @CsvSource(delimiter = '|', textBlock = """
        # case          | group   | against    | p                  | source and mark
        rotarod         | control | treatment  | 0.0147316878974779 | Bergmann et al. 2000: .0147 (seen)
        statxact-bloodp | group1  | group2     | 0.0853497017656038 | StatXact-5 manual: .0853, z 1.720 (seen)
        """)
    void approximationWithoutCorrectionAgreesWithPublishedCases(
            String name, String group, String against, double p, String source) {
        RankSum test = RankSum.of(Published.group(name, group), Published.group(name, against));
        assertEquals(p, test.approximate(Continuity.UNCORRECTED), 1e-14, source);
    }

    @Test
    void approximationsOfOnePublishedCaseDifferByTheCorrection() {
        // StatXact bloodp: coin prints z 1.720 without correction, R's wilcox.test p 0.0981 with it (seen)
        RankSum test =
                RankSum.of(Published.group("statxact-bloodp", "group1"), Published.group("statxact-bloodp", "group2"));
        assertEquals(1.72045535799849, test.z(Continuity.UNCORRECTED), 1e-13);
        assertEquals(0.0981, test.approximate(Continuity.CORRECTED), 5e-5);
        // Hollander & Wolfe placenta: two-sided with correction 0.244623605126983, one-sided without 0.110335680959923
        RankSum placenta =
                RankSum.of(Published.group("hw-placenta", "term"), Published.group("hw-placenta", "weeks12-26"));
        assertEquals(0.244623605126983, placenta.approximate(Continuity.CORRECTED), 1e-14);
        assertEquals(2 * 0.110335680959923, placenta.approximate(Continuity.UNCORRECTED), 1e-14);
    }

    @Test
    void varianceTakesTiesIntoAccount() {
        // Bergmann et al. 2000 data: 3480/23 (derived, exact fractions)
        RankSum test = RankSum.of(Published.group("rotarod", "control"), Published.group("rotarod", "treatment"));
        assertEquals(3480 / 23.0, test.variance(), 1e-12);
    }

    @Test
    void threeAgainstThreeCannotTellAndFourAgainstFourCan() {
        double[] low = {1, 2, 3};
        double[] high = {11, 12, 13};
        assertEquals(0.1, RankSum.of(low, high).smallestPValue());
        assertEquals(Conclusion.INSUFFICIENT_DATA, RankSum.of(low, high).conclusion());
        assertEquals(
                Conclusion.LOWER,
                RankSum.of(new double[] {1, 2, 3, 4}, new double[] {11, 12, 13, 14})
                        .conclusion());
        assertTrue(RankSum.of(low, high).interval(0.95).isEmpty());
    }

    @Test
    void moreThanSixtyValuesAreApproximated() {
        double[] group = IntStream.range(0, 31).mapToDouble(i -> i * 1.5 + 4).toArray();
        double[] against = IntStream.range(0, 30).mapToDouble(i -> i * 1.37).toArray();
        RankSum test = RankSum.of(group, against);
        assertFalse(test.exact().isPresent());
        assertEquals(
                MannWhitneyUTest.withDefaults()
                        .with(PValueMethod.ASYMPTOTIC)
                        .test(group, against)
                        .getPValue(),
                test.pValue(),
                1e-13);
        // floor(465 - 1.959964 * sqrt(31 * 30 * 62 / 12) + 0.5) = 329 differences from either end (derived)
        double[] differences = Arrays.stream(group)
                .flatMap(one -> Arrays.stream(against).map(other -> one - other))
                .sorted()
                .toArray();
        Interval interval = test.interval(0.95).orElseThrow();
        assertEquals(differences[328], interval.low());
        assertEquals(differences[differences.length - 329], interval.high());
    }

    @Test
    void tailsChangePlacesWithTheGroups() {
        double[] one = {1, 3, 3, 7};
        double[] other = {2, 3, 9, 10, 11};
        assertEquals(RankSum.of(one, other).exactLess(), RankSum.of(other, one).exactGreater());
        assertEquals(RankSum.of(one, other).exact(), RankSum.of(other, one).exact());
    }

    @Test
    void emptyGroupsShowNothing() {
        RankSum test = RankSum.of(new double[0], new double[] {1, 2});
        assertEquals(1, test.pValue());
        assertEquals(Conclusion.INSUFFICIENT_DATA, test.conclusion());
        assertTrue(test.shift().isEmpty());
        assertTrue(test.interval(0.95).isEmpty());
    }

    @Property(tries = 2000)
    void agreesWithCommonsStatistics(
            @ForAll @Size(min = 2, max = 30) @UniqueElements List<@IntRange(min = 1, max = 100_000) Integer> values,
            @ForAll @IntRange(min = 1, max = 29) int cut) {
        int size = Math.min(cut, values.size() - 1);
        double[] all = doubles(values);
        double[] group = Arrays.copyOf(all, size);
        double[] against = Arrays.copyOfRange(all, size, all.length);
        RankSum test = RankSum.of(group, against);
        var commons = MannWhitneyUTest.withDefaults();
        assertEquals(commons.statistic(group, against), test.statistic());
        assertEquals(
                commons.with(PValueMethod.EXACT).test(group, against).getPValue(),
                test.exact().orElseThrow().value(),
                1e-12);
    }

    @Property(tries = 2000)
    void approximationAgreesWithCommonsStatisticsWithTies(
            @ForAll @Size(min = 1, max = 25) List<@IntRange(min = 0, max = 9) Integer> first,
            @ForAll @Size(min = 1, max = 25) List<@IntRange(min = 0, max = 9) Integer> second) {
        double[] group = doubles(first);
        double[] against = doubles(second);
        RankSum test = RankSum.of(group, against);
        if (test.variance() > 0) {
            assertEquals(
                    MannWhitneyUTest.withDefaults()
                            .with(PValueMethod.ASYMPTOTIC)
                            .test(group, against)
                            .getPValue(),
                    test.approximate(Continuity.CORRECTED),
                    1e-12);
        }
    }

    @Property(tries = 500)
    void countsWhatTryingAllChoicesFinds(
            @ForAll @Size(min = 1, max = 6) List<@IntRange(min = 0, max = 4) Integer> first,
            @ForAll @Size(min = 1, max = 6) List<@IntRange(min = 0, max = 4) Integer> second) {
        double[] group = doubles(first);
        double[] against = doubles(second);
        int n = group.length + against.length;
        int[] ranks = Ranks.of(
                        DoubleStream.concat(Arrays.stream(group), Arrays.stream(against))
                                .toArray(),
                        0)
                .doubled();
        int mean = group.length * (n + 1);
        int seen = Math.abs(sum(ranks, (1 << group.length) - 1) - mean);
        int[] choices = IntStream.range(0, 1 << n)
                .filter(choice -> Integer.bitCount(choice) == group.length)
                .toArray();
        long asFar = Arrays.stream(choices)
                .filter(choice -> Math.abs(sum(ranks, choice) - mean) >= seen)
                .count();
        assertEquals(
                ExactProbability.of(asFar, choices.length),
                RankSum.of(group, against).exact().orElseThrow());
    }

    private static double[] doubles(List<Integer> values) {
        return values.stream().mapToDouble(Integer::doubleValue).toArray();
    }

    private static int sum(int[] ranks, int choice) {
        return IntStream.range(0, ranks.length)
                .filter(i -> (choice >> i & 1) == 1)
                .map(i -> ranks[i])
                .sum();
    }

    @Test
    void largeGroupsDoNotOverflow() {
        double[] odd = java.util.stream.IntStream.range(0, 50_000)
                .mapToDouble(i -> 2.0 * i + 1)
                .toArray();
        double[] even = java.util.stream.IntStream.range(0, 50_000)
                .mapToDouble(i -> 2.0 * i)
                .toArray();
        RankSum test = RankSum.of(odd, even);
        assertTrue(test.statistic() > 0 && test.statistic() < 2.5e9, () -> "U = " + test.statistic());
        assertTrue(test.pValue() > 0.5, () -> "p = " + test.pValue());
    }
}
