// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import dev.infiltration.field.FieldBook;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Pouring;
import dev.infiltration.field.Ring;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.Visit;
import dev.infiltration.field.Weather;
import dev.infiltration.method.Band;
import dev.infiltration.method.Limit;
import dev.infiltration.method.Range;
import dev.infiltration.method.TestMethod;
import dev.infiltration.plan.NextStep.Done;
import dev.infiltration.plan.NextStep.MakeReady;
import dev.infiltration.plan.NextStep.PreWet;
import dev.infiltration.plan.NextStep.StopWaiting;
import dev.infiltration.plan.NextStep.Watch;
import dev.infiltration.plan.NextStep.WriteDown;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import dev.infiltration.units.UnitSystem;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * Tells the next step at a location from what has been written down so far and the time now.
 *
 * <p>It looks at no clock: the same record and instant give the same step. Times that are not exact count at their most
 * cautious, so that a step taken in time leads to no deviation. Tests and runs stand in the order in which they were made;
 * every prewetting begins a test of its own. What is poured and has no time yet is under way. How near other locations are is
 * told by the places in the book; without it, and with locations that have no place there, it is for the crew to see to, as
 * sealing and head are. That the surface was cleaned since the last run is not asked: the guide then still counts that run.
 * Nothing is thrown at a record: times beyond the years of four digits count as their ends.
 *
 * <pre>{@code
 * StepGuide guide = StepGuide.of(Methods.unitPavement(), UnitSystem.SI, ZoneId.of("America/Chicago"))
 *         .withLimit(InfiltrationRate.of(10, FieldUnit.INCH_PER_HOUR), ring);
 * String advice = guide.next(visit, "A1", Instant.now()).text();
 * }</pre>
 */
public final class StepGuide {

    private static final LocalTime NIGHT_WORK_ENDS = LocalTime.NOON;

    private final TestMethod method;
    private final UnitSystem system;
    private final ZoneId zone;
    private final @Nullable InfiltrationRate limit;
    private final @Nullable Ring ring;

    private StepGuide(
            TestMethod method, UnitSystem system, ZoneId zone, @Nullable InfiltrationRate limit, @Nullable Ring ring) {
        this.method = Objects.requireNonNull(method, "method");
        this.system = Objects.requireNonNull(system, "system");
        this.zone = Objects.requireNonNull(zone, "zone");
        this.limit = limit;
        this.ring = ring;
    }

    /**
     * {@return a guide by a method}
     *
     * @param method the method
     * @param system the unit system that the crew weighs in
     * @param zone   the time zone of the site
     */
    public static StepGuide of(TestMethod method, UnitSystem system, ZoneId zone) {
        return new StepGuide(method, system, zone, null, null);
    }

    /**
     * {@return this guide with a limit below which nobody need wait on}
     *
     * @param limit the rate that the surface should have at least
     * @param ring  the ring, for the bound of the rate so far
     */
    public StepGuide withLimit(InfiltrationRate limit, Ring ring) {
        return new StepGuide(
                method, system, zone, Objects.requireNonNull(limit, "limit"), Objects.requireNonNull(ring, "ring"));
    }

    /**
     * {@return the next step at a location that no other visit of the day came to}, other locations not being looked at
     *
     * @param visit    the visit as it is written down so far
     * @param location id of the location
     * @param now      the time now
     */
    public NextStep next(Visit visit, String location, Instant now) {
        return next(FieldBook.empty(), visit, location, now);
    }

    /**
     * {@return the next step at a location}
     *
     * @param book     the book, for earlier visits to the surface, and for the places of its locations
     * @param visit    the visit as it is written down so far, in the book or not yet
     * @param location id of the location
     * @param now      the time now
     */
    public NextStep next(FieldBook book, Visit visit, String location, Instant now) {
        return next(book, visit, location, InstantRange.within(now), tests(book, visit, location));
    }

    private static List<LocationTest> tests(FieldBook book, Visit visit, String location) {
        Stream<Visit> earlier = book.visits().stream()
                .filter(other -> visit.date() != null && visit.date().equals(other.date()))
                .filter(other -> Objects.equals(visit.surface(), other.surface()))
                .filter(other -> !Objects.equals(visit.id(), other.id()));
        return Stream.concat(earlier, Stream.of(visit))
                .flatMap(each -> each.tests().stream())
                .filter(test -> location.equals(test.location()))
                .toList();
    }

    private NextStep next(FieldBook book, Visit visit, String location, Instant now, List<LocationTest> tests) {
        PouredSoFar poured = PouredSoFar.of(tests);
        Pouring last = poured.last();
        if (last != null && PouredSoFar.isUnderWay(last)) {
            return isRaining(visit, now) || PouredSoFar.sawRain(last)
                    ? new Done(Done.Reason.RAIN)
                    : watch(last, poured, now);
        }
        return obstacle(visit, tests, poured, now)
                .or(() ->
                        Optional.ofNullable(last).flatMap(PouredSoFar::missing).map(WriteDown::new))
                .or(() -> Optional.of(poured.runs())
                        .filter(runs -> runs >= method.runsPerDay())
                        .map(runs -> new Done(Done.Reason.RUNS_MADE)))
                .or(() -> notYet(visit, now))
                .or(() -> notReady(visit))
                .orElseGet(() -> apart(book, visit, location, now, pour(visit, last, poured, now)));
    }

    private Optional<NextStep> obstacle(Visit visit, List<LocationTest> tests, PouredSoFar poured, Instant now) {
        Done.@Nullable Reason why = null;
        if (poured.last() == null && tests.stream().anyMatch(test -> test.notTested() != null)) {
            why = Done.Reason.NOT_TESTED;
        } else if (isRaining(visit, now) || poured.all().stream().anyMatch(PouredSoFar::sawRain)) {
            why = Done.Reason.RAIN;
        } else if (Boolean.TRUE.equals(visit.standingWater()) || poured.stands()) {
            why = Done.Reason.WATER_STANDS;
        } else if (!isDayOf(visit, now)) {
            why = Done.Reason.OTHER_DAY;
        }
        return Optional.ofNullable(why).map(Done::new);
    }

    private boolean isRaining(Visit visit, Instant now) {
        @Nullable Weather weather = visit.weather();
        return weather != null
                && weather.rainFrom() != null
                && !InstantRange.of(weather.rainFrom(), zone).earliest().isAfter(now);
    }

    /** Work after midnight, to noon of the next day, belongs to the visit's date. */
    private boolean isDayOf(Visit visit, Instant now) {
        LocalDateTime local = LocalDateTime.ofInstant(now, zone);
        LocalDate today = local.toLocalDate();
        return visit.date() == null
                || visit.date().equals(today)
                || (visit.date().equals(today.minusDays(1))
                        && !local.toLocalTime().isAfter(NIGHT_WORK_ENDS));
    }

    private Optional<Instant> endOfDay(Visit visit) {
        return Optional.ofNullable(visit.date())
                .map(date ->
                        date.plusDays(1).atTime(NIGHT_WORK_ENDS).atZone(zone).toInstant());
    }

    private NextStep pour(Visit visit, @Nullable Pouring last, PouredSoFar poured, Instant now) {
        if (last == null) {
            return preWet(PreWet.Occasion.FIRST);
        }
        if (last.isVoid()) {
            return preWet(PreWet.Occasion.VOID);
        }
        boolean isRun = last instanceof TestRun;
        Band<Time> delay = isRun ? method.limit(Limit.REPEAT_DELAY) : method.limit(Limit.START_DELAY);
        @Nullable Instant deadline = deadline(last, delay);
        if (deadline != null && now.isAfter(deadline)) {
            return preWet(isRun ? PreWet.Occasion.REPEAT_MISSED : PreWet.Occasion.START_MISSED);
        }
        Range<Mass> water = poured.runMass(method, system);
        Optional<Duration> within = Stream.of(Optional.ofNullable(deadline), endOfDay(visit))
                .flatMap(Optional::stream)
                .min(Comparator.naturalOrder())
                .map(end -> Duration.between(now, end));
        return isRun ? new NextStep.Repeat(water, within) : new NextStep.Start(water, within);
    }

    /** {@return the last instant to start at, by the earliest end that the record allows; null where there is no limit} */
    private @Nullable Instant deadline(Pouring last, Band<Time> delay) {
        @Nullable Reading<Time> longest = delay.si().highest();
        return longest == null || last.start() == null || last.elapsed() == null
                ? null
                : InstantRange.of(last.start(), zone)
                        .earliest()
                        .plus(InstantRange.duration(last.elapsed()))
                        .plus(InstantRange.duration(longest));
    }

    private NextStep preWet(PreWet.Occasion why) {
        return new PreWet(method.limit(Limit.PREWET_MASS).in(system), why);
    }

    private Optional<NextStep> notYet(Visit visit, Instant now) {
        return Optional.ofNullable(visit.weather())
                .map(Weather::lastRainEnd)
                .map(end -> InstantRange.of(end, zone).latest().plus(DryWindow.dryTime(method)))
                .filter(dry -> dry.isAfter(now))
                .map(dry -> new NextStep.NotYet(dry.atZone(zone)));
    }

    private static Optional<NextStep> notReady(Visit visit) {
        if (Boolean.FALSE.equals(visit.swept())) {
            return Optional.of(new MakeReady(MakeReady.Lack.SWEEPING));
        }
        return Boolean.FALSE.equals(visit.potableWater())
                ? Optional.of(new MakeReady(MakeReady.Lack.POTABLE_WATER))
                : Optional.empty();
    }

    /** {@return the step, unless it begins a test too near to another} */
    private NextStep apart(FieldBook book, Visit visit, String location, Instant now, NextStep step) {
        boolean isBegun = visit.tests().stream().anyMatch(test -> location.equals(test.location()) && test.isMade());
        return (step instanceof PreWet || !isBegun)
                        && new SpacingCheck(method, zone, ring).isTooNear(book, visit, location, now)
                ? new Done(Done.Reason.TOO_NEAR)
                : step;
    }

    private NextStep watch(Pouring last, PouredSoFar poured, Instant now) {
        Range<Mass> asked = last instanceof TestRun
                ? poured.runMass(method, system)
                : method.limit(Limit.PREWET_MASS).in(system);
        Optional<InfiltrationRate> atMost =
                InstantRange.of(Objects.requireNonNull(last.start()), zone).atMost(ring, last, asked, now);
        return atMost.filter(rate -> limit != null && rate.compareTo(limit) < 0)
                .<NextStep>map(StopWaiting::new)
                .orElseGet(() -> new Watch(atMost));
    }
}
