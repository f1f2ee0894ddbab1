// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

/**
 * Exact limits of the arithmetic mean of a log-normal population, on the log scale: of θ = μ + σ²/2 (Land 1971, 1973).
 *
 * <p>Given how far the logarithms lie from a supposed θ, {@code R² = Σ(y − θ)²}, the direction in which they lie has a known
 * distribution, free of μ and σ: the angle φ between them and the diagonal has density {@code sin(φ)^(n−2)·exp(−k·cos φ)}
 * with {@code k = R·√n/2}. A limit is the θ for which the angle seen, or a greater one, has the probability wanted.
 *
 * @param n    how many logarithms, at least 2
 * @param mean their mean
 * @param sd   their standard deviation, divisor n − 1
 */
record LogNormalMean(int n, double mean, double sd) {

    /** Nodes and weights of Gauss and Legendre on −1 to 1, eight of each side (Abramowitz and Stegun table 25.4). */
    private static final double[] NODES = {
        0.09501250983763744, 0.2816035507792589, 0.45801677765722737, 0.6178762444026438,
        0.755404408355003, 0.8656312023878318, 0.9445750230732326, 0.9894009349916499
    };

    private static final double[] WEIGHTS = {
        0.1894506104550685, 0.18260341504492358, 0.16915651939500254, 0.14959598881657674,
        0.12462897125553388, 0.09515851168249279, 0.06225352393864789, 0.02715245941175409
    };

    /** Beyond so many widths of its peak the density is nothing. */
    private static final int WIDTHS = 12;
    /** Widths to a panel of sixteen nodes: narrower ones change the limits by no more than the search for them, 1e-12. */
    private static final int PANEL = 4;

    /** {@return the θ that exceeds the true one with a probability} */
    double limit(double probability) {
        if (!(sd > 0)) {
            return mean;
        }
        double middle = mean + sd * sd / 2;
        int side = tail(middle) > 1 - probability ? 1 : -1;
        return Roots.beyond(middle, side * sd, theta -> side * (tail(theta) - 1 + probability));
    }

    /** {@return the probability of an angle at least as great as that seen, if θ were so: it falls with θ} */
    private double tail(double theta) {
        double radius = Math.sqrt((n - 1) * sd * sd + n * (mean - theta) * (mean - theta));
        double k = Math.sqrt(n) * radius / 2;
        double seen = Math.atan2(Math.sqrt(n - 1.0) * sd, Math.sqrt(n) * (mean - theta));
        Density density = new Density(n - 2, k);
        double above = density.integral(seen, Math.PI);
        return above / (above + density.integral(0, seen));
    }

    /** {@code sin(φ)^power·exp(−k·cos φ)}, scaled to 1 at its peak. */
    private static final class Density {

        private final int power;
        private final double k;
        private final double peak;
        private final double width;
        private final double sineOfPeak;
        private final double cosineOfPeak;

        private Density(int power, double k) {
            this.power = power;
            this.k = k;
            double cosine = -2 * k / (power + Math.hypot(power, 2 * k));
            this.peak = Math.acos(cosine);
            this.sineOfPeak = StrictMath.sin(peak);
            this.cosineOfPeak = StrictMath.cos(peak);
            double sine = power == 0 ? 1 : (1 - cosine) * (1 + cosine);
            this.width = 1 / Math.sqrt(power / sine - k * cosine);
        }

        private double at(double angle) {
            double rise = power == 0 ? 0 : power * StrictMath.log(StrictMath.sin(angle) / sineOfPeak);
            return StrictMath.exp(rise - k * (StrictMath.cos(angle) - cosineOfPeak));
        }

        private double integral(double from, double to) {
            double low = Math.max(from, peak - WIDTHS * width);
            double high = Math.min(to, peak + WIDTHS * width);
            int panels = (int) Math.ceil(Math.max(0, high - low) / (PANEL * width));
            double sum = 0;
            for (int i = 0; i < panels; i++) {
                double half = (high - low) / panels / 2;
                sum += half * panel(low + (2 * i + 1) * half, half);
            }
            return sum;
        }

        private double panel(double centre, double half) {
            double sum = 0;
            for (int i = 0; i < NODES.length; i++) {
                sum += WEIGHTS[i] * (at(centre - half * NODES[i]) + at(centre + half * NODES[i]));
            }
            return sum;
        }
    }
}
