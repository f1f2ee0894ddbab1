// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

class CirclePolygonTest {

    private static final double RELATIVE = 1e-12;

    @ParameterizedTest(name = "{0} ({4}, derived)")
    @CsvFileSource(resources = "circle-polygon.csv")
    void areaAgreesWithClosedForms(String name, String radius, String polygon, String area, String closedForm) {
        double expected = Double.parseDouble(area);
        double found = CirclePolygon.area(corners(polygon), 0, 0, Double.parseDouble(radius));
        assertEquals(expected, found, RELATIVE * Math.max(1, expected), closedForm);
    }

    @ParameterizedTest(name = "{0} moved, turned, scaled, run backwards")
    @CsvFileSource(resources = "circle-polygon.csv")
    void areaFollowsMotions(String name, String radius, String polygon, String area) {
        double[] moved = reversed(motion(corners(polygon)));
        double expected = -Double.parseDouble(area) * 2.25;
        double found = CirclePolygon.area(moved, 3, -2, 1.5 * Double.parseDouble(radius));
        assertEquals(expected, found, 1e-11 * Math.max(1, -expected));
    }

    @Test
    void wholePolygonHasItsShoelaceArea() {
        assertEquals(6, CirclePolygon.signedArea(new double[] {0, 0, 3, 0, 0, 4}), 0);
        assertEquals(-6, CirclePolygon.signedArea(new double[] {0, 0, 0, 4, 3, 0}), 0);
    }

    @Property(tries = 200)
    void areaAgreesWithGeneralGeometryLibrary(
            @ForAll("triangles") double[] triangle, @ForAll @DoubleRange(min = 0.05, max = 3) double radius) {
        Geometry shape = Laid.polygon(triangle);
        Geometry circle =
                shape.getFactory().createPoint(new Coordinate(0.3, -0.2)).buffer(radius, 2000);
        double expected = shape.intersection(circle).getArea();
        assertEquals(expected, Math.abs(CirclePolygon.area(triangle, 0.3, -0.2, radius)), 1e-6 * radius * radius);
    }

    @Provide
    Arbitrary<double[]> triangles() {
        return Arbitraries.doubles()
                .between(-4, 4)
                .ofScale(3)
                .array(double[].class)
                .ofSize(6)
                .filter(corners -> Math.abs(CirclePolygon.signedArea(corners)) > 1e-3);
    }

    static double[] corners(String polygon) {
        return Stream.of(polygon.split("[ ;]")).mapToDouble(Double::parseDouble).toArray();
    }

    /** Scaled by 1.5, turned by 0.7 rad, moved by (3, −2). */
    private static double[] motion(double[] corners) {
        double[] moved = new double[corners.length];
        for (int i = 0; i < corners.length; i += 2) {
            moved[i] = 3 + 1.5 * (corners[i] * Math.cos(0.7) - corners[i + 1] * Math.sin(0.7));
            moved[i + 1] = -2 + 1.5 * (corners[i] * Math.sin(0.7) + corners[i + 1] * Math.cos(0.7));
        }
        return moved;
    }

    private static double[] reversed(double[] corners) {
        int length = corners.length;
        return IntStream.range(0, length)
                .mapToDouble(i -> corners[length - 2 - i + 2 * (i % 2)])
                .toArray();
    }
}
