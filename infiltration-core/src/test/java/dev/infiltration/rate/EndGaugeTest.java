// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.method.Basis;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The end-gauge calibration of JCGM 100:2008 (the GUM), H.1.
 *
 * <p>{@code exact} values were recomputed from the published inputs with 40 digits; {@code printed} ones are the
 * publication's own, which it rounded on the way. Inputs seen in the public sources of GTC, suncal, propagate and metRology.
 */
class EndGaugeTest {

    private static final Basis H1 = Basis.clause("JCGM 100:2008", "H.1", Basis.Trust.SECONDARY);

    /** The end gauge: l = ls + d − ls·(δα·θ + αs·δθ), in nm; d in three parts, θ in two. */
    static final MeasurementModel GAUGE = MeasurementModel.of(
            x -> x[0] + x[1] + x[2] + x[3] - x[0] * (x[6] * (x[5] + x[8]) + x[4] * x[7]),
            new Term("standard", 50_000_623, Distribution.normal(25).withDegreesOfFreedom(18), H1),
            new Term("repeats", 215, Distribution.normal(5.8).withDegreesOfFreedom(24), H1),
            new Term("comparator, random", 0, Distribution.normal(3.9).withDegreesOfFreedom(5), H1),
            new Term("comparator, systematic", 0, Distribution.normal(6.7).withDegreesOfFreedom(8), H1),
            new Term("expansion of the standard", 11.5e-6, Distribution.rectangular(2e-6), H1),
            new Term("mean temperature", -0.1, Distribution.normal(0.2), H1),
            new Term(
                    "difference in expansion", 0, Distribution.rectangular(1e-6).withDegreesOfFreedom(50), H1),
            new Term(
                    "difference in temperature",
                    0,
                    Distribution.rectangular(0.05).withDegreesOfFreedom(2),
                    H1),
            new Term("cyclic temperature", 0, Distribution.arcsine(0.5), H1));

    @ParameterizedTest(name = "{0}, {1}")
    @CsvSource(delimiter = '|', textBlock = """
            # JCGM 100:2008, H.1   | figure, mark                         | value            | within
            H.1.3.1                | standard, seen, exact                | 25               | 1e-7
            H.1.3.2                | d, seen, printed                     | 9.7              | 0.05
            H.1.3.2                | d, exact                             | 9.68194195396797 | 1e-7
            H.1.3.4                | expansion of the standard, exact     | 0                | 1e-7
            H.1.3.4                | difference in expansion, seen        | 2.9              | 0.05
            H.1.3.4                | difference in expansion, exact       | 2.88678731       | 1e-7
            H.1.3.4                | difference in temperature, seen      | 16.6             | 0.05
            H.1.3.4                | difference in temperature, exact     | 16.59902706      | 1e-7
            H.1.3.4                | mean temperature, exact              | 0                | 1e-7
            H.1.4                  | u, seen, printed                     | 32               | 0.5
            H.1.4                  | u, exact                             | 31.663879111     | 1e-8
            H.1.5                  | length, seen                         | 50000838         | 1e-6
            H.1.6                  | degrees of freedom, exact            | 16.7518557376    | 1e-7
            H.1.6, cut to a whole  | coverage factor 99 %, seen, printed  | 2.92             | 0.005
            H.1.6, cut to a whole  | coverage factor 99 %, exact          | 2.92078162242510 | 1e-12
            H.1.6, cut to a whole  | expanded 99 %, exact                 | 92.4832761764    | 1e-7
            H.1.6, 2.92 times 32   | expanded 99 %, seen, printed         | 93               | 0.6
            """)
    void endGaugeComesOutAsInTheGuide(String clause, String figure, double value, double within) {
        assertEquals(value, figure(GAUGE.propagate(), figure.split(",", 2)[0]), within);
    }

    static double figure(Uncertainty gauge, String figure) {
        return switch (figure) {
            case "u" -> gauge.standardUncertainty();
            case "length" -> gauge.value();
            case "degrees of freedom" -> gauge.degreesOfFreedom();
            case "coverage factor 99 %" -> gauge.coverageFactor(0.99);
            case "expanded 99 %" -> gauge.expanded(0.99);
            case "d" ->
                StrictMath.sqrt(amount(gauge, "repeats", 2)
                        + amount(gauge, "comparator, random", 2)
                        + amount(gauge, "comparator, systematic", 2));
            default -> amount(gauge, figure, 1);
        };
    }

    private static double amount(Uncertainty uncertainty, String name, int power) {
        return uncertainty.contributions().stream()
                .filter(each -> each.term().name().equals(name))
                .mapToDouble(each -> StrictMath.pow(Math.abs(each.amount()), power))
                .sum();
    }

    @ParameterizedTest(name = "JCGM 100:2008, {0}")
    @CsvSource(delimiter = '|', textBlock = """
            # clause, mark                                     | u             | within
            H.1.7, seen, printed                               | 34            | 0.5
            H.1.7, exact                                       | 33.8065454295 | 1e-6
            """)
    void endGaugeWithSecondOrderTermsComesOutAsInTheGuide(String clause, double u, double within) {
        Uncertainty gauge = GAUGE.withSecondOrderTerms().propagate();
        assertEquals(u, gauge.standardUncertainty(), within);
        // H.1.7: 11.7 and 1.7 nm (memory); exact 11.72618551 and 1.666687433
        assertEquals(11.72618551 * 11.72618551 + 1.666687433 * 1.666687433, gauge.secondOrderVariance(), 1e-4);
    }

    @Test
    void sensitivitiesGivenAreThoseFound() {
        double[] given = {1, 1, 1, 1, 0, 0, 50_000_623 * 0.1, -50_000_623 * 11.5e-6, 0};
        Uncertainty gauge = GAUGE.withSensitivities(given).propagate();
        assertEquals(31.663879111, gauge.standardUncertainty(), 5e-10);
        assertEquals(16.7518557376, gauge.degreesOfFreedom(), 1e-10);
        assertEquals(GAUGE.propagate().standardUncertainty(), gauge.standardUncertainty(), 1e-8);
    }

    /** JCGM 100:2008, G.2: degrees of freedom of d (H.1.3.2), 25.6 printed, 25.4472507774 by GTC (seen). */
    @Test
    void partsOfTheEndGaugeHaveTheirDegreesOfFreedom() {
        Uncertainty parts = MeasurementModel.of(
                        x -> x[0] + x[1] + x[2], GAUGE.terms().subList(1, 4).toArray(Term[]::new))
                .propagate();
        assertEquals(25.44725077736272, parts.degreesOfFreedom(), 1e-9);
        assertEquals(25.6, parts.degreesOfFreedom(), 0.2);
    }

    @ParameterizedTest(name = "JCGM 100:2008, H.1.3, u({0}), {1}")
    @CsvSource(delimiter = '|', textBlock = """
            # input                    | mark          | value          | within
            expansion of the standard  | seen, printed | 1.2e-6         | 0.05e-6
            expansion of the standard  | exact         | 1.154700538e-6 | 1e-15
            difference in expansion    | seen, printed | 0.58e-6        | 0.005e-6
            difference in expansion    | exact         | 5.773502692e-7 | 1e-16
            difference in temperature  | seen, printed | 0.029          | 0.0005
            difference in temperature  | exact         | 0.02886751346  | 1e-11
            temperature                | seen, printed | 0.41           | 0.005
            temperature                | exact         | 0.4062019202   | 1e-10
            """)
    void inputsHaveTheUncertaintiesOfTheGuide(String input, String mark, double value, double within) {
        double square = GAUGE.terms().stream()
                .filter(term -> term.name().equals(input) || term.name().matches("(mean|cyclic) " + input))
                .mapToDouble(term -> term.spread().standardUncertainty())
                .map(u -> u * u)
                .sum();
        assertEquals(value, StrictMath.sqrt(square), within);
    }

    /** With the standard at its nominal 50 mm, as the guide and GTC work it (seen): 16.7521475092 degrees of freedom. */
    @Test
    void endGaugeAtItsNominalLengthHasTheDegreesOfFreedomOfGtc() {
        double[] nominal = {1, 1, 1, 1, 0, 0, 50_000_000 * 0.1, -50_000_000 * 11.5e-6, 0};
        Uncertainty gauge = GAUGE.withSensitivities(nominal).propagate();
        assertEquals(16.7521475092, gauge.degreesOfFreedom(), 1e-9);
        assertEquals(92.48295, gauge.expanded(0.99), 5e-6);
    }
}
