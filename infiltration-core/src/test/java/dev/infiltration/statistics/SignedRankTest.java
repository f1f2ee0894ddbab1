// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.apache.commons.statistics.inference.PValueMethod;
import org.apache.commons.statistics.inference.WilcoxonSignedRankTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SignedRankTest {

    @ParameterizedTest(name = "{0}: {7}")
    @CsvSource(delimiter = '|', textBlock = """
        # case         | n  | sum | two-sided | one-sided | shift  | relative | source and mark
        hw-depression  | 9  | 40  | 5/128     | 5/256     | 0.46   | 1e-12    | Hollander & Wolfe 1973 p. 40: V 40, .0195, .0391, HL 0.46 (seen, R 4.2.2 wilcox.test)
        statxact-sal   | 16 | 124 | 35/16384  | 35/32768  | 137.75 | 1e-12    | StatXact-5 manual p. 181: .0021, HL 137.8; 4 zeros dropped, a tie (seen, exactRankTests)
        light-diff     | 9  | 41  | 7/256     | 7/512     | 7.81   | 1e-12    | DescTools SignTest data, mu 4; HL of R 4.2.2 (seen)
        """)
    void agreesWithPublishedCases(
            String name, int n, double sum, String both, String one, double shift, double relative, String source) {
        SignedRank test = SignedRank.of(differences(name));
        assertEquals(n, test.n(), source);
        assertEquals(sum, test.statistic());
        assertEquals(Fractions.of(both), test.exact().orElseThrow());
        assertEquals(Fractions.of(one), test.exactGreater().orElseThrow());
        double offset = name.equals("light-diff") ? 4 : 0;
        assertEquals(shift, test.shift().orElseThrow() + offset, shift * relative);
    }

    static double[] differences(String name) {
        return switch (name) {
            case "hw-depression" -> minus(Published.group(name, "first"), Published.group(name, "second"));
            case "statxact-sal" -> minus(Published.group(name, "pre"), Published.group(name, "post"));
            default -> Arrays.stream(Published.group(name, "d")).map(d -> d - 4).toArray();
        };
    }

    private static double[] minus(double[] from, double[] taken) {
        return IntStream.range(0, from.length)
                .mapToDouble(i -> from[i] - taken[i])
                .toArray();
    }

    @ParameterizedTest(name = "{0} at {1}: {5}")
    @CsvSource(delimiter = '|', textBlock = """
        # case         | level | low    | high   | not covered | source and mark
        hw-depression  | 0.95  | 0.010  | 0.786  | 5/128       | Hollander & Wolfe 1973 p. 53 (seen, R 4.2.2)
        hw-depression  | 0.90  | 0.175  | 0.726  | 25/256      | R 4.2.2 wilcox.test conf.level 0.9 (seen)
        statxact-sal   | 0.95  | 54     | 292    |             | StatXact-5 manual p. 181 (seen, exactRankTests)
        light-diff     | 0.95  | 4.505  | 11.845 |             | R 4.2.2 wilcox.test, mu 4 (seen)
        """)
    void intervalsAgreeWithPublishedCases(
            String name, double level, double low, double high, String missed, String source) {
        Interval interval = SignedRank.of(differences(name)).interval(level).orElseThrow();
        double offset = name.equals("light-diff") ? 4 : 0;
        assertEquals(low, interval.low() + offset, 1e-9, source);
        assertEquals(high, interval.high() + offset, 1e-9, source);
        assertTrue(interval.level() >= level);
        if (missed != null) {
            assertEquals(1 - Fractions.of(missed).value(), interval.level(), 1e-15);
        }
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
        # differences         | two-sided | source and mark
        1 2 3 4 5 6 7 8       | 1/128     | exactRankTests tests/reg-tests.R: 0.0078125 (seen)
        1 2 3 4 5 6 7 7       | 1/128     | the same with a tie: 0.0078125 (seen)
        1 1 1                 | 1/4       | the same, all tied: 0.25 (seen)
        1 2 3 4 5             | 1/16      | 2 of 2^5 signs (derived)
        1 2 3 4 5 6           | 1/32      | 2 of 2^6 signs (derived)
        0 0                   | 1/1       | nothing to rank (derived)
        """)
    void smallCasesAgreeWithPublishedFractions(String differences, String both, String source) {
        double[] values = Arrays.stream(differences.split(" ", -1))
                .mapToDouble(Double::parseDouble)
                .toArray();
        assertEquals(Fractions.of(both), SignedRank.of(values).exact().orElseThrow(), source);
    }

    @Test
    void normalApproximationAgreesWithThePublishedOne() {
        // Hollander & Wolfe depression data, no continuity correction: R 4.2.2 wilcox.test(exact = FALSE) (seen)
        SignedRank test = SignedRank.of(differences("hw-depression"));
        assertEquals(2.073221072156823, test.z(Continuity.UNCORRECTED), 1e-14);
        assertEquals(2 * 0.0190758550867076, test.approximate(Continuity.UNCORRECTED), 1e-14);
    }

    @Test
    void fiveDifferencesCannotTellAndSixCan() {
        assertEquals(Conclusion.INSUFFICIENT_DATA, SignedRank.of(1, 2, 3, 4, 5).conclusion());
        assertEquals(Conclusion.HIGHER, SignedRank.of(1, 2, 3, 4, 5, 6).conclusion());
        assertEquals(Conclusion.LOWER, SignedRank.of(-1, -2, -3, -4, -5, -6).conclusion());
        assertEquals(
                Conclusion.NOT_SIGNIFICANT, SignedRank.of(-1, 2, -3, 4, -5, 6).conclusion());
    }

    @Test
    void fiveDifferencesReachNoInterval() {
        assertTrue(SignedRank.of(1, 2, 3, 4, 5).interval(0.95).isEmpty());
        // 2 of 2^5 signs: exactly 93.75 % (derived)
        assertEquals(
                new Interval(1, 5, 0.9375),
                SignedRank.of(1, 2, 3, 4, 5).interval(0.9375).orElseThrow());
        assertEquals(
                new Interval(1, 6, 1 - 1.0 / 32),
                SignedRank.of(1, 2, 3, 4, 5, 6).interval(0.95).orElseThrow());
    }

    @Test
    void moreThanSixtyDifferencesAreApproximated() {
        double[] many = IntStream.rangeClosed(-20, 41)
                .mapToDouble(i -> i + 0.25 + 0.001 * i * i)
                .toArray();
        SignedRank test = SignedRank.of(many);
        assertFalse(test.exact().isPresent());
        assertEquals(
                WilcoxonSignedRankTest.withDefaults()
                        .with(PValueMethod.ASYMPTOTIC)
                        .test(many)
                        .getPValue(),
                test.pValue(),
                1e-13);
        // floor(976.5 - 1.959964 * sqrt(62 * 63 * 125 / 24) + 0.5) = 697 means of pairs from either end (derived)
        double[] means = IntStream.range(0, 62)
                .boxed()
                .flatMapToDouble(i -> IntStream.rangeClosed(0, i).mapToDouble(j -> (many[i] + many[j]) / 2))
                .sorted()
                .toArray();
        Interval interval = test.interval(0.95).orElseThrow();
        assertEquals(means[696], interval.low());
        assertEquals(means[means.length - 697], interval.high());
        assertEquals(0.95, interval.level());
    }

    @Test
    void zerosAreDroppedAndCounted() {
        assertEquals(4, SignedRank.of(differences("statxact-sal")).zeros());
        assertEquals(0, SignedRank.of(1, 2).zeros());
    }

    @Test
    void tailsChangePlacesWithTheSigns() {
        SignedRank up = SignedRank.of(1, 2, 3, -4, 5, 5, 7);
        SignedRank down = SignedRank.of(-1, -2, -3, 4, -5, -5, -7);
        assertEquals(up.exactGreater(), down.exactLess());
        assertEquals(up.exactLess(), down.exactGreater());
        assertEquals(-up.z(Continuity.CORRECTED), down.z(Continuity.CORRECTED));
    }

    @Property(tries = 1000)
    void approximationAgreesWithCommonsStatisticsWithTies(
            @ForAll @Size(min = 2, max = 40) List<@IntRange(min = 1, max = 6) Integer> sizes) {
        double[] values = IntStream.range(0, sizes.size())
                .mapToDouble(i -> i % 3 == 0 ? -sizes.get(i) : sizes.get(i))
                .toArray();
        assertEquals(
                WilcoxonSignedRankTest.withDefaults()
                        .with(PValueMethod.ASYMPTOTIC)
                        .test(values)
                        .getPValue(),
                SignedRank.of(values).approximate(Continuity.CORRECTED),
                1e-12);
    }

    @Property(tries = 2000)
    void agreesWithCommonsStatistics(
            @ForAll @Size(min = 2, max = 30) List<@DoubleRange(min = -1e6, max = 1e6) Double> differences) {
        double[] distinct = distinctSizes(differences);
        if (distinct.length < 2) {
            return;
        }
        SignedRank test = SignedRank.of(distinct);
        var commons = WilcoxonSignedRankTest.withDefaults();
        assertEquals(commons.statistic(distinct), test.statistic());
        assertEquals(
                commons.with(PValueMethod.EXACT).test(distinct).getPValue(),
                test.exact().orElseThrow().value(),
                1e-12);
        assertEquals(
                commons.with(PValueMethod.ASYMPTOTIC).test(distinct).getPValue(),
                test.approximate(Continuity.CORRECTED),
                1e-12);
    }

    private static double[] distinctSizes(List<Double> values) {
        return values.stream()
                .filter(value -> value != 0)
                .collect(Collectors.toMap(Math::abs, value -> value, (one, other) -> one))
                .values()
                .stream()
                .mapToDouble(Double::doubleValue)
                .toArray();
    }

    @Property(tries = 1000)
    void countsWhatTryingAllSignsFinds(
            @ForAll @Size(min = 1, max = 10) List<@IntRange(min = -4, max = 4) Integer> differences) {
        double[] values = differences.stream().mapToDouble(Integer::doubleValue).toArray();
        SignedRank test = SignedRank.of(values);
        double[] sizes =
                Arrays.stream(values).filter(v -> v != 0).map(Math::abs).toArray();
        int[] ranks = Ranks.of(sizes, 0).doubled();
        int seen = far(ranks, signs(values));
        long asFar = IntStream.range(0, 1 << sizes.length)
                .filter(signs -> far(ranks, signs) >= seen)
                .count();
        assertEquals(
                ExactProbability.of(asFar, 1L << sizes.length), test.exact().orElseThrow());
    }

    private static int signs(double[] values) {
        double[] kept = Arrays.stream(values).filter(v -> v != 0).toArray();
        return IntStream.range(0, kept.length)
                .map(i -> kept[i] > 0 ? 1 << i : 0)
                .sum();
    }

    private static int far(int[] ranks, int signs) {
        return Math.abs(IntStream.range(0, ranks.length)
                .map(i -> (signs >> i & 1) == 1 ? ranks[i] : -ranks[i])
                .sum());
    }

    /** 70 000 differences alternately up and down by growing amounts: half the sum of ranks, n(n+1)/4 (derived). */
    @Test
    void manyDifferencesDoNotOverflow() {
        double[] differences = java.util.stream.IntStream.rangeClosed(1, 70_000)
                .mapToDouble(i -> i % 2 == 0 ? i : -i)
                .toArray();
        SignedRank test = SignedRank.of(differences);
        assertEquals(70_000.0 * 70_001 / 4, test.statistic(), 20_000);
        assertTrue(test.pValue() > 0.5, () -> "p = " + test.pValue());
    }
}
