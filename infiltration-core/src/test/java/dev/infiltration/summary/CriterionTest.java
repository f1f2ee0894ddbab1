// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.summary.Criterion.Purpose;
import dev.infiltration.summary.Criterion.Relation;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import javax.measure.quantity.Speed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CriterionTest {

    private static Criterion inches(Relation relation, String limit) {
        return Criterion.of(
                Criterion.Type.MEAN,
                relation,
                Reading.of(limit, FieldUnit.INCH_PER_HOUR),
                "unit-pavement",
                "the owner");
    }

    @ParameterizedTest(name = "{1} mm/h {0} 10 in/h: {2}")
    @CsvSource({
        "AT_LEAST, 254, true",
        "AT_LEAST, 253.999, false",
        "AT_LEAST, 254.001, true",
        "MORE_THAN, 254, false",
        "MORE_THAN, 254.001, true",
        "AT_MOST, 254, true",
        "AT_MOST, 254.001, false",
        "LESS_THAN, 254, false",
        "LESS_THAN, 253.999, true"
    })
    void strictnessDecidesAtTheLimit(Relation relation, double rate, boolean passes) {
        assertEquals(passes, inches(relation, "10").passes(new InfiltrationRate(rate)));
    }

    @Test
    void tenOrLessIsNotBelowTwoHundredAndFifty() {
        // "10 in/h or less" (Everett WA table 22, published) and "below 250 mm/h" (Ontario, published): 252 mm/h tells
        // them apart
        Criterion tenOrLess = inches(Relation.MORE_THAN, "10");
        Criterion below250 = Criterion.of(
                Criterion.Type.MEAN,
                Relation.AT_LEAST,
                Reading.of("250", FieldUnit.MILLIMETRE_PER_HOUR),
                "unit-pavement",
                "x");
        assertFalse(tenOrLess.passes(new InfiltrationRate(252)));
        assertTrue(below250.passes(new InfiltrationRate(252)));
    }

    @Test
    void comparisonIsByDecimals() {
        // 0.1 + 0.2 is 0.30000000000000004 as a double
        assertTrue(Criterion.of(
                        Criterion.Type.MEAN,
                        Relation.AT_MOST,
                        Reading.of("0.3", FieldUnit.MILLIMETRE_PER_HOUR),
                        "m",
                        "s")
                .passes(new InfiltrationRate(0.1 + 0.2)));
    }

    @ParameterizedTest(name = "{0} in/h rounded to {1}: {2}")
    @CsvSource({
        "9.5, 1, true",
        "9.4, 1, false",
        "8.5, 1, false",
        "9.96, 0.1, true",
        "9.94, 0.1, false",
        "7.4, 5, false",
        "7.6, 5, true"
    })
    void roundingIsHalfToEvenWhereStated(double rate, String to, boolean passes) {
        Criterion rounded = inches(Relation.AT_LEAST, "10").withRounding(inchesPerHour(to));
        assertEquals(passes, rounded.passes(InfiltrationRate.of(rate, FieldUnit.INCH_PER_HOUR)));
    }

    private static Reading<Speed> inchesPerHour(String value) {
        return Reading.of(value, FieldUnit.INCH_PER_HOUR);
    }

    @Test
    void halvesGoToTheEvenSide() {
        Criterion nine = inches(Relation.AT_LEAST, "9").withRounding(inchesPerHour("1"));
        assertFalse(nine.passes(InfiltrationRate.of(8.5, FieldUnit.INCH_PER_HOUR)));
        assertTrue(inches(Relation.AT_LEAST, "8")
                .withRounding(inchesPerHour("1"))
                .passes(InfiltrationRate.of(7.5, FieldUnit.INCH_PER_HOUR)));
    }

    @Test
    void saysWhatItIs() {
        assertEquals(
                "mean ≥ 10 in/h, unit-pavement (the owner)",
                inches(Relation.AT_LEAST, "10").toString());
        Criterion share = Criterion.of(
                        Criterion.Type.SHARE_OF_LOCATIONS,
                        Relation.MORE_THAN,
                        Reading.of("100", FieldUnit.MILLIMETRE_PER_HOUR),
                        "m",
                        "s")
                .withRequiredShare(0.8)
                .withPurpose(Purpose.AFTER_CLEANING);
        assertEquals("share of locations (80 %) > 100 mm/h, m (s)", share.toString());
        assertEquals(Purpose.AFTER_CLEANING, share.purpose());
        assertEquals(
                "mean ≥ 80 in/h after rounding to 1 in/h, unit-pavement (the owner)",
                inches(Relation.AT_LEAST, "80").withRounding(inchesPerHour("1")).toString());
    }

    @Test
    void refusesWhatIsNoCriterion() {
        Criterion any = inches(Relation.AT_LEAST, "10");
        assertThrows(IllegalArgumentException.class, () -> any.withRequiredShare(0));
        assertThrows(IllegalArgumentException.class, () -> any.withRequiredShare(80));
        assertThrows(IllegalArgumentException.class, () -> any.withRounding(inchesPerHour("0")));
        assertThrows(
                IllegalArgumentException.class,
                () -> any.withRounding(Reading.of("1", FieldUnit.MILLIMETRE_PER_HOUR)),
                "in another unit than the limit");
        Criterion bound = Criterion.of(Criterion.Type.CONFIDENCE_BOUND, Relation.AT_LEAST, any.limit(), "m", "s");
        assertEquals(0.95, bound.level().orElseThrow());
        assertThrows(IllegalArgumentException.class, () -> bound.withLevel(1));
        assertThrows(IllegalArgumentException.class, () -> bound.withLevel(0.5));
        assertThrows(IllegalArgumentException.class, () -> any.withRounding(inchesPerHour("1e-999999999")));
    }
}
