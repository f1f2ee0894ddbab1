// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;

/**
 * Partial derivatives of a model by central differences, extrapolated to a step of zero (Ridders 1982, Adv. Eng. Softw. 4, 75).
 *
 * <p>The first step is the larger of the standard uncertainty of the input and a thousandth of its value; the steps shrink
 * by 1.4, and the estimate that changes least is used. Steps at which the model is not finite are skipped.
 */
final class Derivatives {

    private static final double RELATIVE_STEP = 1e-3;
    private static final double SHRINK = 1.4;
    private static final int ROUNDS = 10;

    private final ToDoubleFunction<double[]> model;
    private final double[] values;
    private final double[] steps;

    Derivatives(ToDoubleFunction<double[]> model, double[] values, double[] uncertainties) {
        this.model = model;
        this.values = values;
        this.steps = new double[values.length];
        for (int i = 0; i < steps.length; i++) {
            double step = Math.max(uncertainties[i], RELATIVE_STEP * Math.abs(values[i]));
            steps[i] = step > 0 ? step : RELATIVE_STEP;
        }
    }

    /** {@return ∂f/∂xi} */
    double first(int i) {
        return limit(s -> (at(i, s, i, 0) - at(i, -s, i, 0)) / (2 * s)) / steps[i];
    }

    /** {@return ∂²f/∂xi∂xj} */
    double second(int i, int j) {
        DoubleUnaryOperator difference = i == j
                ? s -> (at(i, s, i, 0) - 2 * at(i, 0, i, 0) + at(i, -s, i, 0)) / (s * s)
                : s -> (at(i, s, j, s) - at(i, s, j, -s) - at(i, -s, j, s) + at(i, -s, j, -s)) / (4 * s * s);
        return limit(difference) / (steps[i] * steps[j]);
    }

    /** {@return ∂³f/∂xi∂xj²} */
    double third(int i, int j) {
        DoubleUnaryOperator difference = i == j
                ? s -> (at(i, 2 * s, i, 0) - 2 * at(i, s, i, 0) + 2 * at(i, -s, i, 0) - at(i, -2 * s, i, 0))
                        / (2 * s * s * s)
                : s -> (bend(i, s, j, s) - bend(i, -s, j, s)) / (2 * s * s * s);
        return limit(difference) / (steps[i] * steps[j] * steps[j]);
    }

    private double bend(int i, double si, int j, double s) {
        return at(i, si, j, s) - 2 * at(i, si, j, 0) + at(i, si, j, -s);
    }

    /** The model with two inputs moved by so many steps. */
    private double at(int i, double si, int j, double sj) {
        double[] moved = values.clone();
        moved[i] += si * steps[i];
        moved[j] += sj * steps[j];
        return model.applyAsDouble(moved);
    }

    /** Neville's table of even powers: a column for each shorter step; NaN when the model is nowhere finite. */
    private static double limit(DoubleUnaryOperator difference) {
        double[] last = new double[ROUNDS];
        double best = Double.NaN;
        double error = Double.POSITIVE_INFINITY;
        double step = 1;
        for (int round = 0; round < ROUNDS && error > 0; round++, step /= SHRINK) {
            double[] column = new double[ROUNDS];
            column[0] = difference.applyAsDouble(step);
            double weight = 1;
            for (int order = 1; order <= round; order++) {
                weight *= SHRINK * SHRINK;
                column[order] = (column[order - 1] * weight - last[order - 1]) / (weight - 1);
                double change = Math.max(
                        Math.abs(column[order] - column[order - 1]), Math.abs(column[order] - last[order - 1]));
                if (change < error) {
                    error = change;
                    best = column[order];
                }
            }
            last = column;
        }
        return best;
    }
}
