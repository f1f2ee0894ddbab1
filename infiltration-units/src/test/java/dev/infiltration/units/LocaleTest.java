// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Locale;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nothing that is read or printed depends on the default locale: not its decimal comma, not its digits, not its case. */
class LocaleTest {

    private final Locale home = Locale.getDefault();

    @AfterEach
    void goHome() {
        Locale.setDefault(home);
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva", "tr-TR", "en-US"})
    void numbersAreTheSameEverywhere(String tag) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertEquals("1234.50 lb", Reading.of("1234.50", FieldUnit.POUND).toString());
        assertEquals("-7.0 °C", Reading.of("-7.0", FieldUnit.CELSIUS).toString());
        assertEquals("1E+50 kg", Reading.of("1E50", FieldUnit.KILOGRAM).toString());
        assertEquals("0.123 mm/h", new InfiltrationRate(0.123456).toString());
        assertEquals("12300 mm/h", new InfiltrationRate(12345.6).toString());
        assertEquals(
                "1.5 kg",
                Reading.of(Reading.of("1.5", FieldUnit.KILOGRAM).toQuantity(), Mass.class)
                        .toString());
        assertEquals("[in_i]", FieldUnit.INCH.toString());
        assertEquals(Optional.of(FieldUnit.INCH), FieldUnit.parse("inch"));
        assertEquals(Optional.empty(), FieldUnit.parse("INCH"));
        assertThrows(NumberFormatException.class, () -> Reading.of("1,5", FieldUnit.METRE));
        assertEquals(
                "millimetresPerHour: expected a finite rate of at least 0 mm/h, got -1234.5",
                assertThrows(IllegalArgumentException.class, () -> new InfiltrationRate(-1234.5))
                        .getMessage());
    }

    /** The test above can fail: what the JDK prints by default does change. */
    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva"})
    @SuppressWarnings("DefaultLocale")
    void numbersOfTheJdkAreNot(String tag) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertNotEquals("1234.50", String.format("%.2f", 1234.5));
    }
}
