// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A straight line with normal residuals through values of which some are known only as bounds (Tobin 1958), fitted by maximum
 * likelihood.
 *
 * <p>A value adds its log density, an upper bound {@code ln Φ((bound − line)/σ)}, a lower bound
 * {@code ln Φ((line − bound)/σ)}. In intercept/σ, slope/σ and 1/σ the log-likelihood is concave (Olsen 1978): Newton's method
 * with halved steps finds its one maximum. Standard errors are those of the observed information.
 *
 * <p>Intervals are t intervals with N − 2 degrees of freedom and standard errors widened by {@code √(N/(N − 2))}, N being the
 * number of values and bounds: without bounds they are those of {@link LineFit}. With many bounds or few values they are
 * approximate.
 */
public final class CensoredLine {

    private static final int MOST_STEPS = 200;
    private static final double SMALL = 1e-14;
    private static final double HALF_LOG_TWO_PI = StrictMath.log(2 * Math.PI) / 2;

    private final List<Point> points;
    private final double centreX;
    private final double centreY;
    private final double scaleX;
    private final double scaleY;
    private final double[] top;
    /** Of line at the centre, slope and σ, in the units of the values. */
    private final double[][] covariance;

    /** What is known of a value. */
    public enum Kind {
        /** The value itself. */
        VALUE,
        /** The value is at most this. */
        UPPER_BOUND,
        /** The value is at least this. */
        LOWER_BOUND
    }

    /**
     * A value or a bound.
     *
     * @param x    where
     * @param y    the value or the bound
     * @param kind which of them
     */
    public record Point(double x, double y, Kind kind) {}

    private CensoredLine(List<Point> points) {
        this.points = points;
        double[] x = points.stream().mapToDouble(Point::x).toArray();
        SampleStatistics values = SampleStatistics.of(measured(points));
        this.centreX = SampleStatistics.of(x).mean();
        this.scaleX = SampleStatistics.of(x).sd();
        this.centreY = values.mean();
        this.scaleY = values.sd();
        this.top = climb(new double[] {0, 0, 1});
        this.covariance = covariance();
    }

    private static double[] measured(List<Point> points) {
        return points.stream()
                .filter(point -> point.kind() == Kind.VALUE)
                .mapToDouble(Point::y)
                .toArray();
    }

    /**
     * {@return the fit; absent for fewer than three values at two or more x, or values that lie on a line}
     *
     * @param points values and bounds
     * @throws IllegalArgumentException if a number is not finite
     */
    public static Optional<CensoredLine> of(List<Point> points) {
        if (!points.stream().allMatch(point -> Double.isFinite(point.x()) && Double.isFinite(point.y()))) {
            throw new IllegalArgumentException("points: expected finite numbers");
        }
        return allowFit(points) ? Optional.of(new CensoredLine(List.copyOf(points))) : Optional.empty();
    }

    private static boolean allowFit(List<Point> points) {
        double[] y = measured(points);
        double[] x = points.stream()
                .filter(point -> point.kind() == Kind.VALUE)
                .mapToDouble(Point::x)
                .toArray();
        return y.length > 2
                && Arrays.stream(x).distinct().count() > 1
                && LineFit.of(x, y).residualSd()
                        > 1e-12 * SampleStatistics.of(y).sd();
    }

    /** The log-likelihood in units of the scales: η0 + η1·x for the line over σ, and 1/σ. */
    private double likelihood(double[] at) {
        return at[2] > 0 ? points.stream().mapToDouble(point -> term(point, at)).sum() : Double.NEGATIVE_INFINITY;
    }

    private double[] change(Point point) {
        return new double[] {-1, -(point.x() - centreX) / scaleX, (point.y() - centreY) / scaleY};
    }

    private double z(Point point, double[] at) {
        double[] change = change(point);
        return at[0] * change[0] + at[1] * change[1] + at[2] * change[2];
    }

    private double term(Point point, double[] at) {
        double z = z(point, at);
        return switch (point.kind()) {
            case VALUE -> StrictMath.log(at[2]) - z * z / 2 - HALF_LOG_TWO_PI;
            case UPPER_BOUND -> CensoredNormal.logBelow(z);
            case LOWER_BOUND -> CensoredNormal.logBelow(-z);
        };
    }

    private double[] climb(double[] start) {
        double[] at = start;
        for (int i = 0; i < MOST_STEPS; i++) {
            double[] step = solve(curvature(at), slope(at));
            double length = 1;
            double[] next = moved(at, step, length);
            while (likelihood(next) < likelihood(at) && length > SMALL) {
                length /= 2;
                next = moved(at, step, length);
            }
            if (length <= SMALL || Arrays.stream(step).allMatch(part -> Math.abs(part) < SMALL)) {
                return at;
            }
            at = next;
        }
        return at;
    }

    private static double[] moved(double[] at, double[] step, double length) {
        return new double[] {at[0] + length * step[0], at[1] + length * step[1], at[2] + length * step[2]};
    }

    private double[] slope(double[] at) {
        double[] slope = new double[3];
        for (Point point : points) {
            double z = z(point, at);
            double factor = switch (point.kind()) {
                case VALUE -> -z;
                case UPPER_BOUND -> CensoredNormal.hazard(z);
                case LOWER_BOUND -> -CensoredNormal.hazard(-z);
            };
            double[] change = change(point);
            for (int j = 0; j < 3; j++) {
                slope[j] += factor * change[j];
            }
            slope[2] += point.kind() == Kind.VALUE ? 1 / at[2] : 0;
        }
        return slope;
    }

    /** Minus the second derivatives: positive definite. */
    private double[][] curvature(double[] at) {
        double[][] curvature = new double[3][3];
        for (Point point : points) {
            double z = z(point, at);
            double factor = switch (point.kind()) {
                case VALUE -> 1;
                case UPPER_BOUND -> CensoredNormal.hazard(z) * (z + CensoredNormal.hazard(z));
                case LOWER_BOUND -> CensoredNormal.hazard(-z) * (CensoredNormal.hazard(-z) - z);
            };
            double[] change = change(point);
            for (int j = 0; j < 3; j++) {
                for (int k = 0; k < 3; k++) {
                    curvature[j][k] += factor * change[j] * change[k];
                }
            }
            curvature[2][2] += point.kind() == Kind.VALUE ? 1 / (at[2] * at[2]) : 0;
        }
        return curvature;
    }

    /** Gauss elimination of a positive definite system, without pivots. */
    private static double[] solve(double[][] matrix, double[] right) {
        double[][] m = Arrays.stream(matrix).map(double[]::clone).toArray(double[][]::new);
        double[] r = right.clone();
        for (int i = 0; i < 3; i++) {
            for (int j = i + 1; j < 3; j++) {
                double factor = m[j][i] / m[i][i];
                for (int k = i; k < 3; k++) {
                    m[j][k] -= factor * m[i][k];
                }
                r[j] -= factor * r[i];
            }
        }
        for (int i = 2; i >= 0; i--) {
            for (int k = i + 1; k < 3; k++) {
                r[i] -= m[i][k] * r[k];
            }
            r[i] /= m[i][i];
        }
        return r;
    }

    private double[][] covariance() {
        double sigma = 1 / top[2];
        double[][] jacobian = {
            {scaleY * sigma, 0, -scaleY * top[0] * sigma * sigma},
            {0, scaleY / scaleX * sigma, -scaleY / scaleX * top[1] * sigma * sigma},
            {0, 0, -scaleY * sigma * sigma}
        };
        double[][] curvature = curvature(top);
        double[][] covariance = new double[3][3];
        for (int j = 0; j < 3; j++) {
            double[] column = solve(curvature, jacobian[j]);
            for (int k = 0; k < 3; k++) {
                covariance[j][k] = jacobian[k][0] * column[0] + jacobian[k][1] * column[1] + jacobian[k][2] * column[2];
            }
        }
        return covariance;
    }

    /** {@return the number of values and bounds} */
    public int n() {
        return points.size();
    }

    /** {@return the slope} */
    public double slope() {
        return scaleY / scaleX * top[1] / top[2];
    }

    /** {@return the standard error of the slope by the observed information} */
    public double slopeError() {
        return Math.sqrt(covariance[1][1]);
    }

    /** {@return the standard deviation about the line, of maximum likelihood: not corrected for degrees of freedom} */
    public double sd() {
        return scaleY / top[2];
    }

    /** {@return the standard error of the logarithm of {@link #sd} by the observed information} */
    public double logSdError() {
        return Math.sqrt(covariance[2][2]) / sd();
    }

    /** {@return the log-likelihood, in the unit of the values} */
    public double logLikelihood() {
        return likelihood(top) - measured(points).length * StrictMath.log(scaleY);
    }

    /**
     * {@return the fitted value}
     *
     * @param x where
     */
    public double at(double x) {
        return centreY + scaleY * top[0] / top[2] + slope() * (x - centreX);
    }

    /**
     * {@return the standard error of {@link #at} by the observed information}
     *
     * @param x where
     */
    public double errorAt(double x) {
        double off = x - centreX;
        return Math.sqrt(covariance[0][0] + 2 * off * covariance[0][1] + off * off * covariance[1][1]);
    }

    private double widening() {
        return n() / (n() - 2.0);
    }

    private double quantile(double level) {
        return Quantile.studentTwoSided(level, n() - 2.0);
    }

    /**
     * {@return the interval of the slope}
     *
     * @param level the confidence level
     */
    public Interval slopeInterval(double level) {
        return Interval.around(slope(), quantile(level) * slopeError() * Math.sqrt(widening()), level);
    }

    /**
     * {@return where a single future value may be at a height, by Fieller's limits (inverse prediction)}
     *
     * @param y     the height
     * @param level the prediction level
     */
    public Fieller crossing(double y, double level) {
        return new Fieller.Estimates(
                        y - at(centreX),
                        slope(),
                        widening() * (sd() * sd() + covariance[0][0]),
                        -widening() * covariance[0][1],
                        widening() * covariance[1][1])
                .limits(quantile(level), level)
                .plus(centreX);
    }

    /** {@return the fit as a small table} */
    @Override
    public String toString() {
        return TextTable.titled("censored line")
                .with("values, bounds", measured(points).length + ", " + (n() - measured(points).length))
                .with("slope", TextTable.number(slope()) + ", " + slopeInterval(Interval.LEVEL))
                .with("standard deviation about it", TextTable.number(sd()))
                .toString();
    }
}
