// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * How often each value of a sum of ranks comes up when nothing but chance decides, computed exactly.
 *
 * <p>Ranks are whole numbers (doubled where ties share one). Counts are 64-bit, which holds for up to {@link #MOST}
 * ranks: 2^60 choices of signs, 60 over 30 choices of a group. All distributions here are of the sum {@code s} at index
 * {@code s}.
 */
final class RankDistribution {

    /** The most ranks that are computed exactly. */
    static final int MOST = 60;

    private final long[] counts;
    private final int twiceMean;

    private RankDistribution(long[] counts, int twiceMean) {
        this.counts = counts;
        this.twiceMean = twiceMean;
    }

    /** {@return the sum of those ranks whose sign is positive, each sign a toss} */
    static RankDistribution ofSigns(int[] ranks) {
        int total = Arrays.stream(ranks).sum();
        long[] counts = new long[total + 1];
        counts[0] = 1;
        for (int rank : ranks) {
            for (int sum = total; sum >= rank; sum--) {
                counts[sum] += counts[sum - rank];
            }
        }
        return new RankDistribution(counts, total);
    }

    /** {@return the sum of the ranks of a group of {@code size}, every choice of the group as likely as any other} */
    static RankDistribution ofGroup(int[] ranks, int size) {
        int total = Arrays.stream(ranks).sum();
        long[][] counts = new long[size + 1][total + 1];
        counts[0][0] = 1;
        for (int rank : ranks) {
            for (int chosen = size; chosen >= 1; chosen--) {
                for (int sum = total; sum >= rank; sum--) {
                    counts[chosen][sum] += counts[chosen - 1][sum - rank];
                }
            }
        }
        return new RankDistribution(counts[size], ranks.length == 0 ? 0 : 2 * total * size / ranks.length);
    }

    ExactProbability atMost(int sum) {
        return share(index -> index <= sum);
    }

    ExactProbability atLeast(int sum) {
        return share(index -> index >= sum);
    }

    /** {@return the probability of a sum at least as far from the mean, on either side} */
    ExactProbability asFarAs(int sum) {
        return share(index -> distance(index) >= distance(sum));
    }

    /** {@return the least that {@link #asFarAs} can be} */
    ExactProbability smallest() {
        int farthest = possible().map(this::distance).max().orElse(0);
        return share(index -> distance(index) >= farthest);
    }

    /**
     * {@return how many of the lowest sums, and as many of the highest, can be excluded so that the confidence level is
     * still at least {@code level}}
     */
    int lowSums(double level) {
        int lowest = possible().min().orElse(0);
        int sum = lowest;
        while (atMost(sum).reaches(level)) {
            sum++;
        }
        return sum - lowest;
    }

    /** {@return the probability of the {@code many} lowest sums together} */
    ExactProbability probabilityOfLowest(int many) {
        return atMost(possible().min().orElse(0) + many - 1);
    }

    private IntStream possible() {
        return IntStream.range(0, counts.length).filter(index -> counts[index] > 0);
    }

    private int distance(int sum) {
        return Math.abs(2 * sum - twiceMean);
    }

    private ExactProbability share(IntPredicate counted) {
        long part = IntStream.range(0, counts.length)
                .filter(counted)
                .mapToLong(index -> counts[index])
                .sum();
        return new ExactProbability(
                BigInteger.valueOf(part),
                BigInteger.valueOf(LongStream.of(counts).sum()));
    }
}
