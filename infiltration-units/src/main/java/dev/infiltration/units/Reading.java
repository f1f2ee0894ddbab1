// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.units;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * A value as it was written, with its unit.
 *
 * <p>Digits are kept: {@code 40.00 lb} shows that the balance was read to 0.01 lb, {@code 40 lb} does not. Two readings are
 * equal when they are written the same; {@link #sameAmountAs} and {@link #compareAmount} compare amounts,
 * exactly, across units. Any number is accepted, also zero and negative ones; the rules check it.
 *
 * <pre>{@code
 * Reading<Mass> poured = Reading.of("40.00", FieldUnit.POUND);
 * poured.in(FieldUnit.KILOGRAM);                               // 18.1436948
 * poured.sameAmountAs(Reading.of("640.0", FieldUnit.OUNCE));   // true
 * }</pre>
 *
 * @param value      the number as written
 * @param unit       the unit as written
 * @param resolution to what the instrument was read, in the same unit, where that was stated; else null
 * @param <Q>        the kind of quantity, from javax.measure
 */
public record Reading<Q extends Quantity<Q>>(
        BigDecimal value, FieldUnit<Q> unit, @Nullable BigDecimal resolution) {

    /** Checks that value and unit are there. */
    public Reading {
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(unit, "unit");
    }

    /**
     * {@return the reading of a number and its unit}
     *
     * @param value the number as written
     * @param unit  the unit as written
     * @param <Q>   the kind of quantity
     */
    public static <Q extends Quantity<Q>> Reading<Q> of(BigDecimal value, FieldUnit<Q> unit) {
        return new Reading<>(value, unit, null);
    }

    /**
     * {@return the reading of digits and their unit}
     *
     * @param digits the number as written, {@code "40.00"}, with a decimal point in every locale
     * @param unit   the unit as written
     * @param <Q>    the kind of quantity
     * @throws NumberFormatException if {@code digits} is no decimal number
     */
    public static <Q extends Quantity<Q>> Reading<Q> of(String digits, FieldUnit<Q> unit) {
        return of(new BigDecimal(Objects.requireNonNull(digits, "digits")), unit);
    }

    /**
     * {@return the reading of a javax.measure quantity}, in the table's unit when it has one of that size, else converted
     * to the table's first unit of the kind
     *
     * @param quantity the quantity
     * @param kind     the kind of quantity
     * @param <Q>      the kind of quantity
     * @throws IllegalArgumentException if the quantity's value is not finite, or no unit of the table is of that kind
     */
    public static <Q extends Quantity<Q>> Reading<Q> of(Quantity<Q> quantity, Class<Q> kind) {
        return MeasureUnits.reading(Objects.requireNonNull(quantity, "quantity"), Objects.requireNonNull(kind, "kind"));
    }

    /**
     * {@return the same amount as a javax.measure quantity}
     *
     * <p>A quantity does not keep digits: 40.00 becomes 40. An exponent beyond ±1000 is cut to that, as in {@link #exactIn}.
     */
    public Quantity<Q> toQuantity() {
        return MeasureUnits.quantity(this);
    }

    /**
     * {@return this reading with its resolution stated}
     *
     * @param resolution to what the instrument was read, in this reading's unit
     */
    public Reading<Q> withResolution(BigDecimal resolution) {
        return new Reading<>(value, unit, Objects.requireNonNull(resolution, "resolution"));
    }

    /**
     * {@return the amount in another unit, rounded once to a double}
     *
     * @param target the unit wanted
     */
    public double in(FieldUnit<Q> target) {
        return unit.convert(value, Objects.requireNonNull(target, "target"));
    }

    /**
     * {@return the amount in another unit as a decimal}: exact where it ends, else to 70 digits
     *
     * <p>An exponent beyond ±1000 is cut to that, so that sums and products of such amounts never cost time or memory.
     *
     * @param target the unit wanted
     */
    public BigDecimal exactIn(FieldUnit<Q> target) {
        return unit.exact(value, Objects.requireNonNull(target, "target"));
    }

    /**
     * {@return whether both are the same amount, however written}
     *
     * @param other the reading to compare with
     */
    public boolean sameAmountAs(Reading<Q> other) {
        return compareAmount(other) == 0;
    }

    /**
     * Compares two amounts by exact decimals, so that 8.1 lb is not above 8.0 lb + 0.1 lb.
     *
     * @param other the reading to compare with
     * @return negative, zero or positive as this amount is less than, equal to or greater than the other
     */
    public int compareAmount(Reading<Q> other) {
        return unit.compare(value, Objects.requireNonNull(other, "other").value, other.unit);
    }

    /** {@return whether the number is above zero} */
    public boolean isPositive() {
        return value.signum() > 0;
    }

    /** {@return the stated resolution, where there is a positive one} */
    public Optional<Reading<Q>> statedResolution() {
        return Optional.ofNullable(resolution)
                .filter(stated -> stated.signum() > 0)
                .map(stated -> of(stated, unit));
    }

    /** {@return one unit of the last digit written: 0.01 lb for 40.00 lb} */
    public Reading<Q> lastDigit() {
        return of(BigDecimal.valueOf(1, value.scale()), unit);
    }

    /** {@return the reading as {@code kind}, or empty when it is of another}
     *
     * @param kind the kind of quantity wanted
     * @param <R>  the kind of quantity wanted
     */
    @SuppressWarnings("unchecked") // the unit's kind is the type argument
    public <R extends Quantity<R>> Optional<Reading<R>> as(Class<R> kind) {
        return unit.kind() == kind ? Optional.of((Reading<R>) this) : Optional.empty();
    }

    /** {@return the reading for people: {@code 40.00 lb}} */
    @Override
    public String toString() {
        String digits = Decimals.text(value);
        return unit.symbol().isEmpty() ? digits : digits + " " + unit.symbol();
    }
}
