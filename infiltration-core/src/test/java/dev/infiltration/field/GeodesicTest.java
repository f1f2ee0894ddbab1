// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.verification.Table;
import dev.infiltration.verification.Table.Row;
import java.math.BigDecimal;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Lengths of geodesics on WGS 84, compared with GeographicLib and with published and derived lengths. */
class GeodesicTest {

    /** A part of the length; GeographicLib itself is accurate to 5 nm (Karney 2013, published), and so are degrees as doubles. */
    private static final double TOLERANCE = 1e-9;

    private static final double NANOMETRES = 5e-9;

    private static void assertSame(double expected, double metres, String what) {
        assertEquals(expected, metres, NANOMETRES + TOLERANCE * expected, what);
    }

    private static void assertSame(double latitude1, double longitude1, double latitude2, double longitude2) {
        assertSame(
                net.sf.geographiclib.Geodesic.WGS84.Inverse(latitude1, longitude1, latitude2, longitude2).s12,
                Geodesic.metres(latitude1, longitude1, latitude2, longitude2),
                latitude1 + ", " + longitude1 + " to " + latitude2 + ", " + longitude2);
    }

    static Stream<Row> published() {
        return Table.file("infiltration-core", "published/geodesic-wgs84.csv");
    }

    /** Sources and trust of the rows are written in the file. */
    @ParameterizedTest
    @MethodSource("published")
    void lengthsArePublishedLengths(Row row) {
        double metres = Geodesic.metres(row.number("lat1"), row.number("lon1"), row.number("lat2"), row.number("lon2"));
        assertSame(row.number("s12_m"), metres, row.text("case"));
    }

    @Provide
    Arbitrary<Double> offsets() {
        return Arbitraries.of(1e-7, 1e-6, 1e-5, 1e-4, 1e-3, 1e-2, 0.1, 1.0)
                .flatMap(size -> Arbitraries.doubles().between(-1, 1).map(share -> share * size));
    }

    @Property
    void shortLengthsAreThoseOfGeographicLib(
            @ForAll @DoubleRange(min = -90, max = 90) double latitude,
            @ForAll @DoubleRange(min = -180, max = 180) double longitude,
            @ForAll("offsets") double north,
            @ForAll("offsets") double east) {
        double other = Math.max(-90, Math.min(90, latitude + north));
        assertSame(latitude, longitude, other, Math.IEEEremainder(longitude + east, 360));
    }

    @Property
    void longLengthsAreThoseOfGeographicLib(
            @ForAll @DoubleRange(min = -90, max = 90) double latitude1,
            @ForAll @DoubleRange(min = -180, max = 180) double longitude1,
            @ForAll @DoubleRange(min = -90, max = 90) double latitude2,
            @ForAll @DoubleRange(min = -180, max = 180) double longitude2) {
        assertSame(latitude1, longitude1, latitude2, longitude2);
    }

    @Property
    void lengthsToNearlyOppositePointsAreThoseOfGeographicLib(
            @ForAll @DoubleRange(min = -89, max = 89) double latitude,
            @ForAll @DoubleRange(min = -180, max = 180) double longitude,
            @ForAll("offsets") double north,
            @ForAll("offsets") double east) {
        assertSame(latitude, longitude, -latitude + north, Math.IEEEremainder(longitude + 180 + east, 360));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0, 0, 180", "0, 0, 0, 179.9", "0, 0, 0, 179.2", "0, 0, 0, -179.5", "90, 0, -90, 0", "90, 10, 90, 100",
        "-90, 0, 90, 77", "40, -105, -40, 75", "40, -105, 40, 75", "0, 0, 0, 90", "0, 20, 0, 20", "1e-9, 0, 0, 180",
        "-12, 180, -12, -180", "89.9999999, 0, 89.9999999, 180"
    })
    void lengthsOfSpecialLinesAreThoseOfGeographicLib(double lat1, double lon1, double lat2, double lon2) {
        assertSame(lat1, lon1, lat2, lon2);
    }

    @Property
    void theLengthIsTheSameInBothDirections(
            @ForAll @DoubleRange(min = -90, max = 90) double latitude1,
            @ForAll @DoubleRange(min = -90, max = 90) double latitude2,
            @ForAll("offsets") double east) {
        double there = Geodesic.metres(latitude1, 0, latitude2, east);
        assertTrue(there >= 0);
        assertSame(there, Geodesic.metres(latitude2, east, latitude1, 0), "back");
    }

    @ParameterizedTest
    @CsvSource({"90.1, 0", "0, 180.5", "1e400, 0", ", 0", "0, "})
    void aPositionThatIsNotOnEarthHasNoDistance(BigDecimal latitude, BigDecimal longitude) {
        Position here = Position.of(BigDecimal.TEN, BigDecimal.TEN);
        Position nowhere = Position.of(latitude, longitude);
        assertEquals(OptionalDouble.empty(), here.metresTo(nowhere));
        assertEquals(OptionalDouble.empty(), nowhere.metresTo(here));
    }

    @Test
    void positionsAreAtTheDistanceOfTheirDegrees() {
        Position here = Position.of(new BigDecimal("40"), new BigDecimal("-105"));
        Position there = Position.of(new BigDecimal("40.00001"), new BigDecimal("-105"));
        assertEquals(
                1.110346326728374, here.metresTo(there).orElseThrow(), NANOMETRES, "derived, in geodesic-wgs84.csv");
    }
}
