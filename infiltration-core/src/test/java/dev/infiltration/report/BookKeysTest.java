// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Instrument;
import dev.infiltration.field.SignOff;
import dev.infiltration.field.Site;
import dev.infiltration.field.Surface;
import dev.infiltration.field.SurfaceZone;
import dev.infiltration.field.Visit;
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

/** Every key of the field book has a place on a report, or a reason why it has none. Invented data. */
class BookKeysTest {

    /** Keys that the visit report prints, as the checks of this package show. */
    private static final Set<String> PRINTED = Set.of(
            "FieldBook.sites",
            "Site.id",
            "Site.name",
            "Site.description",
            "Site.position",
            "Position.latitude",
            "Position.longitude",
            "Site.surfaces",
            "Surface.id",
            "Surface.type",
            "Surface.description",
            "Surface.area",
            "Joints.length",
            "Surface.locations",
            "Location.id",
            "Location.zone",
            "Location.selection",
            "Location.x",
            "Location.y",
            "Location.position",
            "Location.slope",
            "Surface.zones",
            "SurfaceZone.id",
            "SurfaceZone.area",
            "Ring.id",
            "Ring.height",
            "FieldBook.instruments",
            "Instrument.id",
            "Instrument.kind",
            "Instrument.resolution",
            "Instrument.checkedOn",
            "Instrument.checkDue",
            "FieldBook.visits",
            "Visit.id",
            "Visit.surface",
            "Visit.date",
            "Visit.method",
            "Visit.purpose",
            "Visit.campaign",
            "Visit.references",
            "Visit.crew",
            "CrewMember.initials",
            "CrewMember.role",
            "Visit.instruments",
            "Visit.swept",
            "Visit.standingWater",
            "Visit.potableWater",
            "Visit.endPointWithin",
            "Visit.weather",
            "Weather.description",
            "Weather.air",
            "Weather.source",
            "Weather.lastRainEnd",
            "ClockTime.dateTime",
            "Weather.noRainSince",
            "Weather.lastRainDepth",
            "Weather.rainFrom",
            "Visit.tests",
            "LocationTest.id",
            "LocationTest.location",
            "LocationTest.notTested",
            "LocationTest.ring",
            "Offset.x",
            "Offset.y",
            "LocationTest.surfaceTemperature",
            "LocationTest.waterTemperature",
            "LocationTest.clearSpacing",
            "LocationTest.preWet",
            "PreWet.start",
            "PreWet.water",
            "PreWet.pours",
            "Pour.vessel",
            "Pour.before",
            "Pour.after",
            "PreWet.elapsed",
            "PreWet.end",
            "PreWet.depthAtStop",
            "PreWet.voidReason",
            "PreWet.head",
            "Head.state",
            "Head.lowest",
            "Head.highest",
            "PreWet.events",
            "Event.at",
            "Event.kind",
            "Event.note",
            "LocationTest.runs",
            "TestRun.start",
            "TestRun.water",
            "TestRun.pours",
            "TestRun.elapsed",
            "TestRun.end",
            "TestRun.depthAtStop",
            "TestRun.voidReason",
            "TestRun.head",
            "TestRun.events",
            "LocationTest.photos",
            "LocationTest.note",
            "Visit.amendments",
            "Amendment.at",
            "Amendment.by",
            "Amendment.where",
            "Amendment.was",
            "Amendment.now",
            "Amendment.why",
            "Visit.preparedBy",
            "SignOff.initials",
            "SignOff.role",
            "SignOff.on",
            "Visit.reviewedBy",
            "FieldBook.maintenance",
            "Maintenance.id",
            "Maintenance.surface",
            "Maintenance.locations",
            "Maintenance.start",
            "Maintenance.end",
            "Maintenance.technique",
            "Maintenance.note");

    /** Keys that no visit report prints: the host's own values, and what only steers the calculation or another page. */
    private static final Set<String> NOT_PRINTED = Set.of("Site.timeZone",
            "Position.accuracy",
            "Position.extra",
            "Surface.placedOn",
            "Surface.thickness",
            "Surface.thicknessIs",
            "Surface.joints",
            "Joints.pattern",
            "Joints.width",
            "Joints.joint",
            "Joints.chamfer",
            "Joints.voids",
            "Joints.extra",
            "Location.extra",
            "SurfaceZone.extra",
            "Surface.extra",
            "Site.externalIds",
            "Site.extra",
            "FieldBook.rings",
            "Ring.insideDiameter",
            "Ring.insideDiameters",
            "Ring.extra",
            "Instrument.tolerance",
            "Instrument.extra",
            "Visit.requestedLocations",
            "CrewMember.extra",
            "ClockTime.precision",
            "ClockTime.offset",
            "Weather.extra",
            "LocationTest.ringOffset",
            "Offset.turn",
            "Offset.extra",
            "PreWet.delay",
            "WaterReading.reading",
            "Pour.extra",
            "Head.extra",
            "Event.extra",
            "PreWet.extra",
            "TestRun.delay",
            "TestRun.extra",
            "LocationTest.extra",
            "Amendment.extra",
            "SignOff.extra",
            "Visit.extra",
            "Maintenance.passes",
            "Maintenance.wet",
            "Maintenance.jointsRefilled",
            "Maintenance.extra",
            "FieldBook.extra");

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
