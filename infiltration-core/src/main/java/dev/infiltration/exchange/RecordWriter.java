// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import dev.infiltration.exchange.text.Found;
import dev.infiltration.field.ClockTime;
import dev.infiltration.field.Photo;
import dev.infiltration.field.WaterReading;
import dev.infiltration.method.Band;
import dev.infiltration.method.TestMethod;
import dev.infiltration.units.Reading;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.TokenStreamContext;

/** Writes records as {@link RecordReader} reads them: components in their order, absent and empty values omitted. */
final class RecordWriter {

    private static final int LAST_YEAR = 9999;
    private static final int SECONDS_A_MINUTE = 60;

    private static final ClassValue<List<RecordComponent>> COMPONENTS = new ClassValue<>() {
        @Override
        protected List<RecordComponent> computeValue(Class<?> type) {
            return List.of(type.getRecordComponents());
        }
    };

    private final JsonGenerator json;
    private final String prefix;
    private final int nesting;
    private final Originals originals;

    /**
     * Writes to a generator.
     *
     * @param prefix  pointer of what is written in its document
     * @param nesting objects and lists inside each other that can be read again
     */
    RecordWriter(JsonGenerator json, String prefix, int nesting) {
        this(json, prefix, nesting, Originals.none());
    }

    /** Writes to a generator, with the originals of what could not be read. */
    RecordWriter(JsonGenerator json, String prefix, int nesting, Originals originals) {
        this.originals = originals;
        this.json = json;
        this.prefix = prefix;
        this.nesting = nesting;
    }

    /** Writes a record as a document of a format. */
    void writeDocument(Record record, String format) {
        json.writeStartObject();
        json.writeStringProperty("format", format);
        writeMembers(record, prefix);
        json.writeEndObject();
    }

    /** Writes a record. */
    void write(Record record) {
        write(record, prefix);
    }

    private void write(Record record, String place) {
        json.writeStartObject();
        writeMembers(record, place);
        json.writeEndObject();
    }

    private void writeMembers(Record record, String place) {
        for (RecordComponent component : COMPONENTS.get(record.getClass())) {
            @Nullable Object value = value(record, component);
            if (record instanceof TestMethod && value instanceof Map<?, ?> limits) {
                limits.forEach(this::writeLimit);
            } else {
                writeMember(component.getName(), value, place + "/" + component.getName());
            }
        }
    }

    private void writeMember(String name, @Nullable Object value, String place) {
        boolean isTouched = originals.inside(place) != null;
        if (isTouched && isLost(value, place)) {
            writeLost(name, place);
        } else if (!isAbsent(value) || (value instanceof List<?> && isTouched)) {
            json.writeName(name);
            writeValue(Objects.requireNonNull(value), place);
        }
    }

    /** {@return whether nothing of a member was kept}; a list is kept where only elements of it were lost */
    private boolean isLost(@Nullable Object value, String member) {
        return isAbsent(value)
                && (!(value instanceof List<?>) || !originals.at(member).isEmpty());
    }

    /** A repeated key is written as often as it was in the document. */
    private void writeLost(String name, String member) {
        List<String> texts = originals.at(member);
        @Nullable String inside = originals.inside(member);
        for (String text : texts.isEmpty() && inside != null ? List.of(inside) : texts) {
            json.writeName(name);
            json.writeRawValue(text);
        }
    }

    /** Writes a list with the elements that were lost at their places. */
    private void writeList(List<?> list, String place) {
        json.writeStartArray();
        int next = 0;
        for (int i = 0; i < list.size(); i++) {
            for (int position = originals.position(place, i); next < position; next++) {
                writeLostElement(place + "/" + next);
            }
            String element = place + "/" + next++;
            if (originals.at(element).isEmpty()) {
                writeValue(Objects.requireNonNull(list.get(i)), element);
            } else {
                writeLostElement(element);
            }
        }
        for (; next <= originals.lastEntry(place); next++) {
            writeLostElement(place + "/" + next);
        }
        json.writeEndArray();
    }

    private void writeLostElement(String element) {
        @Nullable String text = originals.inside(element);
        json.writeRawValue(text == null ? "null" : text);
    }

    private void writeLimit(Object limit, Object band) {
        json.writeName(limit.toString());
        if (((Band<?>) band).isUnlimited()) {
            json.writeNull();
        } else {
            write((Band<?>) band, prefix);
        }
    }

    static @Nullable Object value(Object record, RecordComponent component) {
        try {
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException closed) {
            throw new IllegalArgumentException("record: expected a public one, got " + record.getClass(), closed);
        }
    }

    private static boolean isAbsent(@Nullable Object value) {
        return value == null
                || (value instanceof List<?> list && list.isEmpty())
                || (value instanceof Map<?, ?> map && map.isEmpty());
    }

    private void writeValue(Object value, String place) {
        if (value instanceof Reading<?> reading) {
            writeAmount(reading);
        } else if (value instanceof WaterReading water) {
            writeAmount(water.reading());
        } else if (value instanceof Photo photo && photo.isNameOnly()) {
            json.writeString(photo.file());
        } else if (value instanceof Record record && !(value instanceof ClockTime)) {
            write(record, place);
        } else if (value instanceof List<?> list) {
            writeList(list, place);
        } else if (value instanceof Map<?, ?> map) {
            writeMap(map, place);
        } else {
            writeScalar(value);
        }
    }

    private void writeAmount(Reading<?> reading) {
        json.writeStartObject();
        json.writeName("value");
        json.writeNumber(reading.value().toString());
        json.writeStringProperty("unit", reading.unit().code());
        @Nullable BigDecimal resolution = reading.resolution();
        if (resolution != null) {
            json.writeName("resolution");
            json.writeNumber(resolution.toString());
        }
        json.writeEndObject();
    }

    private void writeScalar(Object value) {
        if (value instanceof Boolean truth) {
            json.writeBoolean(truth);
        } else if (value instanceof BigDecimal || value instanceof Integer) {
            json.writeNumber(value.toString());
        } else {
            json.writeString(text(value));
        }
    }

    private String text(Object value) {
        if (value instanceof Enum<?> constant) {
            return Scalars.wordOf(constant);
        }
        if (value instanceof LocalDate date) {
            return inYears(date.getYear(), date);
        }
        if (value instanceof ClockTime time) {
            return text(time);
        }
        return value instanceof ZoneId zone ? zone.getId() : value.toString();
    }

    private String text(ClockTime time) {
        @Nullable ZoneOffset offset = time.offset();
        if (offset != null && offset.getTotalSeconds() % SECONDS_A_MINUTE != 0) {
            throw cannotWrite("an offset of whole minutes", time);
        }
        return inYears(time.dateTime().getYear(), time);
    }

    private String inYears(int year, Object value) {
        if (year < 0 || year > LAST_YEAR) {
            throw cannotWrite("a year from 0000 to 9999", value);
        }
        return value.toString();
    }

    private void writeMap(Map<?, ?> map, String place) {
        if (originals.inside(place) == null) {
            writeExtra(map);
            return;
        }
        json.writeStartObject();
        map.forEach((key, inner) -> {
            json.writeName(String.valueOf(key));
            writeExtra(inner);
        });
        originals
                .keys(place)
                .forEach((key, texts) -> texts.forEach(text -> {
                    json.writeName(key);
                    json.writeRawValue(text);
                }));
        json.writeEndObject();
    }

    private void writeExtra(@Nullable Object value) {
        if (value instanceof Map<?, ?> map) {
            checkDepth(value);
            json.writeStartObject();
            map.forEach((key, inner) -> {
                json.writeName(String.valueOf(key));
                writeExtra(inner);
            });
            json.writeEndObject();
        } else if (value instanceof List<?> list) {
            checkDepth(value);
            json.writeStartArray();
            list.forEach(this::writeExtra);
            json.writeEndArray();
        } else {
            writeExtraScalar(value);
        }
    }

    private void checkDepth(Object value) {
        if (json.streamWriteContext().getNestingDepth() >= nesting) {
            throw cannotWrite(
                    "nesting no deeper than " + nesting, value.getClass().getSimpleName());
        }
    }

    private void writeExtraScalar(@Nullable Object value) {
        if (value == null) {
            json.writeNull();
        } else if (value instanceof String text) {
            json.writeString(text);
        } else if (value instanceof Boolean truth) {
            json.writeBoolean(truth);
        } else if (isNumber(value)) {
            json.writeNumber(value.toString());
        } else {
            throw cannotWrite("a map, list, string, number, boolean or null", value);
        }
    }

    private static boolean isNumber(Object value) {
        return value instanceof BigDecimal
                || value instanceof Integer
                || value instanceof Long
                || (value instanceof Double number && Double.isFinite(number));
    }

    private IllegalArgumentException cannotWrite(String expected, Object value) {
        return new IllegalArgumentException(prefix + pointer() + ": expected " + expected + ", got "
                + value.getClass().getSimpleName() + " " + Found.shortened(value.toString()));
    }

    /** The place of the value to be written next: the generator counts a list's entry once it is written. */
    private String pointer() {
        TokenStreamContext context = json.streamWriteContext();
        return context.inArray()
                ? context.getParent().pathAsPointer() + "/" + context.getEntryCount()
                : context.pathAsPointer().toString();
    }
}
