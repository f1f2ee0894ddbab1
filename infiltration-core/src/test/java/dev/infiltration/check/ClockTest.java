// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static dev.infiltration.Amounts.at;
import static dev.infiltration.Amounts.min;
import static dev.infiltration.Amounts.s;
import static dev.infiltration.Amounts.time;
import static dev.infiltration.Season.changed;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.Season;
import dev.infiltration.field.Amendment;
import dev.infiltration.field.ClockTime;
import dev.infiltration.field.Event;
import dev.infiltration.field.LocationTest;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Times written to the minute, delays timed directly, clocks that are changed, offsets. */
class ClockTest {

    private static final Season SI = Season.si();
    private static final String RUN = "/visits/0/tests/0/runs/0";
    private static final String SECOND = "/visits/0/tests/0/runs/1";

    /** The season with one run at the first test, and its prewetting. */
    private static Season pair(String preWet, String elapsed, String run) {
        return SI.preWet(0, p -> p.withStart(at(preWet)).withElapsed(s(elapsed)))
                .test(
                        0,
                        t -> t.withRuns(
                                List.of(t.runs().get(0).withStart(at(run)).withElapsed(s("30.0")))));
    }

    /** The limit is 2 min (ASTM C1701/C1701M 8.3, secondary). */
    @ParameterizedTest
    @CsvSource({
        "07:10, 21.4, 07:12, unshown, from 38.6 s to 158.6 s",
        "07:10, 21.4, 07:11, kept, at most 98.6 s",
        "07:10, 0.1, 07:11, kept, at most 119.9 s",
        "07:10:00, 29.9, 07:13, broken, at least 150.1 s",
        "07:10, 29.9, 07:13, unshown, from 90.1 s to 210.1 s",
        "07:10, 29.9, 07:14, broken, at least 150.1 s",
        "07:10:59, 1.0, 07:13:00, kept, 120 s",
        "07:10:59, 0.9, 07:13:00, broken, 120.1 s",
        "07:10:00, 29.0, 07:12:29, kept, 120 s",
        "07:10:00, 29.0, 07:12:29.001, broken, 120.001 s",
        "07:10, 20.0, 07:13:20, unshown, from 120 s to 180 s",
        "07:10, 20.0, 07:13:21, broken, from 121 s",
        "07:10, 20.0, 07:12:20, kept, from 60 s to 120 s",
        "07:10, 20.0, 07:12:20.5, unshown, from 60.5 s to 120.5 s",
        "07:10:20, 0.1, 07:10, kept, the same minute"
    })
    void aMinuteIsReadKindlyAndTheDoubtIsTold(String preWet, String elapsed, String run, String verdict) {
        List<String> expected = List.of();
        if (verdict.equals("broken")) {
            expected = List.of("run.start-delay DEVIATION RAISES " + RUN);
        } else if (verdict.equals("unshown")) {
            expected = List.of("run.start-delay-unshown CAUTION RAISES " + RUN);
        }
        assertEquals(expected, pair(preWet, elapsed, run).findings());
    }

    @Test
    void aDelayTimedDirectlySettlesThePair() {
        Season late = pair("07:10:00", "20.0", "07:15:00");
        assertEquals(List.of(), late.run(0, 0, r -> r.withDelay(s("120"))).findings());
        assertEquals(
                List.of("run.start-delay DEVIATION RAISES " + RUN),
                pair("07:10:00", "20.0", "07:11:00")
                        .run(0, 0, r -> r.withDelay(s("120.1")))
                        .findings());
        assertEquals(
                List.of("run.start-delay DEVIATION RAISES " + RUN),
                pair("07:10", "20.0", "07:12")
                        .run(0, 0, r -> r.withStart(null).withDelay(min("2.01")))
                        .findings(),
                "without a start too");
    }

    @Test
    void aDelayOfTheSecondRunIsTimedFromTheRunBefore() {
        Season season = SI.run(0, 1, r -> r.withStart(null).withDelay(min("5")));
        assertEquals(List.of(), season.findings());
        assertEquals(
                List.of("run.repeat-delay DEVIATION RAISES " + SECOND),
                season.run(0, 1, r -> r.withDelay(s("300.01"))).findings());
    }

    @ParameterizedTest
    @CsvSource({
        "07:10:20.9, true",
        "07:10:21.4, false",
        "07:10, false",
        "07:09, true",
        "07:11, false",
        "07:09:59.9, true"
    })
    void aRunBeforeThePrewettingEndedIsAMatterOfTheClock(String start, boolean isFound) {
        assertEquals(
                isFound ? List.of("data.clock DEVIATION EITHER " + RUN) : List.of(),
                pair("07:10:00", "21.4", start).findings());
    }

    @Test
    void withoutElapsedNothingStartsBeforeWhatCameBeforeHasStarted() {
        Season season = SI.preWet(0, p -> p.withElapsed(null));
        assertEquals(
                List.of(), season.run(0, 0, r -> r.withStart(at("07:10:00"))).findings());
        assertEquals(
                List.of("data.clock DEVIATION EITHER " + RUN),
                season.run(0, 0, r -> r.withStart(at("07:09:59"))).findings());
    }

    @Test
    void everythingAtOneLocationIsInOrderOverVisitsToo() {
        Season season = SI.andVisit(v -> v.withId("V2")
                .withRequestedLocations(1)
                .withTests(List.of(v.tests()
                        .get(0)
                        .withId("V2-A1")
                        .withRuns(List.of(v.tests().get(0).runs().get(0).withStart(at("07:18:30"))))
                        .withPreWet(v.tests().get(0).preWet().withStart(at("07:18:00"))))));
        assertEquals(
                List.of(
                        "data.clock DEVIATION EITHER /visits/1/tests/0/preWet",
                        "run.too-many DEVIATION EITHER /visits/1/tests/0/runs/0"),
                season.findings(),
                "the second run of the first visit ended at 07:18:25.2");
    }

    @Test
    void testsAtOtherLocationsOverlapAsTheyMay() {
        Season season = SI.tests(t -> t.withPreWet(t.preWet().withStart(at("07:10:00")))
                .withRuns(List.of(
                        t.runs().get(0).withStart(at("07:11:30")),
                        t.runs().get(1).withStart(at("07:16:00")))));
        assertEquals(List.of(), season.findings());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2026-06-03T12:11:30Z",
                "2026-06-03T07:11:30-05:00",
                "2026-06-03T12:11Z",
                "2026-06-03T20:11:30+08:00"
            })
    void anOffsetIsReckonedWith(String start) {
        assertEquals(List.of(), SI.run(0, 0, r -> r.withStart(time(start))).findings());
    }

    @Test
    void withoutAZoneTimesCountAsWritten() {
        Season season = SI.site(site -> site.withTimeZone(null));
        assertEquals(List.of(), season.findings());
        assertEquals(
                List.of("data.clock DEVIATION EITHER " + RUN),
                season.preWet(0, p -> p.withStart(time("2026-06-03T07:10:00Z")))
                        .run(0, 0, r -> r.withStart(time("2026-06-03T07:11:30+01:00")))
                        .findings(),
                "where both have an offset they are instants");
    }

    /** In Chicago clocks went back at 02:00 on 2026-11-01: 01:00 to 02:00 occurs twice (IANA time zone database). */
    private static Season backwards(String preWet, String run) {
        return onDay("2026-11-01", preWet, run);
    }

    private static Season onDay(String day, String preWet, String run) {
        LocationTest first = SI.book().visits().get(0).tests().get(0);
        LocationTest one = first.withPreWet(first.preWet().withStart(time(day + "T" + preWet)))
                .withRuns(List.of(first.runs().get(0).withStart(time(day + "T" + run))));
        return SI.visit(v -> v.withDate(LocalDate.parse(day))
                .withRequestedLocations(1)
                .withWeather(v.weather().withLastRainEnd(time("2026-01-20T10:00")))
                .withTests(List.of(one)));
    }

    private static List<String> findings(Season season) {
        return Checker.withDefaults().withToday(LocalDate.parse("2027-01-01")).check(season.book()).findings().stream()
                .map(f -> f.rule() + " " + f.where())
                .toList();
    }

    @Test
    void aTimeThatOccursTwiceMayBeEither() {
        assertEquals(
                List.of("data.clock " + RUN, "run.start-delay-unshown " + RUN),
                findings(backwards("00:58:30", "01:00:00")),
                "68.6 s or an hour more");
        assertEquals(List.of(), findings(backwards("00:58:30", "01:00:00-05:00")));
        assertEquals(List.of("run.start-delay " + RUN), findings(backwards("00:58:30", "01:00:00-06:00")));
        assertEquals(
                List.of("data.clock /visits/0/tests/0/preWet", "data.clock " + RUN, "run.start-delay-unshown " + RUN),
                findings(backwards("01:10:00", "01:11:30")));
        assertEquals(List.of(), findings(backwards("02:00:00", "02:01:00")), "from 02:00 on there is one again");
    }

    @Test
    void aTimeThatIsSkippedMayBeWhatEitherOffsetGives() {
        assertEquals(
                List.of("data.clock " + RUN),
                findings(onDay("2026-03-08", "01:59:00", "02:00:30")),
                "by the offset of before 68.6 s, by that of after an hour too early");
        assertEquals(List.of(), findings(onDay("2026-03-08", "01:59:00", "03:00:30")));
    }

    @Test
    void everyRecordThatHoldsATimeIsAskedForTimesThatOccurOnce() {
        ClockTime twice = time("2026-11-01T01:30");
        ClockTime skipped = time("2025-03-09T02:30:00");
        Season season = SI.weather(w -> w.withLastRainEnd(time("2025-11-02T01:00")))
                .run(
                        0,
                        1,
                        r -> r.withEvents(List.of(
                                Event.of(Event.Kind.OTHER),
                                Event.of(Event.Kind.OTHER).withAt(twice))))
                .visit(v -> v.withAmendments(List.of(Amendment.of(skipped, "MV", null, null, null, null))))
                .book(b -> b.withMaintenance(changed(b.maintenance(), 0, m -> m.withStart(skipped))));
        assertEquals(
                List.of(
                        "data.clock DEVIATION EITHER /visits/0/weather",
                        "data.clock DEVIATION EITHER /visits/0/tests/0/runs/1/events/1",
                        "data.clock DEVIATION EITHER /visits/0/amendments/0",
                        "data.clock DEVIATION EITHER /maintenance/0"),
                season.findings());
        assertEquals(List.of(), season.site(site -> site.withTimeZone(null)).findings(), "not without a zone");
    }

    @Test
    void oneRecordIsFoundOnceHoweverManyReasons() {
        Season season = SI.run(0, 1, r -> r.withStart(time("2025-11-02T01:30:00")));
        assertEquals(
                List.of("data.clock DEVIATION EITHER " + SECOND),
                season.findings().stream()
                        .filter(f -> f.startsWith("data.clock") && f.endsWith(SECOND))
                        .toList());
    }

    @ParameterizedTest
    @CsvSource({
        "2019-05-20T00:00, false",
        "2019-05-19T23:59, false",
        "2019-05-19T23:59:59, true",
        "2019-05-20T04:59:59Z, true"
    })
    void maintenanceDoesNotComeBeforeTheSurfaceWasPlaced(String start, boolean isFound) {
        Season season = SI.maintenance(m -> m.withStart(time(start)));
        assertEquals(isFound ? List.of("data.clock DEVIATION EITHER /maintenance/0") : List.of(), season.findings());
    }
}
