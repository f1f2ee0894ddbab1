// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * All ways to deal ranks to groups of given sizes, counted by how far apart they set the groups.
 *
 * <p>How far apart: the sum over the groups of squared rank sum by size, in whole numbers (doubled ranks, over the common
 * multiple of the sizes), so that no rounding decides what is as far out as what was seen.
 */
final class RankAllocations {

    private final int[] ranks;
    private final int[] room;
    private final long[] sums;
    private final long[] weights;
    private final long seen;
    private long all;
    private long asFar;
    private long farthest;
    private long atFarthest;

    private RankAllocations(Ranks ranks, int[] sizes) {
        this.ranks = ranks.doubled();
        this.room = sizes.clone();
        this.sums = new long[sizes.length];
        this.weights = weights(sizes);
        int from = 0;
        for (int group = 0; group < sizes.length; group++) {
            sums[group] = ranks.doubledSum(from, from += sizes[group]);
        }
        this.seen = spread();
        Arrays.fill(sums, 0);
    }

    static RankAllocations of(Ranks ranks, int[] sizes) {
        RankAllocations deals = new RankAllocations(ranks, sizes);
        deals.deal(0);
        return deals;
    }

    /** {@return how many ways there are, or the greatest long if that many} */
    static long number(int[] sizes) {
        BigInteger ways = BigInteger.ONE;
        int dealt = 0;
        for (int size : sizes) {
            for (int k = 1; k <= size; k++) {
                ways = ways.multiply(BigInteger.valueOf(++dealt)).divide(BigInteger.valueOf(k));
            }
        }
        return ways.bitLength() < Long.SIZE ? ways.longValueExact() : Long.MAX_VALUE;
    }

    private static long[] weights(int[] sizes) {
        long multiple = IntStream.of(sizes).asLongStream().reduce(1, (a, b) -> a / gcd(a, b) * b);
        return IntStream.of(sizes).mapToLong(size -> multiple / size).toArray();
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    private void deal(int index) {
        if (index == ranks.length) {
            count(spread());
            return;
        }
        for (int group = 0; group < room.length; group++) {
            if (room[group] > 0) {
                give(index, group, 1);
                deal(index + 1);
                give(index, group, -1);
            }
        }
    }

    private void give(int index, int group, int times) {
        room[group] -= times;
        sums[group] += (long) times * ranks[index];
    }

    private void count(long spread) {
        all++;
        asFar += spread >= seen ? 1 : 0;
        atFarthest = spread > farthest ? 1 : atFarthest + (spread == farthest ? 1 : 0);
        farthest = Math.max(farthest, spread);
    }

    private long spread() {
        long spread = 0;
        for (int group = 0; group < sums.length; group++) {
            spread += sums[group] * sums[group] * weights[group];
        }
        return spread;
    }

    /** {@return the probability of groups at least as far apart as seen} */
    ExactProbability pValue() {
        return ExactProbability.of(asFar, all);
    }

    /** {@return the least that {@link #pValue} can be} */
    ExactProbability smallest() {
        return ExactProbability.of(atFarthest, all);
    }
}
