// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static dev.infiltration.Amounts.at;
import static dev.infiltration.Amounts.in;
import static dev.infiltration.Amounts.mm;
import static dev.infiltration.Amounts.s;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.Season;
import dev.infiltration.field.Event;
import dev.infiltration.field.Head;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Pouring.End;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Prewettings that are missing, void, discontinued or still standing, and heads. */
class PreWettingTest {

    private static final Season SI = Season.si();
    private static final String ABSENT = "prewet.absent DEVIATION RAISES /visits/0/tests/0";
    private static final String DISCONTINUED = "prewet.discontinued CAUTION NONE /visits/0/tests/0/preWet";
    private static final String RUN = "/visits/0/tests/0/runs/0";

    private static final LocationTest TEST = SI.book().visits().get(0).tests().get(0);

    /** The season with a test at the same location that has one run and no prewetting. */
    private static Season later(Season season, String run) {
        return season.andTest(t -> TEST.withId("V1-A1b")
                .withPreWet(null)
                .withRuns(List.of(TEST.runs().get(0).withStart(at(run)))));
    }

    @Test
    void theFirstRunOfASeriesNeedsAPrewettingOfItsOwnTest() {
        Season without = SI.test(0, t -> t.withPreWet(null));
        assertEquals(List.of(ABSENT), without.findings());
        Season other = later(SI.test(0, t -> t.withRuns(List.of())), "07:20:00");
        assertEquals(
                List.of("prewet.absent DEVIATION RAISES /visits/0/tests/3"),
                other.findings(),
                "a prewetting of another test is none");
    }

    @Test
    void voidRunsAtTheBeginningDoNotCount() {
        Season season = SI.run(0, 0, r -> r.withEnd(End.VOID));
        assertEquals(List.of("run.void CAUTION NONE " + RUN), season.findings());
        Season allVoid = SI.test(
                        0,
                        t -> t.withPreWet(null)
                                .withRuns(t.runs().stream()
                                        .map(r -> r.withEnd(End.VOID))
                                        .toList()))
                .visit(v -> v.withRequestedLocations(2));
        assertEquals(
                List.of("run.void CAUTION NONE " + RUN, "run.void CAUTION NONE /visits/0/tests/0/runs/1"),
                allVoid.findings());
    }

    @Test
    void aRepeatTestNeedsNone() {
        Season season = later(SI.test(0, t -> t.withRuns(List.of(t.runs().get(0)))), "07:16:00");
        assertEquals(List.of(), season.findings());
        Season firstIsVoid = season.run(0, 0, r -> r.withEnd(End.VOID));
        assertEquals(
                List.of("run.void CAUTION NONE " + RUN, "prewet.absent DEVIATION RAISES /visits/0/tests/3"),
                firstIsVoid.findings());
    }

    @Test
    void aRunOnStandingWaterIsToldOnce() {
        Season season = SI.preWet(0, p -> p.withEnd(End.STOPPED).withElapsed(s("25.0")));
        assertEquals(List.of(DISCONTINUED, "prewet.standing DEVIATION LOWERS " + RUN), season.findings());
    }

    @Test
    void aDiscontinuedPrewettingIsNoPrewettingThatIsAbsent() {
        Season season = SI.visit(v -> v.withRequestedLocations(3))
                .test(0, t -> t.withRuns(List.of()))
                .preWet(0, p -> p.withEnd(End.STOPPED).withDepthAtStop(mm("20")));
        assertEquals(List.of(DISCONTINUED), season.findings());
    }

    @Test
    void eventsOfAPrewettingMoveNoRunsRate() {
        Season season =
                SI.preWet(0, p -> p.withEvents(List.of(Event.of(Event.Kind.LEAK), Event.of(Event.Kind.RING_MOVED))));
        assertEquals(List.of(), season.findings());
    }

    /** Marks at 10 and 15 mm (ASTM C1701/C1701M 6.1, secondary) or 0.40 and 0.60 in (memory). */
    @ParameterizedTest
    @CsvSource({
        ", 10, 15, true",
        ", 9, 15, false",
        ", 10, 16, false",
        ", 16, , false",
        ", , 9, false",
        ", , , true",
        "BETWEEN_MARKS, 10, 15, true",
        "BETWEEN_MARKS, 9.9, 15, false",
        "BELOW, 10, 15, false",
        "ABOVE, , , false",
        "BOTH, , , false",
        "NEVER_REACHED, , , false",
        ", -1, 15, false"
    })
    void headsStayBetweenTheMarks(Head.State state, String lowest, String highest, boolean isKept) {
        Head head = Head.of(state)
                .withLowest(lowest == null ? null : mm(lowest))
                .withHighest(highest == null ? null : mm(highest));
        assertEquals(
                isKept ? List.of() : List.of("prewet.head DEVIATION EITHER /visits/0/tests/0/preWet/head"),
                SI.preWet(0, p -> p.withHead(head)).findings());
        assertEquals(
                isKept ? List.of() : List.of("run.head DEVIATION EITHER " + RUN + "/head"),
                SI.run(0, 0, r -> r.withHead(head)).findings());
    }

    @Test
    void levelsAreJudgedByTheirOwnSystem() {
        Head mixed = Head.of(null).withLowest(in("0.40")).withHighest(mm("15"));
        assertEquals(List.of(), SI.run(0, 0, r -> r.withHead(mixed)).findings());
        Head inches = mixed.withHighest(in("0.60"));
        assertEquals(List.of(), SI.run(0, 0, r -> r.withHead(inches)).findings(), "0.60 in is 15.24 mm");
        Head millimetres = mixed.withHighest(mm("15.24"));
        assertEquals(
                List.of("run.head DEVIATION EITHER " + RUN + "/head"),
                SI.run(0, 0, r -> r.withHead(millimetres)).findings());
    }
}
