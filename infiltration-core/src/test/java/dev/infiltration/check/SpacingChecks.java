// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.Season;
import dev.infiltration.field.Location;
import dev.infiltration.field.Position;
import dev.infiltration.method.Band;
import dev.infiltration.method.Basis;
import dev.infiltration.method.Limit;
import dev.infiltration.method.Methods;
import dev.infiltration.method.Range;
import dev.infiltration.method.TestMethod;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import dev.infiltration.verification.Check;
import dev.infiltration.verification.Table;
import dev.infiltration.verification.Table.Row;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.Length;

/** The clear distance at which two positions become too near, against published geodesics of WGS 84. */
public final class SpacingChecks {

    private static final double RADII = 1e-6;

    private static final BigDecimal HALF_TURN = new BigDecimal(180);

    private SpacingChecks() {}

    /** {@return the checks} */
    public static Stream<Check> all() {
        return Table.file("infiltration-core", "published/geodesic-wgs84.csv").map(SpacingChecks::check);
    }

    private static Check check(Row row) {
        String printed = row.text("published_m").isEmpty() ? row.text("s12_m") : row.text("published_m");
        String[] value = printed.split(" ", 2);
        double tolerance = value.length > 1 ? Double.parseDouble(value[1].replaceAll("[()]", "")) : half(value[0]);
        return Check.within(
                tolerance,
                "metres from " + row.text("lat1") + ", " + row.text("lon1") + " to " + row.text("lat2") + ", "
                        + row.text("lon2"),
                source(row),
                value[0],
                distance(row));
    }

    /** Half a unit of the last digit, 10 nm at least: a double of degrees carries no more. */
    private static double half(String digits) {
        return Math.max(1e-8, 0.50001 * Math.pow(10, -new BigDecimal(digits).scale()));
    }

    private static String source(Row row) {
        String source = row.text("source");
        if (source.equals("computed here")) {
            return "quadrature of the geodesic integrals with 40 digits (derived)";
        }
        return source.contains("memory") ? source : source + " (seen)";
    }

    /** The required clear spacing and the ring diameter: below their sum two tests are too close. */
    private static double distance(Row row) {
        Season season = season(row);
        double low = row.number("s12_m") - 1e-3;
        double high = low + 2e-3;
        for (int step = 0; step < 20; step++) {
            double middle = (low + high) / 2;
            if (isNear(season, middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return low;
    }

    private static Season season(Row row) {
        return Season.si()
                .visit(visit -> visit.withMethod("spaced"))
                .ring(ring -> ring.withInsideDiameter(Reading.of("0.001", FieldUnit.MILLIMETRE)))
                .location(0, each -> placed(each, row.text("lat1"), row.text("lon1")))
                .location(1, each -> placed(each, row.text("lat2"), row.text("lon2")))
                .location(2, each -> each.withX(null).withY(null));
    }

    private static Location placed(Location location, String latitude, String longitude) {
        Position position =
                Position.of(new BigDecimal(latitude), turned(longitude)).withAccuracy(Reading.of("0", FieldUnit.METRE));
        return location.withX(null).withY(null).withPosition(position);
    }

    /** A longitude is written within 180 degrees to either side. */
    private static BigDecimal turned(String longitude) {
        BigDecimal degrees = new BigDecimal(longitude);
        return degrees.compareTo(HALF_TURN) > 0 ? degrees.subtract(HALF_TURN).subtract(HALF_TURN) : degrees;
    }

    private static boolean isNear(Season season, double metres) {
        Reading<Length> clear = Reading.of(new BigDecimal(metres - RADII), FieldUnit.METRE);
        TestMethod method = Methods.unitPavement()
                .withId("spaced")
                .withAliases(List.of())
                .with(Limit.CLEAR_SPACING, Band.inBoth(Range.atLeast(clear), Basis.commonPractice()));
        Checker checker = Checker.withDefaults().withMethods(Methods.builtIn().with(method));
        return season.findings(checker).stream().anyMatch(finding -> finding.startsWith("visit.spacing DEVIATION"));
    }
}
