// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import dev.infiltration.method.Band;
import dev.infiltration.method.Limit;
import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The limits of a method as members of its document: each limit is a separate key. */
final class LimitMembers {

    private LimitMembers() {}

    /** {@return whether the component is the map of limits} */
    static boolean isIn(RecordComponent component) {
        return isIn(component.getGenericType());
    }

    private static boolean isIn(Type type) {
        return type instanceof ParameterizedType map
                && map.getRawType() == Map.class
                && map.getActualTypeArguments()[0] instanceof ParameterizedType key
                && key.getRawType() == Limit.class;
    }

    /** {@return a reader for each limit by its key, in order} */
    static Map<String, ValueReader> readers() {
        Map<String, ValueReader> readers = new LinkedHashMap<>();
        for (Limit<?> limit : Limit.all()) {
            readers.put(
                    limit.key(), RecordReader.of(Band.class, Map.of(Band.class.getTypeParameters()[0], limit.kind())));
        }
        return readers;
    }

    /** {@return the position of a key among the limits} */
    static int position(String key) {
        return Limit.all().stream().map(Limit::key).toList().indexOf(key);
    }

    /** {@return the arguments of a record, from the values of its components and behind them those of the limits} */
    static @Nullable Object[] gathered(Constructor<?> constructor, @Nullable Object[] values) {
        int count = constructor.getParameterCount();
        @Nullable Object[] arguments = Arrays.copyOf(values, count);
        Type[] types = constructor.getGenericParameterTypes();
        for (int index = 0; index < count; index++) {
            if (isIn(types[index])) {
                arguments[index] = limits(values, count);
            }
        }
        return arguments;
    }

    private static Map<Limit<?>, Object> limits(@Nullable Object[] values, int from) {
        Map<Limit<?>, Object> limits = new HashMap<>();
        for (int position = 0; position < Limit.all().size(); position++) {
            @Nullable Object band = values[from + position];
            if (band != null) {
                limits.put(Limit.all().get(position), band);
            }
        }
        return limits;
    }
}
