// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Copies of collections that nobody can change; absent ones are empty. */
final class Copies {

    private Copies() {}

    static <T> List<T> list(@Nullable List<? extends T> list, String name) {
        if (list == null) {
            return List.of();
        }
        for (int i = 0; i < list.size(); i++) {
            Objects.requireNonNull(list.get(i), name + "[" + i + "]");
        }
        return List.copyOf(list);
    }

    static Map<String, String> texts(@Nullable Map<String, String> map, String name) {
        Map<String, String> copy = new LinkedHashMap<>();
        if (map != null) {
            map.forEach(
                    (key, value) -> copy.put(Objects.requireNonNull(key, name), Objects.requireNonNull(value, key)));
        }
        return Collections.unmodifiableMap(copy);
    }

    /** Copies maps and lists all the way down; other values are taken as immutable. */
    static Map<String, @Nullable Object> extra(@Nullable Map<String, ? extends @Nullable Object> map) {
        if (map == null || map.isEmpty()) {
            return Map.of();
        }
        Map<String, @Nullable Object> copy = new LinkedHashMap<>();
        map.forEach((key, value) -> copy.put(Objects.requireNonNull(key, "extra"), value(value)));
        return Collections.unmodifiableMap(copy);
    }

    private static @Nullable Object value(@Nullable Object value) {
        if (value instanceof Map<?, ?> map) {
            Map<String, @Nullable Object> copy = new LinkedHashMap<>();
            map.forEach((key, inner) -> copy.put(String.valueOf(key), value(inner)));
            return Collections.unmodifiableMap(copy);
        }
        if (value instanceof List<?> list) {
            List<@Nullable Object> copy = new ArrayList<>(list.size());
            list.forEach(inner -> copy.add(value(inner)));
            return Collections.unmodifiableList(copy);
        }
        return value;
    }
}
