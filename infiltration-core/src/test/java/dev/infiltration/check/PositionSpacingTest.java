// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static dev.infiltration.Amounts.m;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.Season;
import dev.infiltration.field.Location;
import dev.infiltration.field.Position;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Clear distances by latitude and longitude, as far as their accuracy decides them. */
class PositionSpacingTest {

    private static final List<String> NEAR = List.of("visit.spacing DEVIATION LOWERS /visits/0/tests/1");
    private static final List<String> UNKNOWN = List.of("visit.spacing-unknown CAUTION LOWERS /visits/0");

    private static Location placed(Location location, String latitude, String longitude, String accuracy) {
        Position position = Position.of(new BigDecimal(latitude), new BigDecimal(longitude))
                .withAccuracy(accuracy == null ? null : m(accuracy));
        return location.withX(null).withY(null).withPosition(position);
    }

    /** Two locations; the third lies 111 m to the north. */
    private static Season pair(String latitude, String longitude, String first, String second) {
        return Season.si()
                .location(0, l -> placed(l, "40", "-105", first))
                .location(1, l -> placed(l, latitude, longitude, second))
                .location(2, l -> placed(l, "40.001", "-105", "0"));
    }

    /**
     * Centres 1.3 m apart are clear by 1 m. At 40 degrees on WGS 84, 0.00001 degrees are 1.110346327 m to the north and
     * 0.853938570 m to the east (derived by quadrature of the geodesic integrals; agrees with GeographicLib to 2 nm). On a
     * sphere of 6371 km they would be 1.1119 m and 0.8518 m.
     */
    @ParameterizedTest
    @CsvSource({
        "40.0000117,  -105,          false, 1.29911 m",
        "40.00001171, -105,          true,  1.30022 m",
        "39.9999883,  -105,          false, 1.29911 m",
        "40,          -104.99998478, false, 1.29969 m",
        "40,          -104.99998477, true,  1.30055 m",
        "40,          -105.00001523, true,  1.30055 m"
    })
    void distancesAreGeodesicsOnTheEllipsoid(String latitude, String longitude, boolean isKept, String distance) {
        assertEquals(
                isKept ? List.of() : NEAR, pair(latitude, longitude, "0", "0").findings(), distance);
    }

    /** 0.00009 degrees to the north are 9.993 m, clear by 9.693 m. */
    @ParameterizedTest
    @CsvSource({
        "40.00009, 3, 3, clear", "40.00009, 4.3, 4.3, clear", "40.00009, 6, 6, unknown", "40.00009, , 0, unknown",
        "40.00009, 0, , unknown", "40.00001, 0.05, 0.05, near", "40.00001, 3, 3, unknown",
                "40.0000118, 0.1, 0.1, unknown",
        "40.0000116, 0.1, 0.1, unknown"
    })
    void accuracyDecidesOrLeavesItOpen(String latitude, String first, String second, String verdict) {
        List<String> found = switch (verdict) {
            case "near" -> NEAR;
            case "unknown" -> UNKNOWN;
            default -> List.of();
        };
        assertEquals(found, pair(latitude, "-105", first, second).findings());
    }

    @Test
    void localCoordinatesComeBeforePositions() {
        Season far = pair("40.00001", "-105", "0", "0")
                .location(0, l -> l.withX(m("0")).withY(m("0")))
                .location(1, l -> l.withX(m("5")).withY(m("0")));
        assertEquals(List.of(), far.findings());
        assertEquals(NEAR, far.location(1, l -> l.withX(null)).findings(), "x, y of both, or the positions");
    }

    @Test
    void aTapeComesBeforePositions() {
        Season near = pair("40.00001", "-105", "0", "0");
        assertEquals(NEAR, near.findings());
        assertEquals(List.of(), near.test(0, t -> t.withClearSpacing(m("1"))).findings());
    }

    @Test
    void halfAPositionIsNone() {
        Season season = pair("40.00009", "-105", "0", "0")
                .location(
                        1,
                        l -> l.withPosition(
                                Position.of(new BigDecimal("40"), null).withAccuracy(m("0"))));
        assertEquals(UNKNOWN, season.findings());
    }

    @Test
    void degreesThatAreNoneAreUnknown() {
        assertEquals(UNKNOWN, pair("95", "-105", "0", "0").findings());
        assertEquals(UNKNOWN, pair("40", "255", "0", "0").findings());
        assertEquals(UNKNOWN, pair("1e400", "-105", "0", "0").findings());
    }
}
