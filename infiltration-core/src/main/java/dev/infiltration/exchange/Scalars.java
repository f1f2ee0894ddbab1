// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import dev.infiltration.exchange.text.Digits;
import dev.infiltration.field.ClockTime;
import dev.infiltration.field.JsonName;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonToken;

/** Readers of single values. */
final class Scalars {

    private static final Pattern WRITTEN_DATE = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");

    static final ValueReader STRING = string("a string", text -> text);
    static final ValueReader BOOLEAN = (pass, token) -> switch (token) {
        case VALUE_TRUE -> true;
        case VALUE_FALSE -> false;
        default -> pass.refuse("true or false");
    };
    static final ValueReader INTEGER = number("a whole number", Digits::whole);
    static final ValueReader DECIMAL = number("a number", Digits::decimal);
    static final ValueReader DATE = string("a date such as \"2026-06-03\"", Scalars::date);
    static final ValueReader ZONE =
            string("a time zone such as \"America/Chicago\"", text -> orNull(() -> ZoneId.of(text)));
    static final ValueReader CLOCK_TIME = string(
            "a time such as \"2026-06-03T09:10:00\", \"2026-06-03T09:10\" or one with an offset",
            text -> orNull(() -> ClockTime.parse(text)));

    private Scalars() {}

    /** {@return a reader of the words of an enum} */
    static ValueReader word(Class<?> type) {
        Map<String, Object> words = new LinkedHashMap<>();
        for (Object constant : type.getEnumConstants()) {
            words.put(wordOf((Enum<?>) constant), constant);
        }
        return string("one of " + String.join(", ", words.keySet()), words::get);
    }

    /** {@return the JSON name of a constant} */
    static String wordOf(Enum<?> constant) {
        return constant instanceof JsonName word
                ? word.word()
                : constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static ValueReader string(String expected, Function<String, @Nullable Object> parser) {
        return (pass, token) -> {
            @Nullable
            Object value =
                    token == JsonToken.VALUE_STRING ? parser.apply(pass.tokens().text()) : null;
            return value == null ? pass.refuse(expected) : value;
        };
    }

    private static ValueReader number(String expected, Function<String, @Nullable Object> parser) {
        return (pass, token) -> {
            @Nullable
            Object value = token.isNumeric() ? parser.apply(pass.tokens().text()) : null;
            return value == null ? pass.refuse(expected) : value;
        };
    }

    private static @Nullable Object date(String text) {
        return WRITTEN_DATE.matcher(text).matches() ? orNull(() -> LocalDate.parse(text)) : null;
    }

    private interface Parse {
        Object parse();
    }

    private static @Nullable Object orNull(Parse parse) {
        try {
            return parse.parse();
        } catch (DateTimeException unreadable) {
            return null;
        }
    }
}
