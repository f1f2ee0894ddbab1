// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoundingTest {

    @ParameterizedTest(name = "{1} ± {2}")
    @CsvSource(delimiter = '|', textBlock = """
            # source, mark                    | value      | u         | text
            JCGM 100, 7.2.6 (memory)          | 10.057 62  | 0.027     | 10.058 ± 0.027
            JCGM 100, 7.2.2 (memory)          | 100.021 47 | 0.000 35  | 100.02147 ± 0.00035
            JCGM 100, H.1.5 (seen)            | 50000838   | 31.66     | 50000838 ± 32
            two significant digits, derived   | 15278.87   | 234.5     | 15280 ± 230
            two significant digits, derived   | 15278.87   | 235       | 15280 ± 240
            two significant digits, derived   | 254.04     | 9.96      | 254 ± 10
            two significant digits, derived   | 254.04     | 99.6      | 250 ± 100
            two significant digits, derived   | 254.04     | 0.0996    | 254.04 ± 0.10
            two significant digits, derived   | 254.04     | 0.1       | 254.04 ± 0.10
            two significant digits, derived   | -0.05      | 3         | -0.1 ± 3.0
            two significant digits, derived   | 0.3        | 4000      | 0 ± 4000
            two significant digits, derived   | 2.0        | 1e-30     | 2.0000000000000000000000000000000 ± 1.0E-30
            nothing to round to, derived      | 2.5        | 0         | 2.5 ± 0.0
            nothing to round to, derived      | 2.5        | NaN       | 2.5 ± NaN
            nothing to round to, derived      | Infinity   | 1         | Infinity ± 1.0
            """)
    void valueMatchesItsUncertainty(String source, String value, String u, String text) {
        assertEquals(text, Rounding.pair(number(value), number(u)));
    }

    private static double number(String text) {
        return Double.parseDouble(text.replace(" ", ""));
    }

    @ParameterizedTest(name = "{0} to {1}")
    @CsvSource({
        "0.0755, 1, 0.08, 0.01",
        "0.0755, 2, 0.076, 0.001",
        "0.0996, 2, 0.10, 0.01",
        "36, 1, 40, 10",
        "9.9, 1, 10, 10",
        "0, 2, 0.0, 0",
        "4.5, 1, 5, 1"
    })
    void digitsAreSignificantOnes(double value, int digits, String text, double lastDigit) {
        assertEquals(text, Rounding.digits(value, digits));
        assertEquals(lastDigit, Rounding.lastDigit(value, digits), 1e-15);
    }
}
