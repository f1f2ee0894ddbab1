// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import dev.infiltration.method.LocationCount;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import dev.infiltration.verification.Check;
import dev.infiltration.verification.Table;
import dev.infiltration.verification.Table.Row;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.measure.quantity.Area;

/** Numbers of locations against published rules, and what of a pattern lies in a ring against closed forms. */
public final class PlanChecks {

    private static final Map<String, String> RULES = Map.of(
            "method", "C1701 7.1 as told by Brown & Borst 2013, EWRI Congress (secondary)",
            "everett", "Everett WA, maintenance table 22 (published)",
            "lots", "Everett WA, specification 5-06.3(6) (published)",
            "japan", "Japan, one in 1000 m² (published)");

    private static final List<String> COLUMNS = List.of("case", "r", "polygon", "area", "closed_form");

    private PlanChecks() {}

    /** {@return the checks} */
    public static Stream<Check> all() {
        return Stream.concat(
                Table.at(VisitPlanTest.class, "locationsAreCountedByTheSystemOfTheArea")
                        .map(PlanChecks::count),
                Table.file("infiltration-core", "plan/circle-polygon.csv", COLUMNS)
                        .map(PlanChecks::area));
    }

    private static Check count(Row row) {
        LocationCount rule = VisitPlanTest.rule(row.cells().get(0));
        FieldUnit<Area> unit = FieldUnit.parse(row.text("unit"), Area.class).orElseThrow();
        return Check.exact(
                "locations on " + row.text("area") + " " + unit.symbol(),
                RULES.get(row.cells().get(0)),
                row.text("count"),
                rule.of(Reading.of(row.text("area"), unit)).orElseThrow());
    }

    private static Check area(Row row) {
        double expected = row.number("area");
        String decimals = row.text("area").length() > 16 ? row.text("area").substring(0, 16) : row.text("area");
        return Check.within(
                1e-12 * Math.max(1, expected),
                "area in a circle of radius " + row.text("r") + ": " + row.text("case"),
                row.text("closed_form") + " (derived)",
                decimals,
                CirclePolygon.area(CirclePolygonTest.corners(row.text("polygon")), 0, 0, row.number("r")));
    }
}
