// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import dev.infiltration.units.Reading;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A place in a field book, printed as a JSON Pointer (RFC 6901).
 *
 * <p>Places sort token by token: a record before its members, entries of lists by position, members in the order in which
 * the field book shows them in that record; others last, by code point.
 */
public final class Place implements Comparable<Place> {

    /** The book itself. */
    public static final Place BOOK = new Place(null, "", -1, FieldBook.class, false);

    private static final ClassValue<Map<String, Member>> MEMBERS = new ClassValue<>() {
        @Override
        protected Map<String, Member> computeValue(Class<?> type) {
            return members(type);
        }
    };

    /** The members of a reading, which is no record. */
    private static final List<String> READING = List.of("value", "unit", "resolution");

    /** Without a leading zero, and an int. */
    private static final Pattern POSITION = Pattern.compile("0|[1-9][0-9]{0,8}");

    private final @Nullable Place parent;
    private final String token;
    private final int rank;
    private final Class<?> type;
    private final boolean isEntry;
    private final int depth;

    private Place(@Nullable Place parent, String token, int rank, Class<?> type, boolean isEntry) {
        this.parent = parent;
        this.token = token;
        this.rank = rank;
        this.type = type;
        this.isEntry = isEntry;
        this.depth = parent == null ? 0 : parent.depth + 1;
    }

    private record Member(int rank, Class<?> type, boolean isList) {}

    private static Map<String, Member> members(Class<?> type) {
        Map<String, Member> members = new HashMap<>();
        if (type == Reading.class || type == WaterReading.class) {
            READING.forEach(name -> members.put(name, new Member(members.size(), Object.class, false)));
        }
        if (type.isRecord() && type != WaterReading.class) {
            for (RecordComponent component : type.getRecordComponents()) {
                members.put(
                        component.getName(),
                        new Member(
                                members.size(),
                                element(component.getGenericType()),
                                component.getType() == java.util.List.class));
            }
        }
        return members;
    }

    /** A list counts as its entries. */
    private static Class<?> element(Type type) {
        if (type instanceof ParameterizedType list && list.getRawType() == java.util.List.class) {
            return element(list.getActualTypeArguments()[0]);
        }
        if (type instanceof ParameterizedType other) {
            return (Class<?>) other.getRawType();
        }
        return type instanceof Class<?> plain ? plain : Object.class;
    }

    /**
     * {@return the place that a JSON Pointer names}, whether or not a book has it: {@code /visits/0/tests/1}
     *
     * @param pointer the JSON Pointer (RFC 6901); the empty text is the book
     * @throws IllegalArgumentException if it is neither empty nor starts with a slash
     */
    public static Place parse(String pointer) {
        if (!pointer.isEmpty() && pointer.charAt(0) != '/') {
            throw new IllegalArgumentException("pointer: expected nothing or a slash first, got " + pointer);
        }
        Place place = BOOK;
        int from = 1;
        while (from <= pointer.length() && !pointer.isEmpty()) {
            int slash = pointer.indexOf('/', from);
            int to = slash < 0 ? pointer.length() : slash;
            place = place.step(pointer.substring(from, to).replace("~1", "/").replace("~0", "~"));
            from = to + 1;
        }
        return place;
    }

    /** An entry where a list of the field book is and the token is a position, else a member. */
    private Place step(String token) {
        return isList() && POSITION.matcher(token).matches() ? entry(Integer.parseInt(token)) : member(token);
    }

    private boolean isList() {
        Member member =
                parent == null || isEntry ? null : MEMBERS.get(parent.type).get(token);
        return member != null && member.isList;
    }

    /**
     * {@return the place of a member of the record here}
     *
     * @param name the member's key
     */
    public Place member(String name) {
        @Nullable Member member = MEMBERS.get(type).get(name);
        return member == null
                ? new Place(this, name, Integer.MAX_VALUE, Object.class, false)
                : new Place(this, name, member.rank, member.type, false);
    }

    /**
     * {@return the place of an entry of the list here}
     *
     * @param index its position, from 0
     */
    public Place entry(int index) {
        return new Place(this, Integer.toString(index), index, type, true);
    }

    /** {@return the place around this one; of the book, the book} */
    public Place outer() {
        return parent == null ? this : parent;
    }

    /** {@return the member's key, or the position of an entry; of the book, nothing} */
    public String token() {
        return token;
    }

    /** {@return the position in its list, from 0; empty where this is no entry} */
    public OptionalInt position() {
        return isEntry ? OptionalInt.of(rank) : OptionalInt.empty();
    }

    /** {@return whether this is the book itself} */
    public boolean isBook() {
        return parent == null;
    }

    /**
     * {@return whether this is an entry of a list of such records}
     *
     * @param record the class of the records
     */
    public boolean isEntryOf(Class<?> record) {
        return isEntry && type == record;
    }

    /**
     * {@return whether this is {@code other} or stands inside it}
     *
     * @param other the place of a record
     */
    public boolean isWithin(Place other) {
        for (@Nullable Place place = this; place != null; place = place.parent) {
            if (place.equals(other)) {
                return true;
            }
        }
        return false;
    }

    /**
     * {@return this place as the document counts}
     *
     * @param gaps positions of the entries in the document
     */
    public Place in(IndexMap gaps) {
        if (gaps.isEmpty() || parent == null) {
            return this;
        }
        Place outer = parent.in(gaps);
        return isEntry ? outer.entry(gaps.indexInDocument(outer.toString(), rank)) : outer.member(token);
    }

    @Override
    public int compareTo(Place other) {
        Place left = up(depth - other.depth);
        Place right = other.up(other.depth - depth);
        int order = left.compareAtEqualDepth(right);
        return order != 0 ? order : Integer.compare(depth, other.depth);
    }

    private Place up(int steps) {
        return steps <= 0 || parent == null ? this : parent.up(steps - 1);
    }

    @SuppressWarnings("ReferenceEquality") // a stem that both share ends the walk; equal places are found further up
    private int compareAtEqualDepth(Place other) {
        if (this == other || parent == null || other.parent == null) {
            return 0;
        }
        int outer = parent.compareAtEqualDepth(other.parent);
        if (outer != 0) {
            return outer;
        }
        int order = Integer.compare(rank, other.rank);
        return order != 0 ? order : token.compareTo(other.token);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Place place && place.depth == depth && compareTo(place) == 0;
    }

    @Override
    public int hashCode() {
        return parent == null ? 0 : 31 * parent.hashCode() + token.hashCode();
    }

    /** {@return the JSON Pointer} */
    @Override
    public String toString() {
        return parent == null ? "" : parent + "/" + token.replace("~", "~0").replace("/", "~1");
    }
}
