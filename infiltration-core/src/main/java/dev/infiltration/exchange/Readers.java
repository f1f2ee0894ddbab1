// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import dev.infiltration.field.ClockTime;
import dev.infiltration.field.Photo;
import dev.infiltration.field.WaterReading;
import dev.infiltration.units.Reading;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.lang.reflect.WildcardType;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/** The reader for each type that a component of a record may have. */
final class Readers {

    private static final Map<Class<?>, ValueReader> OF_CLASS = Map.ofEntries(
            Map.entry(String.class, Scalars.STRING),
            Map.entry(Boolean.class, Scalars.BOOLEAN),
            Map.entry(boolean.class, Scalars.BOOLEAN),
            Map.entry(Integer.class, Scalars.INTEGER),
            Map.entry(int.class, Scalars.INTEGER),
            Map.entry(BigDecimal.class, Scalars.DECIMAL),
            Map.entry(LocalDate.class, Scalars.DATE),
            Map.entry(ZoneId.class, Scalars.ZONE),
            Map.entry(ClockTime.class, Scalars.CLOCK_TIME),
            Map.entry(IdReference.class, IdReference.READER),
            Map.entry(WaterReading.class, AmountReader.ofWater()));

    /** Lists in which a lost element changes what is computed. */
    private static final Set<String> EACH_COUNTS = Set.of("tests", "runs", "pours", "events", "insideDiameters");

    private Readers() {}

    /**
     * {@return a reader for a component}
     *
     * @param type      the component's type
     * @param name      the component's name
     * @param arguments the type arguments by type parameter of the record
     * @throws IllegalArgumentException if nothing reads that type
     */
    static ValueReader of(Type type, String name, Map<TypeVariable<?>, Type> arguments) {
        Type actual = resolve(type, arguments);
        if (actual instanceof ParameterizedType generic) {
            return ofGeneric(generic, name, arguments);
        }
        @Nullable ValueReader reader = actual instanceof Class<?> plain ? ofClass(plain) : null;
        if (reader == null) {
            throw new IllegalArgumentException(name + ": nothing reads a " + type.getTypeName());
        }
        return reader;
    }

    private static @Nullable ValueReader ofClass(Class<?> type) {
        if (type.isEnum()) {
            return Scalars.word(type);
        }
        if (type == Photo.class) {
            return new PhotoReader(RecordReader.of(Photo.class, Map.of()));
        }
        @Nullable ValueReader reader = OF_CLASS.get(type);
        return reader == null && type.isRecord() ? RecordReader.of(type, Map.of()) : reader;
    }

    private static ValueReader ofGeneric(ParameterizedType type, String name, Map<TypeVariable<?>, Type> outer) {
        Class<?> raw = (Class<?>) type.getRawType();
        Type last = resolve(type.getActualTypeArguments()[type.getActualTypeArguments().length - 1], outer);
        if (raw == Reading.class) {
            return amount(last, name);
        }
        if (raw == List.class) {
            return new ListReader(of(last, name, outer), EACH_COUNTS.contains(name));
        }
        if (raw == Map.class) {
            return last == Object.class ? ExtraReader.OBJECT : MapReader.of(of(last, name, outer));
        }
        return RecordReader.of(raw, arguments(raw, type, outer));
    }

    private static ValueReader amount(Type kind, String name) {
        if (kind instanceof WildcardType) {
            return AmountReader.ofAnyKind();
        }
        return kind == Time.class && name.equals("elapsed")
                ? AmountReader.ofElapsed()
                : AmountReader.of((Class<?>) kind);
    }

    private static Map<TypeVariable<?>, Type> arguments(
            Class<?> raw, ParameterizedType type, Map<TypeVariable<?>, Type> outer) {
        Map<TypeVariable<?>, Type> arguments = new HashMap<>();
        for (TypeVariable<?> parameter : raw.getTypeParameters()) {
            arguments.put(parameter, resolve(type.getActualTypeArguments()[arguments.size()], outer));
        }
        return arguments;
    }

    private static Type resolve(Type type, Map<TypeVariable<?>, Type> arguments) {
        return type instanceof TypeVariable<?> variable ? arguments.getOrDefault(variable, type) : type;
    }
}
