// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import dev.infiltration.exchange.TableMapping;
import dev.infiltration.field.ClockTime;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads dates, times and time zones in tables. */
final class DateCells {

    private static final Pattern DATE = Pattern.compile("([0-9]{1,4})[./-]([0-9]{1,2})[./-]([0-9]{1,4})");
    private static final Pattern TIME_ALONE = Pattern.compile("[0-9]{1,2}:.*");
    private static final int DIGITS_OF_A_YEAR = 4;

    private DateCells() {}

    /** Reads a date, its parts in the order of the file and the year with all its digits. */
    static @Nullable LocalDate date(String text, Cells.At place) {
        Matcher parts = DATE.matcher(text);
        if (!parts.matches()) {
            return null;
        }
        return switch (place.order()) {
            case YEAR_MONTH_DAY -> date(parts, 1, 2, 3);
            case MONTH_DAY_YEAR -> date(parts, 3, 1, 2);
            case DAY_MONTH_YEAR -> date(parts, 3, 2, 1);
        };
    }

    private static @Nullable LocalDate date(Matcher parts, int year, int month, int day) {
        if (parts.group(year).length() != DIGITS_OF_A_YEAR || parts.group(day).length() > 2) {
            return null;
        }
        return orNull(() -> LocalDate.of(number(parts, year), number(parts, month), number(parts, day)));
    }

    private static int number(Matcher parts, int group) {
        return Integer.parseInt(parts.group(group));
    }

    /** Reads a date and time, or a time of the row's date. */
    static @Nullable ClockTime time(String text, Cells.At place) {
        if (!TIME_ALONE.matcher(text).matches()) {
            return orNull(() -> ClockTime.parse(text.replaceFirst(" +", "T")));
        }
        String time = text.charAt(1) == ':' ? "0" + text : text;
        LocalDate date = place.date();
        return date == null ? null : orNull(() -> ClockTime.parse(date + "T" + time));
    }

    static @Nullable ZoneId zone(String text, Cells.At place) {
        return orNull(() -> ZoneId.of(text));
    }

    private static <T> @Nullable T orNull(Supplier<T> parse) {
        try {
            return parse.get();
        } catch (DateTimeException unreadable) {
            return null;
        }
    }

    /** {@return the order of day, month and year in a file} */
    static TableMapping.DateOrder order(TableMapping mapping) {
        return mapping.dates() == null ? TableMapping.DateOrder.YEAR_MONTH_DAY : mapping.dates();
    }
}
