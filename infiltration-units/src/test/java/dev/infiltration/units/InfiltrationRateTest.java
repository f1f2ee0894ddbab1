// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.Speed;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class InfiltrationRateTest {

    @Provide
    Arbitrary<Double> rates() {
        return Arbitraries.doubles().between(1e-9, 1e9).ofScale(9);
    }

    /**
     * Units of rates. Source of the first rows: units-exact.csv, inch per hour (seen); of the others: first principles
     * (derived). Tolerance: one unit in the last place of a double.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # mm/h | code      | in that unit
            2540   | [in_i]/h  | 100
            25.4   | [in_i]/h  | 1
            2540   | mm/h      | 2540
            2540   | cm/h      | 254
            2540   | mm/min    | 42.333333333333333333
            2540   | cm/s      | 0.070555555555555555556
            2540   | m/s       | 7.0555555555555555556e-4
            2540   | m/d       | 60.96
            36     | L/(s.har) | 100
            0      | L/(s.har) | 0
            """)
    void rateIsHandedOutInEveryUnit(double millimetresPerHour, String code, double expected) {
        FieldUnit<Speed> unit = FieldUnit.parse(code, Speed.class).orElseThrow();
        assertEquals(expected, new InfiltrationRate(millimetresPerHour).in(unit), Math.ulp(expected));
        assertEquals(
                millimetresPerHour,
                InfiltrationRate.of(expected, unit).millimetresPerHour(),
                Math.ulp(millimetresPerHour));
    }

    @Property
    void rateComesBackFromEveryUnit(@ForAll("rates") double millimetresPerHour) {
        InfiltrationRate rate = new InfiltrationRate(millimetresPerHour);
        for (FieldUnit<Speed> unit : FieldUnit.allOf(Speed.class)) {
            assertEquals(
                    millimetresPerHour,
                    InfiltrationRate.of(rate.in(unit), unit).millimetresPerHour(),
                    2 * Math.ulp(millimetresPerHour));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -Double.MIN_VALUE, -1, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void whatIsNoRateIsRefusedByName(double value) {
        IllegalArgumentException refusal =
                assertThrows(IllegalArgumentException.class, () -> new InfiltrationRate(value));
        assertEquals(
                "millimetresPerHour: expected a finite rate of at least 0 mm/h, got " + value, refusal.getMessage());
        assertThrows(IllegalArgumentException.class, () -> InfiltrationRate.of(value, FieldUnit.METRE_PER_SECOND));
    }

    @Test
    void rateBeyondTheRangeOfADoubleIsRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> InfiltrationRate.of(Double.MAX_VALUE, FieldUnit.METRE_PER_SECOND));
    }

    @Test
    void missingUnitIsRefusedByName() {
        InfiltrationRate rate = new InfiltrationRate(1);
        assertEquals(
                "unit",
                assertThrows(NullPointerException.class, () -> rate.in(null)).getMessage());
        assertEquals(
                "unit",
                assertThrows(NullPointerException.class, () -> rate.text(null)).getMessage());
        assertEquals(
                "unit",
                assertThrows(NullPointerException.class, () -> InfiltrationRate.of(1, null))
                        .getMessage());
    }

    /** Expected texts: rounded by hand, half up (derived). */
    @ParameterizedTest
    @CsvSource({
        "12345.6, 12300 mm/h",
        "15278.89, 15300 mm/h",
        "6111.55, 6110 mm/h",
        "999.6, 1000 mm/h",
        "999.4, 999 mm/h",
        "100, 100 mm/h",
        "36, 36.0 mm/h",
        "2.5, 2.50 mm/h",
        "2.4, 2.40 mm/h",
        "0.5, 0.500 mm/h",
        "0.123456, 0.123 mm/h",
        "0.09996, 0.100 mm/h",
        "1E-7, 0.000000100 mm/h",
        "0, 0 mm/h",
        "-0.0, 0 mm/h",
        "1E22, 10000000000000000000000 mm/h",
        "1E300, 1.00E+300 mm/h",
        "4.9E-324, 4.94E-324 mm/h"
    })
    void textHasThreeSignificantDigits(double millimetresPerHour, String expected) {
        assertEquals(expected, new InfiltrationRate(millimetresPerHour).toString());
    }

    @Test
    void textIsGivenInTheUnitWanted() {
        InfiltrationRate rate = InfiltrationRate.of(600.6, FieldUnit.INCH_PER_HOUR);
        assertEquals("601 in/h", rate.text(FieldUnit.INCH_PER_HOUR));
        assertEquals("15300 mm/h", rate.text(FieldUnit.MILLIMETRE_PER_HOUR));
        assertEquals("0.00424 m/s", rate.text(FieldUnit.METRE_PER_SECOND));
        assertEquals("42400 L/(s·ha)", rate.text(FieldUnit.LITRE_PER_SECOND_HECTARE));
    }

    @ParameterizedTest(name = "{0} beside {1}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
        # rate      | limit | text            (rounded by hand, derived)
        1998        | 2000  | 1998 mm/h
        1994        | 2000  | 1990 mm/h
        1999.96     | 2000  | 1999.96 mm/h
        2000        | 2000  | 2000 mm/h
        2000.4      | 2000  | 2000.4 mm/h
        1995.4      | 3000  | 2000 mm/h
        0.0999      | 0.1   | 0.0999 mm/h
        """)
    void textShowsTheSideOfALimit(double millimetresPerHour, double limit, String expected) {
        assertEquals(
                expected,
                new InfiltrationRate(millimetresPerHour)
                        .text(FieldUnit.MILLIMETRE_PER_HOUR, List.of(new InfiltrationRate(limit))));
    }

    @Test
    void textBesideSeveralLimitsShowsTheSideOfEach() {
        List<InfiltrationRate> limits = List.of(new InfiltrationRate(2000), new InfiltrationRate(1998.5));
        assertEquals("1999 mm/h", new InfiltrationRate(1998.7).text(FieldUnit.MILLIMETRE_PER_HOUR, limits));
        assertEquals("1999.7 mm/h", new InfiltrationRate(1999.7).text(FieldUnit.MILLIMETRE_PER_HOUR, limits));
        // a rate equal to its limit stays equal in the other unit
        InfiltrationRate limit = InfiltrationRate.of(0.7, FieldUnit.INCH_PER_HOUR);
        assertEquals("0.700 in/h", limit.text(FieldUnit.INCH_PER_HOUR, List.of(limit)));
    }

    @Test
    void textOfZeroIsZeroInEveryUnit() {
        for (FieldUnit<Speed> unit : FieldUnit.allOf(Speed.class)) {
            assertEquals("0 " + unit.symbol(), new InfiltrationRate(0).text(unit));
        }
    }

    @Test
    void textOfTheGreatestRateIsANumberInEveryUnit() {
        assertEquals(
                "4.99E+308 L/(s·ha)", new InfiltrationRate(Double.MAX_VALUE).text(FieldUnit.LITRE_PER_SECOND_HECTARE));
    }

    @Property
    void textIsWithinHalfAUnitOfItsThirdDigit(@ForAll("rates") double millimetresPerHour) {
        String digits = new InfiltrationRate(millimetresPerHour).toString().replace(" mm/h", "");
        BigDecimal exact = new BigDecimal(millimetresPerHour);
        BigDecimal third = BigDecimal.ONE.scaleByPowerOfTen(exact.precision() - exact.scale() - 3);
        BigDecimal apart = exact.subtract(new BigDecimal(digits)).abs();
        assertTrue(apart.multiply(BigDecimal.valueOf(2)).compareTo(third) <= 0, digits);
        assertTrue(digits.replaceAll("^[0.]+|[.]", "").length() >= 3, digits);
    }

    @Test
    void ratesAreOrderedByAmount() {
        List<InfiltrationRate> ordered = Stream.of(0.0, Double.MIN_VALUE, 254.0, 2540.0, Double.MAX_VALUE)
                .map(InfiltrationRate::new)
                .toList();
        for (int i = 0; i < ordered.size(); i++) {
            for (int j = 0; j < ordered.size(); j++) {
                assertEquals(
                        Integer.compare(i, j), Integer.signum(ordered.get(i).compareTo(ordered.get(j))));
            }
        }
    }

    @Test
    void zeroHasNoSign() {
        InfiltrationRate zero = new InfiltrationRate(0.0);
        InfiltrationRate negativeZero = new InfiltrationRate(-0.0);
        assertEquals(zero, negativeZero);
        assertEquals(0, zero.compareTo(negativeZero));
        assertEquals(zero.hashCode(), negativeZero.hashCode());
    }
}
