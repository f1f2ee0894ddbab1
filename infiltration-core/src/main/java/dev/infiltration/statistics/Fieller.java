// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

/**
 * The ratio of two estimates with Fieller's limits (1954): all ratios {@code r} for which {@code top − r·bottom} may be 0.
 *
 * <p>Where the bottom may itself be 0, the ratios that fit are no interval: all but those between two limits, or all
 * there are. {@link #shape} says which; {@link #interval} is then unbounded. Just between the two every ratio is taken to
 * fit.
 *
 * @param ratio top over bottom
 * @param shape what the limits enclose
 * @param low   the lower of the two limits; minus infinity where there is none
 * @param high  the upper of the two limits; infinity where there is none
 * @param level how often such limits are right
 */
public record Fieller(double ratio, Shape shape, double low, double high, double level) {

    /** What lies where. */
    public enum Shape {
        /** The ratios that fit lie between the limits. */
        WITHIN,
        /** The ratios that fit lie below the lower limit or above the upper one. */
        OUTSIDE,
        /** Every ratio fits. */
        EVERYTHING
    }

    /**
     * Two estimates whose errors are normal with known shape.
     *
     * @param top            the estimate above the line
     * @param bottom         the estimate below the line
     * @param topVariance    estimated variance of {@code top}
     * @param covariance     estimated covariance of the two
     * @param bottomVariance estimated variance of {@code bottom}
     */
    public record Estimates(double top, double bottom, double topVariance, double covariance, double bottomVariance) {

        /**
         * {@return the limits of the ratio}
         *
         * @param quantile quantile of Student's distribution that cuts half the risk off
         * @param level    how often such limits are right
         */
        public Fieller limits(double quantile, double level) {
            double t2 = quantile * quantile;
            double a = bottom * bottom - t2 * bottomVariance;
            double b = top * bottom - t2 * covariance;
            double root = Math.sqrt(Math.max(0, t2 * spread(t2)));
            double one = (b - root) / a;
            double other = (b + root) / a;
            return of(a > 0 ? Shape.WITHIN : root > 0 && a < 0 ? Shape.OUTSIDE : Shape.EVERYTHING, one, other, level);
        }

        private double spread(double t2) {
            return top * top * bottomVariance
                    - 2 * top * bottom * covariance
                    + bottom * bottom * topVariance
                    - t2 * (topVariance * bottomVariance - covariance * covariance);
        }

        private Fieller of(Shape shape, double one, double other, double level) {
            return shape == Shape.EVERYTHING
                    ? new Fieller(top / bottom, shape, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, level)
                    : new Fieller(top / bottom, shape, Math.min(one, other), Math.max(one, other), level);
        }
    }

    /**
     * {@return the same limits about another origin}
     *
     * @param offset what is added to the ratio and its limits
     */
    public Fieller plus(double offset) {
        return new Fieller(ratio + offset, shape, low + offset, high + offset, level);
    }

    /**
     * {@return whether a ratio fits}
     *
     * @param candidate the ratio
     */
    public boolean fits(double candidate) {
        boolean within = low <= candidate && candidate <= high;
        return shape == Shape.OUTSIDE ? candidate <= low || candidate >= high : within;
    }

    /** {@return the limits as an interval, without bounds where the ratios that fit are no interval} */
    public Interval interval() {
        return shape == Shape.WITHIN
                ? new Interval(low, high, level)
                : new Interval(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, level);
    }

    /** {@return the ratio and what fits beside it, for people} */
    @Override
    public String toString() {
        String limits = TextTable.number(low) + " to " + TextTable.number(high);
        String where = switch (shape) {
            case WITHIN -> limits;
            case OUTSIDE -> "all but " + limits;
            case EVERYTHING -> "any";
        };
        return TextTable.number(ratio) + ", " + where + " (" + TextTable.number(100 * level) + " %)";
    }
}
