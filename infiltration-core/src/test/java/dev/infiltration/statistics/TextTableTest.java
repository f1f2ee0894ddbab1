// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TextTableTest {

    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "2540, 2540",
        "15278.8745, 15280",
        "0.1, 0.1",
        "-3.14159, -3.142",
        "0.00001234, 0.00001234",
        "1234567, 1235000",
        "1e-7, 1E-7",
        "1e15, 1E+15",
        "NaN, not known",
        "Infinity, no upper limit",
        "-Infinity, no lower limit"
    })
    void numbersKeepFourDigits(double value, String text) {
        assertEquals(text, TextTable.number(value));
    }

    @Test
    void namesArePaddedToOneWidth() {
        TextTable table = TextTable.titled("title").with("a", 1).with("longer", "x");
        assertEquals("title\n  a       1\n  longer  x\n", table.toString());
        assertEquals("title\n", TextTable.titled("title").toString());
    }

    @Test
    void isTheSameInEveryLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            assertEquals("1234.5".substring(0, 4) + " to 2345 (95 %)", new Interval(1234.4, 2345, 0.95).toString());
        } finally {
            Locale.setDefault(before);
        }
    }
}
