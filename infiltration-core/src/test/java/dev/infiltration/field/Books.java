// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.field;

import dev.infiltration.units.Reading;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/**
 * Invented field books for properties, small and strange: parts absent, ids that meet and ids that do not, numbers and
 * dates of every size.
 *
 * <pre>{@code
 * @Provide
 * Arbitrary<FieldBook> books() {
 *     return Books.any();
 * }
 * }</pre>
 */
public final class Books {

    private static final double SELDOM = 0.25;

    /** Lists of which a third entry means something new. */
    private static final Set<String> LONG = Set.of("visits", "tests", "runs", "locations");

    private final Parts parts;

    private Books(Parts parts) {
        this.parts = parts;
    }

    /** {@return any book that can be built} */
    public static Arbitrary<FieldBook> any() {
        return any(FieldBook.class);
    }

    /** {@return books that a document can hold: what is written of them reads back equal} */
    public static Arbitrary<FieldBook> readable() {
        return readable(FieldBook.class);
    }

    /**
     * {@return any record of a type that can be built}
     *
     * @param type a record of the field
     */
    public static <R extends Record> Arbitrary<R> any(Class<R> type) {
        return new Books(Parts.any()).records(type);
    }

    /**
     * {@return records of a type that a document can hold}
     *
     * @param type a record of the field
     */
    public static <R extends Record> Arbitrary<R> readable(Class<R> type) {
        return new Books(Parts.readable()).records(type);
    }

    private <R> Arbitrary<R> records(Class<R> type) {
        List<Arbitrary<Object>> members = Arrays.stream(type.getRecordComponents())
                .map(component -> member(type, component))
                .toList();
        return Combinators.combine(members)
                .as(values -> create(type, values.toArray()))
                .withoutEdgeCases();
    }

    private static <R> R create(Class<R> type, Object[] values) {
        Class<?>[] types = Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new);
        try {
            return type.getConstructor(types).newInstance(values);
        } catch (ReflectiveOperationException refused) {
            throw new LinkageError(type + " refuses " + Arrays.toString(values), refused);
        }
    }

    private Arbitrary<Object> member(Class<?> owner, RecordComponent component) {
        Type type = component.getGenericType();
        Arbitrary<?> member = type == String.class
                ? Texts.of(owner, component.getName())
                : type instanceof ParameterizedType generic
                        ? generic(generic, component.getName())
                        : plain((Class<?>) type);
        return member.injectNull(component.getName().equals("id") ? SELDOM / 4 : SELDOM)
                .asGeneric();
    }

    private Arbitrary<?> generic(ParameterizedType type, String name) {
        Type argument = type.getActualTypeArguments()[type.getActualTypeArguments().length - 1];
        if (type.getRawType() == Reading.class) {
            return argument instanceof Class<?> kind ? parts.readings(kind) : parts.readings();
        }
        if (type.getRawType() == Map.class) {
            return argument == String.class
                    ? Arbitraries.maps(Texts.any(), Texts.any()).ofMaxSize(2)
                    : parts.extras();
        }
        return elements(argument, name).list().ofMaxSize(LONG.contains(name) ? 3 : 2);
    }

    private Arbitrary<?> elements(Type type, String name) {
        if (type == String.class) {
            return Texts.of(List.class, name);
        }
        return type instanceof ParameterizedType generic ? generic(generic, name) : plain((Class<?>) type);
    }

    private Arbitrary<?> plain(Class<?> type) {
        if (type.isEnum()) {
            return Arbitraries.of(type.getEnumConstants());
        }
        Arbitrary<?> part = scalars().get(type);
        return part == null ? records(type) : part;
    }

    private Map<Class<?>, Arbitrary<?>> scalars() {
        return Map.of(
                Boolean.class, Arbitraries.of(true, false),
                Integer.class, Arbitraries.oneOf(Arbitraries.integers().between(-1, 4), Arbitraries.integers()),
                BigDecimal.class, parts.degrees(),
                LocalDate.class, parts.dates(),
                ClockTime.class, parts.clockTimes(),
                WaterReading.class, parts.water(),
                ZoneId.class, parts.zones());
    }
}
