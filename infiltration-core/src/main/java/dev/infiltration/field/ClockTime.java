// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A time of day on a date as it was written: to the minute or finer, with an offset or local to the site.
 *
 * <p>A time written to the minute may be any instant of that minute; a time written to the second or finer is exact.
 *
 * @param dateTime  date and time of day as written
 * @param precision precision to which it was written
 * @param offset    the offset from UTC, where one was written; else the time is local to the site
 */
public record ClockTime(
        LocalDateTime dateTime,
        Precision precision,
        @Nullable ZoneOffset offset) {

    /** Precision to which a time was written. */
    public enum Precision {
        /** Hours and minutes: any instant of that minute. */
        MINUTE,
        /** Seconds or finer. */
        EXACT
    }

    private static final Pattern WRITTEN = Pattern.compile(
            "([0-9]{4}-[0-9]{2}-[0-9]{2})[Tt]([0-9]{2}:[0-9]{2})(:[0-9]{2}(?:\\.[0-9]{1,9})?)?([Zz]|[+-][0-9]{2}:[0-9]{2})?");
    private static final DateTimeFormatter DATE =
            DateTimeFormatter.ofPattern("uuuu-MM-dd", Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);

    /** Checks the parts; a time to the minute has no seconds. */
    public ClockTime {
        Objects.requireNonNull(dateTime, "dateTime");
        Objects.requireNonNull(precision, "precision");
        if (precision == Precision.MINUTE && (dateTime.getSecond() != 0 || dateTime.getNano() != 0)) {
            throw new IllegalArgumentException("dateTime: expected a whole minute, got " + dateTime);
        }
    }

    /**
     * Reads a time: {@code 2026-06-03T09:10}, with seconds and fraction if written so, with an RFC 3339 offset if known.
     *
     * @param text the text
     * @return the time
     * @throws DateTimeException if the text does not have this form, or is not a time of the calendar
     */
    public static ClockTime parse(String text) {
        Matcher parts = WRITTEN.matcher(text);
        if (!parts.matches()) {
            throw new DateTimeException("expected yyyy-MM-ddTHH:mm[:ss[.fff]][offset], got " + text);
        }
        @Nullable String seconds = parts.group(3);
        @Nullable String offset = parts.group(4);
        LocalTime time = LocalTime.parse(parts.group(2) + (seconds == null ? "" : seconds));
        return new ClockTime(
                LocalDate.parse(parts.group(1), DATE).atTime(time),
                seconds == null ? Precision.MINUTE : Precision.EXACT,
                offset == null ? null : ZoneOffset.of(offset.toUpperCase(Locale.ROOT)));
    }

    /** {@return the time as it is written in a field book} */
    @Override
    public String toString() {
        String seconds = precision == Precision.MINUTE ? "" : seconds();
        String minutes = dateTime.toLocalTime()
                .truncatedTo(java.time.temporal.ChronoUnit.MINUTES)
                .toString();
        return dateTime.toLocalDate() + "T" + minutes + seconds + (offset == null ? "" : offset.getId());
    }

    private String seconds() {
        LocalTime fine = LocalTime.of(0, 0, dateTime.getSecond(), dateTime.getNano());
        String text = fine.toString();
        return text.length() == 5 ? ":00" : text.substring(5);
    }
}
