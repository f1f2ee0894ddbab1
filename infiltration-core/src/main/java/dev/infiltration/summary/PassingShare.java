// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

/**
 * What share of the area passes, judged by how many of some random locations do (Clopper and Pearson 1934).
 *
 * <p>The limits are exact: they hold at least as often as they say, whatever the share.
 *
 * @param passing how many pass
 * @param n       how many were judged
 */
public record PassingShare(int passing, int n) {

    /**
     * Checks the counts.
     *
     * @throws IllegalArgumentException if they are negative or more pass than were judged
     */
    public PassingShare {
        if (passing < 0 || passing > n) {
            throw new IllegalArgumentException("passing: expected 0 to " + n + ", got " + passing);
        }
    }

    /** {@return the share of the locations that pass, not a number if none was judged} */
    public double share() {
        return (double) passing / n;
    }

    /**
     * {@return the two-sided interval of the share of the area}
     *
     * @param level how often such an interval is right, at least
     */
    public Interval interval(double level) {
        return new Interval(low((1 - level) / 2), 1 - new PassingShare(n - passing, n).low((1 - level) / 2), level);
    }

    /**
     * {@return the share of the area that passes at least}
     *
     * @param level how often such a bound is right, at least
     */
    public double lowerBound(double level) {
        return low(1 - level);
    }

    private double low(double tail) {
        return passing == 0 ? 0 : Quantile.beta(tail, passing, n - passing + 1.0);
    }

    /**
     * {@return how many random locations, all passing, show that a share of the area passes}
     *
     * @param share the share, above 0 and below 1
     * @param level how often such a bound is right, at least
     */
    public static int locationsFor(double share, double level) {
        if (!(share > 0 && share < 1 && level > 0 && level < 1)) {
            throw new IllegalArgumentException("share, level: expected between 0 and 1, got " + share + ", " + level);
        }
        return (int) Math.ceil(StrictMath.log(1 - level) / StrictMath.log(share));
    }

    /** {@return how many pass, for people} */
    public String count() {
        return passing + " of " + n + " pass";
    }

    /** {@return the share of the area that passes at least, for people} */
    public String area() {
        return "at least " + TextTable.number(100 * lowerBound(Interval.LEVEL)) + " % of the area passes ("
                + TextTable.number(100 * Interval.LEVEL) + " % sure)";
    }

    /** {@return the counts and the share that passes at least, for people} */
    @Override
    public String toString() {
        return count() + "; " + area();
    }
}
