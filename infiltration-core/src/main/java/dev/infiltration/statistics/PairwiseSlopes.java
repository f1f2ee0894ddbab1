// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * The slopes of all pairs of points, by rank, without making them all.
 *
 * <p>A pair's slope lies below {@code m} when the two change places as {@code y − m·x} is put in order; such changes are
 * counted in n log n. A random sample of slopes (of fixed seed: the same points give the same answer) brackets the rank,
 * counts narrow the bracket, and the few slopes left are made and sorted. Where a great many slopes are equal the bracket
 * closes on their value. Few points are done by making all slopes.
 *
 * <p>After Dillencourt, Mount and Netanyahu 1992 and Matoušek 1991, with interpolation between counts for a second sample.
 */
final class PairwiseSlopes {

    /** Up to so many points all slopes are made. */
    private static final int FEW_POINTS = 300;

    private static final int SAMPLE = 100_000;
    /** How far from its place in the sample a rank may lie: five standard deviations of a share of one half. */
    private static final int SLACK = 800;
    /** What counts as one value: relative to the range of the slopes about the rank. */
    private static final double SAME = 1e-9;
    /** What counts as one value: relative to it. */
    private static final double SAME_OF_VALUE = 1e-11;
    /** How far beyond the expected place a bracket is cut, as a share of it. */
    private static final double BEYOND = 0.01;

    private final double[] x;
    private final double[] y;
    private final long total;
    private final double[] known;

    PairwiseSlopes(double[] x, double[] y) {
        int[] order = IntStream.range(0, x.length)
                .boxed()
                .sorted(Comparator.<Integer>comparingDouble(i -> x[i]).thenComparingDouble(i -> y[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        this.x = Arrays.stream(order).mapToDouble(i -> x[i]).toArray();
        this.y = Arrays.stream(order).mapToDouble(i -> y[i]).toArray();
        this.total = pairs(x.length) - pairsAlike(this.x);
        this.known = x.length <= FEW_POINTS ? all() : sample();
        Arrays.sort(known);
    }

    private static long pairs(long n) {
        return n * (n - 1) / 2;
    }

    private static long pairsAlike(double[] sorted) {
        long alike = 0;
        for (int start = 0, end; start < sorted.length; start = end) {
            end = start + 1;
            while (end < sorted.length && sorted[end] == sorted[start]) {
                end++;
            }
            alike += pairs((long) end - start);
        }
        return alike;
    }

    /** {@return how many pairs have a slope: those not at the same x} */
    long count() {
        return total;
    }

    private double[] all() {
        double[] slopes = new double[Math.toIntExact(total)];
        int next = 0;
        for (int j = 1; j < x.length; j++) {
            for (int i = 0; i < j; i++) {
                if (x[i] < x[j]) {
                    slopes[next++] = slope(i, j);
                }
            }
        }
        return slopes;
    }

    private double[] sample() {
        Random random = new Random(x.length);
        long[] before = pairsBefore();
        double[] slopes = new double[SAMPLE];
        for (int next = 0; next < SAMPLE && total > 0; next++) {
            long pair = (long) (random.nextDouble() * total);
            int found = Arrays.binarySearch(before, pair);
            int j = found >= 0 ? lastOf(before, found) : -found - 2;
            slopes[next] = slope((int) (pair - before[j]), j);
        }
        return slopes;
    }

    /** How many pairs have a slope and their later point before each. */
    private long[] pairsBefore() {
        long[] before = new long[x.length];
        int start = 0;
        for (int j = 1; j < x.length; j++) {
            int startBefore = start;
            start = x[j] == x[j - 1] ? start : j;
            before[j] = before[j - 1] + startBefore;
        }
        return before;
    }

    /** Points without a pair of their own share a count with the next: the last of them has one. */
    private static int lastOf(long[] before, int found) {
        int last = found;
        while (last + 1 < before.length && before[last + 1] == before[found]) {
            last++;
        }
        return last;
    }

    private double slope(int i, int j) {
        return (y[j] - y[i]) / (x[j] - x[i]);
    }

    /** {@return the slope of a rank from 1 to {@link #count}} */
    double at(long rank) {
        return meanAt(rank, rank);
    }

    /** {@return the median, not a number if no pair has a slope} */
    double median() {
        return total == 0 ? Double.NaN : meanAt((total + 1) / 2, total / 2 + 1);
    }

    /** {@return the mean of the slopes of two ranks, the same or next to each other} */
    private double meanAt(long rank, long next) {
        if (known.length != total) {
            return select(rank, next);
        }
        double first = known[Math.toIntExact(rank - 1)];
        return rank == next ? first : (first + known[Math.toIntExact(next - 1)]) / 2;
    }

    private double select(long rank, long next) {
        int place = (int) Math.min(SAMPLE - 1L, (long) ((rank - 0.5) / total * SAMPLE));
        double value = known[place];
        Bracket bracket = new Bracket(rank, next);
        bracket.cut(known[Math.max(0, place - SLACK)]);
        bracket.cut(known[Math.min(SAMPLE - 1, place + SLACK)]);
        double same = SAME * bracket.width() + SAME_OF_VALUE * Math.abs(value);
        if (isRepeated(place)) {
            bracket.cut(value - same);
            bracket.cut(value + same);
        }
        while (bracket.isWide() && bracket.width() > 2 * same) {
            bracket.narrow();
        }
        return bracket.isWide() ? value : bracket.pick();
    }

    private boolean isRepeated(int place) {
        return (place > 0 && known[place - 1] == known[place])
                || (place < SAMPLE - 1 && known[place + 1] == known[place]);
    }

    private long below(double slope) {
        return Inversions.count(keys(slope));
    }

    private double[] keys(double slope) {
        double[] keys = new double[x.length];
        for (int i = 0; i < keys.length; i++) {
            keys[i] = y[i] - y[0] - slope * (x[i] - x[0]);
        }
        return keys;
    }

    /** {@return a slope that no pair exceeds} */
    private double steepest() {
        double closest = Double.POSITIVE_INFINITY;
        for (int i = 1; i < x.length; i++) {
            closest = x[i] > x[i - 1] ? Math.min(closest, x[i] - x[i - 1]) : closest;
        }
        double range = Arrays.stream(y).max().orElse(0) - Arrays.stream(y).min().orElse(0);
        return 2 * range / closest;
    }

    /** Two slopes between which that of the rank lies, and how many lie below each. */
    private final class Bracket {

        private final long rank;
        private final long next;
        private double low = -steepest();
        private double high = steepest();
        private long belowLow;
        private long belowHigh = total;
        private int cuts;

        private Bracket(long rank, long next) {
            this.rank = rank;
            this.next = next;
        }

        /** Counts at a slope, and keeps the side on which the ranks lie; a slope just between the two cuts nothing. */
        private void cut(double slope) {
            if (!(slope > low && slope < high)) {
                return;
            }
            long count = below(slope);
            if (count < rank) {
                low = slope;
                belowLow = count;
            } else if (count >= next) {
                high = slope;
                belowHigh = count;
            }
        }

        private boolean isWide() {
            return belowHigh - belowLow > 2L * x.length;
        }

        private double width() {
            return high - low;
        }

        /** Twice a little beyond where the rank should lie if slopes were spread evenly, then at half. */
        private void narrow() {
            double target = (rank - belowLow - 0.5) / (belowHigh - belowLow);
            double beyond = target < 0.5 ? target + BEYOND : target - BEYOND;
            cut(low + (++cuts % 3 == 0 ? 0.5 : beyond) * width());
        }

        /** {@return the slope of the rank among those left, all made and sorted} */
        private double pick() {
            double[] left = new double[Math.toIntExact(belowHigh - belowLow)];
            int[] order = Inversions.order(keys(low));
            double[] keys = keys(high);
            int[] made = new int[1];
            Inversions.list(Arrays.stream(order).mapToDouble(i -> keys[i]).toArray(), (earlier, later) -> {
                if (made[0] < left.length) {
                    left[made[0]++] = slope(order[earlier], order[later]);
                }
            });
            Arrays.sort(left, 0, made[0]);
            int last = Math.max(0, made[0] - 1);
            double first = left[(int) Math.min(last, rank - belowLow - 1)];
            return rank == next ? first : (first + left[(int) Math.min(last, next - belowLow - 1)]) / 2;
        }
    }
}
