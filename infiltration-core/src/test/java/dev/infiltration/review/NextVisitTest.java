// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Location;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Pouring.End;
import dev.infiltration.field.PreWet;
import dev.infiltration.field.Ring;
import dev.infiltration.field.Site;
import dev.infiltration.field.Surface;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.Visit;
import dev.infiltration.field.WaterReading;
import dev.infiltration.method.Methods;
import dev.infiltration.plan.ExpectedRate;
import dev.infiltration.plan.VisitPlan;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.measure.quantity.Time;
import org.junit.jupiter.api.Test;

/** Rates are 3.60 kg in a ring of 300 mm: 183346.64 / seconds in mm/h (derived: 4583666000·3.6/300²). */
class NextVisitTest {

    private static final double K = 4_583_666_000.0 * 3.6 / 300 / 300;

    @Test
    void lastVisitWithFiguresTellsTheRateToBeReadyFor() {
        Visit old = visit("V1", "2025-06-03", "100", "100", "100");
        Visit last = visit("V2", "2026-06-03", "80", "700", "50", "90");
        Visit empty = visit("V3", "2026-07-03");
        NextVisit next = next(last, empty, old).orElseThrow();
        ExpectedRate rate = next.expected().orElseThrow();
        assertEquals(K / 700, rate.lowest().millimetresPerHour(), 1e-9 * K);
        assertEquals(K / 90, rate.likely().millimetresPerHour(), 1e-9 * K, "the lower of the middle two");
        assertEquals(K / 50, rate.highest().millimetresPerHour(), 1e-9 * K);
        assertEquals(Optional.of(LocalDate.of(2026, 6, 3)), next.lastVisit());
    }

    @Test
    void boundsStandAsTheyAre() {
        LocationTest stopped =
                LocationTest.of("T", "A1", "R1").withPreWet(PreWet.of(null, water(), seconds("600"), End.STOPPED));
        NextVisit next =
                next(visit("V1", "2026-06-03").withTests(List.of(stopped))).orElseThrow();
        assertEquals(K / 600, next.expected().orElseThrow().likely().millimetresPerHour(), 1e-9 * K);
    }

    @Test
    void whatIsNotOnRecordIsAbsent() {
        NextVisit next = next().orElseThrow();
        assertEquals(Optional.empty(), next.expected());
        assertEquals(Optional.empty(), next.lastVisit());
        assertNull(next.ring());
        assertEquals("unit-pavement", next.method().id(), "by the kind of surface");
        assertEquals(Optional.empty(), NextVisit.of(Review.of(book()), Methods.builtIn(), "HQ-Z"));
    }

    @Test
    void methodIsThatOfTheLastVisitWhereItIsKnown() {
        Visit visit = visit("V1", "2026-06-03", "100");
        assertEquals(
                "utility-practice",
                next(visit.withMethod("utility-practice"))
                        .orElseThrow()
                        .method()
                        .id());
        assertEquals(
                "unit-pavement",
                next(visit.withMethod("of our own")).orElseThrow().method().id());
    }

    @Test
    void planTakesRingLocationsAndClockOfTheBook() {
        NextVisit next = next(visit("V1", "2026-06-03", "100")).orElseThrow();
        VisitPlan plan = next.plan(next.expected().orElseThrow());
        assertEquals(Reading.of("300", FieldUnit.MILLIMETRE), plan.ring());
        assertEquals(
                List.of("A1", "A2", "A3", "A4"),
                plan.locations().stream().map(Location::id).toList());
        assertEquals(ZoneId.of("America/Chicago"), plan.zone());
        assertEquals(0, plan.missing());
    }

    /** What was written down wrongly does not stop a plan. */
    @Test
    void ringsThatAreNoneAreNotPlannedWith() {
        Ring broken = Ring.of("R1").withInsideDiameter(Reading.of("1e300", FieldUnit.MILLIMETRE));
        FieldBook book = book(visit("V1", "2026-06-03", "100")).withRings(List.of(broken));
        NextVisit next =
                NextVisit.of(Review.of(book), Methods.builtIn(), "HQ-A").orElseThrow();
        assertNull(next.ring());
        VisitPlan plan = next.plan(ExpectedRate.of(new InfiltrationRate(254)));
        assertTrue(plan.ring().sameAmountAs(Reading.of("300", FieldUnit.MILLIMETRE)), plan::text);
    }

    private static Optional<NextVisit> next(Visit... visits) {
        return NextVisit.of(Review.of(book(visits)), Methods.builtIn(), "HQ-A");
    }

    private static FieldBook book(Visit... visits) {
        Surface surface = Surface.of("HQ-A")
                .withType(Surface.Type.PAVERS)
                .withArea(Reading.of("900", FieldUnit.SQUARE_METRE))
                .withLocations(List.of(Location.of("A1"), Location.of("A2"), Location.of("A3"), Location.of("A4")));
        Site site = Site.of("HQ").withTimeZone(ZoneId.of("America/Chicago")).withSurfaces(List.of(surface));
        return FieldBook.empty()
                .withSites(List.of(Site.of("other"), site))
                .withRings(List.of(Ring.of("R1").withInsideDiameter(Reading.of("300", FieldUnit.MILLIMETRE))))
                .withVisits(List.of(visits));
    }

    /** A visit with one run of so many seconds at each of its locations. */
    private static Visit visit(String id, String date, String... seconds) {
        List<LocationTest> tests = IntStream.range(0, seconds.length)
                .mapToObj(i -> LocationTest.of(id + "-" + i, "A" + (i + 1), "R1")
                        .withRuns(List.of(TestRun.of(null, water(), seconds(seconds[i]), End.DRAINED))))
                .toList();
        return Visit.of(id, "HQ-A", LocalDate.parse(date)).withTests(tests);
    }

    private static WaterReading water() {
        return WaterReading.weighed(Reading.of("3.60", FieldUnit.KILOGRAM));
    }

    private static Reading<Time> seconds(String seconds) {
        return Reading.of(seconds, FieldUnit.SECOND);
    }
}
