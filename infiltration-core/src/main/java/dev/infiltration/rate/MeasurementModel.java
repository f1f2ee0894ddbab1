// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.rate.Uncertainty.Contribution;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * A model of a measurement and its inputs: {@code y = f(x1, …, xn)} (JCGM 100:2008, 4.1).
 *
 * <p>The model may be any function of doubles; its sensitivities are given or found by numerical differentiation. Inputs are
 * independent unless a matrix of correlations is given.
 *
 * <pre>{@code
 * MeasurementModel power = MeasurementModel.of(
 *         x -> x[0] * x[0] / x[1],
 *         Term.of("voltage", 5.0, Distribution.normal(0.01)),
 *         Term.of("resistance", 100, Distribution.rectangular(0.5)));
 * power.propagate().text(0.95, "W");                    // "0.2500 ± 0.0021 W (95 %, k = 1.96)"
 * MonteCarlo.seeded(1).run(power).symmetric();          // the same by trials
 * }</pre>
 */
public final class MeasurementModel {

    private final ToDoubleFunction<double[]> model;
    private final List<Term> terms;
    private final Correlation correlation;
    private final double @Nullable [] sensitivities;
    private final Order order;

    /** How far the model is developed about the values of its inputs. */
    private enum Order {
        FIRST,
        SECOND
    }

    private MeasurementModel(
            ToDoubleFunction<double[]> model,
            List<Term> terms,
            Correlation correlation,
            double @Nullable [] sensitivities,
            Order order) {
        this.model = model;
        this.terms = terms;
        this.correlation = correlation;
        this.sensitivities = sensitivities;
        this.order = order;
    }

    /**
     * {@return a measurement of independent inputs}
     *
     * @param model the model, of the inputs' values in the order of the terms; it may change the array it is given
     * @param terms the inputs, each of another name
     * @throws IllegalArgumentException if two terms have one name
     */
    public static MeasurementModel of(ToDoubleFunction<double[]> model, Term... terms) {
        return of(model, List.of(terms));
    }

    static MeasurementModel of(ToDoubleFunction<double[]> model, List<Term> terms) {
        Set<String> names = new HashSet<>();
        for (Term term : terms) {
            if (!names.add(term.name())) {
                throw new IllegalArgumentException(
                        "terms: expected another name for each, found " + term.name() + " twice");
            }
        }
        return new MeasurementModel(model, terms, Correlation.NONE, null, Order.FIRST);
    }

    /**
     * {@return this measurement with correlated inputs} (JCGM 100, 5.2)
     *
     * @param matrix the correlation coefficients, a row and a column for each term
     * @throws IllegalArgumentException if it is no matrix of correlations: not symmetric, without ones on its diagonal, or
     *     contradicting itself
     */
    public MeasurementModel withCorrelation(double[][] matrix) {
        return new MeasurementModel(model, terms, Correlation.of(names(), matrix), sensitivities, order);
    }

    private List<String> names() {
        return terms.stream().map(Term::name).toList();
    }

    /**
     * {@return this measurement with its sensitivities given} rather than found by numerical differentiation
     *
     * @param sensitivities the partial derivatives at the values of the inputs, one for each term
     * @throws IllegalArgumentException if there is not one for each term
     */
    public MeasurementModel withSensitivities(double... sensitivities) {
        if (sensitivities.length != terms.size()) {
            throw new IllegalArgumentException(
                    "sensitivities: expected " + terms.size() + ", found " + sensitivities.length);
        }
        return new MeasurementModel(model, terms, correlation, sensitivities.clone(), order);
    }

    /**
     * {@return this measurement with second-order terms in its uncertainty} (JCGM 100, 5.1.2, note, and H.1.7), which holds
     * for independent inputs with symmetric distributions
     */
    public MeasurementModel withSecondOrderTerms() {
        return new MeasurementModel(model, terms, correlation, sensitivities, Order.SECOND);
    }

    /** {@return the inputs} */
    public List<Term> terms() {
        return terms;
    }

    /** {@return the model at the values of the inputs} */
    public double value() {
        return model.applyAsDouble(values());
    }

    private double[] values() {
        return terms.stream().mapToDouble(Term::value).toArray();
    }

    ToDoubleFunction<double[]> model() {
        return model;
    }

    Correlation correlation() {
        return correlation;
    }

    /**
     * {@return the result with its uncertainty}, by the law of propagation of uncertainty
     *
     * @throws IllegalArgumentException if the model is not finite about the values of an input, or second-order terms are
     *     requested for correlated inputs
     */
    public Uncertainty propagate() {
        double[] uncertainties = terms.stream()
                .mapToDouble(term -> term.spread().standardUncertainty())
                .toArray();
        Derivatives derivatives = new Derivatives(model, values(), uncertainties);
        List<Contribution> contributions = new ArrayList<>();
        for (int i = 0; i < terms.size(); i++) {
            contributions.add(new Contribution(terms.get(i), sensitivity(i, derivatives)));
        }
        double more = order == Order.SECOND ? secondOrder(contributions, derivatives) : 0;
        return new Uncertainty(value(), contributions, correlation, more);
    }

    private double sensitivity(int i, Derivatives derivatives) {
        double sensitivity = sensitivities == null ? derivatives.first(i) : sensitivities[i];
        if (!Double.isFinite(sensitivity)) {
            throw new IllegalArgumentException("model: expected to be finite about the value of "
                    + terms.get(i).name());
        }
        return sensitivity;
    }

    private double secondOrder(List<Contribution> contributions, Derivatives derivatives) {
        if (!correlation.isNone()) {
            throw new IllegalArgumentException("correlation: expected none where second-order terms are requested");
        }
        double sum = 0;
        for (int i = 0; i < terms.size(); i++) {
            for (int j = 0; j < terms.size(); j++) {
                double ui = terms.get(i).spread().standardUncertainty();
                double uj = terms.get(j).spread().standardUncertainty();
                double bend = derivatives.second(i, j);
                double curl = contributions.get(i).sensitivity() * derivatives.third(i, j);
                sum += (bend * bend / 2 + curl) * ui * ui * uj * uj;
            }
        }
        return sum;
    }
}
