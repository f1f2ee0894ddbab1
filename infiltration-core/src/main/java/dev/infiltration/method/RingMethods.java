// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.method;

import static dev.infiltration.field.Surface.Type.GRID;
import static dev.infiltration.field.Surface.Type.OTHER;
import static dev.infiltration.field.Surface.Type.PAVERS;
import static dev.infiltration.field.Surface.Type.POROUS_ASPHALT;

import dev.infiltration.field.Surface;
import dev.infiltration.method.Basis.Trust;
import dev.infiltration.method.LocationCount.Step;
import dev.infiltration.method.ReportItem.Item;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.util.List;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;

/** The numbers of the three built-in methods. Clauses are those of C1701; C1781 is believed to be the same. */
final class RingMethods {

    private static final String RING_STANDARD = "ASTM C1701/C1701M";

    static final TestMethod PERVIOUS_CONCRETE = new TestMethod(
            "pervious-concrete",
            List.of(
                    "C1701",
                    "C1701M",
                    "C1701/C1701M",
                    "C1701/C1701M-09",
                    "C1701/C1701M-17a",
                    "C1701/C1701M-17a(2023)",
                    "ASTM C1701",
                    "ASTM C1701M",
                    "ASTM C1701/C1701M",
                    "ASTM C1701/C1701M-09",
                    "ASTM C1701/C1701M-17a",
                    "ASTM C1701/C1701M-17a(2023)"),
            "ASTM C1701/C1701M, infiltration rate of in-place pervious concrete",
            null,
            List.of(Surface.Type.PERVIOUS_CONCRETE),
            new Limits()
                    .and(
                            Limit.INSIDE_DIAMETER,
                            new Band<>(
                                    Range.around(mm("300"), "10"), Range.around(inches("12.0"), "0.5"), memory("6.1")))
                    .and(
                            Limit.RING_HEIGHT,
                            new Band<>(Range.atLeast(mm("50")), Range.atLeast(inches("2.0")), memory("6.1")))
                    .and(
                            Limit.DIAMETER_RESOLUTION,
                            new Band<>(Range.atMost(mm("1")), Range.atMost(inches("0.05")), memory("6.1")))
                    .and(
                            Limit.HEAD,
                            new Band<>(
                                    new Range<>(mm("10"), mm("15")),
                                    new Range<>(inches("0.40"), inches("0.60")),
                                    Basis.clause(RING_STANDARD, "8.2, 8.3", Trust.SECONDARY)))
                    .and(Limit.PREWET_MASS, mass("3.60", "0.05", "8.0", "0.1", "8.2"))
                    .and(
                            Limit.POUR_TOLERANCE,
                            new Band<>(Range.atMost(kg("0.05")), Range.atMost(lb("0.1")), memory("8.2, 8.3")))
                    .and(
                            Limit.MASS_RESOLUTION,
                            new Band<>(
                                    Range.atMost(Reading.of("10", FieldUnit.GRAM)),
                                    Range.atMost(lb("0.02")),
                                    memory("6.2, 8.3")))
                    .and(Limit.TIME_RESOLUTION, Band.inBoth(Range.atMost(seconds("0.1")), memory("6.4")))
                    .and(
                            Limit.START_DELAY,
                            Band.inBoth(
                                    Range.atMost(Reading.of("2", FieldUnit.MINUTE)),
                                    Basis.clause(RING_STANDARD, "8.3", Trust.SECONDARY)))
                    .and(
                            Limit.REPEAT_DELAY,
                            Band.inBoth(Range.atMost(Reading.of("5", FieldUnit.MINUTE)), memory("8.4")))
                    .and(Limit.DRY_TIME, Band.inBoth(Range.atLeast(hours("24")), memory("7.3")))
                    .and(
                            Limit.CLEAR_SPACING,
                            new Band<>(
                                    Range.atLeast(Reading.of("1", FieldUnit.METRE)),
                                    Range.atLeast(Reading.of("3", FieldUnit.FOOT)),
                                    memory("7.2")))
                    .and(Limit.SPACING_TIME, Band.inBoth(Range.atLeast(hours("24")), memory("7.2")))
                    .and(
                            Limit.SURFACE_TEMPERATURE,
                            new Band<>(
                                    Range.atMost(Reading.of("38", FieldUnit.CELSIUS)),
                                    Range.atMost(Reading.of("100", FieldUnit.FAHRENHEIT)),
                                    memory("note")))
                    .toMap(),
            List.of(
                    new MassStep(seconds("30"), mass("18.00", "0.05", "40.00", "0.1", "8.3")),
                    new MassStep(null, mass("3.60", "0.05", "8.0", "0.1", "8.3"))),
            2,
            new LocationCount(
                    List.of(new Step(3, null, m2("2500")), new Step(1, m2("1000"), null)),
                    List.of(new Step(3, null, ft2("25000")), new Step(1, ft2("10000"), null)),
                    Basis.clause("Brown and Borst, US EPA, 2013, EWRI Congress", "C1701 clause 7.1", Trust.SECONDARY)),
            List.of(
                    ReportItem.of(Item.IDENTIFICATION),
                    ReportItem.of(Item.LOCATION),
                    ReportItem.of(Item.AGE),
                    ReportItem.of(Item.THICKNESS),
                    ReportItem.of(Item.DATE),
                    ReportItem.of(Item.LAST_RAIN_DEPTH)));

    static final TestMethod UNIT_PAVEMENT = PERVIOUS_CONCRETE
            .withId("unit-pavement")
            .withAliases(List.of(
                    "C1781",
                    "C1781M",
                    "C1781/C1781M",
                    "C1781/C1781M-13",
                    "C1781/C1781M-14",
                    "C1781/C1781M-14a",
                    "C1781/C1781M-15",
                    "C1781/C1781M-21",
                    "ASTM C1781",
                    "ASTM C1781M",
                    "ASTM C1781/C1781M",
                    "ASTM C1781/C1781M-13",
                    "ASTM C1781/C1781M-14",
                    "ASTM C1781/C1781M-14a",
                    "ASTM C1781/C1781M-15",
                    "ASTM C1781/C1781M-21"))
            .withDesignation("ASTM C1781/C1781M, infiltration rate of permeable unit pavement")
            .withSurfaceTypes(List.of(PAVERS, GRID))
            .withReportItems(List.of(
                    ReportItem.of(Item.IDENTIFICATION),
                    ReportItem.of(Item.LOCATION),
                    ReportItem.of(Item.PAVEMENT_DESCRIPTION),
                    ReportItem.of(Item.DATE),
                    ReportItem.of(Item.LAST_RAIN_DEPTH)));

    static final TestMethod UTILITY_PRACTICE = PERVIOUS_CONCRETE
            .withId("utility-practice")
            .withAliases(List.of())
            .withDesignation("practice of utilities, by the steps of ASTM C1701/C1701M")
            .withSurfaceTypes(List.of(Surface.Type.values()))
            .withLocationCount(LocationCount.fixed(2, Basis.commonPractice()))
            .withReportItems(List.of(
                    ReportItem.of(Item.IDENTIFICATION),
                    ReportItem.of(Item.LOCATION),
                    ReportItem.of(Item.SITE_DESCRIPTION),
                    ReportItem.of(Item.PAVEMENT_DESCRIPTION, PAVERS, GRID, OTHER),
                    ReportItem.of(Item.AGE, Surface.Type.PERVIOUS_CONCRETE, POROUS_ASPHALT),
                    ReportItem.of(Item.THICKNESS, Surface.Type.PERVIOUS_CONCRETE, POROUS_ASPHALT),
                    ReportItem.of(Item.DATE),
                    ReportItem.of(Item.START_FINISH),
                    ReportItem.of(Item.CREW),
                    ReportItem.of(Item.WEATHER),
                    ReportItem.of(Item.SURFACE_TEMPERATURE),
                    ReportItem.of(Item.PHOTO)));

    private RingMethods() {}

    private static Basis memory(String clause) {
        return Basis.clause(RING_STANDARD, clause, Trust.MEMORY);
    }

    private static Band<Mass> mass(
            String kilograms, String tolerance, String pounds, String poundTolerance, String at) {
        return new Band<>(Range.around(kg(kilograms), tolerance), Range.around(lb(pounds), poundTolerance), memory(at));
    }

    private static Reading<Mass> kg(String digits) {
        return Reading.of(digits, FieldUnit.KILOGRAM);
    }

    private static Reading<Mass> lb(String digits) {
        return Reading.of(digits, FieldUnit.POUND);
    }

    private static Reading<Length> mm(String digits) {
        return Reading.of(digits, FieldUnit.MILLIMETRE);
    }

    private static Reading<Length> inches(String digits) {
        return Reading.of(digits, FieldUnit.INCH);
    }

    private static Reading<Area> m2(String digits) {
        return Reading.of(digits, FieldUnit.SQUARE_METRE);
    }

    private static Reading<Area> ft2(String digits) {
        return Reading.of(digits, FieldUnit.SQUARE_FOOT);
    }

    private static Reading<Time> seconds(String digits) {
        return Reading.of(digits, FieldUnit.SECOND);
    }

    private static Reading<Time> hours(String digits) {
        return Reading.of(digits, FieldUnit.HOUR);
    }
}
