// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.field.ClockTime;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoField;
import java.time.zone.ZoneOffsetTransition;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * When a written time may have been, in seconds.
 *
 * <p>A time to the minute may be any instant of that minute, the next minute's beginning included; a local time that occurs
 * twice or never, either instant that the two offsets give. Without a zone a local time counts as written, and is compared
 * as written.
 *
 * @param earliest   the earliest instant, since the epoch; null for a local time without a zone
 * @param written    the date and time as read off the site's clock
 * @param minute     how long the time as written lasts: a minute, or nothing
 * @param doubt      how far apart the instants are that a local time at a change of clocks may be
 */
record TimeRange(@Nullable BigDecimal earliest, BigDecimal written, BigDecimal minute, BigDecimal doubt) {

    private static final BigDecimal MINUTE = BigDecimal.valueOf(60);

    /** Zone rules are asked for years of four digits alone. */
    private static final int LAST_YEAR = 9999;

    static TimeRange of(ClockTime time, @Nullable ZoneId zone) {
        LocalDateTime local = time.dateTime();
        BigDecimal minute = time.precision() == ClockTime.Precision.MINUTE ? MINUTE : BigDecimal.ZERO;
        if (time.offset() != null) {
            BigDecimal instant = seconds(local, time.offset());
            return new TimeRange(instant, instant.add(shown(time.offset(), local, zone)), minute, BigDecimal.ZERO);
        }
        BigDecimal written = seconds(local, ZoneOffset.UTC);
        return zone == null
                ? new TimeRange(null, written, minute, BigDecimal.ZERO)
                : inZone(local, written, minute, zone);
    }

    private static TimeRange inZone(LocalDateTime local, BigDecimal written, BigDecimal minute, ZoneId zone) {
        List<ZoneOffset> offsets = offsets(local, zone);
        BigDecimal first = seconds(local, offsets.get(0));
        BigDecimal last = seconds(local, offsets.get(offsets.size() - 1));
        return new TimeRange(
                first.min(last), written, minute, last.subtract(first).abs());
    }

    /** The one offset in force, or the two around a change of clocks. */
    private static List<ZoneOffset> offsets(LocalDateTime local, ZoneId zone) {
        if (Math.abs(local.getYear()) > LAST_YEAR) {
            return List.of(ZoneOffset.UTC);
        }
        @Nullable ZoneOffsetTransition change = zone.getRules().getTransition(local);
        return change == null
                ? List.of(zone.getRules().getOffset(local))
                : List.of(change.getOffsetBefore(), change.getOffsetAfter());
    }

    /** What the site's clock shows beyond UTC: by the zone where it is known, else as written. */
    private static BigDecimal shown(ZoneOffset offset, LocalDateTime local, @Nullable ZoneId zone) {
        ZoneOffset there = zone == null || Math.abs(local.getYear()) > LAST_YEAR
                ? offset
                : zone.getRules().getOffset(local.toInstant(offset));
        return BigDecimal.valueOf(there.getTotalSeconds());
    }

    private static BigDecimal seconds(LocalDateTime local, ZoneOffset offset) {
        return BigDecimal.valueOf(local.toEpochSecond(offset))
                .add(BigDecimal.valueOf(local.get(ChronoField.NANO_OF_SECOND), 9));
    }

    static BigDecimal startOf(LocalDate date) {
        return BigDecimal.valueOf(date.toEpochDay()).multiply(BigDecimal.valueOf(86_400));
    }

    static BigDecimal seconds(Reading<Time> time) {
        return time.exactIn(FieldUnit.SECOND);
    }

    /** {@return the shortest time that may lie between {@code earlier} and this} */
    BigDecimal leastAfter(TimeRange earlier) {
        return difference(earlier).subtract(earlier.spread());
    }

    /** {@return the longest time that may lie between {@code earlier} and this} */
    BigDecimal mostAfter(TimeRange earlier) {
        return difference(earlier).add(spread());
    }

    private BigDecimal difference(TimeRange earlier) {
        return earliest != null && earlier.earliest != null
                ? earliest.subtract(earlier.earliest)
                : written.subtract(earlier.written);
    }

    /** {@return how much of time it may have been} */
    BigDecimal spread() {
        return minute.add(doubt);
    }

    /** {@return whether the instant is known} */
    boolean isInstant() {
        return earliest != null;
    }

    /** {@return its first moment}: the instant, or as written */
    BigDecimal first(boolean asInstant) {
        return asInstant ? Objects.requireNonNull(earliest) : written;
    }

    /** {@return its last moment}: the instant, or as written */
    BigDecimal latest(boolean asInstant) {
        return first(asInstant).add(spread());
    }

    /** {@return whether the local time exists exactly once} */
    boolean existsOnce() {
        return doubt.signum() == 0;
    }

    /** {@return the latest that the site's clock may have shown} */
    BigDecimal writtenLatest() {
        return written.add(minute);
    }

    /** {@return the order of starts}: by instants where all have one, else as written */
    static Comparator<TimeRange> order(Collection<TimeRange> all) {
        boolean instants = all.stream().allMatch(span -> span.earliest != null);
        return Comparator.comparing(span -> instants && span.earliest != null ? span.earliest : span.written);
    }
}
