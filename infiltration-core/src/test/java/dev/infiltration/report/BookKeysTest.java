// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.ClockTime;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Instrument;
import dev.infiltration.field.SignOff;
import dev.infiltration.field.Site;
import dev.infiltration.field.Surface;
import dev.infiltration.field.SurfaceZone;
import dev.infiltration.field.Visit;
import dev.infiltration.field.WaterReading;
import dev.infiltration.review.Review;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** A new key of the field book fails here until somebody decides which report shows it. Invented data. */
class BookKeysTest {

    /** Keys that a page of the report package reads. */
    private static final Set<String> PRINTED = Set.of(
            "Amendment.at",
            "Amendment.by",
            "Amendment.now",
            "Amendment.was",
            "Amendment.where",
            "Amendment.why",
            "CrewMember.initials",
            "CrewMember.role",
            "Event.at",
            "Event.kind",
            "Event.note",
            "FieldBook.instruments",
            "FieldBook.maintenance",
            "FieldBook.sites",
            "FieldBook.visits",
            "Head.highest",
            "Head.lowest",
            "Head.state",
            "Instrument.checkDue",
            "Instrument.checkedOn",
            "Instrument.id",
            "Instrument.kind",
            "Instrument.resolution",
            "Location.id",
            "Location.position",
            "Location.selection",
            "Location.slope",
            "Location.x",
            "Location.y",
            "Location.zone",
            "LocationTest.clearSpacing",
            "LocationTest.id",
            "LocationTest.location",
            "LocationTest.notTested",
            "LocationTest.note",
            "LocationTest.photos",
            "Photo.file",
            "Photo.sha256",
            "LocationTest.preWet",
            "LocationTest.ring",
            "LocationTest.runs",
            "LocationTest.surfaceTemperature",
            "LocationTest.waterTemperature",
            "Maintenance.end",
            "Maintenance.id",
            "Maintenance.locations",
            "Maintenance.note",
            "Maintenance.start",
            "Maintenance.surface",
            "Maintenance.technique",
            "Position.latitude",
            "Position.longitude",
            "Pour.after",
            "Pour.before",
            "Pour.vessel",
            "PreWet.depthAtStop",
            "PreWet.elapsed",
            "PreWet.end",
            "PreWet.events",
            "PreWet.head",
            "PreWet.pours",
            "PreWet.start",
            "PreWet.voidReason",
            "PreWet.water",
            "Ring.height",
            "Ring.id",
            "SignOff.initials",
            "SignOff.on",
            "SignOff.role",
            "Site.description",
            "Site.id",
            "Site.name",
            "Site.position",
            "Site.surfaces",
            "Surface.area",
            "Surface.description",
            "Surface.id",
            "Surface.locations",
            "Surface.placedOn",
            "Surface.thickness",
            "Surface.thicknessIs",
            "Surface.type",
            "Surface.zones",
            "SurfaceZone.area",
            "SurfaceZone.id",
            "TestRun.depthAtStop",
            "TestRun.elapsed",
            "TestRun.end",
            "TestRun.events",
            "TestRun.head",
            "TestRun.pours",
            "TestRun.start",
            "TestRun.voidReason",
            "TestRun.water",
            "Visit.amendments",
            "Visit.campaign",
            "Visit.crew",
            "Visit.date",
            "Visit.endPointWithin",
            "Visit.id",
            "Visit.instruments",
            "Visit.method",
            "Visit.potableWater",
            "Visit.preparedBy",
            "Visit.purpose",
            "Visit.references",
            "Visit.reviewedBy",
            "Visit.standingWater",
            "Visit.surface",
            "Visit.swept",
            "Visit.tests",
            "Visit.weather",
            "Weather.air",
            "Weather.description",
            "Weather.lastRainDepth",
            "Weather.lastRainEnd",
            "Weather.noRainSince",
            "Weather.rainFrom",
            "Weather.source");

    /** Keys that no page of the report package reads itself: the host's own values, and what only enters a calculation or a plan. */
    private static final Set<String> NOT_PRINTED = Set.of(
            "Amendment.extra",
            "CrewMember.extra",
            "Event.extra",
            "Photo.extra",
            "FieldBook.extra",
            "FieldBook.rings",
            "Head.extra",
            "Instrument.extra",
            "Instrument.tolerance",
            "Joints.chamfer",
            "Joints.extra",
            "Joints.joint",
            "Joints.length",
            "Joints.pattern",
            "Joints.voids",
            "Joints.width",
            "Location.extra",
            "LocationTest.extra",
            "LocationTest.ringOffset",
            "Maintenance.extra",
            "Maintenance.jointsRefilled",
            "Maintenance.passes",
            "Maintenance.wet",
            "Offset.extra",
            "Offset.turn",
            "Offset.x",
            "Offset.y",
            "Position.accuracy",
            "Position.extra",
            "Pour.extra",
            "PreWet.delay",
            "PreWet.extra",
            "Ring.extra",
            "Ring.insideDiameter",
            "Ring.insideDiameters",
            "SignOff.extra",
            "Site.externalIds",
            "Site.extra",
            "Site.timeZone",
            "Surface.extra",
            "Surface.joints",
            "SurfaceZone.extra",
            "TestRun.delay",
            "TestRun.extra",
            "Visit.extra",
            "Visit.requestedLocations",
            "Voids.across",
            "Voids.along",
            "Voids.extra",
            "Voids.length",
            "Voids.width",
            "Weather.extra");

    /** Values that are written as one scalar or amount: their components are not keys. */
    private static final Set<Class<?>> VALUES = Set.of(ClockTime.class, WaterReading.class);

    @Test
    void everyKeyIsDecided() {
        Set<String> keys = new TreeSet<>();
        collect(FieldBook.class, keys);
        Set<String> decided = new TreeSet<>(PRINTED);
        decided.addAll(NOT_PRINTED);
        assertEquals(decided, keys, "add a new key to a report and to PRINTED, or to NOT_PRINTED");
    }

    private static void collect(Type type, Set<String> keys) {
        if (type instanceof ParameterizedType generic) {
            for (Type argument : generic.getActualTypeArguments()) {
                collect(argument, keys);
            }
        } else if (type instanceof Class<?> record
                && record.isRecord()
                && !VALUES.contains(record)
                && record.getPackageName().equals(FieldBook.class.getPackageName())) {
            for (RecordComponent component : record.getRecordComponents()) {
                if (keys.add(record.getSimpleName() + "." + component.getName())) {
                    collect(component.getGenericType(), keys);
                }
            }
        }
    }

    @Test
    void optionalKeysOfVersionOneArePrinted() {
        Visit visit = Visit.of("V1", "S", LocalDate.of(2026, 6, 3))
                .withInstruments(List.of("B1"))
                .withReferences(Map.of("permit", "PT-0042"))
                .withEndPointWithin(Reading.of("2.5", FieldUnit.SECOND))
                .withPreparedBy(SignOff.of("MV", "technician", LocalDate.of(2026, 6, 4)))
                .withReviewedBy(SignOff.of("KD", "engineer", LocalDate.of(2026, 6, 5)));
        Surface surface =
                Surface.of("S").withZones(List.of(SurfaceZone.of("edge", Reading.of("120", FieldUnit.SQUARE_METRE))));
        FieldBook book = FieldBook.of()
                .withSites(List.of(Site.of("HQ").withSurfaces(List.of(surface))))
                .withInstruments(List.of(Instrument.of("B1").withCheckDue(LocalDate.of(2027, 3, 2))))
                .withVisits(List.of(visit));
        String text = Pages.visit(Review.of(book), "V1").text();
        for (String expected : List.of(
                "check due 2027-03-02",
                "edge, area 120 m²",
                "permit: PT-0042",
                "2.5 s",
                "MV, technician, 2026-06-04",
                "KD, engineer, 2026-06-05")) {
            assertTrue(text.contains(expected), expected + " in " + text);
        }
    }
}
