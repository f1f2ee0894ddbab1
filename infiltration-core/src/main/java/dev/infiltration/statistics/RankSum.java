// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * The rank-sum test of two independent groups (Mann and Whitney 1947): do values of the one tend to lie above the other's.
 *
 * <p>Conventions. The statistic counts the pairs in which the first group's value is the higher, a tie as a half. Ties
 * share the mean of their ranks, and the distribution is computed exactly with those ranks: every choice of the first group
 * from all values as likely. The two-sided probability is that of a rank sum at least as far from its mean on either
 * side. Up to 60 values in all are computed exactly; beyond, the probability is that of the normal approximation with the
 * variance of ties and a continuity correction. The interval of the shift counts as if there were no ties: its limits
 * belong to it, so that with ties it is right at least as often as it says (Noether 1967).
 */
public final class RankSum {

    private final double[] group;
    private final double[] against;
    private final Ranks ranks;

    private RankSum(double[] group, double[] against, double tolerance) {
        this.group = group.clone();
        this.against = against.clone();
        this.ranks = Ranks.of(pooled(group, against), tolerance);
    }

    private static double[] pooled(double[] group, double[] against) {
        return DoubleStream.concat(Arrays.stream(group), Arrays.stream(against)).toArray();
    }

    /**
     * {@return the test of two groups}
     *
     * @param group   values of the one; those that agree to twelve digits are tied
     * @param against values of the other
     */
    public static RankSum of(double[] group, double[] against) {
        return within(0, group, against);
    }

    /**
     * {@return the test of two groups of logarithms}
     *
     * @param group   logarithms of the one; those within 1e-12 of each other are tied
     * @param against logarithms of the other
     */
    public static RankSum ofLogs(double[] group, double[] against) {
        return within(Ranks.logTolerance(), group, against);
    }

    static RankSum within(double tolerance, double[] group, double[] against) {
        return new RankSum(group, against, tolerance);
    }

    /** {@return how many pairs of one value from each group there are} */
    private double pairs() {
        return (double) group.length * against.length;
    }

    /** {@return the number of pairs in which the first group's value is the higher, ties counting a half} */
    public double statistic() {
        return doubledRankSum() / 2.0 - group.length * (group.length + 1.0) / 2;
    }

    private long doubledRankSum() {
        return ranks.doubledSum(0, group.length);
    }

    /** {@return the two-sided probability computed exactly, absent for more than 60 values} */
    public Optional<ExactProbability> exact() {
        return distribution().map(all -> all.asFarAs(Math.toIntExact(doubledRankSum())));
    }

    /** {@return the probability that the first group ranks as high or higher, absent for more than 60 values} */
    public Optional<ExactProbability> exactGreater() {
        return distribution().map(all -> all.atLeast(Math.toIntExact(doubledRankSum())));
    }

    /** {@return the probability that the first group ranks as low or lower, absent for more than 60 values} */
    public Optional<ExactProbability> exactLess() {
        return distribution().map(all -> all.atMost(Math.toIntExact(doubledRankSum())));
    }

    private Optional<RankDistribution> distribution() {
        return isCounted() ? Optional.of(RankDistribution.ofGroup(ranks.doubled(), group.length)) : Optional.empty();
    }

    private boolean isCounted() {
        return ranks.size() <= RankDistribution.MOST;
    }

    /** {@return the two-sided probability: computed exactly where it can be, else of the normal approximation} */
    public double pValue() {
        return exact().map(ExactProbability::value).orElseGet(() -> approximate(Continuity.CORRECTED));
    }

    /** {@return the least that the two-sided probability can be for these groups and their ties; 0 beyond 60 values} */
    public double smallestPValue() {
        return distribution().map(all -> all.smallest().value()).orElse(0.0);
    }

    /** {@return the conclusion at a two-sided risk of 5 %, of the first group against the second} */
    public Conclusion conclusion() {
        return Conclusion.of(pValue(), smallestPValue(), direction());
    }

    private double direction() {
        return statistic() - pairs() / 2;
    }

    /**
     * {@return the two-sided probability of the normal approximation, 1 if all values are tied}
     *
     * @param continuity whether half a rank is taken off
     */
    double approximate(Continuity continuity) {
        return sd() > 0 ? Math.min(1, 2 * NormalDistribution.of(0, 1).survivalProbability(Math.abs(z(continuity)))) : 1;
    }

    /**
     * {@return the standardised statistic, positive when the first group tends to lie higher}
     *
     * @param continuity whether half a rank is taken off
     */
    double z(Continuity continuity) {
        return Math.signum(direction()) * continuity.shrink(direction(), 1) / sd();
    }

    /** {@return the variance of the statistic, ties taken into account} */
    public double variance() {
        double n = ranks.size();
        return n < 2 ? 0 : pairs() / 12 * (n + 1 - ranks.tieSum() / (n * (n - 1)));
    }

    private double sd() {
        return Math.sqrt(variance());
    }

    /** {@return the Hodges–Lehmann shift: the median of all differences, first less second} */
    public OptionalDouble shift() {
        return differences().estimate();
    }

    /**
     * {@return the interval of the shift, absent where so few values cannot reach the level}
     *
     * @param level how often such an interval is right; the interval says the level reached
     */
    public Optional<Interval> interval(double level) {
        return isCounted()
                ? differences().interval(withoutTies(), level)
                : differences().interval(pairs() / 2, sd(), level);
    }

    private RankDistribution withoutTies() {
        return RankDistribution.ofGroup(IntStream.rangeClosed(1, ranks.size()).toArray(), group.length);
    }

    private HodgesLehmann differences() {
        return HodgesLehmann.of(Arrays.stream(group)
                .flatMap(one -> Arrays.stream(against).map(other -> one - other))
                .toArray());
    }

    /** {@return the test as a small table} */
    @Override
    public String toString() {
        TextTable table = TextTable.titled("rank sum")
                .with("pairs in which the group is higher", TextTable.number(statistic()))
                .with("shift", TextTable.number(shift().orElse(Double.NaN)))
                .with("its interval", TestRows.limits(interval(Interval.LEVEL)));
        return TestRows.ended(table, pValue(), conclusion()).toString();
    }
}
