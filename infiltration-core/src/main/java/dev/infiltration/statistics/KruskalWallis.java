// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.jspecify.annotations.Nullable;

/**
 * The rank test of several independent groups (Kruskal and Wallis 1952): do they tend to lie at the same height.
 *
 * <p>Ties share the mean of their ranks. Where at most 60 values can be dealt to the groups in at most two million ways, the
 * probability is computed exactly; beyond, it is that of chi-squared with one degree of freedom less than there are groups.
 */
public final class KruskalWallis {

    private static final long MOST_DEALS = 2_000_000;

    private final int[] sizes;
    private final Ranks ranks;
    private final @Nullable RankAllocations deals;

    private KruskalWallis(int[] sizes, Ranks ranks) {
        this.sizes = sizes;
        this.ranks = ranks;
        this.deals = isCounted(sizes) ? RankAllocations.of(ranks, sizes) : null;
    }

    private static boolean isCounted(int[] sizes) {
        return IntStream.of(sizes).sum() <= RankDistribution.MOST && RankAllocations.number(sizes) <= MOST_DEALS;
    }

    /**
     * {@return the test of some groups}
     *
     * @param groups the values of each, at least one in each; those that agree to twelve digits are tied
     * @throws IllegalArgumentException for fewer than two groups or an empty one
     */
    public static KruskalWallis of(double[]... groups) {
        return within(0, groups);
    }

    /**
     * {@return the test of groups of logarithms}
     *
     * @param groups the logarithms of each, at least one in each; those within 1e-12 of each other are tied
     * @throws IllegalArgumentException for fewer than two groups or an empty one
     */
    public static KruskalWallis ofLogs(double[]... groups) {
        return within(Ranks.logTolerance(), groups);
    }

    static KruskalWallis within(double tolerance, double[]... groups) {
        if (groups.length < 2 || Arrays.stream(groups).anyMatch(group -> group.length == 0)) {
            throw new IllegalArgumentException("groups: expected at least two, none empty");
        }
        int[] sizes = Arrays.stream(groups).mapToInt(group -> group.length).toArray();
        return new KruskalWallis(sizes, Ranks.of(pooled(groups), tolerance));
    }

    private static double[] pooled(double[]... groups) {
        return Arrays.stream(groups).flatMapToDouble(Arrays::stream).toArray();
    }

    /** {@return the statistic H, divided by the correction for ties; 0 if all values are tied} */
    public double statistic() {
        double n = ranks.size();
        double ties = 1 - ranks.tieSum() / (n * n * n - n);
        return ties > 0 ? (12 / (n * (n + 1)) * sumOfSquares() - 3 * (n + 1)) / ties : 0;
    }

    /** {@return the sum over the groups of squared rank sum by size} */
    private double sumOfSquares() {
        double sum = 0;
        int from = 0;
        for (int size : sizes) {
            double rankSum = ranks.doubledSum(from, from + size) / 2.0;
            sum += rankSum * rankSum / size;
            from += size;
        }
        return sum;
    }

    /** {@return the probability computed exactly, absent where there are too many ways to deal the values} */
    public Optional<ExactProbability> exact() {
        return Optional.ofNullable(deals).map(RankAllocations::pValue);
    }

    /** {@return the probability of chi-squared} */
    public double approximate() {
        return ChiSquaredDistribution.of(sizes.length - 1.0).survivalProbability(Math.max(0, statistic()));
    }

    /** {@return the probability: computed exactly where it can be, else of chi-squared} */
    public double pValue() {
        return exact().map(ExactProbability::value).orElseGet(this::approximate);
    }

    /** {@return the least that the probability can be for these groups and their ties; 0 where it is not computed exactly} */
    public double smallestPValue() {
        return Optional.ofNullable(deals).map(all -> all.smallest().value()).orElse(0.0);
    }

    /** {@return the conclusion at a risk of 5 %} */
    public Conclusion conclusion() {
        Conclusion one = Conclusion.of(pValue(), smallestPValue(), 0);
        return one == Conclusion.LOWER ? Conclusion.DIFFERENT : one;
    }

    /** {@return how many values there are in all groups} */
    public int n() {
        return IntStream.of(sizes).sum();
    }

    /** {@return the test as a small table} */
    @Override
    public String toString() {
        TextTable table = TextTable.titled("rank sums of several groups")
                .with("values", n())
                .with("statistic", TextTable.number(statistic()));
        return TestRows.ended(table, pValue(), conclusion()).toString();
    }
}
