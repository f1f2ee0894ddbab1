// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * How the time of some work grows with its size: the slope of the line through log time over log size.
 *
 * <p>Time is that of the processor, so that other work on the machine adds little; the shortest of several repetitions is used.
 * A measurement above the limit is repeated, for a collection of garbage or a compilation may fall into it; quadratic work
 * exceeds the limit each time.
 */
final class Growth {

    /** Linear work has a slope of 1, quadratic work of 2. */
    private static final double HIGHEST_SLOPE = 1.6;

    /** Measured for 300 and 1200 tests of a page: 1.19, and 1.67 if each location goes through all tests again. */
    private static final double HIGHEST_SLOPE_OF_BYTES = 1.4;

    private static final int MEASUREMENTS = 4;
    private static final int REPETITIONS = 3;

    /** A short run of the work is repeated until this time has passed, in seconds: that also compiles it. */
    private static final double SHORTEST = 0.02;

    private Growth() {}

    /** Asserts that the time of some work grows no faster than its size, within the limit. */
    static void assertLinear(String what, IntFunction<Runnable> work, int... sizes) {
        Runnable[] works = IntStream.of(sizes).mapToObj(work).toArray(Runnable[]::new);
        works[works.length - 1].run();
        double[] seconds = new double[0];
        double slope = Double.POSITIVE_INFINITY;
        for (int i = 0; i < MEASUREMENTS && slope > HIGHEST_SLOPE; i++) {
            seconds = Arrays.stream(works).mapToDouble(Growth::seconds).toArray();
            slope = slope(sizes, seconds);
        }
        assertTrue(slope <= HIGHEST_SLOPE, what + ": slope " + slope + ", seconds " + Arrays.toString(seconds));
    }

    /** Asserts that the bytes allocated by some work grow no faster than its size, within the limit for bytes. */
    static void assertAllocatesLinearly(String what, IntFunction<Runnable> work, int... sizes) {
        Runnable[] works = IntStream.of(sizes).mapToObj(work).toArray(Runnable[]::new);
        works[0].run();
        double[] bytes = Arrays.stream(works).mapToDouble(Growth::bytes).toArray();
        double slope = slope(sizes, bytes);
        assertTrue(slope <= HIGHEST_SLOPE_OF_BYTES, what + ": slope " + slope + ", bytes " + Arrays.toString(bytes));
    }

    private static double bytes(Runnable work) {
        var counter = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = counter.getCurrentThreadAllocatedBytes();
        work.run();
        return counter.getCurrentThreadAllocatedBytes() - before;
    }

    private static double seconds(Runnable work) {
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        double least = Double.MAX_VALUE;
        double all = 0;
        for (int i = 0; i < REPETITIONS || all < SHORTEST; i++) {
            long before = clock.getCurrentThreadCpuTime();
            work.run();
            double seconds = (clock.getCurrentThreadCpuTime() - before) / 1e9;
            least = Math.min(least, seconds);
            all += seconds;
        }
        return Math.max(least, 1e-6);
    }

    /** Least squares. */
    private static double slope(int[] sizes, double[] seconds) {
        double[] x = IntStream.of(sizes).mapToDouble(Math::log).toArray();
        double[] y = Arrays.stream(seconds).map(Math::log).toArray();
        double meanX = Arrays.stream(x).average().orElseThrow();
        double meanY = Arrays.stream(y).average().orElseThrow();
        double products = 0;
        double squares = 0;
        for (int i = 0; i < x.length; i++) {
            products += (x[i] - meanX) * (y[i] - meanY);
            squares += (x[i] - meanX) * (x[i] - meanX);
        }
        return products / squares;
    }
}
