// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.field.Amendment;
import dev.infiltration.field.ClockTime;
import dev.infiltration.field.Event;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Maintenance;
import dev.infiltration.field.Place;
import dev.infiltration.field.Weather;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/** {@code data.clock} and {@code data.future}: whether times agree with each other and with the dates. */
final class ClockRules {

    /** Night work up to noon of the next day belongs to the visit's date. */
    private static final BigDecimal LAST_OF_NIGHT = BigDecimal.valueOf(36 * 3600L);

    private ClockRules() {}

    static void future(VisitAt at, LocalDate today, Findings findings) {
        LocalDate date = at.visit().date();
        if (date != null && date.isAfter(today)) {
            String allowed = "not after " + today;
            findings.add(
                    BuiltInRule.DATA_FUTURE,
                    at.place(),
                    at.subject(),
                    date.toString(),
                    allowed,
                    RuleBases.COMMON_PRACTICE);
        }
    }

    /** Nothing is tested or maintained before it was placed. */
    static void placed(VisitAt at, Findings findings) {
        LocalDate placed = placedOn(at.surfaceOrNull());
        LocalDate date = at.visit().date();
        if (placed != null && date != null && date.isBefore(placed)) {
            findings.add(
                    BuiltInRule.DATA_CLOCK,
                    at.place(),
                    at.subject(),
                    "visit on " + date + ", surface placed on " + placed);
        }
    }

    private static @Nullable LocalDate placedOn(@Nullable SurfaceAt surface) {
        return surface == null ? null : surface.surface().placedOn();
    }

    static void maintenance(BookIndex index, Findings findings) {
        FieldBook book = index.book();
        for (int i = 0; i < book.maintenance().size(); i++) {
            Maintenance entry = book.maintenance().get(i);
            Place place = Place.BOOK.member("maintenance").entry(i);
            String subject = SubjectText.orPosition(entry.id(), "maintenance", i);
            SurfaceAt surface = index.register().surface(entry.surface());
            ZoneId zone = surface == null ? null : surface.zone();
            existsOnce(entry.start(), zone, place, subject, findings);
            existsOnce(entry.end(), zone, place, subject, findings);
            LocalDate placed = placedOn(surface);
            TimeRange start = SurfaceAt.startOf(entry, zone);
            if (placed != null && start != null && start.writtenLatest().compareTo(TimeRange.startOf(placed)) < 0) {
                findings.add(
                        BuiltInRule.DATA_CLOCK,
                        place,
                        subject,
                        "maintenance before the surface was placed on " + placed);
            }
        }
    }

    /** Local times of the visit's own parts exist once. */
    static void existsOnce(VisitAt at, Findings findings) {
        Weather weather = at.visit().weather();
        if (weather != null) {
            Place place = at.place().member("weather");
            existsOnce(weather.lastRainEnd(), at.zone(), place, at.subject(), findings);
            existsOnce(weather.noRainSince(), at.zone(), place, at.subject(), findings);
            existsOnce(weather.rainFrom(), at.zone(), place, at.subject(), findings);
        }
        List<Amendment> amendments = at.visit().amendments();
        for (int i = 0; i < amendments.size(); i++) {
            Place place = at.place().member("amendments").entry(i);
            existsOnce(amendments.get(i).at(), at.zone(), place, at.subject(), findings);
        }
    }

    /** A prewetting or run starts on the visit's date, at a time that exists once. */
    static void judge(PouringAt at, Findings findings) {
        ZoneId zone = at.test().visit().zone();
        existsOnce(at.pouring().start(), zone, at.place(), at.subject(), findings);
        List<Event> events = at.pouring().events();
        for (int i = 0; i < events.size(); i++) {
            Place place = at.place().member("events").entry(i);
            existsOnce(events.get(i).at(), zone, place, at.subject(), findings);
        }
        Reading<Time> delay = at.pouring().delay();
        if (delay != null && delay.value().signum() < 0) {
            findings.add(BuiltInRule.DATA_CLOCK, at.place(), at.subject(), "delay " + delay + ", which is below zero");
        }
        LocalDate date = at.test().visit().visit().date();
        TimeRange start = at.start();
        if (date != null && start != null && !isOn(date, start)) {
            String observed = "started " + at.pouring().start() + " at a visit on " + date;
            findings.add(BuiltInRule.DATA_CLOCK, at.place(), at.subject(), observed);
        }
    }

    private static boolean isOn(LocalDate date, TimeRange start) {
        BigDecimal midnight = TimeRange.startOf(date);
        return start.writtenLatest().compareTo(midnight) >= 0
                && start.written().compareTo(midnight.add(LAST_OF_NIGHT)) <= 0;
    }

    private static void existsOnce(
            @Nullable ClockTime time, @Nullable ZoneId zone, Place where, String subject, Findings findings) {
        if (time != null && !TimeRange.of(time, zone).existsOnce()) {
            String observed = time + " occurs twice or never in " + zone;
            findings.add(BuiltInRule.DATA_CLOCK, where, subject, observed);
        }
    }

    /** At one location nothing starts before what came before it has ended. */
    static void order(List<TestAt> testsAtSpot, Findings findings) {
        testsAtSpot.forEach(test -> runsBeforePreWetting(test, findings));
        List<PouringAt> started = testsAtSpot.stream()
                .flatMap(test -> LatestEnds.records(test).stream())
                .filter(record -> record.start() != null)
                .toList();
        LatestEnds overlaps = new LatestEnds();
        for (PouringAt record : Series.inOrder(started)) {
            if (overlaps.isBeforeAnEnd(record) && !record.pouring().isVoid()) {
                findings.add(
                        BuiltInRule.DATA_CLOCK,
                        record.place(),
                        record.subject(),
                        "started before what came before had ended");
            }
            overlaps.add(record);
        }
    }

    private static void runsBeforePreWetting(TestAt test, Findings findings) {
        PouringAt preWet = test.countingPreWet();
        for (PouringAt run : test.runs()) {
            if (preWet != null && !run.pouring().isVoid() && LatestEnds.isSurelyBeforeEnd(run, preWet)) {
                findings.add(
                        BuiltInRule.DATA_CLOCK, run.place(), run.subject(), "started before its prewetting had ended");
            }
        }
    }
}
