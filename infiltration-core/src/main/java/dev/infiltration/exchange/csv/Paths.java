// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads components of records, also nested ones, by their path: {@code head.lowest}, {@code pours.0.before}. */
final class Paths {

    private static final ClassValue<Map<String, RecordComponent>> COMPONENTS = new ClassValue<>() {
        @Override
        protected Map<String, RecordComponent> computeValue(Class<?> type) {
            Map<String, RecordComponent> components = new LinkedHashMap<>();
            for (RecordComponent component : type.getRecordComponents()) {
                components.put(component.getName(), component);
            }
            return components;
        }
    };

    private Paths() {}

    static Map<String, RecordComponent> components(Class<?> type) {
        return COMPONENTS.get(type);
    }

    /** {@return the type of the value at a path} */
    static Type type(Class<?> record, String path) {
        Type type = record;
        for (String name : path.split("\\.", -1)) {
            type = type instanceof ParameterizedType list
                    ? list.getActualTypeArguments()[0]
                    : component((Class<?>) type, name).getGenericType();
        }
        return type;
    }

    private static RecordComponent component(Class<?> type, String name) {
        RecordComponent component = components(type).get(name);
        if (component == null) {
            throw new IllegalArgumentException("name: " + type + " has no " + name);
        }
        return component;
    }

    /** {@return the value at a path, or null when it or one of its parents is absent} */
    static @Nullable Object value(Object record, List<String> path) {
        @Nullable Object value = record;
        for (String name : path) {
            if (value instanceof List<?> list) {
                int index = Integer.parseInt(name);
                value = index < list.size() ? list.get(index) : null;
            } else if (value != null) {
                value = value(value, component(value.getClass(), name));
            }
        }
        return value;
    }

    static @Nullable Object value(Object record, RecordComponent component) {
        try {
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException closed) {
            throw new LinkageError("cannot read " + component, closed);
        }
    }

    /** {@return a record with these values of its components} */
    static Object create(Class<?> type, @Nullable Object[] values) {
        Class<?>[] types = Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new);
        try {
            return type.getConstructor(types).newInstance(values);
        } catch (ReflectiveOperationException closed) {
            throw new LinkageError("cannot make a " + type, closed);
        }
    }
}
