// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.units.FieldUnit;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

class SurfaceOutlineTest {

    private static final double[] BOOT = {0, 0, 30, 0, 30, 12, 18, 12, 18, 25, 0, 25};
    private static final double[] PIT = {4, 4, 7, 5, 6, 8, 3, 7};
    private static final double[] DRAIN = {20, 2, 28, 2, 28, 3, 20, 3};

    private static final SurfaceOutline OUTLINE =
            SurfaceOutline.of(FieldUnit.METRE, BOOT).withHole(PIT).withHole(DRAIN);

    /** The same in JTS, a general library. */
    private static final Geometry OTHER =
            Laid.polygon(BOOT).difference(Laid.polygon(PIT)).difference(Laid.polygon(DRAIN));

    @Test
    void areaIsWithoutHoles() {
        assertEquals(OTHER.getArea(), OUTLINE.area(), 1e-9);
        assertEquals(594 - 10 - 8, OUTLINE.area(), 1e-9, "by hand");
    }

    @Property(tries = 2000)
    void circlesInsideAreThoseOfGeneralGeometryLibrary(
            @ForAll @DoubleRange(min = -2, max = 32) double x,
            @ForAll @DoubleRange(min = -2, max = 27) double y,
            @ForAll @DoubleRange(min = 0, max = 3) double radius) {
        Geometry point = OTHER.getFactory().createPoint(new Coordinate(x, y));
        double toEdge = OTHER.getBoundary().distance(point);
        if (toEdge > 1e-9 && Math.abs(toEdge - radius) > 1e-9) {
            assertEquals(OTHER.contains(point) && toEdge > radius, OUTLINE.containsCircle(x, y, radius));
        }
    }

    @Test
    void pointsInHolesAreOutside() {
        assertTrue(OUTLINE.contains(1, 1));
        assertFalse(OUTLINE.contains(5, 6));
        assertFalse(OUTLINE.contains(24, 20));
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "0 0 1 0",
                "0 0 1 0 1",
                "0 0 1 0 1 1 0",
                "0 0 1 0 2 0",
                "0 0 NaN 0 1 1",
                "0 0 2 2 2 0 0 2",
                "0 0 4 0 4 4 2 0 0 4",
            })
    void whatIsNoPolygonIsRefused(String corners) {
        assertThrows(IllegalArgumentException.class, () -> SurfaceOutline.of(FieldUnit.METRE, numbers(corners)));
    }

    @ParameterizedTest(name = "hole {0}")
    @ValueSource(strings = {"40 1 41 1 41 2", "25 5 35 5 35 6 25 6", "4 4 10 4 10 10 4 10", "5 6 5.5 6 5.5 6.5"})
    void holeThatDoesNotLieInsideIsRefused(String corners) {
        assertThrows(IllegalArgumentException.class, () -> OUTLINE.withHole(numbers(corners)));
    }

    /** The line of one edge parts the ends of another, and yet they do not meet. */
    @Test
    void edgesThatPassEachOtherByAreTaken() {
        assertEquals(
                11.5,
                SurfaceOutline.of(FieldUnit.METRE, 0, 0, 3.9, 0, 6, 10, 4, 4).area(),
                1e-12);
    }

    @Test
    void closedPolygonsAreTakenToo() {
        assertEquals(
                0.5, SurfaceOutline.of(FieldUnit.FOOT, 0, 0, 1, 0, 0, 1, 0, 0).area(), 0);
    }

    private static double[] numbers(String text) {
        return java.util.Arrays.stream(text.split(" ", -1))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }
}
