// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/** What several pours come to. */
final class Pours {

    private Pours() {}

    /** {@return the sum of mass before less mass after, or empty when there is no pour or one lacks a reading} */
    static Optional<WaterReading> sum(List<Pour> pours) {
        List<WaterReading> readings = new ArrayList<>();
        for (Pour pour : pours) {
            if (pour.before() == null || pour.after() == null) {
                return Optional.empty();
            }
            readings.add(pour.before());
            readings.add(pour.after());
        }
        return readings.isEmpty() ? Optional.empty() : Optional.of(alternatingSum(readings));
    }

    private static WaterReading alternatingSum(List<WaterReading> readings) {
        Set<FieldUnit<?>> units = new HashSet<>();
        readings.forEach(reading -> units.add(reading.reading().unit()));
        FieldUnit<?> unit = units.size() == 1 ? units.iterator().next() : common(units);
        if (unit.kind() == Volume.class) {
            FieldUnit<Volume> volume = unit.as(Volume.class).orElseThrow();
            return WaterReading.measured(sum(readings, volume, WaterReading::volume));
        }
        return WaterReading.weighed(sum(readings, unit.as(Mass.class).orElseThrow(), WaterReading::mass));
    }

    /** Pounds and ounces add up in pounds; everything else that is mixed in kilograms. */
    private static FieldUnit<?> common(Set<FieldUnit<?>> units) {
        return Set.of(FieldUnit.POUND, FieldUnit.OUNCE).containsAll(units) ? FieldUnit.POUND : FieldUnit.KILOGRAM;
    }

    private static <Q extends Quantity<Q>> Reading<Q> sum(
            List<WaterReading> readings, FieldUnit<Q> unit, Function<WaterReading, Reading<Q>> as) {
        BigDecimal sum = BigDecimal.ZERO;
        for (int i = 0; i < readings.size(); i++) {
            BigDecimal amount =
                    as.apply(Objects.requireNonNull(readings.get(i))).exactIn(unit);
            sum = i % 2 == 0 ? sum.add(amount) : sum.subtract(amount);
        }
        return Reading.of(sum, unit);
    }
}
