// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeasurementModelTest {

    private static final Term X = Term.of("x", 3, Distribution.normal(0.3));
    private static final Term Y = Term.of("y", 4, Distribution.normal(0.4));
    private static final MeasurementModel SUM = MeasurementModel.of(x -> x[0] + x[1], X, Y);

    @ParameterizedTest(name = "r = {0}")
    @CsvSource(delimiter = '|', textBlock = """
            # JCGM 100, 5.2.2: u² = 0.3² + 0.4² + 2·r·0.3·0.4; 5.2.2, note 1: the linear sum for r = 1 (derived)
            # r  | u
            0    | 0.5
            1    | 0.7
            -1   | 0.1
            0.5  | 0.6082762530298219
            """)
    void correlatedTermsAddWithTheirCoefficient(double r, double u) {
        assertEquals(u, correlated(r).propagate().standardUncertainty(), 1e-12);
    }

    private static MeasurementModel correlated(double r) {
        return SUM.withCorrelation(new double[][] {{1, r}, {r, 1}});
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            # matrix              | message
            1 0.5; 0.5            | a column for each of 2 terms
            1 0                   | a row for each of 2 terms
            1 0.5; 0.4 1          | the same coefficient both ways
            1 0.5; NaN 1          | the same coefficient both ways
            2 0; 0 1              | ones on the diagonal
            1 1.01; 1.01 1        | no coefficients that contradict each other
            """)
    void matrixThatIsNoneIsRefused(String matrix, String message) {
        double[][] rows = Arrays.stream(matrix.split("; "))
                .map(row -> Arrays.stream(row.split(" "))
                        .mapToDouble(Double::parseDouble)
                        .toArray())
                .toArray(double[][]::new);
        Throwable refusal = assertThrows(IllegalArgumentException.class, () -> SUM.withCorrelation(rows));
        assertEquals("correlation: expected " + message, refusal.getMessage());
    }

    @Test
    void coefficientsThatContradictEachOtherAreRefused() {
        MeasurementModel three = MeasurementModel.of(x -> x[0], X, Y, Term.of("z", 0, Distribution.normal(1)));
        double[][] matrix = {{1, 1, 0}, {1, 1, 1}, {0, 1, 1}};
        assertThrows(IllegalArgumentException.class, () -> three.withCorrelation(matrix));
    }

    @Test
    void roundingOfAMatrixIsForgiven() {
        double[][] matrix = {{1 + 1e-12, 0.5}, {0.5 + 1e-12, 1}};
        assertEquals(
                correlated(0.5).propagate().standardUncertainty(),
                SUM.withCorrelation(matrix).propagate().standardUncertainty(),
                1e-12);
    }

    @Test
    void twoTermsOfOneNameAreRefused() {
        Throwable refusal = assertThrows(IllegalArgumentException.class, () -> MeasurementModel.of(x -> x[0], X, X));
        assertEquals("terms: expected another name for each, found x twice", refusal.getMessage());
    }

    @Test
    void sensitivitiesAreOneForEachTerm() {
        Throwable refusal = assertThrows(IllegalArgumentException.class, () -> SUM.withSensitivities(1));
        assertEquals("sensitivities: expected 2, found 1", refusal.getMessage());
    }

    @Test
    void modelThatIsNotFiniteIsRefused() {
        MeasurementModel root =
                MeasurementModel.of(x -> StrictMath.sqrt(x[0]), Term.of("x", -1, Distribution.normal(0.1)));
        Throwable refusal = assertThrows(IllegalArgumentException.class, root::propagate);
        assertEquals("model: expected to be finite about the value of x", refusal.getMessage());
    }

    @Test
    void secondOrderTermsOfCorrelatedInputsAreRefused() {
        MeasurementModel both = correlated(0.5).withSecondOrderTerms();
        Throwable refusal = assertThrows(IllegalArgumentException.class, both::propagate);
        assertEquals("correlation: expected none where second-order terms are requested", refusal.getMessage());
    }

    @Test
    void secondOrderTermsMayShrinkTheUncertainty() {
        // sin x at π/4, u 0.3: f'² u² + (f''²/2 + f'·f''') u⁴ = u²/2 + (1/4 − 1/2) u⁴ (JCGM 100, 5.1.2, note; derived)
        MeasurementModel sine = MeasurementModel.of(
                x -> StrictMath.sin(x[0]), Term.of("x", StrictMath.PI / 4, Distribution.normal(0.3)));
        Uncertainty second = sine.withSecondOrderTerms().propagate();
        assertEquals(-0.25 * 0.0081, second.secondOrderVariance(), 1e-9);
        assertEquals(StrictMath.sqrt(0.045 - 0.25 * 0.0081), second.standardUncertainty(), 1e-9);
    }

    @Test
    void modelMayChangeTheArrayItIsGiven() {
        MeasurementModel careless = MeasurementModel.of(x -> x[0]++ + x[1]--, X, Y);
        assertEquals(0.5, careless.propagate().standardUncertainty(), 1e-12);
    }

    @Property
    void uncertaintyNeverShrinksWhenATermGrows(
            @ForAll @Size(4) double[] slopes,
            @ForAll @DoubleRange(max = 10) double u,
            @ForAll @DoubleRange(max = 10) double more) {
        double[] bounded = Arrays.stream(slopes).map(slope -> slope % 100).toArray();
        assertEquals(
                true,
                linear(bounded, u + more).standardUncertainty()
                        >= linear(bounded, u).standardUncertainty());
    }

    @Property
    void uncertaintyScalesWithItsTerms(
            @ForAll @Size(4) double[] slopes, @ForAll @DoubleRange(min = 0.01, max = 1000) double scale) {
        double[] bounded = Arrays.stream(slopes).map(slope -> slope % 100).toArray();
        double[] scaled = Arrays.stream(bounded).map(slope -> slope * scale).toArray();
        double expected = scale * linear(bounded, 1).standardUncertainty();
        assertEquals(expected, linear(scaled, 1).standardUncertainty(), 1e-12 * expected);
    }

    private static Uncertainty linear(double[] slopes, double firstUncertainty) {
        Term[] terms = IntStream.range(0, slopes.length)
                .mapToObj(i -> Term.of("x" + i, i, Distribution.normal(i == 0 ? firstUncertainty : 0.1 * i)))
                .toArray(Term[]::new);
        return MeasurementModel.of(x -> 0, terms).withSensitivities(slopes).propagate();
    }
}
