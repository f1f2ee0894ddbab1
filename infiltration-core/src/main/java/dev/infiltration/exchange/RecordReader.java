// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import dev.infiltration.method.Band;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonToken;

/**
 * Reads an object as a record: the components' names are the keys, their types say how the values are read.
 *
 * @param <R> the record
 */
final class RecordReader<R> implements ValueReader {

    /**
     * What a key stands for.
     *
     * @param index      position of the component; past the last for a key that is none
     * @param absent     the component's value when the key is absent
     * @param ofNull     the component's value when the key is null; null: as absent
     */
    private record Member(
            int index,
            ValueReader reader,
            @Nullable Object absent,
            @Nullable Object ofNull) {

        private Member(int index, ValueReader reader, @Nullable Object absent) {
            this(index, reader, absent, null);
        }

        private Member withAbsent(@Nullable Object value) {
            return new Member(index, reader, value, ofNull);
        }

        private boolean isListOfEntries() {
            return reader instanceof ListReader list && list.isOfEntries();
        }
    }

    private final Constructor<R> constructor;
    private final @Nullable RecordKind entry;
    private final Map<String, Member> members;

    /** Whether there is a record that lacks nothing, by which the parts that cannot be read are filled. */
    private final boolean isBased;

    /** Whether keys of limits are among the members. */
    private final boolean hasLimits;

    /** One for each component, and behind them one for each further key. */
    private final int slots;

    private RecordReader(Constructor<R> constructor, @Nullable RecordKind entry, Map<String, Member> members) {
        this(constructor, entry, members, false);
    }

    private RecordReader(
            Constructor<R> constructor, @Nullable RecordKind entry, Map<String, Member> members, boolean isBased) {
        this.isBased = isBased;
        this.constructor = constructor;
        this.entry = entry;
        this.members = members;
        this.hasLimits = members.values().stream().anyMatch(member -> member.ofNull != null);
        this.slots = Math.max(
                constructor.getParameterCount(),
                members.values().stream()
                        .mapToInt(member -> member.index + 1)
                        .max()
                        .orElse(0));
    }

    /**
     * {@return a reader of records of {@code type}}
     *
     * @param arguments the type arguments by type parameter
     * @throws IllegalArgumentException if the record is not public, or a component of a type that nothing reads
     */
    static <R> RecordReader<R> of(Class<R> type, Map<TypeVariable<?>, Type> arguments) {
        Map<String, Member> members = new LinkedHashMap<>();
        RecordComponent[] components = type.getRecordComponents();
        for (int index = 0; index < components.length; index++) {
            RecordComponent component = components[index];
            if (LimitMembers.isIn(component)) {
                LimitMembers.readers()
                        .forEach((key, reader) -> members.put(
                                key,
                                new Member(
                                        components.length + LimitMembers.position(key),
                                        reader,
                                        null,
                                        Band.unlimited())));
            } else {
                ValueReader reader = Readers.of(component.getGenericType(), component.getName(), arguments);
                members.put(component.getName(), new Member(index, reader, absent(component.getType())));
            }
        }
        return new RecordReader<>(constructor(type), RecordKind.of(type), members);
    }

    private static @Nullable Object absent(Class<?> type) {
        if (type == int.class) {
            return 0;
        }
        return type == List.class ? List.of() : type == Map.class ? Map.of() : null;
    }

    private static <R> Constructor<R> constructor(Class<R> type) {
        Class<?>[] types = Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new);
        try {
            return type.getConstructor(types);
        } catch (NoSuchMethodException notPublic) {
            throw new IllegalArgumentException("type: expected a public record, got " + type.getName(), notPublic);
        }
    }

    /** {@return what is excluded with a value of this record that cannot be read, or null} */
    @Nullable
    RecordKind entry() {
        return entry;
    }

    /** {@return this reader of records that are entries of their own} */
    RecordReader<R> asEntry(RecordKind document) {
        return new RecordReader<>(constructor, document, members);
    }

    /** {@return this reader with one more key, whose value is read and not kept} */
    RecordReader<R> withKey(String name, ValueReader reader) {
        Map<String, Member> more = new LinkedHashMap<>();
        more.put(name, new Member(slots, reader, null));
        more.putAll(members);
        return new RecordReader<>(constructor, entry, more);
    }

    /** {@return this reader, where what is absent is as {@code base} has it} */
    RecordReader<R> basedOn(R base) {
        Map<String, Member> filled = new LinkedHashMap<>(members);
        for (RecordComponent component : base.getClass().getRecordComponents()) {
            @Nullable Object value = RecordWriter.value(base, component);
            if (LimitMembers.isIn(component)) {
                ((Map<?, ?>) Objects.requireNonNull(value))
                        .forEach((limit, band) ->
                                filled.computeIfPresent(limit.toString(), (key, member) -> member.withAbsent(band)));
            } else {
                filled.computeIfPresent(component.getName(), (name, member) -> member.withAbsent(value));
            }
        }
        return new RecordReader<>(constructor, entry, filled, true);
    }

    /** {@return this reader, to which {@code name} is unknown} */
    RecordReader<R> withoutKey(String name) {
        Map<String, Member> fewer = new LinkedHashMap<>(members);
        fewer.remove(name);
        return new RecordReader<>(constructor, entry, fewer);
    }

    @Override
    public @Nullable Object read(BookReading pass, JsonToken token) {
        @Nullable RecordKind outer = pass.enter(entry);
        @Nullable Object value = token == JsonToken.START_OBJECT ? object(pass) : pass.refuse("an object");
        pass.leave(outer);
        return value;
    }

    private @Nullable Object object(BookReading pass) {
        int offset = pass.tokens().offset();
        @Nullable Object[] values = new Object[slots];
        boolean readable = readMembers(pass, values);
        boolean stays = !pass.tokens().ended() || staysCut(pass, values);
        if (!readable) {
            if (isBased) {
                create(pass, offset, values); // for what else is wrong with it
            }
            return UNREADABLE;
        }
        return stays ? create(pass, offset, values) : null;
    }

    /** Reads the object that starts at the current token as a document: what stood complete of it is kept. */
    @Nullable
    Object readDocument(BookReading pass) {
        if (entry != null) {
            return read(pass, JsonToken.START_OBJECT);
        }
        @Nullable Object[] values = new Object[slots];
        readMembers(pass, values);
        return create(pass, 0, values);
    }

    /** {@return whether nothing took the record with it} */
    private boolean readMembers(BookReading pass, @Nullable Object[] values) {
        boolean readable = true;
        int[] ends = new int[2 * values.length];
        while (pass.tokens().next() == JsonToken.PROPERTY_NAME) {
            @Nullable Member member = members.get(pass.tokens().text());
            if (member == null) {
                pass.leaveOutKey("one of " + String.join(", ", members.keySet()));
            } else if (ends[2 * member.index + 1] == 0) {
                readable &= readMember(pass, member, values, ends);
            } else if (isKept(pass, member)) {
                readRepeated(pass, member, values, ends);
            } else {
                pass.leaveOutRepeated();
            }
        }
        return readable;
    }

    /** Where the text breaks off in a member, it stays only if it is a list of entries: those that stood complete. */
    private static boolean readMember(BookReading pass, Member member, @Nullable Object[] values, int[] ends) {
        int mark = pass.unreadable().size();
        @Nullable JsonToken token = pass.value();
        int start = pass.tokens().offset();
        @Nullable Object value = token == null ? member.ofNull : member.reader.read(pass, token);
        ends[2 * member.index] = start;
        ends[2 * member.index + 1] =
                pass.tokens().ended() ? start : pass.tokens().end();
        if (value == UNREADABLE) {
            pass.lose(mark, start);
            return !pass.isInsideEntry();
        }
        values[member.index] = value;
        return true;
    }

    /** {@return whether a key is a part of a record that is kept}; others, such as the format, are read once */
    private boolean isKept(BookReading pass, Member member) {
        return !pass.isInsideEntry() && member.index < constructor.getParameterCount();
    }

    /** Of two values that differ neither is kept. */
    private static void readRepeated(BookReading pass, Member member, @Nullable Object[] values, int[] ends) {
        if (pass.refuseRepeated(ends[2 * member.index], ends[2 * member.index + 1])) {
            values[member.index] = null;
        }
    }

    /** {@return a record of which nothing is known} */
    Object empty(BookReading pass) {
        return create(pass, 0, new @Nullable Object[slots]);
    }

    /** {@return whether the record stays although the text broke off in it}: any entry but the innermost does */
    private boolean staysCut(BookReading pass, @Nullable Object[] values) {
        return entry != null && (!pass.isInnermostCut() || holdsEntries(values));
    }

    private boolean holdsEntries(@Nullable Object[] values) {
        return members.values().stream()
                .filter(Member::isListOfEntries)
                .map(member -> values[member.index])
                .anyMatch(list -> list instanceof List<?> entries && !entries.isEmpty());
    }

    private Object create(BookReading pass, int offset, @Nullable Object[] values) {
        for (Member member : members.values()) {
            if (values[member.index] == null) {
                values[member.index] = member.absent;
            }
        }
        try {
            return constructor.newInstance(arguments(values));
        } catch (InvocationTargetException refused) {
            return refuse(pass, offset, why(refused.getTargetException()));
        } catch (ReflectiveOperationException broken) {
            throw new LinkageError("cannot make " + constructor, broken);
        }
    }

    private @Nullable Object[] arguments(@Nullable Object[] values) {
        return hasLimits
                ? LimitMembers.gathered(constructor, values)
                : Arrays.copyOf(values, constructor.getParameterCount());
    }

    /** A record that cannot be without a part names it, as {@link java.util.Objects#requireNonNull(Object, String)} does. */
    private static String why(Throwable refusal) {
        String message = String.valueOf(refusal.getMessage());
        return refusal instanceof NullPointerException ? "it has no " + message : message;
    }

    private static Object refuse(BookReading pass, int offset, String why) {
        pass.reportValue(offset, pass.tokens().pointer(), "an object", "one that can stand (" + why + ")");
        return UNREADABLE;
    }
}
