// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Outliers: values above 3.5 by the modified z-score 0.6745·(x − median)/MAD (Iglewicz and Hoaglin 1993).
 *
 * <p>Where half of the values or more are equal there is no measure of scatter, and none is flagged.
 */
final class Outliers {

    private static final double FAR = 3.5;
    /** Median absolute deviation of a normal population of standard deviation 1. */
    private static final double NORMAL_MAD = 0.6745;

    private Outliers() {}

    /** The places of the values that are flagged. */
    static int[] of(double[] values) {
        double median = SampleStatistics.median(values);
        double[] off =
                Arrays.stream(values).map(value -> Math.abs(value - median)).toArray();
        double spread = SampleStatistics.median(off);
        return IntStream.range(0, values.length)
                .filter(i -> spread > 0 && NORMAL_MAD * off[i] / spread > FAR)
                .toArray();
    }
}
