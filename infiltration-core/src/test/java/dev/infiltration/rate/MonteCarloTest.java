// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.statistics.Interval;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MonteCarloTest {

    private static final MeasurementModel SKEWED =
            MeasurementModel.of(x -> StrictMath.exp(x[0]), Term.of("x", 0, Distribution.student(0.3, 7)));

    private static final MonteCarlo TRIALS = MonteCarlo.seeded(42);

    /** What this code gave when it was written (JDK 17 and 25 alike): the same seed gives the same bits for ever. */
    @Test
    void sameSeedGivesTheSameBits() {
        MonteCarloResult trials = TRIALS.run(SKEWED);
        assertEquals(340_000, trials.count());
        assertEquals(1.0664374788350641, trials.mean());
        assertEquals(new Interval(0.49021743848833116, 2.0355868615754718, 0.95), trials.symmetric());
        assertEquals(new Interval(0.4072388852556725, 1.8508989218179739, 0.95), trials.shortest());
        assertEquals(trials.symmetric(), TRIALS.run(SKEWED).symmetric());
        assertNotEquals(trials.mean(), MonteCarlo.seeded(43).run(SKEWED).mean());
    }

    @Test
    void trialsStopWhenTheirFiguresAreStable() {
        MonteCarloResult trials = TRIALS.run(SKEWED);
        assertTrue(trials.isStable());
        assertEquals(0.05, trials.tolerance());
        assertFalse(TRIALS.withTrials(trials.count() - 10_000).run(SKEWED).isStable());
    }

    @ParameterizedTest(name = "{0} at {1}")
    @CsvSource({
        // trials requested, level, trials made: blocks of 10 000 or 100/(1 − p), the larger of the two (JCGM 101,
        // 7.9.4)
        "1, 0.95, 10000",
        "10000, 0.95, 10000",
        "10001, 0.95, 20000",
        "20000, 0.999, 20000",
        "150000, 0.999, 200000"
    })
    void fixedTrialsComeInWholeBlocks(int asked, double level, int made) {
        MonteCarloResult trials = TRIALS.withLevel(level).withTrials(asked).run(SKEWED);
        assertEquals(made, trials.count());
        assertEquals(level, trials.level());
    }

    /** Of M = 10 000 values 0 to 9999 and p = 0.95: q = 9500, r = 250, [y(250), y(9750)] (JCGM 101, 7.7.2; derived). */
    @Test
    void intervalsAreThoseOfTheirRanks() {
        double[] values = new double[10_000];
        for (int i = 0; i < values.length; i++) {
            values[i] = values.length - 1.0 - i;
        }
        MonteCarloResult trials = new MonteCarloResult(values, 0.95, 2, true);
        assertEquals(new Interval(249, 9749, 0.95), trials.symmetric());
        assertEquals(new Interval(0, 9500, 0.95), trials.shortest());
        assertEquals(9500, trials.shortest().width());
        assertEquals(4999.5, trials.mean(), 1e-9);
        // √(M(M + 1)/12) (derived)
        assertEquals(2886.895679907167, trials.standardUncertainty(), 1e-9);
        assertEquals(50, trials.tolerance());
        assertEquals("5000 ± 2900 (standard uncertainty by 10000 trials)", trials.toString());
    }

    @Test
    void shortestIntervalLiesWhereTrialsAreDense() {
        double[] values = {0, 10, 20, 21, 22, 23, 24, 30, 40, 50};
        assertEquals(new Interval(20, 24, 0.4), new MonteCarloResult(values, 0.4, 2, true).shortest());
        assertEquals(new Interval(20, 24, 0.4), new MonteCarloResult(values, 0.4, 2, true).symmetric());
        assertEquals(new Interval(0, 50, 0.9999), new MonteCarloResult(values, 0.9999, 2, true).symmetric());
    }

    @Test
    void correlatedNormalTermsGoTogether() {
        double[][] matrix = {{1, 0.8, 0}, {0.8, 1, 0}, {0, 0, 1}};
        MeasurementModel difference = MeasurementModel.of(
                        x -> x[0] - x[1] + x[2],
                        Term.of("a", 0, Distribution.normal(1)),
                        Term.of("b", 0, Distribution.normal(2)),
                        Term.of("alone", 0, Distribution.rectangular(3)))
                .withCorrelation(matrix);
        // 1 + 4 − 2·0.8·2 + 3 (derived)
        assertEquals(
                StrictMath.sqrt(4.8), TRIALS.withTrials(200_000).run(difference).standardUncertainty(), 0.014);
        assertEquals(StrictMath.sqrt(4.8), difference.propagate().standardUncertainty(), 1e-12);
    }

    /** For a + b − c: u² = 3 + 2·(0.8 − 0.6 − 0.5) = 2.4 (derived). */
    @Test
    void threeTermsGoTogetherAsTheirMatrixSays() {
        double[][] matrix = {{1, 0.8, 0.6}, {0.8, 1, 0.5}, {0.6, 0.5, 1}};
        MeasurementModel sum = MeasurementModel.of(
                        x -> x[0] + x[1] - x[2],
                        Term.of("a", 0, Distribution.normal(1)),
                        Term.of("b", 0, Distribution.normal(1)),
                        Term.of("c", 0, Distribution.normal(1)))
                .withCorrelation(matrix);
        assertEquals(StrictMath.sqrt(2.4), TRIALS.withTrials(200_000).run(sum).standardUncertainty(), 0.01);
        assertEquals(StrictMath.sqrt(2.4), sum.propagate().standardUncertainty(), 1e-12);
    }

    @Test
    void correlatedTermsThatAreNotNormalAreRefused() {
        MeasurementModel sum = MeasurementModel.of(
                        x -> x[0] + x[1],
                        Term.of("a", 0, Distribution.normal(1)),
                        Term.of("b", 0, Distribution.rectangular(1)))
                .withCorrelation(new double[][] {{1, 0.5}, {0.5, 1}});
        Throwable refusal = assertThrows(IllegalArgumentException.class, () -> TRIALS.run(sum));
        assertEquals("correlation: expected normal terms, found b, rectangular ±1.0", refusal.getMessage());
    }

    @Test
    void modelThatIsNotFiniteIsNeverStable() {
        MeasurementModel inverse =
                MeasurementModel.of(x -> 1 / Math.max(0, x[0]), Term.of("t", 1, Distribution.rectangular(1.02)));
        MonteCarloResult trials = TRIALS.withTrials(50_000).run(inverse);
        assertFalse(trials.isStable());
        assertFalse(Double.isFinite(trials.mean()));
        assertTrue(Double.isNaN(trials.tolerance()));
        assertTrue(Double.isFinite(trials.symmetric().high()));
        MonteCarloResult.Agreement agreement = trials.compare(inverse.propagate());
        assertFalse(agreement.holds());
        assertTrue(agreement.toString().startsWith("not confirmed: the trials were not stable"), agreement.toString());
    }

    @Test
    void exactMeasurementIsStableAtOnce() {
        MeasurementModel exact = MeasurementModel.of(x -> 5);
        MonteCarloResult trials = TRIALS.run(exact);
        assertEquals(20_000, trials.count());
        assertEquals(new Interval(5, 5, 0.95), trials.shortest());
        assertTrue(trials.compare(exact.propagate()).holds());
    }

    @Test
    void modelMayChangeTheArrayItIsGiven() {
        MeasurementModel careless = MeasurementModel.of(x -> x[0]++, Term.of("x", 3, Distribution.normal(0.5)));
        assertEquals(0.5, TRIALS.run(careless).standardUncertainty(), 5e-3);
    }

    @Test
    void agreementNeedsBothEnds() {
        assertTrue(new MonteCarloResult.Agreement(0.5, 0.5, 0.5, true).holds());
        assertFalse(new MonteCarloResult.Agreement(0.6, 0.5, 0.5, true).holds());
        assertFalse(new MonteCarloResult.Agreement(0.5, 0.6, 0.5, true).holds());
        assertFalse(new MonteCarloResult.Agreement(0, 0, 0.5, false).holds());
        assertEquals(
                "linear propagation is not valid: use the trials (ends differ by 0.60 and 0.50, tolerance 0.5)",
                new MonteCarloResult.Agreement(0.6, 0.5, 0.5, true).toString());
    }

    @ParameterizedTest
    @ValueSource(ints = {0, -1, 100_000_001})
    void numberOfTrialsOutsideItsRangeIsRefused(int trials) {
        Throwable refusal = assertThrows(IllegalArgumentException.class, () -> TRIALS.withTrials(trials));
        assertEquals("trials: allowed 1 to 100000000, found " + trials, refusal.getMessage());
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 5})
    void numberOfDigitsOutsideItsRangeIsRefused(int digits) {
        Throwable refusal = assertThrows(IllegalArgumentException.class, () -> TRIALS.withDigits(digits));
        assertEquals("digits: allowed 1 to 4, found " + digits, refusal.getMessage());
    }

    @Test
    void levelOutsideItsRangeIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> TRIALS.withLevel(95));
    }
}
