// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.check.Checker;
import dev.infiltration.check.Effect;
import dev.infiltration.check.Finding;
import dev.infiltration.field.ClockTime;
import dev.infiltration.field.ClockTime.Precision;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Location;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Pouring;
import dev.infiltration.field.Pouring.End;
import dev.infiltration.field.PreWet;
import dev.infiltration.field.Ring;
import dev.infiltration.field.Site;
import dev.infiltration.field.Surface;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.Visit;
import dev.infiltration.field.WaterReading;
import dev.infiltration.field.Weather;
import dev.infiltration.method.Methods;
import dev.infiltration.method.Range;
import dev.infiltration.rate.RateEquation;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import dev.infiltration.units.UnitSystem;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Whole days by a simulated clock and crew, each judged afterwards by the checker. */
class SimulatedDayTest {

    private static final ZoneId ZONE = ZoneId.of("America/Chicago");
    private static final LocalDate DATE = LocalDate.of(2026, 6, 3);
    private static final Ring RING =
            Ring.of("R1").withInsideDiameter(Laid.mm("300")).withHeight(Laid.mm("60"));
    private static final InfiltrationRate LIMIT = new InfiltrationRate(254);
    private static final Checker CHECKER = Checker.withDefaults().withToday(DATE.plusDays(1));

    /**
     * A crew that does what it is told, in time, or not at all; that is slow, forgets, gives up and spoils runs.
     */
    @Property(tries = 500)
    void stepsTakenInTimeLeadToNoDeviation(@ForAll long seed, @ForAll Precision precision, @ForAll UnitSystem weighed) {
        Day day = new Day(new Random(seed), precision, weighed == UnitSystem.NEITHER ? UnitSystem.SI : weighed);
        day.walk();
        List<Finding> deviations = CHECKER.check(book(day.visit)).findings().stream()
                .filter(finding -> finding.effect() == Effect.DEVIATION || finding.effect() == Effect.NO_RATE)
                .toList();
        assertEquals(List.of(), deviations, day.diary::toString);
    }

    @Test
    void simulatedDaysTakeEveryTurn() {
        Set<String> met = new TreeSet<>();
        for (int seed = 0; seed < 100; seed++) {
            Day day = new Day(new Random(seed), Precision.EXACT, UnitSystem.SI);
            day.walk();
            day.steps.forEach(step -> met.add(step.getClass().getSimpleName()));
        }
        assertTrue(
                met.containsAll(Set.of("PreWet", "Start", "Repeat", "Watch", "StopWaiting", "NotYet", "Done")),
                met::toString);
    }

    /** Started all the same, whatever the guide says: it says missed exactly when the checker finds a deviation. */
    @Property(tries = 300)
    void startIsMissedWhenTheCheckerSaysSo(
            @ForAll @IntRange(min = 50, max = 3000) int elapsedTenths, @ForAll @IntRange(max = 2400) int gapTenths) {
        PreWet preWet = PreWet.of(clock(at(0), Precision.EXACT), water("3.60"), tenths(elapsedTenths), End.DRAINED);
        Instant start = at(elapsedTenths + gapTenths);
        Visit before = visit(test(1).withPreWet(preWet));
        NextStep step = guide(UnitSystem.SI).next(before, "A1", start);
        TestRun run = TestRun.of(
                clock(start, Precision.EXACT), water(elapsedTenths < 300 ? "18.00" : "3.60"), tenths(900), End.DRAINED);
        Visit after = visit(test(1).withPreWet(preWet).withRuns(List.of(run)));
        assertEquals(step instanceof NextStep.PreWet, rules(after).contains("run.start-delay"));
    }

    @Property(tries = 300)
    void repeatIsMissedWhenTheCheckerSaysSo(@ForAll @IntRange(max = 6000) int gapTenths) {
        LocationTest test = test(1).withPreWet(
                        PreWet.of(clock(at(0), Precision.EXACT), water("3.60"), tenths(400), End.DRAINED))
                .withRuns(
                        List.of(TestRun.of(clock(at(600), Precision.EXACT), water("3.60"), tenths(500), End.DRAINED)));
        Instant start = at(1100 + gapTenths);
        NextStep step = guide(UnitSystem.SI).next(visit(test), "A1", start);
        List<TestRun> runs = new ArrayList<>(test.runs());
        runs.add(TestRun.of(clock(start, Precision.EXACT), water("3.60"), tenths(500), End.DRAINED));
        assertEquals(
                step instanceof NextStep.PreWet,
                rules(visit(test.withRuns(runs))).contains("run.repeat-delay"));
        runs.add(TestRun.of(clock(start.plusSeconds(60), Precision.EXACT), water("3.60"), tenths(500), End.DRAINED));
        assertTrue(rules(visit(test.withRuns(runs))).contains("run.too-many"));
        assertEquals(
                new NextStep.Done(NextStep.Done.Reason.RUNS_MADE),
                guide(UnitSystem.SI).next(visit(test.withRuns(runs.subList(0, 2))), "A1", start.plusSeconds(60)));
    }

    /** The masses told are those that the checker takes, to the last gram. */
    @Property(tries = 200)
    void massesToldAreThoseTheCheckerTakes(@ForAll @IntRange(min = 200, max = 400) int elapsedTenths) {
        PreWet preWet = PreWet.of(clock(at(0), Precision.EXACT), water("3.60"), tenths(elapsedTenths), End.DRAINED);
        LocationTest test = test(1).withPreWet(preWet);
        NextStep.Start step = (NextStep.Start) guide(UnitSystem.SI).next(visit(test), "A1", at(elapsedTenths));
        for (int grams : new int[] {0, 10}) {
            BigDecimal mass = step.water().highest().value().add(BigDecimal.valueOf(grams, 3));
            TestRun run = TestRun.of(
                    clock(at(elapsedTenths + 100), Precision.EXACT),
                    water(mass.toPlainString()),
                    tenths(500),
                    End.DRAINED);
            assertEquals(grams > 0, rules(visit(test.withRuns(List.of(run)))).contains("run.mass"));
        }
    }

    private static Set<String> rules(Visit visit) {
        return CHECKER.check(book(visit)).findings().stream().map(Finding::rule).collect(Collectors.toSet());
    }

    private static StepGuide guide(UnitSystem system) {
        return StepGuide.of(Methods.perviousConcrete(), system, ZONE).withLimit(LIMIT, RING);
    }

    private static FieldBook book(Visit visit) {
        Surface surface = Surface.of("HQ-A")
                .withType(Surface.Type.PERVIOUS_CONCRETE)
                .withArea(Reading.of("900", FieldUnit.SQUARE_METRE))
                .withLocations(List.of(Location.of("A1")));
        Site site = Site.of("HQ").withTimeZone(ZONE).withSurfaces(List.of(surface));
        return FieldBook.empty()
                .withSites(List.of(site))
                .withRings(List.of(RING))
                .withVisits(List.of(visit));
    }

    private static Visit visit(LocationTest... tests) {
        return Visit.of("V1", "HQ-A", DATE)
                .withMethod("pervious-concrete")
                .withPurpose(Visit.Purpose.TRAINING)
                .withSwept(true)
                .withStandingWater(false)
                .withPotableWater(true)
                .withWeather(Weather.of().withLastRainEnd(ClockTime.parse("2026-06-02T08:30")))
                .withTests(List.of(tests));
    }

    private static LocationTest test(int number) {
        return LocationTest.of("T" + number, "A1", "R1");
    }

    /** Tenths of a second after nine. */
    private static Instant at(long tenths) {
        return LocalDateTime.of(2026, 6, 3, 9, 0).atZone(ZONE).toInstant().plusMillis(100 * tenths);
    }

    private static ClockTime clock(Instant instant, Precision precision) {
        LocalDateTime local = LocalDateTime.ofInstant(instant, ZONE);
        boolean isMinute = precision == Precision.MINUTE;
        return new ClockTime(isMinute ? local.withSecond(0).withNano(0) : local, precision, null);
    }

    private static WaterReading water(String kilograms) {
        return WaterReading.weighed(Reading.of(kilograms, FieldUnit.KILOGRAM));
    }

    private static Reading<Time> tenths(long tenths) {
        return Reading.of(BigDecimal.valueOf(tenths, 1), FieldUnit.SECOND);
    }

    /** A crew at work: what it does is written down as it happens. */
    private static final class Day {

        private final Random random;
        private final Precision precision;
        private final StepGuide guide;
        private final List<NextStep> steps = new ArrayList<>();
        private final List<String> diary = new ArrayList<>();
        private Visit visit = SimulatedDayTest.visit();
        private Instant now;
        private Instant begun = Instant.MIN;
        private Instant drains = Instant.MAX;

        Day(Random random, Precision precision, UnitSystem system) {
            this.random = random;
            this.precision = precision;
            this.guide = guide(system);
            this.now = at(-36_000 + random.nextInt(3600) * 10L);
        }

        void walk() {
            for (int i = 0; i < 60; i++) {
                NextStep step = guide.next(visit, "A1", now);
                steps.add(step);
                diary.add(now + " " + step);
                if (step instanceof NextStep.Done) {
                    return;
                }
                take(step);
            }
        }

        private void take(NextStep step) {
            if (step instanceof NextStep.NotYet wait) {
                now = wait.until().plusSeconds(random.nextInt(600));
            } else if (step instanceof NextStep.PreWet preWet) {
                pour(preWet.water(), true);
            } else if (step instanceof NextStep.Start start) {
                startOrMiss(start.water(), start.within().orElseThrow());
            } else if (step instanceof NextStep.Repeat repeat) {
                startOrMiss(repeat.water(), repeat.within().orElseThrow());
            } else if (step instanceof NextStep.StopWaiting stop) {
                end(End.STOPPED);
                assertTrue(bound().compareTo(LIMIT) < 0, () -> bound() + " after " + stop);
            } else {
                watch();
            }
        }

        private InfiltrationRate bound() {
            return RateEquation.asPublished().rate(RING, last()).figure().orElseThrow();
        }

        /** In time, at the very last moment too, or so late that it is not done. */
        private void startOrMiss(Range<Mass> water, Duration within) {
            long millis = within.toMillis();
            boolean isLast = random.nextInt(4) == 0;
            long taken = isLast ? millis / 100 * 100 : random.nextInt(1 + (int) millis * 3 / 2);
            now = now.plusMillis(taken / 100 * 100);
            if (taken <= millis) {
                pour(water, false);
            }
        }

        private void pour(Range<Mass> range, boolean isPreWet) {
            Reading<Mass> mass = random.nextBoolean() ? range.lowest() : range.highest();
            begun = now;
            ClockTime start = clock(now, precision);
            WaterReading water = WaterReading.weighed(Reading.of(mass.value().setScale(2), mass.unit()));
            List<LocationTest> tests = new ArrayList<>(visit.tests());
            if (isPreWet) {
                tests.add(test(tests.size() + 1).withPreWet(PreWet.of(start, water, null, null)));
            } else {
                LocationTest test = tests.remove(tests.size() - 1);
                List<TestRun> runs = new ArrayList<>(test.runs());
                runs.add(TestRun.of(start, water, null, null));
                tests.add(test.withRuns(runs));
            }
            visit = visit.withTests(tests);
            drains = now.plusMillis(100L * (30 + random.nextInt(random.nextInt(3) == 0 ? 20_000 : 900)));
        }

        private void watch() {
            Instant looked = now.plusSeconds(1 + random.nextInt(300));
            boolean isOver = !drains.isAfter(looked);
            now = isOver ? drains : looked;
            if (isOver) {
                end(random.nextInt(6) == 0 ? End.VOID : End.DRAINED);
            } else if (random.nextInt(20) == 0) {
                end(End.STOPPED);
            }
        }

        private Pouring last() {
            LocationTest test = visit.tests().get(visit.tests().size() - 1);
            return test.runs().isEmpty()
                    ? test.preWet()
                    : test.runs().get(test.runs().size() - 1);
        }

        private void end(End end) {
            List<LocationTest> tests = new ArrayList<>(visit.tests());
            LocationTest test = tests.remove(tests.size() - 1);
            assertFalse(last().isVoid());
            tests.add(ended(test, end));
            visit = visit.withTests(tests);
        }

        private LocationTest ended(LocationTest test, End end) {
            Reading<Time> elapsed = tenths(Duration.between(begun, now).toMillis() / 100);
            if (test.runs().isEmpty()) {
                return test.withPreWet(test.preWet().withElapsed(elapsed).withEnd(end));
            }
            List<TestRun> runs = new ArrayList<>(test.runs());
            runs.add(runs.remove(runs.size() - 1).withElapsed(elapsed).withEnd(end));
            return test.withRuns(runs);
        }
    }
}
