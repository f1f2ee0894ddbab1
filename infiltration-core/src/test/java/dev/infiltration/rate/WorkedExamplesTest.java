// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Further published examples of linear propagation; exact values recomputed from the published inputs with 40 digits. */
class WorkedExamplesTest {

    /** NIST TN 1900, E13: thermal expansion coefficient from two lengths and two temperatures. */
    static final Uncertainty EXPANSION = MeasurementModel.of(
                    x -> (x[2] - x[0]) / (x[0] * (x[3] - x[1])),
                    Term.of("length at the start", 1.4999, Distribution.normal(0.0001)),
                    Term.of("temperature at the start", 288.15, Distribution.normal(0.02)),
                    Term.of("length at the end", 1.5021, Distribution.normal(0.0002)),
                    Term.of("temperature at the end", 373.10, Distribution.normal(0.05)))
            .propagate();

    /** Three inputs with finite degrees of freedom (an example of suncal's tests, seen). */
    private static final Uncertainty QUOTIENT = MeasurementModel.of(
                    x -> x[0] / x[1] * x[2],
                    Term.of("X1", 0.1820, Distribution.student(0.00093, 9)),
                    Term.of("X2", 0.1823, Distribution.student(0.00058, 19)),
                    Term.of("Y", 0.6978, Distribution.student(0.0026, 19)))
            .propagate();

    @ParameterizedTest(name = "{0}, {1}")
    @CsvSource(delimiter = '|', textBlock = """
            # source                          | mark           | value             | u             | within
            NIST TN 1900, E13 (suncal tests)  | seen, printed  | 1.7266e-5         | 1.76e-6       | 5e-9
            NIST TN 1900, E13                 | exact          | 1.72662089578e-5  | 1.75547728e-6 | 5e-15
            """)
    void expansionComesOutAsPublished(String source, String mark, double value, double u, double within) {
        assertEquals(value, EXPANSION.value(), Math.min(within, 5e-10));
        assertEquals(u, EXPANSION.standardUncertainty(), within);
    }

    @ParameterizedTest(name = "Welch-Satterthwaite, {0}")
    @CsvSource(delimiter = '|', textBlock = """
            # figure, mark                     | value        | within
            value, seen, printed               | 0.6967       | 5e-5
            value, exact                       | 0.696651673  | 5e-10
            u, seen, printed 0.00494, rounded  | 0.00494      | 1e-5
            u, exact                           | 0.0049318020 | 5e-11
            dof, seen, printed 27.7, rounded   | 27.7         | 0.2
            dof, exact                         | 27.5127317557| 5e-8
            U95, seen, printed                 | 0.0101       | 5e-5
            U95, exact, dof not cut to whole   | 0.010110405166 | 5e-12
            """)
    void quotientComesOutAsPublished(String figure, double value, double within) {
        assertEquals(value, quotient(figure), within);
    }

    static double quotient(String figure) {
        return switch (figure.charAt(0)) {
            case 'v' -> QUOTIENT.value();
            case 'u' -> QUOTIENT.standardUncertainty();
            case 'd' -> QUOTIENT.degreesOfFreedom();
            default -> QUOTIENT.standardUncertainty() * Uncertainty.coverageFactor(0.95, QUOTIENT.degreesOfFreedom());
        };
    }

    @ParameterizedTest(name = "JCGM 100:2008, Table G.2 (memory), nu = {0}")
    @CsvSource(delimiter = '|', textBlock = """
            # nu     | 68.27 % | 95 %  | 99 %
            1        | 1.84    | 12.71 | 63.66
            2        | 1.32    | 4.30  | 9.92
            5        | 1.11    | 2.57  | 4.03
            10       | 1.05    | 2.23  | 3.17
            16       | 1.03    | 2.12  | 2.92
            50       | 1.01    | 2.01  | 2.68
            Infinity | 1.000   | 1.960 | 2.576
            """)
    void coverageFactorsAreThoseOfTheTable(double nu, double k68, double k95, double k99) {
        assertEquals(k68, Uncertainty.coverageFactor(0.6827, nu), 5.1e-3);
        assertEquals(k95, Uncertainty.coverageFactor(0.95, nu), 5.1e-3);
        assertEquals(k99, Uncertainty.coverageFactor(0.99, nu), 5.1e-3);
    }
}
