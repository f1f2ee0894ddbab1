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
 * @param <Q> the kind of quantity, from javax.measure
 */
public final class Reading<Q extends Quantity<Q>> {

    /** Numbers of so many digits are below 2⁵⁰: a double contains them exactly, with bits to spare. */
    private static final int DIGITS = 15;

    /** The powers of ten that a double contains exactly. */
    private static final double[] POWERS_OF_TEN = {
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19,
        1e20, 1e21, 1e22
    };

    private final BigDecimal value;
    private final FieldUnit<Q> unit;
    private final @Nullable BigDecimal resolution;

    /** The value rounded to a double; NaN for a number of many digits or with an extreme exponent. */
    private final double rounded;

    /** What {@link #rounded} misses of the value, as a double. */
    private final double rest;

    /**
     * Creates a reading.
     *
     * @param value      the number as written
     * @param unit       the unit as written
     * @param resolution the resolution of the instrument in the same unit, where that was stated; else null
     */
    public Reading(BigDecimal value, FieldUnit<Q> unit, @Nullable BigDecimal resolution) {
        this.value = Objects.requireNonNull(value, "value");
        this.unit = Objects.requireNonNull(unit, "unit");
        this.resolution = resolution;
        boolean isShort = value.scale() >= 0 && value.scale() < POWERS_OF_TEN.length && value.precision() <= DIGITS;
        double power = isShort ? POWERS_OF_TEN[value.scale()] : Double.NaN;
        this.rounded = isShort ? value.doubleValue() : Double.NaN;
        this.rest = Math.fma(-rounded, power, Math.rint(rounded * power)) / power;
    }

    /** {@return the number as written} */
    public BigDecimal value() {
        return value;
    }

    /** {@return the unit as written} */
    public FieldUnit<Q> unit() {
        return unit;
    }

    /** {@return the resolution of the instrument in the reading's unit, where that was stated; else null} */
    public @Nullable BigDecimal resolution() {
        return resolution;
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
        if (Objects.requireNonNull(target, "target") == unit && !Double.isNaN(rounded)) {
            return rounded;
        }
        double converted =
                Double.isNaN(rounded) ? Double.NaN : Scale.of(unit, target).convert(rounded, rest);
        return Double.isNaN(converted) ? unit.convert(value, target) : converted;
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
     * <p>Correct rounding keeps the order: unequal doubles give the answer, equal ones are compared as decimals.
     *
     * @param other the reading to compare with
     * @return negative, zero or positive as this amount is less than, equal to or greater than the other
     */
    public int compareAmount(Reading<Q> other) {
        Objects.requireNonNull(other, "other");
        boolean areShort = !Double.isNaN(rounded) && !Double.isNaN(other.rounded);
        int order = areShort ? Double.compare(in(other.unit), other.rounded) : 0;
        return order == 0 ? unit.compare(value, other.value, other.unit) : order;
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

    /** {@return whether the other is a reading that was written the same} */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Reading<?> reading
                && value.equals(reading.value)
                && unit == reading.unit
                && Objects.equals(resolution, reading.resolution);
    }

    @Override
    public int hashCode() {
        return (31 * value.hashCode() + unit.hashCode()) * 31 + Objects.hashCode(resolution);
    }

    /** {@return the reading for people: {@code 40.00 lb}} */
    @Override
    public String toString() {
        String digits = Decimals.text(value);
        return unit.symbol().isEmpty() ? digits : digits + " " + unit.symbol();
    }
}
