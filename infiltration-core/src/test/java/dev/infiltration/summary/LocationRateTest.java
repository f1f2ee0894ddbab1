// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import static dev.infiltration.Amounts.at;
import static dev.infiltration.Amounts.in;
import static dev.infiltration.Amounts.kg;
import static dev.infiltration.Amounts.lb;
import static dev.infiltration.Amounts.mm;
import static dev.infiltration.Amounts.s;
import static dev.infiltration.Season.and;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.Season;
import dev.infiltration.check.Checker;
import dev.infiltration.field.Event;
import dev.infiltration.field.Head;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Maintenance;
import dev.infiltration.field.Pouring.End;
import dev.infiltration.field.PreWet;
import dev.infiltration.field.ReadBook;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.WaterReading;
import dev.infiltration.method.Methods;
import dev.infiltration.rate.RateEquation;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.review.Review;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** What a location comes to: over which series, how many runs, and what withholds it. */
class LocationRateTest {

    private static final Season SI = Season.si();
    private static final LocationTest TEST = SI.book().visits().get(0).tests().get(0);

    /** The first test with so many runs of 18.00 kg, each drained after so many seconds, four minutes apart. */
    private static Season runs(String... seconds) {
        return SI.test(
                0,
                t -> t.withRuns(List.of(seconds).stream()
                        .map(time -> run(List.of(seconds).indexOf(time), time))
                        .toList()));
    }

    private static TestRun run(int i, String seconds) {
        return TestRun.of(at("07:" + (12 + 4 * i) + ":00"), kg("18.00"), s(seconds), End.DRAINED);
    }

    private static double rate(double seconds) {
        return RateEquation.millimetresPerHour(18.00, 300, seconds);
    }

    private static LocationRate first(Season season) {
        return season.review().locations().get(0);
    }

    /** {@return a row in words}: {@code measured 1234.5 of 2 RUNS}, or {@code withheld [reasons]} */
    private static String told(LocationRate row) {
        RateOutcome outcome = row.outcome();
        return outcome.figure()
                .map(rate -> outcome.word() + String.format(Locale.ROOT, " %.6f", rate.millimetresPerHour()) + " of "
                        + row.runs() + " " + row.from())
                .orElse(outcome.word() + " " + outcome.reasons());
    }

    private static String told(Season season) {
        return told(first(season));
    }

    private static String mean(String word, int runs, double... rates) {
        double sum = Arrays.stream(rates).sum();
        return word + String.format(Locale.ROOT, " %.6f of %d RUNS", sum / rates.length, runs);
    }

    @Test
    void theMeanOfTheRunsThatTheMethodCounts() {
        assertEquals(mean("measured", 1, rate(100)), told(runs("100")));
        assertEquals(mean("measured", 2, rate(100), rate(120)), told(runs("100", "120")));
        assertEquals(mean("measured", 2, rate(100), rate(120)), told(runs("100", "120", "90")), "the first two");
        assertEquals(
                mean("measured", 2, rate(100), rate(120)),
                told(runs("100", "120", "90").visit(v -> v.withMethod("bucket"))),
                "two where the method is unknown");
        Checker three = Checker.withDefaults()
                .withMethods(Methods.builtIn().with(Methods.unitPavement().withRunsPerDay(3)));
        Review review = Review.of(ReadBook.of(runs("100", "120", "90").book()), three);
        assertEquals(
                mean("measured", 3, rate(100), rate(120), rate(90)),
                told(review.locations().get(0)));
    }

    @Test
    void runsCountInTheOrderOfTheirStarts() {
        Season reversed = SI.test(0, t -> t.withRuns(List.of(run(2, "90"), run(1, "120"), run(0, "100"))));
        assertEquals(mean("measured", 2, rate(100), rate(120)), told(reversed));
    }

    @Test
    void aVoidRunIsNotCountedAndTheNextMovesUp() {
        Season season = runs("100", "120", "90").run(0, 0, r -> r.withEnd(End.VOID));
        assertEquals(mean("measured", 2, rate(120), rate(90)), told(season));
    }

    @Test
    void aWithheldRunIsLeftOutAndNoneMovesUp() {
        Season season = runs("100", "120", "90").run(0, 0, r -> r.withWater(kg("0")));
        assertEquals(mean("measured", 1, rate(120)), told(season));
        Season both = season.run(0, 1, r -> r.withEvents(List.of(Event.of(Event.Kind.RING_MOVED))));
        assertEquals("withheld [run.unusable, run.event]", told(both));
    }

    @Test
    void oneBoundBoundsTheMeanAndTwoSidesWithholdIt() {
        Season season = runs("100", "120");
        assertEquals(mean("upper-bound", 2, rate(100), rate(120)), told(season.run(0, 1, r -> r.withEnd(End.STOPPED))));
        Season lower = season.run(0, 0, r -> r.withHead(Head.of(Head.State.NEVER_REACHED)));
        assertEquals(mean("lower-bound", 2, rate(100), rate(120)), told(lower));
        assertEquals("withheld [run.head, run.discontinued]", told(lower.run(0, 1, r -> r.withEnd(End.STOPPED))));
    }

    @Test
    void aDiscontinuedPrewettingAloneBounds() {
        Season season = SI.test(0, t -> t.withRuns(List.of()))
                .preWet(0, p -> p.withEnd(End.STOPPED).withElapsed(s("900.0")));
        assertEquals("upper-bound 203.718489 of 0 PREWETTING", told(season));
        assertEquals(
                "upper-bound 123.718425 of 0 PREWETTING", told(season.preWet(0, p -> p.withDepthAtStop(mm("20")))));
        assertEquals(List.of("prewet.discontinued"), first(season).outcome().reasons());
    }

    @Test
    void ofSeveralDiscontinuedPrewettingsTheLastBounds() {
        PreWet later =
                TEST.preWet().withStart(at("12:00:00")).withEnd(End.STOPPED).withElapsed(s("1800.0"));
        Season season = SI.visit(v -> v.withTests(List.of(
                TEST.withId("late").withPreWet(later).withRuns(List.of()),
                TEST.withPreWet(later.withStart(at("07:10:00")).withElapsed(s("900.0")))
                        .withRuns(List.of()))));
        assertEquals("upper-bound 101.859244 of 0 PREWETTING", told(season));
    }

    @Test
    void aVoidRunKeepsAPrewettingFromBounding() {
        Season season = SI.test(0, t -> t.withRuns(List.of(run(0, "100").withEnd(End.VOID))))
                .preWet(0, p -> p.withEnd(End.STOPPED).withElapsed(s("900.0")));
        assertEquals("withheld [run.void]", told(season));
    }

    @Test
    void whatGivesNoRateIsWithheldWithEveryReason() {
        Season none = SI.test(0, t -> t.withRuns(List.of()));
        assertEquals("withheld []", told(none), "a drained prewetting alone");
        assertEquals("withheld []", told(none.preWet(0, p -> p.withEnd(End.VOID))));
        Season stopped = none.preWet(0, p -> p.withEnd(End.STOPPED));
        assertEquals("withheld [prewet.discontinued]", told(stopped.preWet(0, p -> p.withWater(null))));
        assertEquals("withheld [prewet.discontinued]", told(stopped.preWet(0, p -> p.withElapsed(s("0")))));
        assertEquals(
                "withheld [ring.unusable, prewet.discontinued]", told(stopped.ring(r -> r.withInsideDiameter(null))));
        assertEquals("withheld [data.required, prewet.discontinued]", told(stopped.test(0, t -> t.withRing(null))));
        assertEquals("withheld [data.reference]", told(runs("100").test(0, t -> t.withLocation("A9"))));
        Season allVoid = runs("100", "120")
                .test(
                        0,
                        t -> t.withRuns(
                                t.runs().stream().map(r -> r.withEnd(End.VOID)).toList()));
        assertEquals("withheld [run.void]", told(allVoid));
    }

    @Test
    void aPrewettingWithoutEndAndRunWithholdsItsLocation() {
        Season none = SI.test(0, t -> t.withRuns(List.of())).preWet(0, p -> p.withEnd(null));
        assertEquals("withheld [prewet.end-unrecorded]", told(none));
        assertEquals("withheld [prewet.end-unrecorded]", told(none.preWet(0, p -> p.withWater(null))));
        assertEquals(
                "withheld [ring.unusable, prewet.end-unrecorded]", told(none.ring(r -> r.withInsideDiameter(null))));
        Season voided = none.test(0, t -> t.withRuns(List.of(run(0, "100").withEnd(End.VOID))));
        assertEquals("withheld [prewet.end-unrecorded, run.void]", told(voided));
        Season stopped = none.andTest(t -> TEST.withId("later")
                .withRuns(List.of())
                .withPreWet(TEST.preWet().withStart(at("12:00:00")).withEnd(End.STOPPED)));
        assertEquals("withheld [prewet.end-unrecorded]", told(stopped), "also beside a discontinued one");
        assertEquals("measured", told(SI.preWet(0, p -> p.withEnd(null))).split(" ", -1)[0], "runs need no such end");
    }

    @Test
    void whereEveryReasonIsOneThereAreSeveral() {
        Season season = runs("100", "120")
                .run(0, 0, r -> r.withElapsed(null))
                .run(0, 1, r -> r.withWater(kg("1e400")))
                .visit(v -> v.withSurface("HQ-X"));
        assertEquals("withheld [data.reference, run.unusable, run.implausible]", told(season));
    }

    private static Season cleaned(String start, String end) {
        Maintenance cleaning = Maintenance.of("M2", "HQ-A").withStart(at(start)).withEnd(at(end));
        return SI.book(b -> b.withMaintenance(and(b.maintenance(), cleaning)));
    }

    @Test
    void theLastSeriesCounts() {
        Season season = cleaned("07:14:00", "07:15:00").test(0, t -> t.withRuns(List.of(run(0, "100"), run(1, "50"))));
        assertEquals(mean("measured", 1, rate(50)), told(season));
        Season voidAfter = season.run(0, 1, r -> r.withEnd(End.VOID));
        assertEquals(mean("measured", 1, rate(100)), told(voidAfter), "the last with a run that is not void");
        Season unusable = season.run(0, 1, r -> r.withElapsed(null));
        assertEquals("withheld [run.unusable]", told(unusable), "even if it comes to nothing");
    }

    /** A second visit on the same date, which made the later runs at the first location. */
    private static Season twoVisits(List<TestRun> first, List<TestRun> second) {
        return SI.test(0, t -> t.withRuns(first))
                .andVisit(v -> v.withId("V2")
                        .withTests(List.of(TEST.withId("V2-A1").withPreWet(null).withRuns(second))));
    }

    @Test
    void visitsOfOneDateCountTheirSeriesToTheirOwnLastRun() {
        Season season = twoVisits(List.of(run(0, "100")), List.of(run(1, "120")));
        List<LocationRate> rows = season.review().locations();
        assertEquals(mean("measured", 1, rate(100)), told(rows.get(0)));
        assertEquals(mean("measured", 2, rate(100), rate(120)), told(rows.get(3)));
        Season three = twoVisits(List.of(run(0, "100"), run(1, "120")), List.of(run(2, "90")));
        assertEquals(
                mean("measured", 2, rate(100), rate(120)),
                told(three.review().locations().get(3)));
    }

    @Test
    void rowsAreByVisitAndLocationInTheOrderOfFirstMention() {
        Season season = SI.andTest(t -> TEST.withId("V1-A1b").withPreWet(null).withRuns(List.of(run(3, "80"))))
                .andTest(t -> LocationTest.of("V1-B", "B", "R1").withNotTested(LocationTest.NotTested.SNOW))
                .test(1, t -> t.withLocation(null));
        assertEquals(
                List.of("A1", "A3"),
                season.review().locations().stream().map(LocationRate::location).toList());
    }

    @Test
    void poundsAndKilogramsComeToNearlyTheSame() {
        double si = first(runs("100")).outcome().figure().orElseThrow().millimetresPerHour();
        WaterReading pounds = lb("39.683");
        double inchPound = first(Season.inchPound()
                        .ring(r -> r.withInsideDiameter(in("11.811")))
                        .test(0, t -> t.withRuns(List.of(run(0, "100").withWater(pounds)))))
                .outcome()
                .figure()
                .orElseThrow()
                .millimetresPerHour();
        assertEquals(1, si / inchPound, 8e-5, "39.683 lb is 18.0 kg, 11.811 in is 300 mm");
    }
}
