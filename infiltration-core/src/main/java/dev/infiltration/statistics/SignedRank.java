// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * The signed-rank test of paired differences (Wilcoxon 1945): are they as often and as far above zero as below it.
 *
 * <p>Conventions. Differences of zero are dropped, from the test and from the shift. Ties share the mean of their ranks,
 * and the distribution is computed exactly with those ranks: 2^n signs, all as likely. The two-sided probability is that of a
 * sum at least as far from its mean on either side. Up to 60 differences are computed exactly; beyond, the probability is that
 * of the normal approximation with the variance of ties and a continuity correction.
 */
public final class SignedRank {

    private final double[] differences;
    private final int zeros;
    private final Ranks ranks;

    private SignedRank(double[] differences, int zeros, double tolerance) {
        this.differences = differences;
        this.zeros = zeros;
        this.ranks = Ranks.of(Arrays.stream(differences).map(Math::abs).toArray(), tolerance);
    }

    /**
     * {@return the test of some differences}
     *
     * @param differences one for each pair; those that agree to twelve digits are tied
     */
    public static SignedRank of(double... differences) {
        return within(0, differences);
    }

    /**
     * {@return the test of differences of logarithms}
     *
     * @param differences one for each pair; those within 1e-12 of each other are tied, those within 1e-12 of 0 are zero
     */
    public static SignedRank ofLogs(double... differences) {
        return within(Ranks.logTolerance(), differences);
    }

    static SignedRank within(double tolerance, double... differences) {
        double[] kept = Arrays.stream(differences)
                .filter(difference -> Math.abs(difference) > tolerance)
                .toArray();
        return new SignedRank(kept, differences.length - kept.length, tolerance);
    }

    /** {@return how many differences are not zero} */
    public int n() {
        return differences.length;
    }

    /** {@return how many differences were zero and dropped} */
    public int zeros() {
        return zeros;
    }

    /** {@return the sum of the ranks of the differences above zero} */
    public double statistic() {
        return doubledStatistic() / 2.0;
    }

    private long doubledStatistic() {
        int[] doubled = ranks.doubled();
        return IntStream.range(0, n())
                .filter(i -> differences[i] > 0)
                .mapToLong(i -> doubled[i])
                .sum();
    }

    /** {@return the two-sided probability computed exactly, absent for more than 60 differences} */
    public Optional<ExactProbability> exact() {
        return distribution().map(all -> all.asFarAs(Math.toIntExact(doubledStatistic())));
    }

    /** {@return the probability of a sum as high or higher, absent for more than 60 differences} */
    public Optional<ExactProbability> exactGreater() {
        return distribution().map(all -> all.atLeast(Math.toIntExact(doubledStatistic())));
    }

    /** {@return the probability of a sum as low or lower, absent for more than 60 differences} */
    public Optional<ExactProbability> exactLess() {
        return distribution().map(all -> all.atMost(Math.toIntExact(doubledStatistic())));
    }

    private Optional<RankDistribution> distribution() {
        return isCounted() ? Optional.of(RankDistribution.ofSigns(ranks.doubled())) : Optional.empty();
    }

    private boolean isCounted() {
        return n() <= RankDistribution.MOST;
    }

    /** {@return the two-sided probability: computed exactly where it can be, else of the normal approximation} */
    public double pValue() {
        return exact().map(ExactProbability::value).orElseGet(() -> approximate(Continuity.CORRECTED));
    }

    /** {@return the least that the two-sided probability of so many differences can be: 2^(1 − n), at most 1} */
    public double smallestPValue() {
        return Math.min(1, Math.scalb(1.0, 1 - n()));
    }

    /** {@return the conclusion at a two-sided risk of 5 %} */
    public Conclusion conclusion() {
        return Conclusion.of(pValue(), smallestPValue(), direction());
    }

    private double direction() {
        return statistic() - mean();
    }

    /**
     * {@return the two-sided probability of the normal approximation, 1 if there is no difference}
     *
     * @param continuity whether half a rank is taken off
     */
    double approximate(Continuity continuity) {
        return n() == 0 ? 1 : Math.min(1, 2 * NormalDistribution.of(0, 1).survivalProbability(Math.abs(z(continuity))));
    }

    /**
     * {@return the standardised statistic, positive when the differences tend to lie above zero}
     *
     * @param continuity whether half a rank is taken off
     */
    double z(Continuity continuity) {
        return Math.signum(direction()) * continuity.shrink(direction(), 1) / sd();
    }

    private double mean() {
        return n() * (n() + 1.0) / 4;
    }

    private double sd() {
        return Math.sqrt(n() * (n() + 1.0) * (2.0 * n() + 1) / 24 - ranks.tieSum() / 48.0);
    }

    /** {@return the Hodges–Lehmann shift: the median of the means of all pairs of differences, each with itself too} */
    public OptionalDouble shift() {
        return walshAverages().estimate();
    }

    /**
     * {@return the interval of the shift, absent where so few differences cannot reach the level}
     *
     * @param level how often such an interval is right; the interval says the level reached
     */
    public Optional<Interval> interval(double level) {
        return isCounted()
                ? walshAverages()
                        .interval(
                                RankDistribution.ofSigns(
                                        IntStream.rangeClosed(1, n()).toArray()),
                                level)
                : walshAverages().interval(mean(), sd(), level);
    }

    private HodgesLehmann walshAverages() {
        return HodgesLehmann.of(IntStream.range(0, n())
                .boxed()
                .flatMapToDouble(i -> IntStream.rangeClosed(0, i)
                        .mapToDouble(j -> i == j ? differences[i] : (differences[i] + differences[j]) / 2))
                .toArray());
    }

    /** {@return the test as a small table} */
    @Override
    public String toString() {
        TextTable table = TextTable.titled("signed ranks")
                .with("differences", n() + ", " + zeros() + " of zero dropped")
                .with("sum of ranks above zero", TextTable.number(statistic()))
                .with("shift", TextTable.number(shift().orElse(Double.NaN)))
                .with("its interval", TestRows.limits(interval(Interval.LEVEL)));
        return TestRows.ended(table, pValue(), conclusion()).toString();
    }
}
