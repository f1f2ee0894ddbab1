// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * The likelihood of normal values of which some are known only to lie below or above a bound.
 *
 * <p>In η = μ/σ and τ = 1/σ its logarithm is concave (Olsen 1978): Newton's method with halved steps finds its one top. With
 * {@code z = τ·y − η} a value adds ln τ − z²/2, an upper bound ln Φ(z), a lower bound ln Φ(−z).
 */
final class CensoredNormal {

    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
    private static final double LOG_ROOT_TWO_PI = 0.5 * StrictMath.log(2 * Math.PI);
    /** Below it Φ is given by its asymptotic series. */
    private static final double FAR_TAIL = -30;
    /** Ten steps are usual. */
    private static final int MOST_STEPS = 100;
    /** A step that promises less is the last: the error left is of the order of its square. */
    private static final double LAST_GAIN = 1e-12;
    /** A step shortened to this leads nowhere. */
    private static final double SHORTEST = 1e-12;

    private final double[] values;
    private final double[] atMost;
    private final double[] atLeast;

    /** A place in the plane of the two parameters. */
    record Point(double eta, double tau) {

        double mu() {
            return eta / tau;
        }

        double sigma() {
            return 1 / tau;
        }

        private Point moved(Point step, double times) {
            return new Point(eta + times * step.eta, tau + times * step.tau);
        }
    }

    /** First and second derivatives of the log-likelihood. */
    private static final class Slope {
        private double eta;
        private double tau;
        private double etaEta;
        private double etaTau;
        private double tauTau;

        /** A term with derivatives g and h by z, at y. */
        private void add(double g, double h, double y) {
            eta -= g;
            tau += g * y;
            etaEta += h;
            etaTau -= h * y;
            tauTau += h * y * y;
        }

        private double determinant() {
            return etaEta * tauTau - etaTau * etaTau;
        }

        private Point step() {
            return new Point(
                    -(tauTau * eta - etaTau * tau) / determinant(), -(etaEta * tau - etaTau * eta) / determinant());
        }
    }

    /** Variances and covariance of μ and σ. */
    record Covariance(double mu, double both, double sigma) {}

    CensoredNormal(double[] values, double[] atMost, double[] atLeast) {
        this.values = values;
        this.atMost = atMost;
        this.atLeast = atLeast;
    }

    int n() {
        return values.length + atMost.length + atLeast.length;
    }

    /** The log-likelihood without its constant. */
    double at(Point at) {
        double sum = values.length * StrictMath.log(at.tau());
        for (double y : values) {
            double z = at.tau() * y - at.eta();
            sum -= z * z / 2;
        }
        for (double y : atMost) {
            sum += logBelow(at.tau() * y - at.eta());
        }
        for (double y : atLeast) {
            sum += logBelow(at.eta() - at.tau() * y);
        }
        return sum;
    }

    private Slope slope(Point at) {
        Slope slope = new Slope();
        for (double y : values) {
            slope.add(at.eta() - at.tau() * y, -1, y);
        }
        for (double y : atMost) {
            double z = at.tau() * y - at.eta();
            slope.add(hazard(z), -hazard(z) * (z + hazard(z)), y);
        }
        for (double y : atLeast) {
            double z = at.eta() - at.tau() * y;
            slope.add(-hazard(z), -hazard(z) * (z + hazard(z)), y);
        }
        slope.tau += values.length / at.tau();
        slope.tauTau -= values.length / (at.tau() * at.tau());
        return slope;
    }

    static double logBelow(double z) {
        if (z > FAR_TAIL) {
            return StrictMath.log(NORMAL.cumulativeProbability(z));
        }
        double square = 1 / (z * z);
        return -z * z / 2
                - LOG_ROOT_TWO_PI
                - StrictMath.log(-z)
                + StrictMath.log1p(-square * (1 - 3 * square * (1 - 5 * square)));
    }

    /** φ/Φ. */
    static double hazard(double z) {
        return StrictMath.exp(-z * z / 2 - LOG_ROOT_TWO_PI - logBelow(z));
    }

    /** {@return the top, climbed to from a start} */
    Point top(Point start) {
        Point at = start;
        for (int i = 0; i < MOST_STEPS; i++) {
            Slope slope = slope(at);
            Point step = slope.step();
            if (slope.eta * step.eta() + slope.tau * step.tau() < LAST_GAIN) {
                return at.moved(step, 1);
            }
            at = climb(at, step);
        }
        return at;
    }

    /** {@return the highest point with a given μ} */
    Point topAt(double mu, Point start) {
        Point at = new Point(mu * start.tau(), start.tau());
        for (int i = 0; i < MOST_STEPS; i++) {
            Slope slope = slope(at);
            double first = slope.tau + mu * slope.eta;
            double second = slope.tauTau + 2 * mu * slope.etaTau + mu * mu * slope.etaEta;
            Point step = new Point(-mu * first / second, -first / second);
            if (first * step.tau() < LAST_GAIN) {
                return at.moved(step, 1);
            }
            at = climb(at, step);
        }
        return at;
    }

    /** Halves a step until it leads up. */
    private Point climb(Point from, Point step) {
        double height = at(from);
        double times = 1;
        Point to = from.moved(step, times);
        while (times > SHORTEST && !(to.tau() > 0 && at(to) >= height)) {
            times /= 2;
            to = from.moved(step, times);
        }
        return times > SHORTEST ? to : from;
    }

    /** {@return the covariance of μ and σ by the curvature at the top} */
    Covariance covariance(Point top) {
        Slope slope = slope(top);
        double etaEta = -slope.tauTau / slope.determinant();
        double etaTau = slope.etaTau / slope.determinant();
        double tauTau = -slope.etaEta / slope.determinant();
        double byTau = -top.mu();
        double sigma = top.sigma();
        return new Covariance(
                sigma * sigma * (etaEta + 2 * byTau * etaTau + byTau * byTau * tauTau),
                -sigma * sigma * sigma * (etaTau + byTau * tauTau),
                sigma * sigma * sigma * sigma * tauTau);
    }
}
