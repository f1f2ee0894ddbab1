// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DerivativesTest {

    private static final Map<String, ToDoubleFunction<double[]>> MODELS = Map.of(
            "exp(x)", x -> StrictMath.exp(x[0]),
            "exp(x), coarse", x -> StrictMath.exp(x[0]),
            "ln(x)", x -> StrictMath.log(x[0]),
            "1/x", x -> 1 / x[0],
            "sin(x)", x -> StrictMath.sin(x[0]),
            "x^3", x -> x[0] * x[0] * x[0]);

    @ParameterizedTest(name = "{0} at {1}, u {2}")
    @CsvSource(delimiter = '|', textBlock = """
            # calculus, derived | x   | u    | first              | second             | third
            exp(x)              | 1   | 0.5  | 2.718281828459045  | 2.718281828459045  | 2.718281828459045
            exp(x), coarse      | 0   | 1e-9 | 1                  | NaN                | NaN
            ln(x)               | 0.6 | 0.28 | 1.666666666666667  | -2.777777777777778 | 9.25925925925926
            1/x                 | 10  | 0.5  | -0.01              | 0.002              | -0.0006
            1/x                 | 2   | 3    | -0.25              | 0.25               | -0.375
            sin(x)              | 1   | 0.3  | 0.5403023058681398 | -0.841470984807897 | -0.5403023058681398
            x^3                 | 0   | 2    | 0                  | 0                  | 6
            x^3                 | -3  | 0    | 27                 | -18                | 6
            """)
    void derivativesAreThoseOfCalculus(String model, double x, double u, double first, double second, double third) {
        Derivatives found = new Derivatives(MODELS.get(model), new double[] {x}, new double[] {u});
        assertEquals(first, found.first(0), (Double.isNaN(second) ? 1e-7 : 1e-9) * Math.max(1, Math.abs(first)));
        if (!Double.isNaN(second)) {
            assertEquals(second, found.second(0, 0), 1e-6 * Math.max(1, Math.abs(second)));
            assertEquals(third, found.third(0, 0), 1e-4 * Math.max(1, Math.abs(third)));
        }
    }

    /** x²·y³ at (2, 3): ∂²/∂x∂y = 6·x·y² = 108, ∂³/∂x∂y² = 12·x·y = 72, ∂³/∂y∂x² = 6·y² = 54 (derived). */
    @Test
    void mixedDerivativesAreThoseOfCalculus() {
        Derivatives found =
                new Derivatives(x -> x[0] * x[0] * x[1] * x[1] * x[1], new double[] {2, 3}, new double[] {0.1, 0.2});
        assertEquals(108, found.second(0, 1), 1e-6);
        assertEquals(108, found.second(1, 0), 1e-6);
        assertEquals(72, found.third(0, 1), 1e-5);
        assertEquals(54, found.third(1, 0), 1e-5);
    }

    @Test
    void modelThatIsNowhereFiniteHasNone() {
        assertTrue(Double.isNaN(new Derivatives(x -> Double.NaN, new double[] {1}, new double[] {1}).first(0)));
    }

    /** The ring equation goes with M, D⁻² and t⁻¹ whatever its size. */
    @Property
    void powersHaveTheirExponent(
            @ForAll @DoubleRange(min = 1, max = 20) double kilograms,
            @ForAll @DoubleRange(min = 280, max = 320) double millimetres,
            @ForAll @DoubleRange(min = 5, max = 10_000) double seconds) {
        ToDoubleFunction<double[]> ring = x -> x[0] / (x[1] * x[1] * x[2]);
        double[] values = {kilograms, millimetres, seconds};
        Derivatives found = new Derivatives(ring, values, new double[] {0.01, 1, 1});
        double value = ring.applyAsDouble(values);
        assertEquals(1, found.first(0) * kilograms / value, 1e-9);
        assertEquals(-2, found.first(1) * millimetres / value, 1e-9);
        assertEquals(-1, found.first(2) * seconds / value, 1e-9);
    }
}
