// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.field.Pouring.End;
import dev.infiltration.field.Ring;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.WaterReading;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.math.MathContext;
import javax.measure.quantity.Mass;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;

/** Laws of the equation, whatever was read. */
class RateLawsTest {

    private static final BigDecimal TWO = BigDecimal.valueOf(2);
    private static final BigDecimal POUND = new BigDecimal("0.45359237");
    private static final BigDecimal INCH = new BigDecimal("25.4");

    private static double si(BigDecimal kilograms, BigDecimal millimetres, BigDecimal seconds) {
        return rate(
                WaterReading.weighed(Reading.of(kilograms, FieldUnit.KILOGRAM)),
                Ring.of("R").withInsideDiameter(Reading.of(millimetres, FieldUnit.MILLIMETRE)),
                seconds);
    }

    private static double rate(WaterReading water, Ring ring, BigDecimal seconds) {
        TestRun run = TestRun.of(null, water, Reading.of(seconds, FieldUnit.SECOND), End.DRAINED);
        return RateEquation.asPublished().rate(ring, run).rate().orElseThrow().millimetresPerHour();
    }

    @Property
    void halfTheTimeDoublesTheRate(
            @ForAll @BigRange(min = "0.01", max = "99") BigDecimal kilograms,
            @ForAll @BigRange(min = "1", max = "999") BigDecimal millimetres,
            @ForAll @BigRange(min = "0.1", max = "99999") BigDecimal seconds) {
        double rate = si(kilograms, millimetres, seconds);
        assertEquals(2 * rate, si(kilograms, millimetres, seconds.divide(TWO)), 1e-12 * rate);
    }

    @Property
    void twiceTheWaterDoublesTheRate(
            @ForAll @BigRange(min = "0.01", max = "99") BigDecimal kilograms,
            @ForAll @BigRange(min = "1", max = "999") BigDecimal millimetres,
            @ForAll @BigRange(min = "0.1", max = "99999") BigDecimal seconds) {
        double rate = si(kilograms, millimetres, seconds);
        assertEquals(2 * rate, si(kilograms.multiply(TWO), millimetres, seconds), 1e-12 * rate);
    }

    @Property
    void theRateGoesWithOneOverTheSquareOfTheDiameter(
            @ForAll @BigRange(min = "0.01", max = "99") BigDecimal kilograms,
            @ForAll @BigRange(min = "1", max = "999") BigDecimal millimetres,
            @ForAll @BigRange(min = "0.1", max = "10") BigDecimal factor,
            @ForAll @BigRange(min = "0.1", max = "99999") BigDecimal seconds) {
        double rate = si(kilograms, millimetres, seconds);
        double squared = factor.doubleValue() * factor.doubleValue();
        assertEquals(rate / squared, si(kilograms, millimetres.multiply(factor), seconds), 1e-12 * rate / squared);
    }

    /** 0.0043 % between the two constants (derived). */
    @Property
    void poundsAndInchesComeToTheSameWithinTheDifferenceOfTheConstants(
            @ForAll @BigRange(min = "0.01", max = "99") BigDecimal kilograms,
            @ForAll @BigRange(min = "1", max = "999") BigDecimal millimetres,
            @ForAll @BigRange(min = "0.1", max = "99999") BigDecimal seconds) {
        double rate = si(kilograms, millimetres, seconds);
        Reading<Mass> pounds = Reading.of(kilograms.divide(POUND, MathContext.DECIMAL128), FieldUnit.POUND);
        Ring inches = Ring.of("R")
                .withInsideDiameter(Reading.of(millimetres.divide(INCH, MathContext.DECIMAL128), FieldUnit.INCH));
        assertEquals(rate, rate(WaterReading.weighed(pounds), inches, seconds), 5e-5 * rate);
    }
}
