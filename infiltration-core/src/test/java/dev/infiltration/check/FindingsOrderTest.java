// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static dev.infiltration.Amounts.celsius;
import static dev.infiltration.Amounts.kg;
import static dev.infiltration.Amounts.mm;
import static dev.infiltration.Amounts.percent;
import static dev.infiltration.Amounts.s;
import static dev.infiltration.Amounts.time;
import static dev.infiltration.Season.and;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.Season;
import dev.infiltration.field.Event;
import dev.infiltration.field.Head;
import dev.infiltration.field.Instrument;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Pouring.End;
import dev.infiltration.field.Ring;
import dev.infiltration.field.Site;
import dev.infiltration.field.TestRun;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Findings stand in the order of the document: a record before its members, members as the field book shows them. */
class FindingsOrderTest {

    private static final Season SI = Season.si();

    @Test
    void everyKindOfRecordStandsWhereTheFieldBookShowsIt() {
        Event twice = Event.of(Event.Kind.OTHER).withAt(time("2025-11-02T01:30"));
        Season season = SI.book(b -> b.withSites(and(b.sites(), Site.of(null)))
                        .withRings(and(b.rings(), Ring.of(null)))
                        .withInstruments(and(b.instruments(), Instrument.of(null))))
                .visit(v -> v.withId(null).withInstruments(and(v.instruments(), "B9")))
                .weather(w -> w.withLastRainEnd(time("2025-11-02T01:30")))
                .test(0, t -> t.withLocation("A9").withRing("R9"))
                .preWet(
                        0,
                        p -> p.withWater(kg("1.00"))
                                .withHead(Head.of(Head.State.BELOW))
                                .withEvents(List.of(twice)))
                .run(
                        0,
                        0,
                        r -> r.withWater(kg("1.00"))
                                .withHead(Head.of(Head.State.BELOW))
                                .withEvents(List.of(twice)))
                .maintenance(m -> m.withId(null).withSurface("HQ-X"));
        assertEquals(
                List.of(
                        "data.required /sites/1/id",
                        "ring.unusable /rings/1",
                        "data.required /rings/1/id",
                        "data.required /instruments/3/id",
                        "report.missing /visits/0",
                        "data.required /visits/0/id",
                        "data.reference /visits/0/instruments/3",
                        "data.clock /visits/0/weather",
                        "data.reference /visits/0/tests/0/location",
                        "data.reference /visits/0/tests/0/ring",
                        "prewet.mass /visits/0/tests/0/preWet/water",
                        "prewet.head /visits/0/tests/0/preWet/head",
                        "data.clock /visits/0/tests/0/preWet/events/0",
                        "run.mass /visits/0/tests/0/runs/0/water",
                        "run.head /visits/0/tests/0/runs/0/head",
                        "data.clock /visits/0/tests/0/runs/0/events/0",
                        "data.required /maintenance/0/id",
                        "data.reference /maintenance/0/surface"),
                season.findings().stream()
                        .map(f -> f.replaceAll(" [A-Z_]+ [A-Z]+ ", " "))
                        .toList());
    }

    @Test
    void surfaceDateAndTestsOfAVisitStandInThatOrder() {
        Season season = SI.visit(v -> v.withSurface(null).withDate(null).withId(""));
        assertEquals(
                List.of("/visits/0", "/visits/0/id", "/visits/0/surface", "/visits/0/date"),
                season.findings().stream()
                        .map(f -> f.substring(f.lastIndexOf(' ') + 1))
                        .toList());
    }

    @Test
    void positionsAreNumbers() {
        List<LocationTest> twelve = IntStream.range(0, 12)
                .mapToObj(i -> LocationTest.of("V1-" + i, "A1", "R1"))
                .toList();
        Season season = SI.visit(v -> v.withRequestedLocations(0).withTests(twelve));
        assertEquals(
                IntStream.range(0, 12)
                        .mapToObj(i -> "test.empty OMISSION NONE /visits/0/tests/" + i)
                        .toList(),
                season.findings());
    }

    @Test
    void atOnePlaceTheCatalogueSaysTheOrder() {
        TestRun bad = TestRun.of(null, null, null, null)
                .withEvents(List.of(Event.of(Event.Kind.LEAK), Event.of(Event.Kind.RAIN)))
                .withDelay(s("999"));
        Season season = SI.test(
                        0,
                        t -> t.withRuns(List.of(bad))
                                .withSurfaceTemperature(celsius("-1"))
                                .withNotTested(LocationTest.NotTested.SNOW))
                .preWet(0, p -> p.withEnd(End.STOPPED).withWater(null))
                .location(0, l -> l.withSlope(percent("9")));
        assertEquals(
                List.of(
                        "visit.freezing CAUTION LOWERS /visits/0/tests/0",
                        "run.slope-uncovered CAUTION LOWERS /visits/0/tests/0",
                        "prewet.discontinued CAUTION NONE /visits/0/tests/0/preWet",
                        "visit.rain-during DEVIATION LOWERS /visits/0/tests/0/runs/0",
                        "prewet.standing DEVIATION LOWERS /visits/0/tests/0/runs/0",
                        "run.unusable NO_RATE NONE /visits/0/tests/0/runs/0",
                        "run.start-delay DEVIATION RAISES /visits/0/tests/0/runs/0",
                        "run.end-unrecorded OMISSION RAISES /visits/0/tests/0/runs/0",
                        "run.event CAUTION RAISES /visits/0/tests/0/runs/0"),
                season.findings());
    }

    @Test
    void aRingsFindingsComeInTheCataloguesOrder() {
        Season season = SI.visit(v -> v.withInstruments(List.of("B1", "W1")))
                .ring(r -> r.withInsideDiameter(mm("4.0e2")).withHeight(mm("1")));
        assertEquals(
                List.of("ring.inside-diameter", "ring.height", "ring.resolution-unshown"),
                season.findings().stream()
                        .map(f -> f.substring(0, f.indexOf(' ')))
                        .toList());
    }

    @Test
    void textsAreTheSameForTheSameBook() {
        Season season = SI.ring(r -> r.withHeight(mm("1")));
        List<String> once = texts(season);
        assertEquals(once, texts(season));
        assertEquals(1, once.size());
        assertEquals(
                "ring.height|ring R1|1 mm|at least 50 mm",
                once.get(0).substring(0, once.get(0).lastIndexOf('|')));
    }

    private static List<String> texts(Season season) {
        return Checker.withDefaults().withToday(Season.TODAY).check(season.book()).findings().stream()
                .map(f -> String.join("|", f.rule(), f.subject(), f.observed(), f.allowed(), f.message()))
                .toList();
    }
}
