// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntPredicate;
import java.util.function.LongUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * The test of a trend in either direction (Mann 1945, Kendall 1975): do later values tend to be higher, or lower.
 *
 * <p>Conventions. {@code S} counts pairs that rise less pairs that fall. Its variance is corrected for ties in the values
 * and in time. The normal approximation takes one off {@code |S|}. Up to 40 values at different times the probability is
 * computed exactly, values that are equal taken as such; the two-sided one is twice that of {@code |S|} or more.
 */
public final class MannKendall {

    private final int n;
    private final long statistic;
    private final int[] timeTies;
    private final int[] valueTies;

    /** What counts as one value, relative to it: more than rounding in another unit or order, less than any reading. */
    private static final double TIE = 1e-12;

    private MannKendall(double[] x, double[] values) {
        double[] y = tied(values);
        int[] order = IntStream.range(0, x.length)
                .boxed()
                .sorted(Comparator.<Integer>comparingDouble(i -> x[i]).thenComparingDouble(i -> y[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        double[] inTime = Arrays.stream(order).mapToDouble(i -> y[i]).toArray();
        this.n = x.length;
        this.timeTies = ties(x);
        this.valueTies = ties(y);
        this.statistic = pairs(n)
                - sum(timeTies, MannKendall::pairs)
                - sum(valueTies, MannKendall::pairs)
                + sum(ties(order, x, y), MannKendall::pairs)
                - 2 * Inversions.count(inTime);
    }

    /**
     * {@return the test of values in order of time}
     *
     * @param y the values, earliest first; zero rates may stand among them
     */
    public static MannKendall of(double... y) {
        return of(IntStream.range(0, y.length).asDoubleStream().toArray(), y);
    }

    /**
     * {@return the test of values at given times}
     *
     * @param x when
     * @param y what was found then
     * @throws IllegalArgumentException if the numbers differ or one is no number
     */
    public static MannKendall of(double[] x, double[] y) {
        if (DoubleStream.concat(Arrays.stream(x), Arrays.stream(y)).anyMatch(Double::isNaN)) {
            throw new IllegalArgumentException("x, y: expected numbers, got NaN");
        }
        if (x.length != y.length) {
            throw new IllegalArgumentException("x, y: expected pairs, got " + x.length + " and " + y.length);
        }
        return new MannKendall(x, y);
    }

    /** The values, those that differ by rounding alone made equal. */
    private static double[] tied(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double[] lowest = new double[sorted.length];
        for (int i = 0; i < sorted.length; i++) {
            boolean isTie =
                    i > 0 && sorted[i] - sorted[i - 1] <= TIE * Math.min(Math.abs(sorted[i - 1]), Math.abs(sorted[i]));
            lowest[i] = isTie ? lowest[i - 1] : sorted[i];
        }
        return Arrays.stream(values)
                .map(value -> lowest[Arrays.binarySearch(sorted, value)])
                .toArray();
    }

    private static long pairs(long n) {
        return n * (n - 1) / 2;
    }

    /** {@return sizes of the groups of equal values, those of one included} */
    private static int[] ties(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return runs(sorted.length, i -> sorted[i] == sorted[i - 1]);
    }

    private static int[] ties(int[] order, double[] x, double[] y) {
        return runs(order.length, i -> x[order[i]] == x[order[i - 1]] && y[order[i]] == y[order[i - 1]]);
    }

    private static int[] runs(int n, IntPredicate isLikeTheOneBefore) {
        int[] starts = IntStream.range(0, n)
                .filter(i -> i == 0 || !isLikeTheOneBefore.test(i))
                .toArray();
        return IntStream.range(0, starts.length)
                .map(i -> (i + 1 < starts.length ? starts[i + 1] : n) - starts[i])
                .toArray();
    }

    private static long sum(int[] sizes, LongUnaryOperator term) {
        return Arrays.stream(sizes).asLongStream().map(term).sum();
    }

    /** {@return how many values there are} */
    public int n() {
        return n;
    }

    /** {@return S: pairs that rise less pairs that fall} */
    public long statistic() {
        return statistic;
    }

    /** {@return the variance of {@link #statistic} without a trend, corrected for ties} */
    public double variance() {
        double m = n;
        double plain = term(m) - sumOf(timeTies, MannKendall::term) - sumOf(valueTies, MannKendall::term);
        double twos = sumOf(timeTies, t -> t * (t - 1)) * sumOf(valueTies, t -> t * (t - 1)) / (2 * m * (m - 1));
        double threes = sumOf(timeTies, MannKendall::triples) * sumOf(valueTies, MannKendall::triples);
        return n < 2 ? 0 : plain / 18 + twos + (n < 3 ? 0 : threes / (9 * m * (m - 1) * (m - 2)));
    }

    private static double term(double t) {
        return t * (t - 1) * (2 * t + 5);
    }

    private static double triples(double t) {
        return t * (t - 1) * (t - 2);
    }

    private static double sumOf(int[] sizes, DoubleUnaryOperator term) {
        return Arrays.stream(sizes).asDoubleStream().map(term).sum();
    }

    /** {@return the standardised statistic, one taken off; 0 if all values are equal} */
    public double z() {
        return variance() > 0
                ? Math.signum((double) statistic) * (Math.abs(statistic) - 1) / Math.sqrt(variance()) + 0.0
                : 0;
    }

    /** {@return the two-sided probability of the normal approximation} */
    public double approximate() {
        return Math.min(1, 2 * NormalDistribution.of(0, 1).survivalProbability(Math.abs(z())));
    }

    /** {@return the two-sided probability computed exactly, absent for more than 40 values or several at one time} */
    public Optional<ExactProbability> exact() {
        return exactTail()
                .map(tail -> new ExactProbability(
                        tail.numerator().shiftLeft(1).min(tail.denominator()), tail.denominator()));
    }

    /** {@return the probability of so far a statistic or farther on its side, absent as for {@link #exact}} */
    public Optional<ExactProbability> exactTail() {
        long pairs = pairs(n) - sum(valueTies, MannKendall::pairs);
        return isCounted()
                ? Optional.of(KendallDistribution.of(valueTies).atMost((pairs - Math.abs(statistic)) / 2))
                : Optional.empty();
    }

    private boolean isCounted() {
        return n <= KendallDistribution.MOST && timeTies.length == n;
    }

    /** {@return the two-sided probability: computed exactly where it can be, else of the normal approximation} */
    public double pValue() {
        return exact().map(ExactProbability::value).orElseGet(this::approximate);
    }

    /** {@return the least that the two-sided probability could be with these ties; 0 where it is not computed exactly} */
    public double smallestPValue() {
        return isCounted()
                ? Math.min(1, 2 * KendallDistribution.of(valueTies).atMost(0).value())
                : 0;
    }

    /** {@return whether the values are shown to rise (higher) or fall (lower), at a two-sided risk of 5 %} */
    public Conclusion conclusion() {
        return Conclusion.of(pValue(), smallestPValue(), (double) statistic);
    }

    /** {@return Kendall's tau-a: the statistic by the number of pairs} */
    public double tauA() {
        return (double) statistic / pairs(n);
    }

    /** {@return Kendall's tau-b, corrected for ties; not a number if all values or all times are equal} */
    public double tauB() {
        double inTime = pairs(n) - sum(timeTies, MannKendall::pairs);
        double inValue = pairs(n) - sum(valueTies, MannKendall::pairs);
        return statistic / (Math.sqrt(inTime) * Math.sqrt(inValue));
    }

    /** {@return sizes of the groups of equal values, those of one left out} */
    long[] ties() {
        return LongStream.of(Arrays.stream(valueTies).asLongStream().toArray())
                .filter(size -> size > 1)
                .toArray();
    }

    boolean hasTies() {
        return valueTies.length < n || timeTies.length < n;
    }

    /** {@return the test as a small table} */
    @Override
    public String toString() {
        boolean isTold = conclusion() != Conclusion.INSUFFICIENT_DATA;
        return TextTable.titled("pairs that rise less pairs that fall")
                .with("values", n())
                .with("difference", statistic())
                .with("tau-b", TextTable.number(tauB()))
                .with("two-sided probability", isTold ? TextTable.number(pValue()) : "none")
                .with("conclusion", conclusion())
                .toString();
    }
}
