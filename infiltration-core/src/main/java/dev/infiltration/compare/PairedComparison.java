// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.compare;

import dev.infiltration.statistics.Conclusion;
import dev.infiltration.statistics.Interval;
import dev.infiltration.statistics.McNemar;
import dev.infiltration.statistics.SampleStatistics;
import dev.infiltration.statistics.SignTest;
import dev.infiltration.statistics.SignedRank;
import dev.infiltration.statistics.TextTable;
import dev.infiltration.units.InfiltrationRate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import java.util.stream.IntStream;

/**
 * Rates at the same locations twice: before and after cleaning, or the first run and the second.
 *
 * <p>Pairs are compared by the logarithm of their ratio. The conclusion rests on exact signed ranks alone; the interval of
 * the ratio of geometric means supposes log-ratios near normal, that of the typical ratio (Hodges–Lehmann) only that they
 * lie evenly about their middle. A rate of zero counts by rank and by sign; it leaves no ratio and no interval.
 *
 * <p>Rates may be in any unit, the same for all.
 */
public final class PairedComparison {

    private static final String NEEDED = "at least 6 pairs with a change are needed for p < 0.05";

    private final double[] before;
    private final double[] after;
    private final double[] logRatios;
    private final String first;
    private final String second;

    private PairedComparison(double[] before, double[] after, String first, String second) {
        Logs.requirePairs(before, after, first + ", " + second);
        this.before = before.clone();
        this.after = after.clone();
        this.logRatios = Logs.ofRatios(Logs.of(after, second), Logs.of(before, first));
        this.first = first;
        this.second = second;
    }

    /**
     * {@return the comparison of rates before and after}
     *
     * @param before rates before, one for each location
     * @param after  rates after, at the same locations in the same order
     * @throws IllegalArgumentException if the numbers differ or a rate is negative or not finite
     */
    public static PairedComparison of(double[] before, double[] after) {
        return new PairedComparison(before, after, "before", "after");
    }

    /**
     * {@return the comparison of rates before and after}
     *
     * @param before rates before, one for each location
     * @param after  rates after, at the same locations in the same order
     * @throws IllegalArgumentException if the numbers differ
     */
    public static PairedComparison of(List<InfiltrationRate> before, List<InfiltrationRate> after) {
        return of(Logs.rates(before), Logs.rates(after));
    }

    /**
     * {@return the comparison of the second run with the first, at the same locations}
     *
     * <p>A ratio below 1 is usual: the ground takes less once it has taken some.
     *
     * @param first  rates of the first runs
     * @param second rates of the second runs, in the same order
     * @throws IllegalArgumentException if the numbers differ or a rate is negative or not finite
     */
    public static PairedComparison ofRuns(double[] first, double[] second) {
        return new PairedComparison(first, second, "run 1", "run 2");
    }

    /**
     * {@return the comparison of the second run with the first, at the same locations}
     *
     * @param first  rates of the first runs
     * @param second rates of the second runs, in the same order
     * @throws IllegalArgumentException if the numbers differ
     */
    public static PairedComparison ofRuns(List<InfiltrationRate> first, List<InfiltrationRate> second) {
        return ofRuns(Logs.rates(first), Logs.rates(second));
    }

    /** {@return how many pairs there are} */
    public int pairs() {
        return logRatios.length;
    }

    /** {@return how many pairs hold a rate of zero} */
    public int pairsWithZero() {
        return (int) IntStream.range(0, pairs())
                .filter(i -> before[i] == 0 || after[i] == 0)
                .count();
    }

    /**
     * {@return the ratio of the geometric means with its t interval, absent without pairs or with a zero rate}
     *
     * @param level how often such an interval is right
     */
    public Optional<Ratio> ratio(double level) {
        if (pairs() == 0 || pairsWithZero() > 0) {
            return Optional.empty();
        }
        SampleStatistics logs = SampleStatistics.of(logRatios);
        return Optional.of(Ratio.of(logs.mean(), logs.interval(level)));
    }

    /**
     * {@return the typical ratio (Hodges–Lehmann, pairs without change left out) with its interval, absent if no pair
     *     changed or a rate is zero}
     *
     * @param level how often such an interval is right; the interval says the level reached
     */
    public Optional<Ratio> hodgesLehmannRatio(double level) {
        OptionalDouble shift = signedRank().shift();
        return shift.isPresent()
                ? Optional.of(Ratio.of(shift.getAsDouble(), signedRank().interval(level)))
                : Optional.empty();
    }

    /** {@return the signed-rank test of the log-ratios} */
    public SignedRank signedRank() {
        return SignedRank.ofLogs(logRatios);
    }

    /** {@return the sign test of the log-ratios} */
    public SignTest signTest() {
        return SignTest.ofLogs(logRatios);
    }

    /**
     * {@return the test of change in what passes}
     *
     * @param passes whether a rate passes, in the unit the rates are in
     */
    public McNemar passing(DoublePredicate passes) {
        return new McNemar(changes(passes.negate(), passes), changes(passes, passes.negate()));
    }

    private int changes(DoublePredicate earlier, DoublePredicate later) {
        return (int) IntStream.range(0, pairs())
                .filter(i -> earlier.test(before[i]) && later.test(after[i]))
                .count();
    }

    /** {@return the two-sided p-value of the Wilcoxon signed-rank test; absent for fewer than six pairs with a change} */
    public OptionalDouble pValue() {
        return conclusion() == Conclusion.INSUFFICIENT_DATA
                ? OptionalDouble.empty()
                : OptionalDouble.of(signedRank().pValue());
    }

    /** {@return the conclusion of the Wilcoxon signed-rank test at a two-sided significance level of 5 %} */
    public Conclusion conclusion() {
        return signedRank().conclusion();
    }

    /** {@return the test in words} */
    public String test() {
        return "Wilcoxon signed-rank test of the log-ratios " + second + "/" + first + ": "
                + signedRank().n() + (signedRank().n() == 1 ? " pair" : " pairs") + " with a change, "
                + signedRank().zeros() + " without (excluded)";
    }

    /** {@return the conclusion as a sentence} */
    public String conclusionText() {
        return ConclusionText.of(conclusion(), second, first, pValue(), NEEDED);
    }

    /** {@return how many pairs are needed, if they are too few for a conclusion} */
    public List<String> notes() {
        return conclusion() == Conclusion.INSUFFICIENT_DATA ? List.of(NEEDED) : List.of();
    }

    /** {@return the comparison as a small table} */
    @Override
    public String toString() {
        TextTable table = TextTable.titled(second + " / " + first)
                .with("pairs", pairs())
                .with("ratio of geometric means", ConclusionText.of(ratio(Interval.LEVEL)))
                .with("Hodges–Lehmann ratio", ConclusionText.of(hodgesLehmannRatio(Interval.LEVEL)))
                .with(
                        "increased, decreased",
                        signTest().rises() + ", " + signTest().falls());
        return table.with("test", test()).with("conclusion", conclusionText()).toString();
    }
}
