// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static dev.infiltration.Amounts.at;
import static dev.infiltration.Amounts.s;
import static dev.infiltration.Amounts.time;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.Season;
import dev.infiltration.field.ClockTime;
import dev.infiltration.field.Event;
import dev.infiltration.field.Pouring.End;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A test begins with the earliest of its prewetting and runs, void or not: rain before and during. */
class FirstStartTest {

    private static final Season SI = Season.si();
    private static final String WEATHER = " LOWERS /visits/0/weather";
    private static final String RAIN = "visit.rain DEVIATION" + WEATHER;
    private static final String UNSHOWN = "visit.rain-unshown CAUTION" + WEATHER;
    private static final String DURING = "visit.rain-during DEVIATION" + WEATHER;

    private static List<String> rain(Season season) {
        return season.findings().stream()
                .filter(f -> f.startsWith("visit.rain"))
                .toList();
    }

    private static Season rainEnd(String time) {
        return SI.weather(w -> w.withLastRainEnd(time(time)));
    }

    @Test
    void theEarliestStartCounts() {
        Season dry = rainEnd("2026-06-02T07:10:00");
        assertEquals(List.of(), rain(dry));
        assertEquals(List.of(RAIN), rain(dry.preWet(1, p -> p.withStart(at("07:09:59")))));
        assertEquals(List.of(RAIN), rain(dry.run(1, 1, r -> r.withStart(at("07:09:59")))), "a run before all else");
        assertEquals(
                List.of(RAIN),
                rain(dry.run(1, 1, r -> r.withStart(at("07:09:59")).withEnd(End.VOID))),
                "a void run");
        assertEquals(
                List.of(RAIN),
                rain(dry.preWet(1, p -> p.withStart(at("07:09:59")).withEnd(End.VOID))),
                "a void prewetting");
    }

    /** The first test starts at 07:10:00; 24 h (ASTM C1701/C1701M 7.3, memory). */
    @ParameterizedTest
    @CsvSource({
        "2026-06-02T07:10:00, kept", "2026-06-02T07:10:00.001, broken", "2026-06-02T07:10, unshown",
        "2026-06-02T07:11, broken", "2026-06-02T07:09, kept", "2026-06-02T12:10:00Z, kept",
        "2026-06-02T12:10:01Z, broken", "2026-06-03T23:00:00, broken"
    })
    void theLastRainEndsADayBefore(String end, String verdict) {
        List<String> expected = verdict.equals("kept") ? List.of() : List.of(verdict.equals("broken") ? RAIN : UNSHOWN);
        assertEquals(expected, rain(rainEnd(end)));
        Season notSince = SI.weather(w -> w.withLastRainEnd(null).withNoRainSince(time(end)));
        assertEquals(verdict.equals("kept") ? List.of() : List.of(UNSHOWN), rain(notSince), "never a deviation");
    }

    @Test
    void theEndOfTheLastRainWinsOverNoRainSince() {
        ClockTime late = at("06:00:00");
        assertEquals(List.of(), rain(SI.weather(w -> w.withNoRainSince(late))));
        ClockTime early = time("2026-05-01T06:00:00");
        assertEquals(List.of(RAIN), rain(SI.weather(w -> w.withLastRainEnd(late).withNoRainSince(early))));
    }

    @Test
    void aStartToTheMinuteIsReadKindly() {
        Season season = rainEnd("2026-06-02T07:10:30").preWet(0, p -> p.withStart(at("07:10")));
        assertEquals(List.of(UNSHOWN), rain(season));
        assertEquals(List.of(UNSHOWN), rain(season.weather(w -> w.withLastRainEnd(time("2026-06-02T07:11:00")))));
        assertEquals(List.of(RAIN), rain(season.weather(w -> w.withLastRainEnd(time("2026-06-02T07:11:01")))));
        assertEquals(List.of(), rain(season.weather(w -> w.withLastRainEnd(time("2026-06-02T07:10:00")))));
    }

    /** The last run starts at 09:16:00 and ends at 09:18:25.2. */
    @ParameterizedTest
    @CsvSource({"09:18:25.2, false", "09:18:25.1, true", "09:18, false", "09:17, true", "07:00:00, true", "09:19, false"
    })
    void nothingRunsAfterRainSetIn(String from, boolean isFound) {
        Season season = SI.weather(w -> w.withRainFrom(at(from)));
        assertEquals(isFound ? List.of(DURING) : List.of(), season.findings());
    }

    @Test
    void withoutElapsedAStartAfterRainSetInIsEnough() {
        Season season = SI.run(2, 1, r -> r.withElapsed(null)).weather(w -> w.withRainFrom(at("09:16:00")));
        assertEquals(List.of(), rain(season));
        assertEquals(List.of(DURING), rain(season.weather(w -> w.withRainFrom(at("09:15:59")))));
    }

    @Test
    void aPrewettingRunsToo() {
        Season season = SI.test(2, t -> t.withRuns(List.of())).weather(w -> w.withRainFrom(at("09:10:21.4")));
        assertEquals(List.of(), rain(season));
        assertEquals(List.of(DURING), rain(season.preWet(2, p -> p.withElapsed(s("21.5")))));
    }

    @Test
    void rainIsToldWhereItWasWritten() {
        Event rain = Event.of(Event.Kind.RAIN);
        Season season = SI.weather(w -> w.withRainFrom(at("07:00:00")))
                .run(1, 1, r -> r.withEvents(List.of(rain, rain)))
                .preWet(2, p -> p.withEvents(List.of(rain)));
        assertEquals(
                List.of(
                        DURING,
                        "visit.rain-during DEVIATION LOWERS /visits/0/tests/1/runs/1",
                        "visit.rain-during DEVIATION LOWERS /visits/0/tests/2/preWet"),
                season.findings());
        assertEquals(
                List.of("prewet.absent DEVIATION RAISES /visits/0/tests/2"),
                SI.preWet(2, p -> p.withEvents(List.of(rain)).withEnd(End.VOID)).findings(),
                "nothing at a void prewetting");
    }
}
