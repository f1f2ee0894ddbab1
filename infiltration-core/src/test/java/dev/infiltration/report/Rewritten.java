// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.field.FieldBook;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;

/** A book with each of its texts written otherwise: the same text always the same way, so that what names still names. */
final class Rewritten {

    private Rewritten() {}

    static FieldBook book(FieldBook book, UnaryOperator<String> otherwise) {
        return (FieldBook) value(book, otherwise);
    }

    private static Object value(Object value, UnaryOperator<String> otherwise) {
        if (value instanceof String text) {
            return otherwise.apply(text);
        }
        if (value instanceof List<?> list) {
            return list.stream().map(each -> value(each, otherwise)).toList();
        }
        return value instanceof Record record && record.getClass().getPackage() == FieldBook.class.getPackage()
                ? record(record, otherwise)
                : value;
    }

    private static Object record(Record record, UnaryOperator<String> otherwise) {
        try {
            RecordComponent[] components = record.getClass().getRecordComponents();
            Object[] values = new Object[components.length];
            for (int i = 0; i < values.length; i++) {
                Object old = components[i].getAccessor().invoke(record);
                values[i] = old == null ? null : value(old, otherwise);
            }
            Class<?>[] types =
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
            return record.getClass().getDeclaredConstructor(types).newInstance(values);
        } catch (ReflectiveOperationException broken) {
            throw new LinkageError("no record of its parts", broken);
        }
    }
}
