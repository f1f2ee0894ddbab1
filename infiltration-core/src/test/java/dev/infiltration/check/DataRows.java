// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static dev.infiltration.Amounts.at;
import static dev.infiltration.Amounts.m;
import static dev.infiltration.Amounts.s;
import static dev.infiltration.Amounts.time;
import static dev.infiltration.Season.and;
import static dev.infiltration.check.Row.absent;
import static dev.infiltration.check.Row.bound;
import static dev.infiltration.check.Row.broken;

import dev.infiltration.Season;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Instrument;
import dev.infiltration.field.Location;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Maintenance;
import dev.infiltration.field.Ring;
import dev.infiltration.field.Site;
import dev.infiltration.field.Surface;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;

/** Rows of the rules on data. */
final class DataRows {

    private static final Season SI = Season.si();

    private DataRows() {}

    static Stream<Row> all() {
        return Stream.of(required(), reference(), duplicate(), clock(), future())
                .flatMap(rows -> rows);
    }

    private static Stream<Row> required() {
        String rule = "data.required";
        return Stream.of(
                broken(rule, "site id", SI.book(DataRows::nameless), "OMISSION NONE /sites/1/id"),
                broken(
                        rule,
                        "surface id",
                        SI.site(site -> site.withSurfaces(and(site.surfaces(), Surface.of("")))),
                        "OMISSION NONE /sites/0/surfaces/1/id"),
                broken(
                        rule,
                        "location id",
                        SI.surface(s -> s.withLocations(and(s.locations(), Location.of(null)))),
                        "OMISSION NONE /sites/0/surfaces/0/locations/3/id"),
                broken(
                        rule,
                        "ring id",
                        SI.book(b -> b.withRings(and(b.rings(), b.rings().get(0).withId(null)))),
                        "OMISSION NONE /rings/1/id"),
                broken(
                        rule,
                        "instrument id",
                        SI.book(b -> b.withInstruments(and(b.instruments(), Instrument.of(null)))),
                        "OMISSION NONE /instruments/3/id"),
                broken(rule, "maintenance id", SI.maintenance(m -> m.withId(null)), "OMISSION NONE /maintenance/0/id"),
                broken(
                        rule,
                        "visit id",
                        SI.visit(v -> v.withId("")),
                        "report.missing OMISSION NONE /visits/0",
                        "OMISSION NONE /visits/0/id"),
                broken(
                        rule,
                        "visit surface",
                        SI.visit(v -> v.withSurface(null)),
                        "report.missing OMISSION NONE /visits/0",
                        "NO_RATE NONE /visits/0/surface"),
                broken(
                        rule,
                        "visit date",
                        SI.visit(v -> v.withDate(null)),
                        "report.missing OMISSION NONE /visits/0",
                        "NO_RATE NONE /visits/0/date"),
                broken(
                        rule,
                        "test location",
                        SI.andTest(t -> t.withId("V1-B").withLocation(null)),
                        "report.missing OMISSION NONE /visits/0",
                        "NO_RATE NONE /visits/0/tests/3/location"),
                broken(
                        rule,
                        "ring of a test that was made",
                        SI.test(1, t -> t.withRing(null)),
                        "NO_RATE NONE /visits/0/tests/1/ring"),
                bound(
                        rule,
                        "no ring where no test was made",
                        SI.andTest(t -> LocationTest.of("V1-B", "A1", null)
                                .withNotTested(LocationTest.NotTested.PARKED_VEHICLE)),
                        "test.not-tested CAUTION NONE /visits/0/tests/3"),
                absent(rule, "empty book", SI.book(b -> FieldBook.empty())));
    }

    private static FieldBook nameless(FieldBook book) {
        return book.withSites(and(book.sites(), Site.of(null)));
    }

    private static Stream<Row> reference() {
        String rule = "data.reference";
        return Stream.of(
                broken(
                        rule,
                        "surface",
                        SI.visit(v -> v.withSurface("HQ-X")),
                        "report.missing OMISSION NONE /visits/0",
                        "NO_RATE NONE /visits/0/surface"),
                broken(
                        rule,
                        "location, its distance taped",
                        SI.test(1, t -> t.withLocation("A9").withClearSpacing(m("2"))),
                        "NO_RATE NONE /visits/0/tests/1/location"),
                broken(rule, "ring", SI.test(1, t -> t.withRing("R9")), "NO_RATE NONE /visits/0/tests/1/ring"),
                broken(
                        rule,
                        "instrument",
                        SI.visit(v -> v.withInstruments(and(v.instruments(), "B9"))),
                        "CAUTION NONE /visits/0/instruments/3"),
                broken(
                        rule,
                        "surface cleaned",
                        SI.maintenance(m -> m.withSurface("HQ-X")),
                        "CAUTION NONE /maintenance/0/surface"),
                broken(
                        rule,
                        "location cleaned",
                        SI.maintenance(m -> m.withLocations(List.of("A1", "A9"))),
                        "CAUTION NONE /maintenance/0/locations/1"),
                bound(
                        rule,
                        "a ring that nobody uses",
                        SI.book(b -> b.withRings(and(b.rings(), b.rings().get(0).withId("R2"))))),
                absent(rule, "no instrument named", SI.visit(v -> v.withInstruments(List.of()))),
                absent(rule, "no surface cleaned", SI.maintenance(m -> Maintenance.of("M1", null))));
    }

    private static Stream<Row> duplicate() {
        String rule = "data.duplicate";
        return Stream.of(
                broken(rule, "site", SI.book(b -> b.withSites(and(b.sites(), Site.of("HQ")))), "CAUTION NONE /sites/1"),
                broken(
                        rule,
                        "surface, at another site",
                        SI.book(b ->
                                b.withSites(and(b.sites(), Site.of("HX").withSurfaces(List.of(Surface.of("HQ-A")))))),
                        "NO_RATE NONE /sites/1/surfaces/0"),
                broken(
                        rule,
                        "location",
                        SI.surface(s -> s.withLocations(and(s.locations(), Location.of("A1")))),
                        "NO_RATE NONE /sites/0/surfaces/0/locations/3"),
                broken(
                        rule,
                        "ring",
                        SI.book(b -> b.withRings(and(b.rings(), b.rings().get(0)))),
                        "NO_RATE NONE /rings/1"),
                broken(
                        rule,
                        "instrument",
                        SI.book(b -> b.withInstruments(
                                and(b.instruments(), b.instruments().get(0)))),
                        "CAUTION NONE /instruments/3"),
                broken(rule, "visit", SI.andVisit(v -> v.withTests(List.of())), "NO_RATE NONE /visits/1"),
                broken(rule, "test", SI.test(2, t -> t.withId("V1-A1")), "CAUTION NONE /visits/0/tests/2"),
                broken(
                        rule,
                        "maintenance",
                        SI.book(b -> b.withMaintenance(
                                and(b.maintenance(), b.maintenance().get(0)))),
                        "CAUTION NONE /maintenance/1"),
                bound(
                        rule,
                        "one location id on two surfaces",
                        SI.site(site -> site.withSurfaces(
                                and(site.surfaces(), Surface.of("HQ-B").withLocations(List.of(Location.of("A1"))))))),
                bound(
                        rule,
                        "a ring and an instrument of one id",
                        SI.book(b -> b.withRings(and(b.rings(), b.rings().get(0).withId("B1"))))),
                absent(
                        rule,
                        "two rings without id",
                        SI.book(b -> b.withRings(and(and(b.rings(), usable(b)), usable(b)))),
                        "data.required OMISSION NONE /rings/1/id",
                        "data.required OMISSION NONE /rings/2/id"));
    }

    private static Ring usable(FieldBook book) {
        return book.rings().get(0).withId(null);
    }

    private static Stream<Row> clock() {
        String rule = "data.clock";
        return Stream.of(
                broken(
                        rule,
                        "a run before the run before it has ended",
                        SI.run(0, 1, r -> r.withStart(at("07:13:51.6"))),
                        "DEVIATION EITHER /visits/0/tests/0/runs/1"),
                broken(
                        rule,
                        "a visit before the surface was placed",
                        SI.surface(s -> s.withPlacedOn(LocalDate.parse("2026-06-04")))
                                .book(b -> b.withMaintenance(List.of())),
                        "DEVIATION EITHER /visits/0"),
                broken(
                        rule,
                        "maintenance before the surface was placed",
                        SI.surface(s -> s.withPlacedOn(LocalDate.parse("2025-10-12"))),
                        "DEVIATION EITHER /maintenance/0"),
                broken(
                        rule,
                        "a local time that occurs twice",
                        SI.maintenance(m -> m.withEnd(time("2025-11-02T01:30"))),
                        "DEVIATION EITHER /maintenance/0"),
                broken(
                        rule,
                        "a delay below zero",
                        SI.run(0, 1, r -> r.withDelay(s("-0.1"))),
                        "DEVIATION EITHER /visits/0/tests/0/runs/1"),
                broken(
                        rule,
                        "a delay below zero settles nothing",
                        SI.run(0, 0, r -> r.withStart(at("07:12:21.5")).withDelay(s("-5"))),
                        "DEVIATION EITHER /visits/0/tests/0/runs/0",
                        "run.start-delay DEVIATION RAISES /visits/0/tests/0/runs/0"),
                bound(rule, "a delay of zero", SI.run(0, 1, r -> r.withDelay(s("0")))),
                bound(rule, "a run at the end of the run before it", SI.run(0, 1, r -> r.withStart(at("07:13:51.7")))),
                bound(
                        rule,
                        "a visit on the day the surface was placed",
                        SI.surface(s -> s.withPlacedOn(LocalDate.parse(Season.DATE)))
                                .book(b -> b.withMaintenance(List.of()))),
                absent(rule, "no starts", SI.tests(DataRows::withoutStarts)));
    }

    private static LocationTest withoutStarts(LocationTest test) {
        return test.withPreWet(test.preWet().withStart(null))
                .withRuns(test.runs().stream().map(r -> r.withStart(null)).toList());
    }

    private static Stream<Row> future() {
        String rule = "data.future";
        Season tomorrow = SI.visit(v -> v.withDate(Season.TODAY.plusDays(1))).tests(DataRows::withoutStarts);
        Season today = SI.visit(v -> v.withDate(Season.TODAY)).tests(DataRows::withoutStarts);
        return Stream.of(
                broken(rule, "tomorrow", tomorrow, "CAUTION NONE /visits/0"),
                bound(rule, "today", today),
                absent(
                        rule,
                        "no date",
                        SI.visit(v -> v.withDate(null)),
                        "report.missing OMISSION NONE /visits/0",
                        "data.required NO_RATE NONE /visits/0/date"));
    }
}
