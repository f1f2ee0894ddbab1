// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import dev.infiltration.statistics.Interval;
import dev.infiltration.statistics.Quantile;
import dev.infiltration.statistics.TextTable;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * What share of the area passes, judged by how many of some random locations do (Clopper and Pearson 1934).
 *
 * <p>The limits are exact: they hold at least as often as they say, whatever the share.
 *
 * @param passing how many pass
 * @param n       how many were judged
 */
public record PassingShare(int passing, int n) {

    /** More digits than a level written as a double can have. */
    private static final MathContext DIGITS = new MathContext(50);
    /** Powers above this one have more digits than a level and cannot be equal to its complement. */
    private static final int MOST_EXACT = 100;

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
        double ratio = StrictMath.log(1 - level) / StrictMath.log(share);
        int nearest = (int) Math.max(1, Math.rint(ratio));
        return nearest <= MOST_EXACT && isShownBy(nearest, share, level) ? nearest : (int) Math.ceil(ratio);
    }

    /** Whether {@code share^n ≤ 1 − level}, in decimals: three locations of 0.1 show 0.999 exactly. */
    private static boolean isShownBy(int n, double share, double level) {
        return BigDecimal.valueOf(share).pow(n, DIGITS).compareTo(BigDecimal.ONE.subtract(BigDecimal.valueOf(level)))
                <= 0;
    }

    /** {@return how many pass, for people} */
    public String count() {
        return passing + " of " + n + " pass";
    }

    /** {@return the share of the area that passes at least, for people} */
    public String area() {
        return "at least " + TextTable.number(100 * lowerBound(Interval.LEVEL)) + " % of the area passes (one-sided "
                + TextTable.number(100 * Interval.LEVEL) + " % confidence)";
    }

    /** {@return the counts and the share that passes at least, for people} */
    @Override
    public String toString() {
        return count() + "; " + area();
    }
}
