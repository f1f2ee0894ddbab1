// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.function.Calculus;
import tech.units.indriya.function.MultiplyConverter;
import tech.units.indriya.function.RationalNumber;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** The Indriya unit of each {@link FieldUnit}, created on first use: a host that needs none does not load Indriya. */
final class MeasureUnits {

    private static final Map<FieldUnit<?>, Unit<?>> UNITS = withOwnLoader(MeasureUnits::units);

    private MeasureUnits() {}

    /**
     * Indriya finds its number system through the thread's context class loader, the first time it builds a unit, and
     * fails from then on if it does not find it: so it is first used here, with the right class loader.
     */
    private static <T> T withOwnLoader(Supplier<T> work) {
        Thread thread = Thread.currentThread();
        ClassLoader before = thread.getContextClassLoader();
        thread.setContextClassLoader(Calculus.class.getClassLoader());
        try {
            return work.get();
        } finally {
            thread.setContextClassLoader(before);
        }
    }

    private static Map<FieldUnit<?>, Unit<?>> units() {
        Map<Class<?>, Reference> references = references();
        Map<FieldUnit<?>, Unit<?>> units = new HashMap<>();
        FieldUnit.all()
                .forEach(unit -> units.put(
                        unit,
                        Objects.requireNonNull(references.get(unit.kind())).scaled(unit.factor())));
        return Map.copyOf(units);
    }

    private static Map<Class<?>, Reference> references() {
        return Map.of(
                Length.class, new Reference(Units.METRE, 1),
                Mass.class, new Reference(Units.KILOGRAM, 1),
                Time.class, new Reference(Units.SECOND, 1),
                Temperature.class, new Reference(Units.KELVIN, 1),
                Area.class, new Reference(Units.SQUARE_METRE, 1),
                Volume.class, new Reference(Units.CUBIC_METRE, 1000),
                Speed.class, new Reference(Units.METRE_PER_SECOND, 3_600_000),
                Dimensionless.class, new Reference(AbstractUnit.ONE, 1));
    }

    /** The unit to which the factors of a kind refer. */
    private record Reference(Unit<?> si, long parts) {

        Unit<?> scaled(Factor factor) {
            RationalNumber ratio = RationalNumber.of(factor.numerator())
                    .divide(RationalNumber.of(factor.denominator()).multiply(RationalNumber.ofInteger(parts)));
            Unit<?> unit = si.transform(MultiplyConverter.of(ratio));
            return factor.offset().signum() == 0 ? unit : unit.shift(RationalNumber.of(factor.offset()));
        }
    }

    @SuppressWarnings("unchecked") // the table pairs units of one kind
    static <Q extends Quantity<Q>> Unit<Q> of(FieldUnit<Q> unit) {
        return (Unit<Q>) Objects.requireNonNull(UNITS.get(unit));
    }

    static <Q extends Quantity<Q>> Quantity<Q> quantity(Reading<Q> reading) {
        return Quantities.getQuantity(Factor.tamed(reading.value()), of(reading.unit()));
    }

    static <Q extends Quantity<Q>> Quantity<Q> quantity(double value, FieldUnit<Q> unit) {
        return Quantities.getQuantity(value, of(unit));
    }

    static <Q extends Quantity<Q>> Reading<Q> reading(Quantity<Q> quantity, Class<Q> kind) {
        List<FieldUnit<Q>> units = FieldUnit.allOf(kind);
        for (FieldUnit<Q> unit : units) {
            if (of(unit).isEquivalentTo(quantity.getUnit())) {
                return Reading.of(decimal(quantity.getValue()), unit);
            }
        }
        if (units.isEmpty()) {
            throw new IllegalArgumentException("kind: no unit of the table measures " + kind.getSimpleName());
        }
        FieldUnit<Q> first = units.get(0);
        return Reading.of(decimal(quantity.to(of(first)).getValue()), first);
    }

    private static BigDecimal decimal(Number value) {
        if (value instanceof RationalNumber ratio) {
            return new BigDecimal(ratio.getDividend())
                    .divide(new BigDecimal(ratio.getDivisor()), MathContext.DECIMAL128);
        }
        try {
            return new BigDecimal(value.toString());
        } catch (NumberFormatException notDecimal) {
            throw new IllegalArgumentException("quantity: expected a finite number, got " + value, notDecimal);
        }
    }
}
