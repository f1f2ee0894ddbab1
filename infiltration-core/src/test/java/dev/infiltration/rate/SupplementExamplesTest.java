// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.statistics.Interval;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The examples of JCGM 101:2008, clause 9, by trials and by linear propagation, and one of NPL DEM-ES-011.
 *
 * <p>Inputs and results marked seen were seen in the public sources of propagate and suncal; memory: not seen. {@code exact}
 * values come from moments or closed forms with 40 digits. What is printed for trials is one random run itself: tolerances
 * are four standard deviations of a million trials; printed values add those of their own run and half a digit.
 */
class SupplementExamplesTest {

    private static final int TRIALS = 1_000_000;
    private static final double ROOT_3 = StrictMath.sqrt(3);

    private static final MeasurementModel MASS = MeasurementModel.of(
            x -> (x[0] + x[1]) * (1 + (x[2] - 1.2) * (1 / x[3] - 1 / x[4])) - 100_000,
            Term.of("reference mass", 100_000, Distribution.normal(0.050)),
            Term.of("added mass", 1.234, Distribution.normal(0.020)),
            Term.of("density of air", 1.20, Distribution.rectangular(0.10)),
            Term.of("density of the weight", 8000, Distribution.rectangular(1000)),
            Term.of("density of the reference", 8000, Distribution.rectangular(50)));

    private static final MeasurementModel GAUGE = MeasurementModel.of(
            x -> x[0] + x[1] + x[2] + x[3] - x[0] * (x[7] * (x[5] + x[6]) + x[4] * x[8]) - 50_000_000,
            Term.of("standard", 50_000_623, Distribution.student(25, 18)),
            Term.of("repeats", 215, Distribution.student(6, 24)),
            Term.of("random", 0, Distribution.student(4, 5)),
            Term.of("systematic", 0, Distribution.student(7, 8)),
            Term.of("expansion", 11.5e-6, Distribution.rectangular(2e-6)),
            Term.of("temperature", -0.1, Distribution.normal(0.2)),
            Term.of("cyclic temperature", 0, Distribution.arcsine(0.5)),
            Term.of("difference in expansion", 0, Distribution.curvilinearTrapezoid(1e-6, 0.1e-6)),
            Term.of("difference in temperature", 0, Distribution.curvilinearTrapezoid(0.050, 0.025)));

    static final Map<String, MeasurementModel> EXAMPLES = Map.of(
            "normal", sum(Distribution.normal(1), Distribution.normal(1)),
            "rectangular", sum(Distribution.rectangular(ROOT_3), Distribution.rectangular(ROOT_3)),
            "one wide", sum(Distribution.rectangular(ROOT_3), Distribution.rectangular(10 * ROOT_3)),
            "mass", MASS,
            "loss 0", loss(0),
            "loss 0, r 0.9", loss(0).withCorrelation(new double[][] {{1, 0.9}, {0.9, 1}}),
            "loss 0.050", loss(0.050),
            "gauge", GAUGE,
            "logarithm",
                    MeasurementModel.of(x -> StrictMath.log(x[0]), Term.of("x", 0.6, Distribution.rectangular(0.5))));

    private static final Map<String, MonteCarloResult> RUNS = new ConcurrentHashMap<>();

    private static MeasurementModel sum(Distribution spread, Distribution last) {
        Term[] terms = IntStream.range(0, 4)
                .mapToObj(i -> Term.of("X" + (i + 1), 0, i < 3 ? spread : last))
                .toArray(Term[]::new);
        return MeasurementModel.of(x -> x[0] + x[1] + x[2] + x[3], terms);
    }

    private static MeasurementModel loss(double x1) {
        return MeasurementModel.of(
                x -> x[0] * x[0] + x[1] * x[1],
                Term.of("X1", x1, Distribution.normal(0.005)),
                Term.of("X2", 0, Distribution.normal(0.005)));
    }

    @ParameterizedTest(name = "{0}: {1}, {2}")
    @CsvSource(delimiter = '|', textBlock = """
            # clause          | example       | mark                  | mean       | u             | within | of u
            JCGM 101, 9.2.2   | normal        | seen, printed; exact  | 0          | 2             | 0.008  | 0.006
            JCGM 101, 9.2.3   | rectangular   | seen, printed; exact  | 0          | 2             | 0.008  | 0.006
            JCGM 101, 9.2.4   | one wide      | exact                 | 0          | 10.1488915651 | 0.04   | 0.02
            JCGM 101, 9.3     | mass          | memory, printed       | 1.2341     | 0.0754        | 5e-4   | 3e-4
            JCGM 101, 9.3     | mass          | exact                 | 1.234      | 0.0754797400  | 3e-4   | 2e-4
            JCGM 101, 9.4.2   | loss 0        | exact, exponential    | 5e-5       | 5e-5          | 2e-7   | 3e-7
            JCGM 101, 9.4.3   | loss 0, r 0.9 | exact, 1e-4 sqrt.4525 | 5e-5       | 6.7268120e-5  | 3e-7   | 5e-7
            JCGM 101, 9.4     | loss 0.050    | exact                 | 0.00255    | 5.02493781e-4 | 2e-6   | 2e-6
            JCGM 101, 9.5     | gauge         | memory, printed       | 838        | 36            | 0.5    | 0.5
            JCGM 101, 9.5     | gauge         | exact                 | 838        | 35.80807860   | 0.15   | 0.11
            DEM-ES-011, 9.2   | logarithm     | seen, printed         | -0.665     | 0.606         | 3e-3   | 2e-3
            DEM-ES-011, 9.2   | logarithm     | exact mean            | -0.664902  | 0.606         | 2.5e-3 | 2e-3
            """)
    void trialsHaveMeanAndStandardUncertainty(
            String clause, String example, String mark, double mean, double u, double within, double ofU) {
        MonteCarloResult trials = trials(example, 0.95);
        assertEquals(mean, trials.mean(), within);
        assertEquals(u, trials.standardUncertainty(), ofU);
    }

    @ParameterizedTest(name = "{0}: {1}, {2}")
    @CsvSource(delimiter = '|', textBlock = """
            # clause          | example       | mark                      | level | low        | high       | within
            JCGM 101, 9.2.2   | normal        | seen, printed             | 0.95  | -3.92      | 3.92       | 0.03
            JCGM 101, 9.2.2   | normal        | exact                     | 0.95  | -3.919928  | 3.919928   | 0.025
            JCGM 101, 9.2.3   | rectangular   | seen, printed             | 0.95  | -3.88      | 3.88       | 0.03
            JCGM 101, 9.2.3   | rectangular   | exact                     | 0.95  | -3.8794067 | 3.8794067  | 0.02
            JCGM 101, 9.2.4   | one wide      | memory, printed           | 0.95  | -17.0      | 17.0       | 0.07
            JCGM 101, 9.2.4   | one wide      | exact                     | 0.95  | -17.015814 | 17.015814  | 0.04
            JCGM 101, 9.3     | mass          | 2e7 trials, 40-digit code | 0.95  | 1.0844     | 1.3835     | 2e-3
            JCGM 101, 9.3     | mass          | memory, printed           | 0.95  | 1.0834     | 1.3825     | 2.5e-3
            """)
    void trialsHaveTheSymmetricInterval(
            String clause, String example, String mark, double level, double low, double high, double within) {
        assertInterval(low, high, trials(example, level).symmetric(), within);
    }

    @ParameterizedTest(name = "{0}: {1}, {2}")
    @CsvSource(delimiter = '|', textBlock = """
            # clause          | example       | mark                      | level | low        | high       | within
            JCGM 101, 9.3     | mass          | 2e7 trials, 40-digit code | 0.95  | 1.0844     | 1.3835     | 2e-3
            JCGM 101, 9.4.2   | loss 0        | exact, -5e-5 ln 0.05      | 0.95  | 0          | 1.49787e-4 | 1e-6
            JCGM 101, 9.5     | gauge         | 1e7 trials, 40-digit code | 0.99  | 744        | 931.4      | 1.5
            JCGM 101, 9.5     | gauge         | memory, printed; its run  | 0.99  | 745        | 932        | 2.5
            DEM-ES-011, 9.2   | logarithm     | seen, printed             | 0.95  | -1.895     | 0.095      | 5e-3
            DEM-ES-011, 9.2   | logarithm     | exact, ln 0.15, ln 1.1    | 0.95  | -1.897120  | 0.095310   | 4e-3
            """)
    void trialsHaveTheShortestInterval(
            String clause, String example, String mark, double level, double low, double high, double within) {
        assertInterval(low, high, trials(example, level).shortest(), within);
    }

    static MonteCarloResult trials(String example, double level) {
        return RUNS.computeIfAbsent(
                example + level,
                name -> MonteCarlo.seeded(1).withLevel(level).withTrials(TRIALS).run(EXAMPLES.get(example)));
    }

    private static void assertInterval(double low, double high, Interval interval, double within) {
        assertEquals(low, interval.low(), within);
        assertEquals(high, interval.high(), within);
    }

    @ParameterizedTest(name = "{0}: {1}, {2}")
    @CsvSource(delimiter = '|', textBlock = """
            # clause          | example     | mark           | value   | u               | low         | high        | within
            JCGM 101, 9.2.2   | normal      | exact          | 0       | 2               | -3.91992797 | 3.91992797  | 1e-8
            JCGM 101, 9.2.3   | rectangular | memory, print  | 0       | 2               | -3.92       | 3.92        | 5e-3
            JCGM 101, 9.2.4   | one wide    | memory, print  | 0       | 10.1            | -19.9       | 19.9        | 5e-2
            JCGM 101, 9.2.4   | one wide    | exact          | 0       | 10.1488915651   | -19.8914620 | 19.8914620  | 1e-7
            JCGM 101, 9.3     | mass        | memory, print  | 1.2340  | 0.0539          | 1.1285      | 1.3395      | 5.1e-5
            JCGM 101, 9.3     | mass        | exact          | 1.234   | 0.0538516480713 | 1.128452709 | 1.339547291 | 1e-9
            JCGM 101, 9.4     | loss 0      | derived        | 0       | 0               | 0           | 0           | 1e-12
            JCGM 101, 9.4     | loss 0.050  | derived, 2xu   | 0.0025  | 5e-4            | 0.001520018 | 0.003479982 | 1e-9
            DEM-ES-011, 9.2   | logarithm   | seen, print    | -0.511  | 0.481           | -1.454      | 0.432       | 1e-3
            """)
    void linearPropagationGivesItsOwnInterval(
            String clause,
            String example,
            String mark,
            double value,
            double u,
            double low,
            double high,
            double within) {
        Uncertainty linear = EXAMPLES.get(example).propagate();
        assertEquals(value, linear.value(), within);
        assertEquals(u, linear.standardUncertainty(), within);
        assertInterval(low, high, linear.interval(0.95), within);
    }

    @ParameterizedTest(name = "{0}: {1}, {2}")
    @CsvSource(delimiter = '|', textBlock = """
            # clause          | example     | mark           | u               | low         | high        | within
            JCGM 101, 9.3     | mass        | memory, print  | 0.0750          | 1.0870      | 1.3810      | 1e-4
            JCGM 101, 9.3     | mass        | exact          | 0.0749634738503 | 1.087074291 | 1.380925709 | 1e-8
            JCGM 101, 9.4     | loss 0      | exact          | 5e-5            | -9.79982e-5 | 9.79982e-5  | 1e-10
            JCGM 101, 9.4     | loss 0.050  | exact          | 5.02493781e-4   | 0.00151513  | 0.00348487  | 1e-8
            """)
    void secondOrderTermsWidenTheInterval(
            String clause, String example, String mark, double u, double low, double high, double within) {
        Uncertainty linear = EXAMPLES.get(example).withSecondOrderTerms().propagate();
        assertEquals(u, linear.standardUncertainty(), within);
        assertInterval(low, high, linear.interval(0.95), within);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            # clause                       | example     | digits | linear
            JCGM 101, 9.2.2 (derived)      | normal      | 2      | linear propagation is valid
            JCGM 101, 9.2.3 (derived)      | rectangular | 2      | linear propagation is valid
            JCGM 101, 9.2.4 (memory)       | one wide    | 2      | linear propagation is not valid: use the trials
            JCGM 101, 9.3.3 (memory)       | mass        | 1      | linear propagation is not valid: use the trials
            JCGM 101, 9.4.2 (memory)       | loss 0      | 1      | linear propagation is not valid: use the trials
            """)
    void comparisonSaysWhetherLinearPropagationHolds(String clause, String example, int digits, String verdict) {
        MeasurementModel measurement = EXAMPLES.get(example);
        MonteCarloResult trials = MonteCarlo.seeded(1).withDigits(digits).run(measurement);
        String text = trials.compare(measurement.propagate()).toString();
        assertEquals(verdict, text.substring(0, text.indexOf(" (")));
    }

    /** JCGM 101, 9.5: 838 and 32 nm by linear propagation (seen, printed), where trials give 36. */
    @org.junit.jupiter.api.Test
    void gaugeByLinearPropagationIsTooSure() {
        Uncertainty linear = EXAMPLES.get("gauge").propagate();
        assertEquals(838, linear.value(), 0.5);
        assertEquals(32, linear.standardUncertainty(), 0.5);
    }
}
