// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/** How the time of some work grows with its size: the slope of the line through log time over log size. */
final class Growth {

    /** Linear work has a slope of 1, quadratic work of 2. */
    private static final double MOST = 1.6;

    private static final int REPETITIONS = 5;

    private Growth() {}

    /** The least time of several, of a processor, so that other work on the machine does not count; the largest size warms up. */
    static void assertLinear(String what, IntFunction<Runnable> work, int... sizes) {
        work.apply(sizes[sizes.length - 1]).run();
        double[] seconds =
                IntStream.of(sizes).mapToDouble(size -> least(work.apply(size))).toArray();
        double slope = slope(sizes, seconds);
        assertTrue(slope < MOST, () -> what + ": slope " + slope + ", seconds " + Arrays.toString(seconds));
    }

    private static double least(Runnable work) {
        var clock = ManagementFactory.getThreadMXBean();
        double least = Double.MAX_VALUE;
        for (int i = 0; i < REPETITIONS; i++) {
            long before = clock.getCurrentThreadCpuTime();
            work.run();
            least = Math.min(least, (clock.getCurrentThreadCpuTime() - before) / 1e9);
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
