// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.Books;
import dev.infiltration.field.ClockTime;
import dev.infiltration.field.Event;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Head;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Pouring.End;
import dev.infiltration.field.PreWet;
import dev.infiltration.field.Ring;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.Visit;
import dev.infiltration.field.WaterReading;
import dev.infiltration.field.Weather;
import dev.infiltration.method.Methods;
import dev.infiltration.method.TestMethod;
import dev.infiltration.plan.NextStep.Done;
import dev.infiltration.plan.NextStep.MakeReady;
import dev.infiltration.plan.NextStep.StopWaiting;
import dev.infiltration.plan.NextStep.Watch;
import dev.infiltration.plan.NextStep.WriteDown;
import dev.infiltration.rate.RateEquation;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import dev.infiltration.units.UnitSystem;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.quantity.Time;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Masses and times are those of ASTM C1701/C1701M 8.2 to 8.4 (memory; 2 min secondary). */
class StepGuideTest {

    private static final ZoneId ZONE = ZoneId.of("America/Chicago");
    private static final StepGuide GUIDE = StepGuide.of(Methods.perviousConcrete(), UnitSystem.SI, ZONE);
    private static final Ring RING = Ring.of("R1").withInsideDiameter(Laid.mm("300"));

    @Test
    void emptyRecordAsksForPrewetting() {
        NextStep step = next(visit(), "09:00:00");
        assertEquals("Prewet with 3.55 to 3.65 kg.", step.text());
        StepGuide pounds = StepGuide.of(Methods.perviousConcrete(), UnitSystem.INCH_POUND, ZONE);
        assertEquals(
                "Prewet with 7.9 to 8.1 lb.",
                pounds.next(visit(), "A1", at("09:00:00")).text());
    }

    @ParameterizedTest(name = "prewetting of {0} s, asked at {1}")
    @CsvSource({
        "29.9, 09:10:30, 17.95 to 18.05 kg, 119",
        "30.0, 09:10:30, 3.55 to 3.65 kg, 120",
        "30.0, 09:12:30, 3.55 to 3.65 kg, 0",
    })
    void drainedPrewettingAsksForStart(String elapsed, String now, String mass, long seconds) {
        NextStep.Start step = assertInstanceOf(
                NextStep.Start.class, next(visit(test(preWet("09:10:00", elapsed, End.DRAINED))), now));
        assertEquals(mass, step.water().toString());
        assertEquals(seconds, step.within().orElseThrow().toSeconds());
        assertTrue(step.text().startsWith("Start the run with " + mass + " within " + seconds + " s."), step::text);
    }

    @Test
    void missedStartCostsOnePrewetting() {
        NextStep step = next(visit(test(preWet("09:10:00", "30.0", End.DRAINED))), "09:12:31");
        assertEquals(NextStep.PreWet.Occasion.START_MISSED, preWetOccasion(step));
        assertTrue(
                step.text().contains("Too late to start the run: prewet again with 3.55 to 3.65 kg. Do not hurry."),
                step::text);
    }

    @Test
    void drainedRunMayBeRepeatedForFiveMinutes() {
        LocationTest test = test(preWet("09:10:00", "30.0", End.DRAINED), run("09:11:00", "100.0", End.DRAINED));
        NextStep.Repeat step = assertInstanceOf(NextStep.Repeat.class, next(visit(test), "09:12:40"));
        assertEquals(Optional.of(Duration.ofMinutes(5)), step.within());
        assertEquals("3.55 to 3.65 kg", step.water().toString());
        assertInstanceOf(NextStep.Repeat.class, next(visit(test), "09:17:40"));
        NextStep missed = next(visit(test), "09:17:41");
        assertEquals(NextStep.PreWet.Occasion.REPEAT_MISSED, preWetOccasion(missed));
    }

    @Test
    void timesToTheMinuteCountAtTheirMostCautious() {
        Visit visit = visit(test(preWet("09:10", "30.0", End.DRAINED)));
        assertInstanceOf(NextStep.Start.class, next(visit, "09:12:30"));
        assertEquals(NextStep.PreWet.Occasion.START_MISSED, preWetOccasion(next(visit, "09:12:31")));
    }

    @Test
    void secondTestOfTheLocationGoesByItsOwnPrewetting() {
        Visit visit = visit(
                test(preWet("09:10:00", "45.0", End.DRAINED), run("09:11:00", "100.0", End.DRAINED)),
                test(preWet("09:30:00", "20.0", End.DRAINED)));
        NextStep.Start step = assertInstanceOf(NextStep.Start.class, next(visit, "09:30:30"));
        assertEquals("17.95 to 18.05 kg", step.water().toString());
    }

    @Test
    void twoRunsAreTheDay() {
        LocationTest test = test(
                preWet("09:10:00", "30.0", End.DRAINED),
                run("09:11:00", "100.0", End.DRAINED),
                run("09:14:00", "100.0", End.DRAINED));
        assertEquals(new Done(Done.Reason.RUNS_MADE), next(visit(test), "09:16:00"));
        StepGuide three = StepGuide.of(Methods.perviousConcrete().withRunsPerDay(3), UnitSystem.SI, ZONE);
        assertInstanceOf(NextStep.Repeat.class, three.next(visit(test), "A1", at("09:16:00")));
    }

    @Test
    void voidPouringDoesNotCountAndIsPrewettedAgain() {
        LocationTest test = test(
                preWet("09:10:00", "30.0", End.DRAINED),
                run("09:11:00", "100.0", End.DRAINED),
                run("09:14:00", null, End.VOID));
        assertEquals(NextStep.PreWet.Occasion.VOID, preWetOccasion(next(visit(test), "09:16:00")));
    }

    @Test
    void voidPrewettingSelectsNoMass() {
        Visit visit = visit(
                test(preWet("09:10:00", "20.0", End.DRAINED)),
                test(preWet("09:20:00", "40.0", End.VOID), run("09:21:00", "100.0", End.DRAINED)));
        NextStep.Repeat step = assertInstanceOf(NextStep.Repeat.class, next(visit, "09:23:00"));
        assertEquals("17.95 to 18.05 kg", step.water().toString());
    }

    @Test
    void standingWaterEndsTheDay() {
        Done done = new Done(Done.Reason.WATER_STANDS);
        assertEquals(done, next(visit(test(preWet("09:10:00", "3600.0", End.STOPPED))), "10:20:00"));
        assertEquals(done, next(visit().withStandingWater(true), "09:00:00"));
    }

    @ParameterizedTest(name = "start {0}, elapsed {1}, end {2}: write down the {3}")
    @CsvSource({
        "        , 30.0, DRAINED, start",
        "        ,     , DRAINED, start",
        "        ,     ,        , start",
        "09:10:00,     , DRAINED, elapsed",
        "09:10:00, 0.0 , DRAINED, elapsed",
    })
    void whatIsMissingIsAskedFor(String start, String elapsed, End end, String member) {
        assertEquals(new WriteDown(member), next(visit(test(preWet(start, elapsed, end))), "09:20:00"));
    }

    @Test
    void pouringUnderWayIsWatched() {
        Visit visit = visit(test(preWet("09:10:00", null, null)));
        assertEquals(new Watch(Optional.empty()), next(visit, "09:11:00"));
        StepGuide bounded = GUIDE.withLimit(new InfiltrationRate(254), RING);
        Watch watch = assertInstanceOf(Watch.class, bounded.next(visit, "A1", at("09:11:00")));
        double bound = 3.6 / (Math.PI / 4 * 0.09) * 60;
        assertEquals(
                bound, watch.atMost().orElseThrow().millimetresPerHour(), 1e-5 * bound, "K is 0.8 ppm off (derived)");
        assertEquals(new Watch(Optional.empty()), bounded.next(visit, "A1", at("09:09:00")), "a clock that runs late");
    }

    /** 3.6 kg in a ring of 300 mm at 254 mm/h take 721.9 s (derived). */
    @Test
    void waitingStopsWhenTheRateIsSurelyBelowTheLimit() {
        StepGuide bounded = GUIDE.withLimit(new InfiltrationRate(254), RING);
        Visit exact = visit(test(preWet("09:10:00", null, null)));
        assertInstanceOf(Watch.class, bounded.next(exact, "A1", at("09:22:01")));
        StopWaiting stop = assertInstanceOf(StopWaiting.class, bounded.next(exact, "A1", at("09:22:02")));
        assertTrue(stop.atMost().millimetresPerHour() < 254, stop::text);
        Visit minute = visit(test(preWet("09:10", null, null)));
        assertInstanceOf(Watch.class, bounded.next(minute, "A1", at("09:23:01")));
        assertInstanceOf(StopWaiting.class, bounded.next(minute, "A1", at("09:23:02")));
    }

    /** What a run comes to that is given up at once tells whether what passed so far bounds its rate from above. */
    @ParameterizedTest(name = "{0}")
    @EnumSource(value = Event.Kind.class, mode = EnumSource.Mode.EXCLUDE, names = "RAIN")
    void whatHappenedLeavesOnlyTheBoundThatTheRunWouldHave(Event.Kind kind) {
        assertWaitsAsLongAsNothingIsBounded(run("09:12:00", null, null).withEvents(List.of(Event.of(kind))));
    }

    @ParameterizedTest(name = "{0}")
    @EnumSource(Head.State.class)
    void headLeavesOnlyTheBoundThatTheRunWouldHave(Head.State state) {
        assertWaitsAsLongAsNothingIsBounded(run("09:12:00", null, null).withHead(Head.of(state)));
    }

    private static void assertWaitsAsLongAsNothingIsBounded(TestRun running) {
        StepGuide bounded = GUIDE.withLimit(new InfiltrationRate(254), RING);
        PreWet preWet = preWet("09:10:00", "45.0", End.DRAINED);
        NextStep step = bounded.next(visit(test(preWet, running)), "A1", at("09:30:00"));
        TestRun stopped = running.withElapsed(seconds("1080.0")).withEnd(End.STOPPED);
        boolean isBound = RateEquation.asPublished().rate(RING, stopped) instanceof RateOutcome.UpperBound;
        assertEquals(isBound, step instanceof StopWaiting, step::toString);
        assertEquals(!isBound, step.equals(new Watch(Optional.empty())), step::toString);
    }

    /** Nobody wrote down yet how much was poured: the most that is asked for counts. */
    @Test
    void waterNotYetWrittenCountsAsTheMostAskedFor() {
        StepGuide bounded = GUIDE.withLimit(new InfiltrationRate(254), RING);
        TestRun run = TestRun.of(clock("09:12:00"), null, null, null);
        Visit visit = visit(test(preWet("09:10:00", "20.0", End.DRAINED), run));
        Watch watch = assertInstanceOf(Watch.class, bounded.next(visit, "A1", at("09:13:00")));
        double bound = 18.05 / (Math.PI / 4 * 0.09) * 60;
        assertEquals(bound, watch.atMost().orElseThrow().millimetresPerHour(), 1e-5 * bound);
    }

    @Test
    void rainIsWaitedFor() {
        Weather wet = Weather.of().withLastRainEnd(clock("08:00"));
        Instant dry = at("08:01:00").plus(Duration.ofHours(24));
        NextStep step = next(visit().withWeather(wet), "09:00:00");
        assertEquals(new NextStep.NotYet(dry.atZone(ZONE)), step);
        assertEquals(
                "Wait until 2026-06-04 08:01 (America/Chicago): the last rain is not long enough ago.", step.text());
        Visit tomorrow = visit().withWeather(wet).withDate(LocalDate.of(2026, 6, 4));
        assertInstanceOf(NextStep.PreWet.class, GUIDE.next(tomorrow, "A1", dry));
    }

    @Test
    void rainEndsTheDay() {
        Weather rain = Weather.of().withRainFrom(clock("09:30"));
        assertInstanceOf(NextStep.PreWet.class, next(visit().withWeather(rain), "09:29:59"));
        assertEquals(new Done(Done.Reason.RAIN), next(visit().withWeather(rain), "09:30:00"));
        PreWet rained = preWet("09:10:00", "30.0", End.DRAINED).withEvents(List.of(Event.of(Event.Kind.RAIN)));
        assertEquals(new Done(Done.Reason.RAIN), next(visit(test(rained)), "09:11:00"));
        PreWet running = preWet("09:10:00", null, null);
        assertEquals(new Done(Done.Reason.RAIN), next(visit(test(running)).withWeather(rain), "09:30:00"));
        PreWet wetted = running.withEvents(List.of(Event.of(Event.Kind.RAIN)));
        assertEquals(new Done(Done.Reason.RAIN), next(visit(test(wetted)), "09:11:00"));
    }

    @Test
    void locationThatCannotBeTestedIsDone() {
        LocationTest parked = LocationTest.of("T", "A1", null).withNotTested(LocationTest.NotTested.PARKED_VEHICLE);
        assertEquals(new Done(Done.Reason.NOT_TESTED), next(visit(parked), "09:00:00"));
        assertInstanceOf(NextStep.PreWet.class, GUIDE.next(visit(parked), "A2", at("09:00:00")));
    }

    @Test
    void dayOfTheVisitEndsAtNoonOfTheNext() {
        assertEquals(new Done(Done.Reason.OTHER_DAY), next(visit().withDate(LocalDate.of(2026, 6, 4)), "23:59:59"));
        Visit night = visit().withDate(LocalDate.of(2026, 6, 2));
        assertInstanceOf(NextStep.PreWet.class, next(night, "12:00:00"));
        assertEquals(new Done(Done.Reason.OTHER_DAY), next(night, "12:00:01"));
        assertInstanceOf(NextStep.PreWet.class, next(visit().withDate(null), "12:00:01"));
        assertEquals(new Done(Done.Reason.OTHER_DAY), next(visit().withDate(LocalDate.MAX), "09:00:00"));
    }

    /** A run that starts after noon would not belong to the visit. */
    @Test
    void timeToStartEndsWithTheDay() {
        Visit night = visit(test(preWet("11:58:30", "30.0", End.DRAINED))).withDate(LocalDate.of(2026, 6, 2));
        NextStep.Start start = assertInstanceOf(NextStep.Start.class, next(night, "11:59:10"));
        assertEquals(Optional.of(Duration.ofSeconds(50)), start.within());
        Visit undated = night.withDate(null);
        assertEquals(
                Optional.of(Duration.ofSeconds(110)),
                assertInstanceOf(NextStep.Start.class, next(undated, "11:59:10"))
                        .within());
    }

    @Test
    void earlierVisitsOfTheDayCount() {
        LocationTest morning = test(
                preWet("09:10:00", "30.0", End.DRAINED),
                run("09:11:00", "100.0", End.DRAINED),
                run("09:14:00", "100.0", End.DRAINED));
        Visit later = visit().withId("V2");
        Visit earlier = visit(morning);
        assertEquals(new Done(Done.Reason.RUNS_MADE), nextIn(later, earlier));
        assertEquals(new Done(Done.Reason.RUNS_MADE), nextIn(earlier, earlier), "itself counts once");
        assertInstanceOf(NextStep.PreWet.class, nextIn(later, earlier.withDate(LocalDate.of(2026, 6, 2))));
        assertInstanceOf(NextStep.PreWet.class, nextIn(later, earlier.withSurface("HQ-B")));
        assertInstanceOf(NextStep.PreWet.class, nextIn(later.withDate(null), earlier.withDate(null)));
    }

    private static NextStep nextIn(Visit visit, Visit other) {
        FieldBook book = FieldBook.empty().withVisits(List.of(other));
        return GUIDE.next(book, visit, "A1", at("09:30:00"));
    }

    @Test
    void voidPouringOnStandingWaterChangesNothing() {
        LocationTest test = test(preWet("09:10:00", "3600.0", End.STOPPED), run("10:15:00", "5.0", End.VOID));
        assertEquals(new Done(Done.Reason.WATER_STANDS), next(visit(test), "10:20:00"));
    }

    @Property(tries = 300)
    void nothingIsThrownAtARecord(
            @ForAll("books") FieldBook book,
            @ForAll("instants") Instant now,
            @ForAll("zones") ZoneId zone,
            @ForAll UnitSystem system) {
        for (TestMethod method : Methods.builtIn().all()) {
            StepGuide guide = StepGuide.of(method, system, zone).withLimit(new InfiltrationRate(254), RING);
            for (Visit visit : book.visits()) {
                Stream.concat(Stream.of("A1"), visit.tests().stream().map(LocationTest::location))
                        .filter(Objects::nonNull)
                        .distinct()
                        .forEach(location -> {
                            assertFalse(guide.next(visit, location, now).text().isBlank());
                            assertFalse(guide.next(book, visit, location, now)
                                    .text()
                                    .isBlank());
                        });
            }
        }
    }

    @Provide
    Arbitrary<FieldBook> books() {
        return Books.any();
    }

    @Provide
    Arbitrary<Instant> instants() {
        return Arbitraries.of(Instant.MIN, Instant.MAX, Instant.EPOCH, at("09:00:00"));
    }

    @Provide
    Arbitrary<ZoneId> zones() {
        return Arbitraries.of(ZONE, ZoneOffset.UTC, ZoneId.of("+14:00"), ZoneId.of("-12:00"));
    }

    @Test
    void timesBeyondTheCalendarAreTakenAsItsEnds() {
        ClockTime last = new ClockTime(LocalDateTime.MAX.withSecond(0).withNano(0), ClockTime.Precision.MINUTE, null);
        Visit visit = visit().withWeather(Weather.of().withLastRainEnd(last));
        assertInstanceOf(NextStep.NotYet.class, next(visit, "09:00:00"));
        assertEquals(new Done(Done.Reason.OTHER_DAY), GUIDE.next(visit(), "A1", Instant.MIN));
        assertEquals(new Done(Done.Reason.OTHER_DAY), GUIDE.next(visit(), "A1", Instant.MAX));
    }

    @Test
    void everyStepSpeaks() {
        for (MakeReady.Lack lack : MakeReady.Lack.values()) {
            assertTrue(new MakeReady(lack).text().startsWith("Pour nothing yet: "));
        }
        for (Done.Reason reason : Done.Reason.values()) {
            assertFalse(new Done(reason).text().isBlank());
        }
        assertEquals("Write down the start of what was poured last.", new WriteDown("start").text());
        assertTrue(new Watch(Optional.of(new InfiltrationRate(300))).text().contains("at most 300 mm/h"));
    }

    private static NextStep next(Visit visit, String now) {
        return GUIDE.next(visit, "A1", at(now));
    }

    private static NextStep.PreWet.Occasion preWetOccasion(NextStep step) {
        return assertInstanceOf(NextStep.PreWet.class, step).occasion();
    }

    private static Visit visit(LocationTest... tests) {
        return Visit.of("V1", "HQ-A", LocalDate.of(2026, 6, 3)).withTests(List.of(tests));
    }

    private static LocationTest test(@Nullable PreWet preWet, TestRun... runs) {
        return LocationTest.of("T", "A1", "R1").withPreWet(preWet).withRuns(List.of(runs));
    }

    private static PreWet preWet(@Nullable String start, @Nullable String elapsed, @Nullable End end) {
        return PreWet.of(clock(start), water("3.60"), seconds(elapsed), end);
    }

    private static TestRun run(@Nullable String start, @Nullable String elapsed, @Nullable End end) {
        return TestRun.of(clock(start), water("3.60"), seconds(elapsed), end);
    }

    private static WaterReading water(String kilograms) {
        return WaterReading.weighed(Reading.of(kilograms, FieldUnit.KILOGRAM));
    }

    private static @Nullable Reading<Time> seconds(@Nullable String elapsed) {
        return elapsed == null ? null : Reading.of(elapsed, FieldUnit.SECOND);
    }

    private static @Nullable ClockTime clock(@Nullable String time) {
        return time == null ? null : ClockTime.parse("2026-06-03T" + time);
    }

    private static Instant at(String time) {
        return LocalDateTime.parse("2026-06-03T" + time).atZone(ZONE).toInstant();
    }
}
