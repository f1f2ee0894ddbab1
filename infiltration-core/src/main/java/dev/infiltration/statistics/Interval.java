// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import java.util.function.DoubleFunction;

/**
 * Two limits between which a figure lies, with how often such limits are right.
 *
 * <p>A limit may be infinite: the data do not bound the figure on that side. Where a method has steps (ranks, counts),
 * {@code level} is the level reached, which is at least the one asked for.
 *
 * @param low   the lower limit, or negative infinity
 * @param high  the upper limit, or infinity
 * @param level the share of such intervals that hold the true figure, above 0 and below 1
 */
public record Interval(double low, double high, double level) {

    /** The level taken where none is named: 95 %. */
    public static final double LEVEL = 0.95;

    /** An upper limit of more than so many estimates says only that there are too few values. */
    private static final double WIDEST = 100;

    /**
     * Checks that the limits are in order.
     *
     * @throws IllegalArgumentException if {@code low} exceeds {@code high}, either is not a number, or the level is not
     *     between 0 and 1
     */
    public Interval {
        if (!(low <= high)) {
            throw new IllegalArgumentException("low: expected at most high " + high + ", got " + low);
        }
        if (!(level > 0 && level < 1)) {
            throw new IllegalArgumentException("level: expected between 0 and 1, got " + level);
        }
    }

    /**
     * {@return the interval of an estimate that is off by at most {@code margin}}
     *
     * @param centre the estimate
     * @param margin the half width, not negative
     * @param level  how often such an interval is right
     */
    public static Interval around(double centre, double margin, double level) {
        return new Interval(centre - margin, centre + margin, level);
    }

    /**
     * {@return the interval between two limits, unbounded on a side whose limit is not a number}
     *
     * @param low   the lower limit
     * @param high  the upper limit, not below {@code low}
     * @param level the confidence level, or the coverage probability of a measurement
     */
    public static Interval between(double low, double high, double level) {
        return new Interval(
                Double.isNaN(low) ? Double.NEGATIVE_INFINITY : low,
                Double.isNaN(high) ? Double.POSITIVE_INFINITY : high,
                level);
    }

    /**
     * {@return whether a value lies within, the limits included}
     *
     * @param value the value
     */
    public boolean contains(double value) {
        return low <= value && value <= high;
    }

    /** {@return the upper limit less the lower limit} */
    public double width() {
        return high - low;
    }

    /** {@return whether both limits are finite} */
    public boolean isBounded() {
        return Double.isFinite(low) && Double.isFinite(high);
    }

    /** {@return the interval of the exponential, for limits found on a log scale} */
    public Interval exp() {
        return new Interval(StrictMath.exp(low), StrictMath.exp(high), level);
    }

    /** {@return whether the upper limit is so far from the estimate that it bounds nothing: more than a hundred times it} */
    boolean isOpenAbove(double estimate) {
        return high > WIDEST * estimate;
    }

    /**
     * {@return the limits for people beside their estimate}: the lower limit alone where the upper one is more than a hundred
     * times the estimate
     *
     * @param estimate the estimate
     * @param number   writes a finite limit
     * @param values   what there are too few of, such as {@code locations}
     */
    public String text(double estimate, DoubleFunction<String> number, String values) {
        String share = TextTable.number(100 * level) + " %";
        String lowest = Double.isFinite(low) ? number.apply(low) : TextTable.number(low);
        if (isOpenAbove(estimate)) {
            return "at least " + lowest + " (lower limit of the " + share + " interval; too few " + values
                    + " for an upper limit)";
        }
        return lowest + " to " + (Double.isFinite(high) ? number.apply(high) : TextTable.number(high)) + " (" + share
                + ")";
    }

    /** {@return the limits for people, as in {@code 12.3 to 45.6 (95 %)}} */
    @Override
    public String toString() {
        return TextTable.number(low) + " to " + TextTable.number(high) + " (" + TextTable.number(100 * level) + " %)";
    }
}
