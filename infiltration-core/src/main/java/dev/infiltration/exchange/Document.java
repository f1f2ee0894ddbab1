// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonToken;

/**
 * A kind of document: an object with a format that contains a record.
 *
 * @param <R> the record
 */
final class Document<R> {

    private final Class<R> type;
    private final String format;
    private final RecordReader<R> reader;

    private Document(Class<R> type, String format, RecordReader<R> reader) {
        this.type = type;
        this.format = format;
        this.reader = reader;
    }

    /** {@return documents of {@code type}, parts of which may be left out} */
    static <R> Document<R> of(Class<R> type, String format) {
        return new Document<>(type, format, RecordReader.of(type, Map.of()).withKey("format", format(format)));
    }

    /** {@return these documents, read as a whole or not at all} */
    Document<R> whole() {
        return new Document<>(type, format, reader.asEntry(RecordKind.DOCUMENT));
    }

    /** {@return these documents, with one more key that is read but not kept} */
    Document<R> with(String key, ValueReader value) {
        return new Document<>(type, format, reader.withKey(key, value));
    }

    /** {@return these documents, with absent values taken from {@code base}} */
    Document<R> basedOn(R base) {
        return new Document<>(type, format, reader.basedOn(base));
    }

    /** {@return these documents, in which {@code key} is unknown} */
    Document<R> without(String key) {
        return new Document<>(type, format, reader.withoutKey(key));
    }

    private static ValueReader format(String format) {
        return (pass, token) -> {
            if (token == JsonToken.VALUE_STRING && pass.tokens().text().equals(format)) {
                pass.meetFormat();
            } else {
                pass.reportWhole(
                        pass.tokens().offset(),
                        pass.tokens().pointer(),
                        pass.tokens().found(),
                        expected(format));
                pass.tokens().skip();
            }
            return null;
        };
    }

    private static String expected(String format) {
        return "the format \"" + format + '"';
    }

    /** {@return what can be read of {@code text}} */
    ReadResult<R> read(CharacterSource text, ReadLimits limits) {
        ReadResult<Object> content = ReadResult.of(text, "", limits, this::read);
        return new ReadResult<>(
                content.value() == null ? null : type.cast(content.value()),
                content.faults(),
                content.gaps(),
                content.unreadable());
    }

    private @Nullable Object read(BookReading pass) {
        @Nullable JsonToken token = pass.tokens().next();
        if (token == null) {
            return null;
        }
        int start = pass.tokens().offset();
        if (token != JsonToken.START_OBJECT) {
            pass.reportWhole(start, "", pass.tokens().found(), "an object of " + expected(format));
            return null;
        }
        @Nullable Object value = reader.readDocument(pass);
        if (!pass.hasFormat() && pass.whole() == null) {
            reportNoFormat(pass, start);
        }
        return value;
    }

    /** The format of a truncated document may be after the break. */
    private void reportNoFormat(BookReading pass, int start) {
        if (pass.end() != null) {
            pass.reportWholeCut();
        } else if (pass.tokens().isComplete()) {
            pass.reportWhole(start, "", "no format", expected(format));
        }
    }
}
