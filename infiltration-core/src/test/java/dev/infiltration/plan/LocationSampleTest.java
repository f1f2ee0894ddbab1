// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import static dev.infiltration.plan.Laid.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.Location;
import dev.infiltration.plan.LocationSample.Drawn;
import dev.infiltration.plan.LocationSample.Zone;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

class LocationSampleTest {

    private static final double[] EDGE = {0, 0, 40, 0, 40, 3, 0, 3};
    private static final double[] INSIDE = {0, 3, 40, 3, 40, 25, 15, 25, 15, 14, 0, 14};
    private static final double[] PIT = {5, 6, 9, 6, 9, 10, 5, 10};
    private static final double[] GULLY = {24, 15, 30, 15, 30, 18};

    private static final List<Zone> ZONES = List.of(
            new Zone("run-on edge", SurfaceOutline.of(FieldUnit.METRE, EDGE)),
            new Zone(
                    "interior",
                    SurfaceOutline.of(FieldUnit.METRE, INSIDE).withHole(PIT).withHole(GULLY)));

    /** The same zones in JTS, a general library. */
    private static final Map<String, Geometry> OTHER = Map.of(
            "run-on edge", Laid.polygon(EDGE),
            "interior", Laid.polygon(INSIDE).difference(Laid.polygon(PIT)).difference(Laid.polygon(GULLY)));

    private static final double EDGE_SHARE = 120 / (120 + OTHER.get("interior").getArea());

    private static final LocationSample DRAW =
            LocationSample.of(ZONES).withRing(mm("300")).withClearDistance(Reading.of("1", FieldUnit.METRE));

    @Property(tries = 200)
    void locationsLieInTheirZoneAndApart(@ForAll long seed, @ForAll @IntRange(max = 40) int count) {
        Drawn drawn = DRAW.draw(count, seed);
        assertEquals(0, drawn.missing());
        assertEquals(count, drawn.locations().size());
        holdsDistances(drawn.locations());
    }

    @Property(tries = 200)
    void zoneGetsItsShareRoundedEitherWay(@ForAll long seed, @ForAll @IntRange(max = 40) int count) {
        long onEdge = onEdge(DRAW.draw(count, seed));
        assertTrue(Math.abs(onEdge - count * EDGE_SHARE) < 1, () -> onEdge + " of " + count);
    }

    /** 10^6 locations, ten at a time; the tolerances are four standard errors. */
    @Test
    @Tag("slow")
    void millionDrawsKeepDistanceAndShares() {
        holdsSharesAndDistances(100_000, 10);
    }

    @Test
    void someThousandDrawsKeepDistanceAndShares() {
        holdsSharesAndDistances(500, 10);
    }

    private static void holdsSharesAndDistances(int draws, int count) {
        List<Location> all = LongStream.range(0, draws)
                .mapToObj(seed -> DRAW.draw(count, seed))
                .peek(drawn -> holdsDistances(drawn.locations()))
                .flatMap(drawn -> drawn.locations().stream())
                .toList();
        assertEquals(draws * (long) count, all.size());
        long onEdge = all.stream().filter(LocationSampleTest::isOnEdge).count();
        assertShare(EDGE_SHARE, onEdge, all.size());
        long right = all.stream()
                .filter(location -> isOnEdge(location) && x(location) > 30)
                .count();
        assertShare(9.85 / 39.7, right, onEdge);
    }

    private static void assertShare(double expected, long found, long of) {
        double error = Math.sqrt(expected * (1 - expected) / of);
        assertEquals(expected, found / (double) of, 4 * error);
    }

    private static void holdsDistances(List<Location> locations) {
        for (int i = 0; i < locations.size(); i++) {
            Location location = locations.get(i);
            Geometry zone = OTHER.get(location.zone());
            Geometry middle = zone.getFactory().createPoint(new Coordinate(x(location), y(location)));
            assertTrue(zone.contains(middle), location::toString);
            assertTrue(zone.getBoundary().distance(middle) >= 0.15 - 1e-12, location::toString);
            for (Location other : locations.subList(0, i)) {
                double apart = Math.hypot(x(location) - x(other), y(location) - y(other));
                assertTrue(apart - 0.3 >= 1 - 1e-12, () -> apart + " between " + location + " and " + other);
            }
        }
    }

    @Test
    void sameSeedGivesTheSameLocationsEverywhere() {
        Drawn drawn = DRAW.draw(4, 7);
        assertEquals(drawn, DRAW.draw(4, 7));
        assertNotEquals(drawn, DRAW.draw(4, 8));
        String text = drawn.locations().stream()
                .map(location -> location.id() + " " + location.zone() + " " + location.x() + " " + location.y())
                .collect(Collectors.joining("; "));
        String expected = "L1 interior 23.32 m 12.95 m; L2 interior 9.98 m 13.29 m; "
                + "L3 interior 13.12 m 5.95 m; L4 interior 16.53 m 5.28 m";
        assertEquals(expected, text, "as first drawn: this never changes");
    }

    @Test
    void smallZoneIsNotForgotten() {
        List<Zone> zones = List.of(
                new Zone("low spot", SurfaceOutline.of(FieldUnit.METRE, 0, 0, 2, 0, 2, 5, 0, 5)),
                new Zone("interior", SurfaceOutline.of(FieldUnit.METRE, 2, 0, 20, 0, 20, 5, 2, 5)));
        double inLowSpot = LongStream.range(0, 4000)
                .map(seed -> LocationSample.of(zones).draw(3, seed).locations().stream()
                        .filter(location -> "low spot".equals(location.zone()))
                        .count())
                .average()
                .orElseThrow();
        assertEquals(0.3, inLowSpot, 4 * Math.sqrt(0.3 * 0.7 / 4000));
    }

    @Test
    void selectionSaysHowItWasDrawn() {
        assertEquals(
                Location.Selection.STRATIFIED,
                DRAW.draw(1, 1).locations().get(0).selection());
        assertEquals(
                Location.Selection.RANDOM,
                LocationSample.of(ZONES.subList(0, 1))
                        .draw(1, 1)
                        .locations()
                        .get(0)
                        .selection());
    }

    @Test
    void ringFitsIntoStripLittleWiderThanItself() {
        SurfaceOutline strip = SurfaceOutline.of(FieldUnit.METRE, 0, 0, 20, 0, 20, 0.4, 0, 0.4);
        Drawn drawn = LocationSample.of(List.of(new Zone("gutter", strip)))
                .withRing(mm("300"))
                .draw(1, 1);
        assertEquals(0, drawn.missing());
    }

    @Test
    void whatFindsNoRoomIsMissing() {
        Drawn drawn = LocationSample.of(
                        List.of(new Zone("bay", SurfaceOutline.of(FieldUnit.FOOT, 0, 0, 4, 0, 4, 4, 0, 4))))
                .withRing(Laid.inches("12"))
                .withClearDistance(Reading.of("3", FieldUnit.FOOT))
                .draw(6, 1);
        assertTrue(drawn.missing() >= 4, () -> drawn.missing() + " missing");
        assertEquals(6, drawn.missing() + drawn.locations().size());
        assertEquals(FieldUnit.FOOT, drawn.locations().get(0).x().unit());
    }

    /** One mistyped area asks for thousands of locations in a bay of 20 m². */
    @Test
    void aZoneIsLeftAtTheFirstLocationWithoutRoom() {
        SurfaceOutline bay = SurfaceOutline.of(FieldUnit.METRE, 0, 0, 5, 0, 5, 4, 0, 4);
        SurfaceOutline lot = SurfaceOutline.of(FieldUnit.METRE, 10, 0, 60, 0, 60, 40, 10, 40);
        LocationSample draw = LocationSample.of(List.of(new Zone("bay", bay), new Zone("lot", lot)))
                .withRing(mm("300"))
                .withClearDistance(Reading.of("1", FieldUnit.METRE));
        Drawn drawn = assertTimeout(Duration.ofSeconds(10), () -> draw.draw(LocationSample.MOST_LOCATIONS, 1));
        Map<String, Long> placed =
                drawn.locations().stream().collect(Collectors.groupingBy(Location::zone, Collectors.counting()));
        assertTrue(placed.get("bay") > 5 && placed.get("lot") > 500, placed::toString);
        assertEquals(
                LocationSample.MOST_LOCATIONS,
                drawn.missing() + drawn.locations().size());
    }

    @Test
    void moreThanTenThousandAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> DRAW.draw(LocationSample.MOST_LOCATIONS + 1, 1));
    }

    @Test
    void zonesOfTwoUnitsAreRefused() {
        Zone metres = ZONES.get(0);
        Zone feet = new Zone("bay", SurfaceOutline.of(FieldUnit.FOOT, 0, 0, 4, 0, 4, 4, 0, 4));
        assertThrows(IllegalArgumentException.class, () -> LocationSample.of(List.of(metres, feet)));
        assertThrows(IllegalArgumentException.class, () -> LocationSample.of(List.of()));
    }

    @Test
    void negativeNumbersAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> DRAW.draw(-1, 1));
        assertThrows(IllegalArgumentException.class, () -> DRAW.withRing(mm("-300")));
        assertThrows(IllegalArgumentException.class, () -> DRAW.withClearDistance(mm("-1")));
    }

    private static long onEdge(Drawn drawn) {
        return drawn.locations().stream().filter(LocationSampleTest::isOnEdge).count();
    }

    private static boolean isOnEdge(Location location) {
        return "run-on edge".equals(location.zone());
    }

    private static double x(Location location) {
        return location.x().in(FieldUnit.METRE);
    }

    private static double y(Location location) {
        return location.y().in(FieldUnit.METRE);
    }
}
