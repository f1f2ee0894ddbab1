// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import java.util.Arrays;
import java.util.Random;

/**
 * The interval of a mean by drawing anew from the values themselves (bootstrap-t, Efron 1979, Hall 1988): how far means of
 * such draws lie from the mean, each in its own standard errors.
 *
 * <p>Draws come from the generator that {@link Random} specifies: a seed gives the same numbers on every machine. A draw
 * without scatter is drawn again.
 */
final class BootstrapInterval {

    private static final int DRAWS = 1999;

    private BootstrapInterval() {}

    static Interval interval(double[] values, double level, long seed) {
        SampleStatistics moments = SampleStatistics.of(values);
        if (!(moments.sd() > 0)) {
            return new Interval(moments.mean(), moments.mean(), level);
        }
        double[] off = offsets(values, moments.mean(), new Random(seed));
        int cut = (int) Math.rint((DRAWS + 1) * (1 - level) / 2);
        return new Interval(
                moments.mean() - off[DRAWS - Math.max(cut, 1)] * moments.standardError(),
                moments.mean() - off[Math.max(cut, 1) - 1] * moments.standardError(),
                level);
    }

    private static double[] offsets(double[] values, double mean, Random random) {
        double[] off = new double[DRAWS];
        for (int made = 0; made < DRAWS; ) {
            double[] draw = new double[values.length];
            Arrays.setAll(draw, i -> values[random.nextInt(values.length)]);
            SampleStatistics moments = SampleStatistics.of(draw);
            if (moments.sd() > 0) {
                off[made++] = (moments.mean() - mean) / moments.standardError();
            }
        }
        Arrays.sort(off);
        return off;
    }
}
