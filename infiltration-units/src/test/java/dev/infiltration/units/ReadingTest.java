// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Optional;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What was written down: its digits, its unit, its resolution. */
class ReadingTest {

    private static final Reading<Mass> POURED = Reading.of("40.00", FieldUnit.POUND);

    @Test
    void readingsAreEqualWhenWrittenTheSame() {
        assertEquals(POURED, Reading.of(new BigDecimal("40.00"), FieldUnit.POUND));
        assertEquals(POURED.hashCode(), Reading.of("40.00", FieldUnit.POUND).hashCode());
        assertNotEquals(POURED, Reading.of("40", FieldUnit.POUND));
        assertNotEquals(POURED, Reading.of("40.00", FieldUnit.KILOGRAM));
        assertNotEquals(POURED, POURED.withResolution(new BigDecimal("0.02")));
        assertEquals(POURED.withResolution(new BigDecimal("0.02")), POURED.withResolution(new BigDecimal("0.02")));
    }

    @Test
    void resolutionIsKeptBesideTheDigits() {
        Reading<Mass> stated = POURED.withResolution(new BigDecimal("0.02"));
        assertEquals("40.00", stated.value().toString());
        assertEquals(Optional.of(Reading.of("0.02", FieldUnit.POUND)), stated.statedResolution());
        assertTrue(stated.sameAmountAs(POURED));
    }

    @Test
    void resolutionThatIsNotPositiveIsNoneStated() {
        assertEquals(Optional.empty(), POURED.statedResolution());
        assertEquals(Optional.empty(), POURED.withResolution(BigDecimal.ZERO).statedResolution());
        assertEquals(
                Optional.empty(), POURED.withResolution(new BigDecimal("-0.02")).statedResolution());
    }

    @ParameterizedTest
    @CsvSource({"40.00, 0.01", "40, 1", "4E1, 1E1", "-0.050, 0.001", "0, 1", "0.0, 0.1"})
    void lastDigitIsOneUnitOfIt(String written, String expected) {
        assertEquals(
                Reading.of(expected, FieldUnit.POUND),
                Reading.of(written, FieldUnit.POUND).lastDigit());
    }

    @ParameterizedTest
    @CsvSource({"0.01, true", "1E-999999999, true", "0, false", "0.00, false", "-0.01, false"})
    void numberIsPositiveAboveZero(String written, boolean expected) {
        assertEquals(expected, Reading.of(written, FieldUnit.INCH).isPositive());
    }

    @ParameterizedTest
    @CsvSource({
        "40.00, 40.00 lb",
        "-0.50, -0.50 lb",
        "0.00, 0.00 lb",
        "4E+1, 40 lb",
        "1E-7, 0.0000001 lb",
        "1E-40, 0.0000000000000000000000000000000000000001 lb",
        "1E-41, 1E-41 lb",
        "1E+40, 10000000000000000000000000000000000000000 lb",
        "1E+41, 1E+41 lb",
        "123456789012345678901234567890123456789.0, 123456789012345678901234567890123456789.0 lb",
        "123456789012345678901234567890123456789E1, 1234567890123456789012345678901234567890 lb",
        "123456789012345678901234567890123456789.1E2, 12345678901234567890123456789012345678910 lb",
        "1234567890123456789012345678901234567890.1E2, 1.2345678901234567890123456789012345678901E+41 lb",
        "1E+999999999, 1E+999999999 lb",
        "0E-999999999, 0E-999999999 lb"
    })
    void textIsForPeople(String written, String expected) {
        assertEquals(expected, Reading.of(written, FieldUnit.POUND).toString());
    }

    @Test
    void ratioHasNoSymbol() {
        assertEquals("0.015", Reading.of("0.015", FieldUnit.ONE).toString());
        assertEquals("1.5 %", Reading.of("1.5", FieldUnit.PERCENT).toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " 40", "40 ", "1,5", "1 000", "40 lb", "NaN", "Infinity", "0x10", "four"})
    void digitsAreADecimalNumber(String digits) {
        assertThrows(NumberFormatException.class, () -> Reading.of(digits, FieldUnit.POUND));
    }

    @Test
    void readingIsGivenAsItsOwnKindAlone() {
        assertEquals(Optional.of(POURED), POURED.as(Mass.class));
        assertEquals(Optional.empty(), POURED.as(Length.class));
    }

    @Test
    void amountsAreComparedExactly() {
        BigDecimal limit = new BigDecimal("8.0").add(new BigDecimal("0.1"));
        assertTrue(Reading.of("8.1", FieldUnit.POUND).sameAmountAs(Reading.of(limit, FieldUnit.POUND)));
        assertFalse(Reading.of("8.1", FieldUnit.POUND)
                .sameAmountAs(Reading.of("8.100000000000000000000000000000001", FieldUnit.POUND)));
    }

    /** Sources: units-exact.csv (seen); temperatures: NIST SP 811, B.9, as quoted elsewhere (secondary). */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # value        | unit    | is | value             | unit
            25.4           | mm      | 0  | 1                 | [in_i]
            25.40          | mm      | 0  | 1.000             | [in_i]
            300            | mm      | -1 | 12                | [in_i]
            305            | mm      | 1  | 12                | [in_i]
            1              | [ft_i]  | 0  | 0.3048            | m
            40             | [lb_av] | 0  | 640.0             | [oz_av]
            40             | [lb_av] | 0  | 18.1436948        | kg
            40             | [lb_av] | -1 | 18.14369480000001 | kg
            40             | [lb_av] | 1  | 18.05             | kg
            32             | [degF]  | 0  | 0                 | Cel
            212            | [degF]  | 0  | 100               | Cel
            -40            | [degF]  | 0  | -40.0             | Cel
            100            | [degF]  | -1 | 38                | Cel
            0              | [degF]  | 1  | -18               | Cel
            -459.67        | [degF]  | 0  | 0                 | K
            0              | Cel     | 0  | 273.15            | K
            1              | [acr_us]| 1  | 4046.872609874252 | m2
            1              | [acr_us]| -1 | 4046.872609874253 | m2
            15499969       | [acr_us]| 0  | 62726400000       | m2
            25000          | [sft_i] | -1 | 2500              | m2
            1              | har     | 0  | 10000             | m2
            5              | [gal_us]| 0  | 18.92705892       | L
            141.7          | s       | -1 | 2.37              | min
            1              | d       | 0  | 24                | h
            600            | [in_i]/h| 0  | 15240             | mm/h
            3              | m/d     | 0  | 125               | mm/h
            1.5            | %       | 0  | 0.015             | 1
            -1             | [in_i]  | -1 | 0                 | mm
            0.000          | [in_i]  | 0  | 0                 | mm
            """)
    void amountsAreComparedAcrossUnits(String value, String unit, int expected, String other, String otherUnit) {
        assertEquals(expected, compare(value, unit, other, otherUnit));
        assertEquals(-expected, compare(other, otherUnit, value, unit));
    }

    @Test
    void missingArgumentIsRefusedByName() {
        assertNamed("value", () -> Reading.of((BigDecimal) null, FieldUnit.INCH));
        assertNamed("unit", () -> Reading.of("1", null));
        assertNamed("digits", () -> Reading.of((String) null, FieldUnit.INCH));
        assertNamed("quantity", () -> Reading.of(null, Mass.class));
        assertNamed("kind", () -> Reading.of(POURED.toQuantity(), null));
        assertNamed("resolution", () -> POURED.withResolution(null));
        assertNamed("target", () -> POURED.in(null));
        assertNamed("target", () -> POURED.exactIn(null));
        assertNamed("other", () -> POURED.compareAmount(null));
        assertNamed("other", () -> POURED.sameAmountAs(null));
    }

    private static void assertNamed(String argument, Runnable call) {
        assertEquals(
                argument, assertThrows(NullPointerException.class, call::run).getMessage());
    }

    @SuppressWarnings("unchecked") // the rows compare units of one kind
    private static int compare(String value, String unit, String other, String otherUnit) {
        return Integer.signum(Reading.of(value, (FieldUnit<Mass>) unit(unit))
                .compareAmount(Reading.of(other, (FieldUnit<Mass>) unit(otherUnit))));
    }

    private static FieldUnit<?> unit(String code) {
        return FieldUnit.parse(code).orElseThrow();
    }
}
