// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.rate.Distribution.Shape;
import java.util.function.ToDoubleFunction;

/** Samples the inputs of a measurement and evaluates its model. */
final class Sampler {

    private final ToDoubleFunction<double[]> model;
    private final double[] values;
    private final Distribution[] spreads;
    private final RandomDeviates draws;

    /** The triangle that makes correlated normal numbers of independent ones (JCGM 101, 6.4.8); a null row draws alone. */
    private final double[][] rows;

    Sampler(MeasurementModel measurement, long seed) {
        model = measurement.model();
        draws = new RandomDeviates(seed);
        values = measurement.terms().stream().mapToDouble(Term::value).toArray();
        spreads = measurement.terms().stream().map(Term::spread).toArray(Distribution[]::new);
        rows = measurement.correlation().isNone()
                ? new double[0][]
                : measurement.correlation().root();
        requireNormal(measurement);
    }

    private static void requireNormal(MeasurementModel measurement) {
        for (Term term : measurement.terms()) {
            if (term.spread().shape() != Shape.NORMAL
                    && measurement.correlation().isTied(term.name())) {
                throw new IllegalArgumentException(
                        "correlation: expected normal terms, found " + term.name() + ", " + term.spread());
            }
        }
    }

    double[] draw(int count) {
        double[] drawn = new double[count];
        double[] inputs = new double[values.length];
        for (int i = 0; i < count; i++) {
            move(inputs);
            drawn[i] = model.applyAsDouble(inputs);
        }
        return drawn;
    }

    private void move(double[] inputs) {
        double[] normal = new double[rows.length];
        for (int i = 0; i < inputs.length; i++) {
            inputs[i] = values[i]
                    + (rows.length > 0 && spreads[i].shape() == Shape.NORMAL
                            ? tied(i, normal)
                            : spreads[i].draw(draws));
        }
    }

    /** A normal number that goes with those before it. */
    private double tied(int i, double[] normal) {
        normal[i] = draws.normal();
        double sum = 0;
        for (int k = 0; k <= i; k++) {
            sum += rows[i][k] * normal[k];
        }
        return spreads[i].width() * sum;
    }
}
