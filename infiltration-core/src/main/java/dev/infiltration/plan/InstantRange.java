// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import dev.infiltration.field.ClockTime;
import dev.infiltration.field.Pouring;
import dev.infiltration.field.Ring;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.WaterReading;
import dev.infiltration.method.Range;
import dev.infiltration.rate.RateEquation;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * When a written time may have been: a time to the minute is any instant of it, a local time at a change of clocks either of
 * two.
 *
 * @param earliest the earliest instant
 * @param latest   the latest instant
 */
record InstantRange(Instant earliest, Instant latest) {

    private static final BigDecimal LONGEST = BigDecimal.valueOf(1_000_000_000);

    private static final Instant FIRST = Instant.parse("-9999-01-01T00:00:00Z");
    private static final Instant LAST = Instant.parse("9999-12-31T00:00:00Z");

    static InstantRange of(ClockTime time, ZoneId zone) {
        List<Instant> instants =
                offsets(time, zone).map(time.dateTime()::toInstant).sorted().toList();
        boolean isMinute = time.precision() == ClockTime.Precision.MINUTE;
        Instant last = instants.get(instants.size() - 1);
        return new InstantRange(within(instants.get(0)), within(isMinute ? last.plus(Duration.ofMinutes(1)) : last));
    }

    /** {@return an instant, or the end of the years of four digits that it lies beyond} */
    static Instant within(Instant instant) {
        Instant notBefore = instant.isBefore(FIRST) ? FIRST : instant;
        return notBefore.isAfter(LAST) ? LAST : notBefore;
    }

    private static Stream<ZoneOffset> offsets(ClockTime time, ZoneId zone) {
        if (time.offset() != null) {
            return Stream.of(time.offset());
        }
        @Nullable ZoneOffsetTransition change = zone.getRules().getTransition(time.dateTime());
        return change == null
                ? Stream.of(zone.getRules().getOffset(time.dateTime()))
                : Stream.of(change.getOffsetBefore(), change.getOffsetAfter());
    }

    /**
     * {@return what the rate of a pouring that started then is at most by now}, taking the shortest time that may have passed
     * and the water written down, else the most that is asked for; empty where ring or water is not known, no time passed, or
     * what happened meanwhile leaves no such bound
     */
    Optional<InfiltrationRate> atMost(@Nullable Ring ring, Pouring pouring, Range<Mass> asked, Instant now) {
        Duration passed = Duration.between(latest, now);
        @Nullable
        WaterReading water = pouring.pouredWater()
                .or(() -> Optional.ofNullable(asked.highest()).map(WaterReading::weighed))
                .orElse(null);
        if (ring == null || water == null) {
            return Optional.empty();
        }
        BigDecimal seconds = BigDecimal.valueOf(passed.getSeconds()).add(BigDecimal.valueOf(passed.getNano(), 9));
        TestRun stopped = TestRun.of(null, water, Reading.of(seconds, FieldUnit.SECOND), Pouring.End.STOPPED)
                .withHead(pouring.head())
                .withEvents(pouring.events());
        return RateEquation.asPublished().rate(ring, stopped) instanceof RateOutcome.UpperBound bounded
                ? Optional.of(bounded.bound())
                : Optional.empty();
    }

    /** {@return a time as it was read, cut down to whole nanoseconds and to a billion seconds} */
    static Duration duration(Reading<Time> time) {
        BigDecimal seconds = time.exactIn(FieldUnit.SECOND).min(LONGEST);
        return Duration.ofNanos(
                seconds.movePointRight(9).setScale(0, RoundingMode.FLOOR).longValueExact());
    }
}
