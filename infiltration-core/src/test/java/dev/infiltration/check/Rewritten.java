// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.field.WaterReading;
import dev.infiltration.units.Reading;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;

/** Records of the field with every reading written otherwise. */
final class Rewritten {

    private Rewritten() {}

    /** {@return a record with what {@code change} makes of every reading in it} */
    @SuppressWarnings("unchecked") // a record is rebuilt as what it was
    static <R extends Record> R of(R record, UnaryOperator<Reading<?>> change) {
        return (R) value(record, change);
    }

    private static Object value(Object value, UnaryOperator<Reading<?>> change) {
        if (value instanceof Reading<?> reading) {
            return change.apply(reading);
        }
        if (value instanceof WaterReading water) {
            return new WaterReading(change.apply(water.reading()));
        }
        if (value instanceof List<?> list) {
            return list.stream().map(each -> value(each, change)).toList();
        }
        return value instanceof Record record && isOfTheField(record) ? rebuilt(record, change) : value;
    }

    private static boolean isOfTheField(Record record) {
        return record.getClass().getPackageName().equals("dev.infiltration.field");
    }

    private static Object rebuilt(Record record, UnaryOperator<Reading<?>> change) {
        RecordComponent[] parts = record.getClass().getRecordComponents();
        try {
            Object[] values = new Object[parts.length];
            for (int i = 0; i < parts.length; i++) {
                values[i] = value(parts[i].getAccessor().invoke(record), change);
            }
            Class<?>[] types =
                    Arrays.stream(parts).map(RecordComponent::getType).toArray(Class<?>[]::new);
            return record.getClass().getDeclaredConstructor(types).newInstance(values);
        } catch (IllegalAccessException
                | InstantiationException
                | InvocationTargetException
                | NoSuchMethodException e) {
            throw new LinkageError("a record of the field cannot be made again", e);
        }
    }
}
