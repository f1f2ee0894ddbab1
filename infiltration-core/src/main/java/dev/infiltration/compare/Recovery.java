// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.compare;

import dev.infiltration.statistics.Fieller;
import dev.infiltration.statistics.Interval;
import dev.infiltration.statistics.Quantile;
import dev.infiltration.statistics.SampleStatistics;
import dev.infiltration.statistics.TextTable;
import dev.infiltration.units.InfiltrationRate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Recovery of the lost rate by a cleaning: (after − before) / (new − before), of the arithmetic means at the
 * same locations.
 *
 * <p>The interval is Fieller's for the ratio of two means of pairs. It supposes differences near normal; it has no bounds
 * where the loss itself is not shown. Above 1: higher than new. Below 0: worse than before.
 */
public final class Recovery {

    private final double[] gains;
    private final double[] losses;

    private Recovery(double[] fresh, double[] before, double[] after) {
        Logs.requirePairs(before, after, "before, after");
        Logs.requirePairs(fresh, before, "fresh, before");
        this.gains = differences(after, before);
        this.losses = differences(fresh, before);
    }

    private static double[] differences(double[] from, double[] taken) {
        return IntStream.range(0, from.length)
                .mapToDouble(i -> from[i] - taken[i])
                .toArray();
    }

    /**
     * {@return the recovery where every location was tested when new}
     *
     * @param fresh  rates when new, one for each location
     * @param before rates before cleaning, at the same locations in the same order
     * @param after  rates after cleaning, likewise
     * @throws IllegalArgumentException if the numbers differ
     */
    public static Recovery of(double[] fresh, double[] before, double[] after) {
        return new Recovery(fresh, before, after);
    }

    /**
     * {@return the recovery towards one figure for the new surface, taken as known}
     *
     * @param fresh  the rate when new
     * @param before rates before cleaning, one for each location
     * @param after  rates after cleaning, at the same locations in the same order
     * @throws IllegalArgumentException if the numbers differ
     */
    public static Recovery of(double fresh, double[] before, double[] after) {
        double[] all = new double[before.length];
        Arrays.fill(all, fresh);
        return new Recovery(all, before, after);
    }

    /**
     * {@return the recovery where every location was tested when new}
     *
     * @param fresh  rates when new, one for each location
     * @param before rates before cleaning, at the same locations
     * @param after  rates after cleaning, likewise
     * @throws IllegalArgumentException if the numbers differ
     */
    public static Recovery of(
            List<InfiltrationRate> fresh, List<InfiltrationRate> before, List<InfiltrationRate> after) {
        return of(Logs.rates(fresh), Logs.rates(before), Logs.rates(after));
    }

    /** {@return the recovery; not a number or infinite if nothing was lost} */
    public double share() {
        return Arrays.stream(gains).sum() / Arrays.stream(losses).sum();
    }

    /**
     * {@return Fieller's limits of the share, absent for fewer than two locations}
     *
     * @param level how often such limits are right
     */
    public Optional<Fieller> limits(double level) {
        int n = gains.length;
        return n < 2
                ? Optional.empty()
                : Optional.of(estimates().limits(Quantile.studentTwoSided(level, n - 1), level));
    }

    private Fieller.Estimates estimates() {
        SampleStatistics gain = SampleStatistics.of(gains);
        SampleStatistics loss = SampleStatistics.of(losses);
        double products = IntStream.range(0, gains.length)
                .mapToDouble(i -> (gains[i] - gain.mean()) * (losses[i] - loss.mean()))
                .sum();
        double covariance = products / (gains.length - 1) / gains.length;
        return new Fieller.Estimates(
                gain.mean(),
                loss.mean(),
                Math.pow(gain.standardError(), 2),
                covariance,
                Math.pow(loss.standardError(), 2));
    }

    /**
     * {@return the interval of the share, without bounds where the loss is not shown; absent for fewer than two locations}
     *
     * @param level how often such an interval is right
     */
    public Optional<Interval> interval(double level) {
        return limits(level).map(Fieller::interval);
    }

    /** {@return the recovery as a small table} */
    @Override
    public String toString() {
        return TextTable.titled("recovery: (after − before) / (new − before)")
                .with("locations", gains.length)
                .with("recovery", TextTable.number(share()))
                .with(
                        "interval",
                        interval(Interval.LEVEL).map(Interval::toString).orElse("too few locations"))
                .toString();
    }
}
