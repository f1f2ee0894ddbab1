// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static dev.infiltration.Amounts.at;
import static dev.infiltration.Amounts.kg;
import static dev.infiltration.Amounts.s;
import static dev.infiltration.Amounts.time;
import static dev.infiltration.Season.and;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.Season;
import dev.infiltration.field.Event;
import dev.infiltration.field.Head;
import dev.infiltration.field.Maintenance;
import dev.infiltration.field.Pouring.End;
import dev.infiltration.field.Surface;
import dev.infiltration.field.TestRun;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which runs stand in one series, in which order. The first test's runs start at 07:11:30 and at 07:16:00. */
class SeriesTest {

    private static final Season SI = Season.si();
    private static final String TEST = "/visits/0/tests/0";
    private static final String SECOND = TEST + "/runs/1";
    private static final String THIRD = TEST + "/runs/2";

    private static final String TOO_MANY = "run.too-many DEVIATION EITHER ";
    private static final String REPEAT_DELAY = "run.repeat-delay DEVIATION RAISES ";
    private static final String ABSENT = "prewet.absent DEVIATION RAISES ";

    private static Season third(String start) {
        return SI.test(0, t -> t.withRuns(and(t.runs(), runAt(t.runs().get(1), start))));
    }

    private static TestRun runAt(TestRun run, String start) {
        return run.withStart(start == null ? null : at(start));
    }

    /** The second run as a separate test without prewetting. */
    private static Season split() {
        return SI.andTest(t ->
                        t.withId("V1-A1b").withPreWet(null).withRuns(t.runs().subList(1, 2)))
                .test(0, t -> t.withRuns(t.runs().subList(0, 1)));
    }

    @Test
    void runsFollowEachOtherByStartWhateverTheirOrderInTheDocument() {
        Season reversed =
                SI.test(0, t -> t.withRuns(List.of(t.runs().get(1), t.runs().get(0))));
        assertEquals(List.of(), reversed.findings());
        Season late = reversed.run(0, 0, r -> r.withStart(at("07:20:00")));
        assertEquals(List.of(REPEAT_DELAY + TEST + "/runs/0"), late.findings());
    }

    @Test
    void aRunWithoutStartFollowsTheOneBeforeItInTheDocument() {
        Season season = third("07:20:00").run(0, 1, r -> r.withStart(null));
        assertEquals(List.of(TOO_MANY + THIRD), season.findings());
        Season last = third(null);
        assertEquals(List.of(TOO_MANY + THIRD), last.findings());
        Season unordered = third("07:09:00").run(0, 1, r -> r.withStart(null));
        assertEquals(
                List.of(TOO_MANY + SECOND),
                unordered.findings().stream()
                        .filter(f -> f.startsWith("run.too-many"))
                        .toList(),
                "the third, the first and then the second");
    }

    @Test
    void testsOfOneDayAtOneLocationShareASeries() {
        assertEquals(List.of(), split().findings());
        Season late = split().test(3, t -> t.withRuns(List.of(runAt(t.runs().get(0), "07:20:00"))));
        assertEquals(List.of(REPEAT_DELAY + "/visits/0/tests/3/runs/0"), late.findings());
        Season three = third("07:20:00").test(0, t -> t.withRuns(t.runs().subList(0, 2)));
        assertEquals(List.of(), three.findings());
    }

    @Test
    void testsOfTwoVisitsOnOneDayShareASeries() {
        Season season = SI.test(0, t -> t.withRuns(t.runs().subList(0, 1)))
                .andVisit(v -> v.withId("V2")
                        .withRequestedLocations(1)
                        .withTests(List.of(SI.book()
                                .visits()
                                .get(0)
                                .tests()
                                .get(0)
                                .withId("V2-A1")
                                .withPreWet(null)
                                .withRuns(SI.book()
                                        .visits()
                                        .get(0)
                                        .tests()
                                        .get(0)
                                        .runs()
                                        .subList(1, 2)))));
        assertEquals(List.of(), season.findings());
        assertEquals(
                List.of(ABSENT + "/visits/1/tests/0"),
                season.visit(1, v -> v.withDate(v.date().plusDays(1))).findings().stream()
                        .filter(f -> f.startsWith("prewet"))
                        .toList(),
                "another day, another series");
    }

    @Test
    void aSecondTestWithItsOwnPrewettingIsJudgedFromThatAlone() {
        Season season = SI.andTest(t -> t.withId("V1-A1b")
                .withPreWet(t.preWet().withStart(at("11:10:00")))
                .withRuns(List.of(runAt(t.runs().get(0), "11:11:30"))));
        assertEquals(List.of(TOO_MANY + "/visits/0/tests/3/runs/0"), season.findings());
    }

    @Test
    void aPrewettingStandsBeforeItsTestsFirstRunWhateverItsStart() {
        Season season = SI.preWet(0, p -> p.withStart(at("07:30:00")));
        assertEquals(
                List.of("data.clock DEVIATION EITHER " + TEST + "/runs/0", "data.clock DEVIATION EITHER " + SECOND),
                season.findings(),
                "both runs started before the prewetting ended");
    }

    private static Season cleaned(String start, String end, String... locations) {
        Maintenance cleaning = Maintenance.of("M2", "HQ-A")
                .withStart(at(start))
                .withEnd(at(end))
                .withLocations(List.of(locations));
        return SI.book(b -> b.withMaintenance(and(b.maintenance(), cleaning)));
    }

    @ParameterizedTest
    @CsvSource({
        "07:14:00, 07:15:00, true",
        "07:11:30, 07:16:00, true",
        "07:11:29, 07:15:00, false",
        "07:14:00, 07:16:01, false",
        "07:30:00, 07:40:00, false"
    })
    void maintenanceBetweenTwoRunsCutsTheSeries(String start, String end, boolean isCut) {
        Season season = cleaned(start, end);
        assertEquals(isCut ? List.of(ABSENT + TEST) : List.of(), season.findings());
        assertEquals(
                isCut ? List.of(ABSENT + TEST) : List.of(),
                cleaned(start, end, "A3", "A1").findings(),
                "maintenance of that location");
        assertEquals(List.of(), cleaned(start, end, "A2").findings(), "maintenance of another location");
    }

    @Test
    void afterACutNothingIsCountedFromBefore() {
        Season season = cleaned("07:19:00", "07:20:00")
                .test(0, t -> t.withRuns(and(t.runs(), runAt(t.runs().get(1), "07:40:00"))));
        assertEquals(List.of(ABSENT + TEST), season.findings(), "neither too late nor too many");
    }

    @Test
    void afterACutATestWithItsOwnPrewettingIsComplete() {
        Season season = cleaned("07:19:00", "07:30:00")
                .andTest(t -> t.withId("V1-A1b")
                        .withPreWet(t.preWet().withStart(at("11:10:00")))
                        .withRuns(List.of(
                                runAt(t.runs().get(0), "11:11:30"),
                                runAt(t.runs().get(1), "11:16:00"))));
        assertEquals(List.of(), season.findings());
    }

    @Test
    void maintenanceOfAnotherSurfaceCutsNothing() {
        Season season = cleaned("07:14:00", "07:15:00")
                .site(site -> site.withSurfaces(and(site.surfaces(), Surface.of("HQ-B"))))
                .book(b -> b.withMaintenance(Season.changed(b.maintenance(), 1, m -> m.withSurface("HQ-B"))));
        assertEquals(List.of(), season.findings());
    }

    @Test
    void aVoidRunStaysInTheSeriesForTheClockOfOthers() {
        Season first = SI.run(0, 0, r -> r.withEnd(End.VOID).withElapsed(s("10.0")));
        String isVoid = "run.void CAUTION NONE " + TEST + "/runs/0";
        assertEquals(
                List.of(isVoid),
                first.run(0, 1, r -> r.withStart(at("07:16:40"))).findings());
        assertEquals(
                List.of(isVoid, REPEAT_DELAY + SECOND),
                first.run(0, 1, r -> r.withStart(at("07:16:41"))).findings());
        assertEquals(
                List.of(isVoid, "data.clock DEVIATION EITHER " + SECOND),
                first.run(0, 1, r -> r.withStart(at("07:11:39"))).findings());
    }

    @Test
    void atAVoidRunNothingElseIsFound() {
        Season season = SI.run(
                0,
                1,
                r -> TestRun.of(at("07:00:00"), kg("-1"), s("-1"), End.VOID)
                        .withHead(Head.of(Head.State.BELOW))
                        .withEvents(List.of(Event.of(Event.Kind.LEAK))));
        assertEquals(List.of("run.void CAUTION NONE " + SECOND), season.findings());
    }

    @Test
    void aVoidPrewettingDelaysSelectsAndBoundsNothing() {
        Season season =
                SI.preWet(0, p -> p.withEnd(End.VOID).withElapsed(s("90.0")).withWater(kg("1.00")));
        assertEquals(List.of(ABSENT + TEST), season.findings(), "selects 3.60 kg for no run, ends before none");
        assertEquals(
                List.of(ABSENT + TEST),
                season.run(0, 0, r -> r.withStart(at("07:13:00"))).findings(),
                "more than two minutes after");
        assertEquals(
                List.of("data.required NO_RATE NONE " + TEST + "/ring"),
                season.test(0, t -> t.withRing(null).withRuns(List.of()))
                        .visit(v -> v.withRequestedLocations(2))
                        .findings(),
                "counts as made");
    }

    @Test
    void aTestWithAVoidPrewettingRepeatsTheRunBefore() {
        Season season = split().test(
                        3,
                        t -> t.withPreWet(SI.book()
                                .visits()
                                .get(0)
                                .tests()
                                .get(0)
                                .preWet()
                                .withStart(at("07:15:00"))
                                .withEnd(End.VOID)));
        assertEquals(List.of(), season.findings());
        Season late = season.test(3, t -> t.withRuns(List.of(runAt(t.runs().get(0), "07:19:00"))));
        assertEquals(List.of(REPEAT_DELAY + "/visits/0/tests/3/runs/0"), late.findings());
    }

    /** From 00:00 of the visit's date to 12:00 of the next day, in the zone of the site: there 17:00 in UTC. */
    @ParameterizedTest
    @CsvSource({
        "2026-06-03T00:00:00, true",
        "2026-06-02T23:59:59, false",
        "2026-06-02T23:59, true",
        "2026-06-02T23:58, false",
        "2026-06-04T12:00:00, true",
        "2026-06-04T12:00:01, false",
        "2026-06-04T12:00, true",
        "2026-06-04T12:01, false",
        "2026-06-04T17:00:00Z, true",
        "2026-06-04T17:00:01Z, false",
        "2026-06-03T05:00:00+00:00, true",
        "2026-06-03T04:59:59+00:00, false"
    })
    void workAtNightBelongsToTheVisitsDate(String start, boolean isOfTheDate) {
        Season season = SI.visit(v -> v.withWeather(v.weather().withLastRainEnd(time("2026-05-20T10:00"))))
                .test(
                        2,
                        t -> t.withPreWet(t.preWet().withStart(time(start)))
                                .withRuns(List.of(t.runs().get(0).withStart(null))));
        assertEquals(
                isOfTheDate ? List.of() : List.of("data.clock DEVIATION EITHER /visits/0/tests/2/preWet"),
                season.findings());
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-06-04T17:00:00Z", "2026-06-04T12:00:01"})
    void withoutAZoneTheDateIsThatWritten(String start) {
        Season season = SI.site(site -> site.withTimeZone(null))
                .test(
                        2,
                        t -> t.withPreWet(t.preWet().withStart(time(start)))
                                .withRuns(List.of(t.runs().get(0).withStart(null))));
        assertEquals(List.of("data.clock DEVIATION EITHER /visits/0/tests/2/preWet"), season.findings());
        assertEquals(
                List.of(),
                season.preWet(2, p -> p.withStart(time("2026-06-04T11:00:00-11:00")))
                        .findings());
    }

    @Test
    void aLonePrewettingStandsAtItsOwnStart() {
        Season season = SI.andTest(t -> t.withId("V1-A1b")
                        .withPreWet(t.preWet().withStart(at("07:15:00")))
                        .withRuns(List.of()))
                .run(0, 1, r -> r.withElapsed(s("900.0")));
        assertEquals(List.of(), season.findings(), "ended before the second run");
        assertEquals(
                List.of("data.clock DEVIATION EITHER " + SECOND),
                season.preWet(3, p -> p.withStart(at("07:15:50"))).findings(),
                "still under way when the second run started");
    }
}
