// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NormalizedRateTest {

    private static final InfiltrationRate MEASURED = new InfiltrationRate(2540);

    @ParameterizedTest(name = "{0}: {1} degrees")
    @CsvSource(delimiter = '|', textBlock = """
            # source, mark                                             | from | to | factor | within
            ratio of IAPWS viscosities, derived                        |  5   | 20 | 1.516  | 5e-4
            ratio of IAPWS viscosities, derived                        | 10   | 20 | 1.304  | 5e-4
            ratio of IAPWS viscosities, derived                        | 25   | 20 | 0.889  | 5e-4
            ratio of IAPWS viscosities, derived                        | 30   | 20 | 0.796  | 5e-4
            1.3069/1.0020, Korson et al. 1969 Table II, seen           | 10   | 20 | 1.3043 | 1e-3
            1.0020/0.7975, Korson et al. 1969 Table II, seen, inverted | 30   | 20 | 0.7959 | 1e-3
            """)
    void laminarFactorIsTheRatioOfViscosities(String source, double from, double to, double factor, double within) {
        assertEquals(factor, normalized(from, to, 1).factor(), within);
    }

    @Test
    void temperatureIsPrintedToHundredths() {
        Water read = Water.at(Reading.of("64", FieldUnit.FAHRENHEIT));
        String text = new NormalizedRate(MEASURED, read, Water.at(20), 1).toString();
        assertTrue(text.startsWith("normalized from 17.78 °C to 20 °C with exponent 1.0: "), text);
    }

    @Test
    void halfLaminarIsTheRootOfTheRatio() {
        assertEquals(
                StrictMath.sqrt(normalized(5, 20, 1).factor()),
                normalized(5, 20, 0.5).factor(),
                1e-14);
    }

    @Property
    void inertialFlowIsLeftAlone(@ForAll @DoubleRange(max = 60) double from, @ForAll @DoubleRange(max = 60) double to) {
        assertEquals(2540, normalized(from, to, 0).millimetresPerHour());
    }

    @Property
    void thereAndBackIsTheSame(
            @ForAll @DoubleRange(max = 60) double from,
            @ForAll @DoubleRange(max = 60) double to,
            @ForAll @DoubleRange(max = 1) double exponent) {
        double factor = normalized(from, to, exponent).factor()
                * normalized(to, from, exponent).factor();
        assertEquals(1, factor, 1e-14);
    }

    @Test
    void textCannotBeMistakenForTheMethodsRate() {
        assertEquals(
                "normalized from 10 °C to 20 °C with exponent 1.0: 3310 mm/h (not the method's rate, which is 2540 mm/h)",
                normalized(10, 20, 1).toString());
        assertEquals(
                "normalized from 10 °C to 20 °C with exponent 0.5: 114 in/h (not the method's rate, which is 100 in/h)",
                normalized(10, 20, 0.5).text(FieldUnit.INCH_PER_HOUR));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 1.01, Double.NaN})
    void exponentOutsideItsRangeIsRefused(double exponent) {
        Throwable refusal = assertThrows(IllegalArgumentException.class, () -> normalized(10, 20, exponent));
        assertEquals("exponent: allowed 0 (inertial) to 1 (laminar), found " + exponent, refusal.getMessage());
    }

    private static NormalizedRate normalized(double from, double to, double exponent) {
        return new NormalizedRate(MEASURED, Water.at(from), Water.at(to), exponent);
    }
}
