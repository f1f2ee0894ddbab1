// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Speed;

/**
 * A computed surface infiltration rate.
 *
 * <p>It is measured at a head of 10 to 15 mm in a ring of about 300 mm: a rate, not a permeability. It is stored as a double in
 * mm/h and given in any unit of speed; text for people is rounded, {@link #in} is not.
 *
 * @param millimetresPerHour the rate in mm/h, finite and not negative
 */
public record InfiltrationRate(double millimetresPerHour) implements Comparable<InfiltrationRate> {

    /** Significant digits for people: the instruments of the method give 1 to 4 %. */
    private static final int DIGITS = 3;

    /** Digits of a computed rate that mean something; the rest is rounding. */
    private static final MathContext MEANT = new MathContext(12);

    /**
     * Checks the rate; a negative zero becomes zero.
     *
     * @throws IllegalArgumentException if it is negative or not finite
     */
    public InfiltrationRate {
        if (!(millimetresPerHour >= 0) || Double.isInfinite(millimetresPerHour)) {
            throw new IllegalArgumentException(
                    "millimetresPerHour: expected a finite rate of at least 0 mm/h, got " + millimetresPerHour);
        }
        millimetresPerHour += 0.0;
    }

    /**
     * {@return a rate}
     *
     * @param value the number
     * @param unit  its unit
     * @throws IllegalArgumentException if it is negative or not finite
     */
    public static InfiltrationRate of(double value, FieldUnit<Speed> unit) {
        return new InfiltrationRate(Objects.requireNonNull(unit, "unit").convert(value, FieldUnit.MILLIMETRE_PER_HOUR));
    }

    /**
     * {@return the rate in another unit}
     *
     * @param unit the unit wanted
     */
    public double in(FieldUnit<Speed> unit) {
        return FieldUnit.MILLIMETRE_PER_HOUR.convert(millimetresPerHour, Objects.requireNonNull(unit, "unit"));
    }

    /** {@return the rate as a javax.measure quantity in mm/h} */
    public Quantity<Speed> toQuantity() {
        return MeasureUnits.quantity(millimetresPerHour, FieldUnit.MILLIMETRE_PER_HOUR);
    }

    /**
     * {@return the rate for people, to three significant digits: 12 300 as {@code 12300 mm/h}, a half as {@code 0.500 mm/h}}
     *
     * @param unit the unit to print
     */
    public String text(FieldUnit<Speed> unit) {
        return text(unit, List.of());
    }

    /**
     * {@return the rate for people beside limits: to three significant digits, or as many as show on which side of each limit
     * it is} (up to twelve; a difference beyond is rounding of the computation)
     *
     * @param unit   the unit to print
     * @param limits the limits that the rate is compared with
     */
    public String text(FieldUnit<Speed> unit, Collection<InfiltrationRate> limits) {
        BigDecimal exact = exactly(unit);
        BigDecimal meant = exact.round(MEANT);
        List<BigDecimal> marks =
                limits.stream().map(limit -> limit.exactly(unit).round(MEANT)).toList();
        int digits = DIGITS;
        while (digits < MEANT.getPrecision() && hidesSide(new BigDecimal(Decimals.text(exact, digits)), meant, marks)) {
            digits++;
        }
        return Decimals.text(exact, digits) + " " + unit.symbol();
    }

    private static boolean hidesSide(BigDecimal rounded, BigDecimal meant, List<BigDecimal> marks) {
        return marks.stream().anyMatch(mark -> rounded.compareTo(mark) != meant.compareTo(mark));
    }

    private BigDecimal exactly(FieldUnit<Speed> unit) {
        return FieldUnit.MILLIMETRE_PER_HOUR.exact(
                new BigDecimal(millimetresPerHour), Objects.requireNonNull(unit, "unit"));
    }

    @Override
    public int compareTo(InfiltrationRate other) {
        return Double.compare(millimetresPerHour, other.millimetresPerHour);
    }

    /** {@return the rate for people in mm/h} */
    @Override
    public String toString() {
        return text(FieldUnit.MILLIMETRE_PER_HOUR);
    }
}
