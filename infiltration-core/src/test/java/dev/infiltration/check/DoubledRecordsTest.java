// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static dev.infiltration.Amounts.celsius;
import static dev.infiltration.Amounts.mm;
import static dev.infiltration.Amounts.time;
import static dev.infiltration.Season.and;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.Season;
import dev.infiltration.field.Instrument;
import dev.infiltration.field.Location;
import dev.infiltration.field.Maintenance;
import dev.infiltration.field.Ring;
import dev.infiltration.field.Site;
import dev.infiltration.field.Surface;
import dev.infiltration.field.Visit;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;

/** References to a duplicate id mean the first record; for the later one only the duplicate is reported. */
class DoubledRecordsTest {

    private static final Season SI = Season.si();

    @Test
    void theFirstRingIsMeant() {
        Ring bad = Ring.of("R1").withHeight(mm("1")).withInsideDiameter(mm("200"));
        assertEquals(
                List.of("data.duplicate NO_RATE NONE /rings/1"),
                SI.book(b -> b.withRings(and(b.rings(), bad))).findings());
        assertEquals(
                List.of("data.duplicate NO_RATE NONE /rings/1", "ring.unusable NO_RATE NONE /rings/1"),
                SI.book(b -> b.withRings(and(b.rings(), Ring.of("R1")))).findings());
    }

    @Test
    void theFirstSiteSurfaceAndLocationAreMeant() {
        Site noZone = Site.of("HQ").withTimeZone(ZoneOffset.ofHours(9));
        assertEquals(
                List.of("data.duplicate CAUTION NONE /sites/1"),
                SI.book(b -> b.withSites(and(b.sites(), noZone))).findings());
        Surface concrete = Surface.of("HQ-A").withType(Surface.Type.PERVIOUS_CONCRETE);
        assertEquals(
                List.of("data.duplicate NO_RATE NONE /sites/0/surfaces/1"),
                SI.site(s -> s.withSurfaces(and(s.surfaces(), concrete))).findings());
        Location near = Location.of("A2").withX(mm("0")).withY(mm("0"));
        assertEquals(
                List.of("data.duplicate NO_RATE NONE /sites/0/surfaces/0/locations/3"),
                SI.surface(s -> s.withLocations(and(s.locations(), near))).findings());
    }

    @Test
    void theFirstInstrumentIsMeant() {
        Instrument coarse = Instrument.of("B1")
                .withKind(Instrument.Kind.BALANCE)
                .withResolution(Reading.of("5", FieldUnit.KILOGRAM));
        assertEquals(
                List.of("data.duplicate CAUTION NONE /instruments/3"),
                SI.book(b -> b.withInstruments(and(b.instruments(), coarse))).findings());
    }

    @Test
    void theLaterVisitIsNotJudged() {
        Visit other = Visit.of("V1", "HQ-X", null)
                .withSwept(false)
                .withTests(List.of(
                        SI.book().visits().get(0).tests().get(0).withId("V1-X").withRing("R9")));
        assertEquals(
                List.of("data.duplicate NO_RATE NONE /visits/1"),
                SI.book(b -> b.withVisits(and(b.visits(), other))).findings());
    }

    @Test
    void aDoubledVisitTakesNoPartInWhatTheFirstDid() {
        assertEquals(
                List.of("data.duplicate NO_RATE NONE /visits/1"),
                SI.andVisit(v -> v).findings(),
                "not even for the ids of its tests");
    }

    @Test
    void theLaterMaintenanceIsNotJudged() {
        Maintenance early = Maintenance.of("M1", "HQ-X").withStart(time("2001-01-01T00:00"));
        assertEquals(
                List.of("data.duplicate CAUTION NONE /maintenance/1"),
                SI.book(b -> b.withMaintenance(and(b.maintenance(), early))).findings());
    }

    @Test
    void emptyIdsAreMissingAndNeverDoubled() {
        Season season =
                SI.book(b -> b.withInstruments(and(and(b.instruments(), Instrument.of("")), Instrument.of(""))));
        assertEquals(
                List.of(
                        "data.required OMISSION NONE /instruments/3/id",
                        "data.required OMISSION NONE /instruments/4/id"),
                season.findings());
    }

    @Test
    void testsWithoutIdsAreNotDoubled() {
        Season season = SI.tests(t -> t.withId(null));
        assertEquals(List.of("report.missing OMISSION NONE /visits/0"), season.findings());
    }

    @Test
    void aDoubledTestIsCautionedOnce() {
        Season season = SI.test(2, t -> t.withId("V1-A1").withSurfaceTemperature(celsius("25")));
        assertEquals(List.of("data.duplicate CAUTION NONE /visits/0/tests/2"), season.findings());
    }
}
