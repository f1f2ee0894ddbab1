// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** A record that rows are still adding to. */
final class RecordDraft {

    private final Class<?> type;
    private final Map<String, Object> values = new LinkedHashMap<>();
    private final Map<String, Map<Object, RecordDraft>> lists = new LinkedHashMap<>();
    private boolean leftOut;

    RecordDraft(Class<?> type) {
        this.type = type;
    }

    /** {@return the entry of a list by its key, made where there is none} */
    RecordDraft entry(String list, Object key, Class<?> type) {
        return lists.computeIfAbsent(list, name -> new LinkedHashMap<>())
                .computeIfAbsent(key, made -> new RecordDraft(type));
    }

    boolean has(String list, Object key) {
        return lists.getOrDefault(list, Map.of()).containsKey(key);
    }

    int size(String list) {
        return lists.getOrDefault(list, Map.of()).size();
    }

    /** Leaves the record out, whatever else comes. */
    void leaveOut() {
        leftOut = true;
    }

    /**
     * Puts a value at a path.
     *
     * @return the value that stands there, which is another if one was there before
     */
    Object put(List<String> path, Object value) {
        Map<String, Object> holder = values;
        for (String name : path.subList(0, path.size() - 1)) {
            holder = inner(holder, name);
        }
        @Nullable Object earlier = holder.putIfAbsent(path.get(path.size() - 1), value);
        return earlier == null ? value : earlier;
    }

    /** {@return the value at a path of one name, or null} */
    @Nullable
    Object get(List<String> path) {
        return values.get(path.get(0));
    }

    /** Puts a value at a path of one name, whatever is there. */
    void replace(List<String> path, Object value) {
        values.put(path.get(0), value);
    }

    @SuppressWarnings("unchecked") // a path leads through what this method put there
    private static Map<String, Object> inner(Map<String, Object> holder, String name) {
        return (Map<String, Object>) holder.computeIfAbsent(name, made -> new TreeMap<String, Object>());
    }

    /** {@return the record of what was added} */
    Object toRecord() {
        return record(type, values, lists);
    }

    private static Object record(Class<?> type, Map<?, ?> values, Map<String, Map<Object, RecordDraft>> lists) {
        Map<String, RecordComponent> components = Paths.components(type);
        @Nullable Object[] members = new Object[components.size()];
        int next = 0;
        for (RecordComponent component : components.values()) {
            @Nullable Map<Object, RecordDraft> list = lists.get(component.getName());
            members[next++] = list == null ? of(component, values.get(component.getName())) : records(list);
        }
        return Paths.create(type, members);
    }

    private static @Nullable Object of(RecordComponent component, @Nullable Object value) {
        if (value == null) {
            return component.getType() == List.class ? List.of() : component.getType() == Map.class ? Map.of() : null;
        }
        return made(component.getGenericType(), value);
    }

    private static Object made(Type type, Object value) {
        if (!(value instanceof Map<?, ?> inner)) {
            return value;
        }
        return type instanceof ParameterizedType list
                ? inner.values().stream()
                        .map(entry -> made(list.getActualTypeArguments()[0], entry))
                        .toList()
                : record((Class<?>) type, inner, Map.of());
    }

    private static List<Object> records(Map<Object, RecordDraft> drafts) {
        return drafts.values().stream()
                .filter(draft -> !draft.leftOut)
                .map(RecordDraft::toRecord)
                .toList();
    }
}
