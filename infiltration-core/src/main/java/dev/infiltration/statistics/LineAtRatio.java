// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import dev.infiltration.statistics.GroupSums.Group;

/** The line with random intercepts for a given ratio of the variance between groups to the residual variance. */
final class LineAtRatio {

    private static final double LOG_TWO_PI = StrictMath.log(2 * Math.PI);

    private final GroupSums sums;
    private final double ratio;
    /** The matrix of the normal equations, times the residual variance, and its determinant. */
    private final Matrix normal;

    private final double constant;
    private final double slope;
    private final double residualVariance;

    LineAtRatio(GroupSums sums, double ratio) {
        this.sums = sums;
        this.ratio = ratio;
        this.normal = matrix(this::weight).plus(0, 0, sums.xx());
        double y = sums.sum(group -> weight(group) * group.y());
        double xy = sums.sum(group -> weight(group) * group.x() * group.y()) + sums.xy();
        Matrix inverse = normal.inverse();
        this.constant = inverse.a() * y + inverse.b() * xy;
        this.slope = inverse.b() * y + inverse.c() * xy;
        this.residualVariance = squares() / (sums.n() - 2);
    }

    /** {@return the weight of a group's mean, times the residual variance} */
    private double weight(Group group) {
        return group.m() / (1 + group.m() * ratio);
    }

    private interface Weight {
        double of(Group group);
    }

    /** {@return the sum of w·(1, x)(1, x)' over the groups} */
    private Matrix matrix(Weight weight) {
        return new Matrix(
                sums.sum(weight::of),
                sums.sum(group -> weight.of(group) * group.x()),
                sums.sum(group -> weight.of(group) * group.x() * group.x()));
    }

    private double residual(Group group) {
        return group.y() - constant - slope * group.x();
    }

    private double squares() {
        return sums.sum(group -> weight(group) * residual(group) * residual(group)) + sums.within(slope);
    }

    double residualVariance() {
        return residualVariance;
    }

    double slope() {
        return slope;
    }

    double at(double x) {
        return sums.meanY() + constant + slope * (x - sums.meanX());
    }

    /** {@return minus twice the restricted log-likelihood, highest over the residual variance} */
    double deviance() {
        int free = sums.n() - 2;
        return free * (LOG_TWO_PI + StrictMath.log(residualVariance) + 1)
                + sums.sum(group -> StrictMath.log1p(group.m() * ratio))
                + StrictMath.log(normal.determinant());
    }

    /** {@return the derivative of {@link #deviance} by the ratio} */
    double derivative() {
        Matrix change = matrix(group -> -weight(group) * weight(group));
        double squares = sums.sum(group -> -Math.pow(weight(group) * residual(group), 2));
        return squares / residualVariance
                + sums.sum(this::weight)
                + normal.inverse().times(change).trace();
    }

    /** {@return the variance of {@code a·constant + b·slope}} */
    double variance(double a, double b) {
        return residualVariance * normal.inverse().form(a, b);
    }

    /** {@return Satterthwaite's degrees of freedom of {@code a·constant + b·slope}, not a number where the Hessian allows none} */
    double satterthwaite(double a, double b) {
        Matrix hessian = hessian();
        if (!(hessian.a() > 0 && hessian.determinant() > 0)) {
            return Double.NaN;
        }
        Matrix inverse = normal.inverse();
        // derivatives of the variance by the residual variance and by the variance between groups
        double byResidual = inverse.form(a, b, byResidual());
        double byBetween = inverse.form(a, b, byBetween());
        double v = variance(a, b);
        return v * v / hessian.inverse().form(byResidual, byBetween);
    }

    /** Minus the derivative of the normal equations by the residual variance, times its square. */
    private Matrix byResidual() {
        return matrix(group -> weight(group) * weight(group) / group.m()).plus(0, 0, sums.xx());
    }

    /** Minus the derivative of the normal equations by the variance between groups, times the residual variance squared. */
    private Matrix byBetween() {
        return matrix(group -> weight(group) * weight(group));
    }

    /** The observed Hessian of the deviance by the two variances. */
    private Matrix hessian() {
        double square = residualVariance * residualVariance;
        return new Matrix(entry(1, 1) / square, entry(1, 0) / square, entry(0, 0) / square);
    }

    /** An entry of the Hessian times the residual variance squared; j and k are 1 for the residual variance, 0 for the other. */
    private double entry(int j, int k) {
        boolean isResidual = j == 1 && k == 1;
        double logs = -sums.sum(group -> square(group) * share(group, j) * share(group, k))
                - (isResidual ? sums.n() - sums.groups() : 0);
        Matrix second = matrix(group -> 2 * square(group) * weight(group) * share(group, j) * share(group, k))
                .plus(0, 0, isResidual ? 2 * sums.xx() : 0);
        Matrix inverse = normal.inverse();
        double determinant = inverse.times(second).trace()
                - inverse.times(first(j)).times(inverse.times(first(k))).trace();
        double squares = sums.sum(group -> 2
                        * square(group)
                        * weight(group)
                        * share(group, j)
                        * share(group, k)
                        * Math.pow(residual(group), 2))
                + (isResidual ? 2 * sums.within(slope) : 0);
        double[] u = change(j);
        double[] w = change(k);
        return logs + determinant + (squares - 2 * inverse.form(u[0], u[1], w[0], w[1])) / residualVariance;
    }

    private double square(Group group) {
        return weight(group) * weight(group);
    }

    /** How the variance of a group's mean goes with a variance: 1/m with the residual one, 1 with that between groups. */
    private static double share(Group group, int which) {
        return which == 1 ? 1.0 / group.m() : 1;
    }

    private Matrix first(int which) {
        return which == 1 ? byResidual() : byBetween();
    }

    /** How the right-hand side less the fitted one goes with a variance. */
    private double[] change(int which) {
        return new double[] {
            sums.sum(group -> square(group) * share(group, which) * residual(group)),
            sums.sum(group -> square(group) * share(group, which) * residual(group) * group.x())
                    + (which == 1 ? sums.xy() - slope * sums.xx() : 0)
        };
    }

    /** A symmetric matrix of two rows: (a, b; b, c). */
    private record Matrix(double a, double b, double c) {

        Matrix plus(double a, double b, double c) {
            return new Matrix(this.a + a, this.b + b, this.c + c);
        }

        double determinant() {
            return a * c - b * b;
        }

        Matrix inverse() {
            double determinant = determinant();
            return new Matrix(c / determinant, -b / determinant, a / determinant);
        }

        Square times(Matrix other) {
            return new Square(
                    a * other.a + b * other.b,
                    a * other.b + b * other.c,
                    b * other.a + c * other.b,
                    b * other.b + c * other.c);
        }

        double form(double x, double y) {
            return form(x, y, x, y);
        }

        double form(double x, double y, double u, double w) {
            return a * x * u + b * (x * w + y * u) + c * y * w;
        }

        /** (x, y)·M·between·M·(x, y)'. */
        double form(double x, double y, Matrix between) {
            return between.form(a * x + b * y, b * x + c * y);
        }
    }

    /** Any matrix of two rows. */
    private record Square(double a, double b, double c, double d) {

        double trace() {
            return a + d;
        }

        Square times(Square other) {
            return new Square(
                    a * other.a + b * other.c,
                    a * other.b + b * other.d,
                    c * other.a + d * other.c,
                    c * other.b + d * other.d);
        }
    }
}
