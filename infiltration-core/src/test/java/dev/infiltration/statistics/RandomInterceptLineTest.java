// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class RandomInterceptLineTest {

    /** Own 40-digit computation; second way lme4 1.1-31, lmerTest 3.1-3 and nlme 3.1-162 (recomputed). Invented data. */
    static Stream<Panel.Value> values() {
        return Panel.values("panel.csv");
    }

    @ParameterizedTest
    @MethodSource("values")
    void agreesWithReferenceValues(Panel.Value value) {
        double expected = value.number();
        double tolerance =
                value.quantity().startsWith("WITHIN") ? 1e-10 : value.quantity().contains("var_") ? 1e-7 : 1e-8;
        assertEquals(
                expected, actual(fit(value.name()), value.quantity()), Math.max(tolerance * Math.abs(expected), 1e-12));
    }

    private static double actual(RandomInterceptLine fit, String quantity) {
        RandomInterceptLine.Slope slope = quantity.startsWith("WITHIN") ? fit.withinSlope() : fit.slope();
        return switch (quantity.substring(quantity.indexOf('.') + 1)) {
            case "intercept" -> fit.at(0);
            case "slope" -> slope.value();
            case "se_intercept" -> fit.standardErrorAt(0);
            case "se_slope" -> slope.standardError();
            case "t_slope" -> slope.t();
            case "var_location" -> fit.betweenVariance();
            case "var_residual" -> quantity.startsWith("WITHIN") ? within(fit) : fit.residualVariance();
            case "minus2loglik" -> fit.deviance();
            case "satterthwaite_df_intercept" -> fit.degreesAt(0);
            case "satterthwaite_df_slope", "df", "within_df" -> slope.degrees();
            case "satterthwaite_p_slope", "p_slope" -> slope.pValue();
            case "satterthwaite_ci_lo", "within_df_ci_lo", "ci_lo" ->
                slope.interval(0.95).low();
            case "satterthwaite_ci_hi", "within_df_ci_hi", "ci_hi" ->
                slope.interval(0.95).high();
            default -> throw new IllegalArgumentException(quantity);
        };
    }

    /** The residual variance within groups: squared standard error times the squares of x within groups, from the data. */
    private static double within(RandomInterceptLine fit) {
        return Math.pow(fit.withinSlope().standardError(), 2) * fit.squaresWithin();
    }

    static RandomInterceptLine fit(String name) {
        List<String[]> rows = Panel.lines(name + ".csv", ",");
        return RandomInterceptLine.of(
                        rows.stream().mapToInt(row -> row[0].hashCode()).toArray(),
                        column(rows, row -> Double.parseDouble(row[1])),
                        column(rows, row -> Double.parseDouble(row[2])))
                .orElseThrow();
    }

    private static double[] column(List<String[]> rows, ToDoubleFunction<String[]> value) {
        return rows.stream().mapToDouble(value).toArray();
    }

    /** The rule of the Javadoc: the standard error of the model with the degrees of freedom within groups. */
    @Test
    void zeroVarianceBetweenGroupsHasTheDegreesWithinGroups() {
        RandomInterceptLine fit = fit("invented_zero_variance");
        assertEquals(0, fit.betweenVariance());
        assertEquals(fit.n() - fit.groups() - 1, fit.slope().degrees());
        assertEquals(fit.groups() - 1, fit.degreesAt(0));
        assertTrue(fit.slope().standardError() < fit.withinSlope().standardError());
    }

    @Test
    void needsRepeatedValuesOfTwoGroups() {
        double[] x = {0, 1, 2, 3};
        assertTrue(RandomInterceptLine.of(new int[] {1, 1, 1, 1}, x, x).isEmpty());
        assertTrue(RandomInterceptLine.of(new int[] {1, 2, 3, 4}, x, x).isEmpty());
        assertTrue(RandomInterceptLine.of(new int[] {1, 1, 2, 2}, x, x).isEmpty(), "no residual");
        assertTrue(RandomInterceptLine.of(new int[] {1, 1, 2, 2}, new double[] {1, 1, 1, 1}, x)
                .isEmpty());
        assertTrue(
                RandomInterceptLine.of(new int[0], new double[0], new double[0]).isEmpty());
        assertThrows(IllegalArgumentException.class, () -> RandomInterceptLine.of(new int[] {1}, x, new double[] {1}));
    }

    @Test
    void printsItsSlope() {
        assertTrue(fit("invented_balanced").toString().contains("-0.0848, -0.1157 to -0.0539 (95 %)"));
    }

    /** Five groups with three values each: 95 % intervals contain the true slope in 95 % of the samples (derived). */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.05, 0.5})
    void slopeIntervalsHaveTheirLevel(double between) {
        assertCoverage(between, 500, 0.039);
    }

    /** Four standard errors of 4 000 samples are 0.014; near zero variance the intervals may be wider than needed. */
    @Tag("slow")
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.05, 0.1, 0.2, 0.5, 2})
    void slopeIntervalsHaveTheirLevelInManySamples(double between) {
        assertCoverage(between, 4_000, 0.014);
    }

    private static void assertCoverage(double between, int samples, double tolerance) {
        Random random = new Random(20261201);
        int model = 0;
        int within = 0;
        for (int i = 0; i < samples; i++) {
            RandomInterceptLine fit = sample(random, between);
            model += fit.slope().interval(0.95).contains(-0.1) ? 1 : 0;
            within += fit.withinSlope().interval(0.95).contains(-0.1) ? 1 : 0;
        }
        assertEquals(0.95, (double) within / samples, tolerance);
        assertTrue((double) model / samples > 0.95 - tolerance, "coverage " + (double) model / samples);
        assertTrue((double) model / samples < 0.985, "coverage " + (double) model / samples);
    }

    private static RandomInterceptLine sample(Random random, double between) {
        int[] groups = new int[14];
        double[] x = new double[14];
        double[] y = new double[14];
        for (int i = 0, at = 0; i < 5; i++) {
            double height = between * random.nextGaussian();
            for (int j = 0; j < (i == 4 ? 2 : 3); j++, at++) {
                groups[at] = i;
                x[at] = j + 0.1 * i;
                y[at] = height - 0.1 * x[at] + 0.2 * random.nextGaussian();
            }
        }
        return RandomInterceptLine.of(groups, x, y).orElseThrow();
    }
}
