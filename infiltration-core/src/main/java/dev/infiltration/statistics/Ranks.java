// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Ranks of values from 1 up, ties sharing the mean of theirs; doubled, so that they are whole numbers.
 *
 * <p>Values are tied when they follow each other within a relative {@code 1e-12} or an absolute {@code tolerance}: two
 * numbers that are equal on paper differ in the sixteenth digit as doubles, and in another way when the unit changes.
 */
final class Ranks {

    /** Width of a tie, far above rounding and far below any instrument. */
    private static final double TIE = 1e-12;

    private final int[] doubled;
    private final long tieSum;

    private Ranks(int[] doubled, long tieSum) {
        this.doubled = doubled;
        this.tieSum = tieSum;
    }

    /** {@return the tolerance for differences of logarithms, whose rounding does not shrink with them} */
    static double logTolerance() {
        return TIE;
    }

    static Ranks of(double[] values, double tolerance) {
        int[] order = IntStream.range(0, values.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> values[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        int[] doubled = new int[values.length];
        long tieSum = 0;
        for (int start = 0, end; start < order.length; start = end) {
            end = endOfTie(values, order, start, tolerance);
            for (int i = start; i < end; i++) {
                doubled[order[i]] = start + 1 + end;
            }
            long size = (long) end - start;
            tieSum += size * size * size - size;
        }
        return new Ranks(doubled, tieSum);
    }

    private static int endOfTie(double[] values, int[] order, int start, double tolerance) {
        int end = start + 1;
        while (end < order.length && isTie(values[order[end - 1]], values[order[end]], tolerance)) {
            end++;
        }
        return end;
    }

    private static boolean isTie(double lower, double upper, double tolerance) {
        double size = Math.min(Math.abs(lower), Math.abs(upper));
        return lower == upper || upper - lower <= Math.max(tolerance, TIE * size);
    }

    /** {@return twice the sum of the ranks from {@code from} to before {@code to}} */
    long doubledSum(int from, int to) {
        return Arrays.stream(doubled, from, to).asLongStream().sum();
    }

    int[] doubled() {
        return doubled.clone();
    }

    /** {@return the sum over all ties of t³ − t} */
    long tieSum() {
        return tieSum;
    }

    int size() {
        return doubled.length;
    }
}
