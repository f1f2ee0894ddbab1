// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.statistics.Interval;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The range in which linear propagation is valid for a ring test, by trials: from a clogged location to open new pavement, both test masses.
 *
 * <p>Reaction 0.3 s and end point ±1 s are examples: no published figure for either was found.
 */
class RingLinearityTest {

    private static final double DIAMETER = 300;

    private static final List<Reading<Length>> DIAMETERS = Stream.of("298", "301", "299", "302")
            .map(digits -> Reading.of(digits, FieldUnit.MILLIMETRE))
            .toList();

    private static UncertaintyBudget bare(double rate, double kilograms) {
        return UncertaintyBudget.of(new InfiltrationRate(rate), kilograms, DIAMETER, seconds(rate, kilograms));
    }

    private static double seconds(double rate, double kilograms) {
        return 4_583_666_000.0 * kilograms / (DIAMETER * DIAMETER * rate);
    }

    private static UncertaintyBudget endPointAlone(UncertaintyBudget budget) {
        return budget.with(RingTerm.END_POINT, Term.of("end point", 0, Distribution.rectangular(1)));
    }

    private static UncertaintyBudget full(double rate, double kilograms) {
        UncertaintyBudget read = bare(rate, kilograms)
                .withMass("poured", Reading.of("18.00", FieldUnit.KILOGRAM))
                .withDiameters("ring R1", DIAMETERS)
                .withElapsed("watch", Reading.of("60.0", FieldUnit.SECOND))
                .with(RingTerm.REACTION, Term.of("reaction", 0, Distribution.normal(0.3)));
        return endPointAlone(read);
    }

    /** With the end point alone, e uniform on ±1 s, the ends are those of t/(t ± 0.95 s) (derived, exact). */
    @ParameterizedTest(name = "{0} mm/h, {1} kg, {2} s")
    @CsvSource(delimiter = '|', textBlock = """
            # mm/h  | kg   | seconds, derived
            36      | 3.6  | 5092.9622
            36      | 18   | 25464.811
            254     | 3.6  | 721.8371
            254     | 18   | 3609.1858
            2540    | 3.6  | 72.1837
            2540    | 18   | 360.9186
            15279   | 3.6  | 11.99991
            15279   | 18   | 59.99956
            68000   | 3.6  | 2.696274
            68000   | 18   | 13.48137
            """)
    void trialsOfTheEndPointAloneHaveTheirExactInterval(double rate, double kilograms, double seconds) {
        assertEquals(seconds, seconds(rate, kilograms), 1e-6 * seconds);
        MeasurementModel measurement = endPointAlone(bare(rate, kilograms)).measurement();
        Interval trials =
                MonteCarlo.seeded(2).withTrials(200_000).run(measurement).symmetric();
        assertEquals(seconds / (seconds + 0.95), trials.low() / rate, 2e-3 / seconds);
        assertEquals(seconds / (seconds - 0.95), trials.high() / rate, 2e-2 / seconds);
    }

    /**
     * The full example: for tests of 25 s and more the ends differ by less than a fifth of the expanded uncertainty.
     *
     * <p>The tolerance of JCGM 101, clause 8, goes with the decade that the uncertainty happens to lie in; held to a tenth of the
     * standard uncertainty, tests of about ten seconds get the same verdict whatever the decade.
     */
    @ParameterizedTest(name = "{0} mm/h, {1} kg: about {2} s")
    @CsvSource({
        "36, 3.6, 5093",
        "36, 18, 25465",
        "2540, 3.6, 72",
        "2540, 18, 361",
        "6112, 3.6, 30",
        "6112, 18, 150",
        "15279, 18, 60",
        "36000, 18, 25"
    })
    void linearIntervalIsCloseForLongTests(double rate, double kilograms, double seconds) {
        MeasurementModel measurement = full(rate, kilograms).measurement();
        Uncertainty linear = measurement.propagate();
        MonteCarloResult.Agreement agreement =
                MonteCarlo.seeded(1).run(measurement).compare(linear);
        assertTrue(agreement.shown());
        assertTrue(Math.max(agreement.low(), agreement.high()) < 0.2 * linear.expanded(0.95), agreement.toString());
    }

    @ParameterizedTest(name = "{0} mm/h, {1} kg: about {2} s")
    @CsvSource(delimiter = '|', textBlock = """
            # mm/h  | kg   | seconds | mean too high by 1 in a thousand, (u(t)/t)², derived
            15279   | 3.6  | 12      | 3.0
            36000   | 3.6  | 5.1     | 16.3
            68000   | 18   | 13.5    | 2.3
            68000   | 3.6  | 2.7     | 58.3
            18335   | 3.6  | 10      | 4.2
            16668   | 3.6  | 11      | 3.5
            30000   | 3.6  | 6.1     | 11.4
            114592  | 18   | 8       | 6.6
            131000  | 18   | 7       | 8.6
            65500   | 18   | 14      | 2.15
            """)
    void linearPropagationDoesNotHoldForTestsOfTenSeconds(
            double rate, double kilograms, double seconds, double perMille) {
        MeasurementModel measurement = full(rate, kilograms).measurement();
        MonteCarloResult trials = MonteCarlo.seeded(1).run(measurement);
        MonteCarloResult.Agreement agreement = trials.compare(measurement.propagate());
        assertTrue(trials.isStable());
        assertFalse(agreement.holds());
        assertTrue(agreement.toString().startsWith("linear propagation is not valid: use the trials"));
        assertEquals(1 + perMille / 1000, trials.mean() / rate, 0.25 * perMille / 1000);
    }

    /** Normal terms of sizes made up for it: 5 g, 0.3 mm, 0.3 s of reaction and 0.5 s of end point. */
    private static MeasurementModel normal(double rate, double kilograms) {
        return bare(rate, kilograms)
                .with(RingTerm.MASS_ERROR, Term.of("balance", 0, Distribution.normal(0.005)))
                .with(RingTerm.DIAMETER_READING, Term.of("diameter", 0, Distribution.normal(0.3)))
                .with(RingTerm.REACTION, Term.of("reaction", 0, Distribution.normal(0.3)))
                .with(RingTerm.END_POINT, Term.of("end point", 0, Distribution.normal(0.5)))
                .measurement();
    }

    /**
     * Where the terms are normal and the time long, linear propagation holds by JCGM 101, clause 8: an end of the 95 % interval
     * is off by z²·u(t)/t of u (derived), 4 % of u at 60 s, and the tolerance is at least 5 % of u.
     */
    @ParameterizedTest(name = "{0} mm/h, {1} kg: about {2} s")
    @CsvSource({
        "36, 3.6, 5093",
        "36, 18, 25465",
        "254, 3.6, 722",
        "254, 18, 3609",
        "2540, 3.6, 72",
        "2540, 18, 361",
        "6112, 18, 150",
        "15279, 18, 60"
    })
    void linearPropagationHoldsWithinTheToleranceOfClause8(double rate, double kilograms, double seconds) {
        assertEquals(seconds, seconds(rate, kilograms), 0.5);
        MeasurementModel measurement = normal(rate, kilograms);
        MonteCarloResult.Agreement agreement =
                MonteCarlo.seeded(1).run(measurement).compare(measurement.propagate());
        assertTrue(agreement.holds(), agreement.toString());
        assertTrue(agreement.toString().startsWith("linear propagation is valid"), agreement.toString());
    }

    /** The same terms in tests of some seconds: the library itself says that, and by how much, the interval is off. */
    @ParameterizedTest(name = "{0} mm/h, {1} kg: about {2} s")
    @CsvSource({
        "15279, 3.6, 12, linear propagation is not valid: use the trials (ends differ by ",
        "36000, 3.6, 5, linear propagation is not valid: use the trials (ends differ by ",
        "68000, 3.6, 3, not confirmed: the trials were not stable (ends differ by "
    })
    void libraryReportsWhereLinearPropagationDoesNotHold(
            double rate, double kilograms, double seconds, String verdict) {
        assertEquals(seconds, seconds(rate, kilograms), 0.5);
        MeasurementModel measurement = normal(rate, kilograms);
        Uncertainty linear = measurement.propagate();
        MonteCarloResult.Agreement agreement =
                MonteCarlo.seeded(1).run(measurement).compare(linear);
        double off = 1.96 * 1.96 * 0.583 / seconds(rate, kilograms) * linear.standardUncertainty();
        assertTrue(agreement.low() > 0.5 * off, agreement.toString());
        assertTrue(agreement.high() > 0.5 * off, agreement.toString());
        assertFalse(agreement.holds(), agreement.toString());
        assertTrue(agreement.toString().startsWith(verdict), agreement.toString());
    }
}
