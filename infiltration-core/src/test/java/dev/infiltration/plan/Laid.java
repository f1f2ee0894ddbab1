// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import dev.infiltration.field.Laying;
import dev.infiltration.plan.JointPattern.Voids;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Length;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.util.GeometricShapeFactory;

/**
 * Pavements laid unit by unit in a general geometry library, each by the rule of its trade rather than by a lattice: rows,
 * staircases, chequered blocks. What the patterns are tested against.
 */
final class Laid {

    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    /** Units on either side of the datum: more than any ring reaches. */
    private static final int FAR = 14;

    private Laid() {}

    static Reading<Length> mm(String digits) {
        return Reading.of(digits, FieldUnit.MILLIMETRE);
    }

    static Reading<Length> inches(String digits) {
        return Reading.of(digits, FieldUnit.INCH);
    }

    /** {@return a pavement of the usual sizes; basket weave with units that do not make a square} */
    static JointPattern example(Laying laying) {
        return switch (laying) {
            case GRID -> JointPattern.grid(mm("600"), mm("400"), mm("8"), new Voids(6, 4, mm("55"), mm("70")));
            case HEXAGONAL -> JointPattern.of(laying, mm("150"), mm("150"), mm("9"));
            default -> JointPattern.of(laying, mm("200"), mm("100"), mm("6"));
        };
    }

    /** {@return the solid parts of {@link #example} laid about the datum, axes those of the pattern} */
    static List<Geometry> units(Laying laying) {
        return switch (laying) {
            case STACK -> rows(206, 106, 0);
            case RUNNING_BOND -> rows(206, 106, 103);
            case HERRINGBONE_90 -> herringbone();
            case HERRINGBONE_45 -> turned(herringbone(), -45);
            case BASKET_WEAVE -> blocks();
            case HEXAGONAL -> hexagons();
            case GRID -> slabs();
        };
    }

    private static List<Geometry> rows(double pitch, double row, double shift) {
        List<Geometry> units = new ArrayList<>();
        for (int i = -FAR; i <= FAR; i++) {
            for (int j = -FAR; j <= FAR; j++) {
                units.add(rectangle(i * pitch + Math.floorMod(j, 2) * shift, j * row, 200, 100));
            }
        }
        return units;
    }

    /** Staircases of units along and across, side by side. */
    private static List<Geometry> herringbone() {
        List<Geometry> units = new ArrayList<>();
        for (int stair = -FAR; stair <= FAR; stair++) {
            for (int step = -2 * FAR; step <= 2 * FAR; step++) {
                double left = stair * 206 + step * 106 - 103;
                double low = -stair * 206 + step * 106 - 53;
                units.add(rectangle(left + 103, low + 53, 200, 100));
                units.add(rectangle(left + 53, low + 106 + 103, 100, 200));
            }
        }
        return units;
    }

    /** Two units of 100 mm and a joint of 6 mm are wider than a unit is long: blocks 212 mm apart. */
    private static List<Geometry> blocks() {
        List<Geometry> units = new ArrayList<>();
        for (int i = -FAR; i <= FAR; i++) {
            for (int j = -FAR; j <= FAR; j++) {
                boolean along = Math.floorMod(i + j, 2) == 0;
                double x = i * 212;
                double y = j * 212;
                units.add(along ? rectangle(x, y - 53, 200, 100) : rectangle(x - 53, y, 100, 200));
                units.add(along ? rectangle(x, y + 53, 200, 100) : rectangle(x + 53, y, 100, 200));
            }
        }
        return units;
    }

    private static List<Geometry> hexagons() {
        List<Geometry> units = new ArrayList<>();
        for (int i = -FAR; i <= FAR; i++) {
            for (int j = -FAR; j <= FAR; j++) {
                double x = i * 159 + Math.floorMod(j, 2) * 79.5;
                units.add(hexagon(x, j * 159 * Math.sqrt(3) / 2));
            }
        }
        return units;
    }

    /** The space that three strips of 150 mm share. */
    private static Geometry hexagon(double x, double y) {
        Geometry strip = rectangle(0, 0, 150, 1000);
        Geometry other = AffineTransformation.rotationInstance(Math.PI / 3).transform(strip);
        Geometry third = AffineTransformation.rotationInstance(2 * Math.PI / 3).transform(strip);
        return AffineTransformation.translationInstance(x, y)
                .transform(strip.intersection(other).intersection(third));
    }

    /** Webs: six bays of 100 mm along, four of 100 mm across, each with a void of 55 by 70 in its middle. */
    private static List<Geometry> slabs() {
        List<Geometry> units = new ArrayList<>();
        for (int i = -3; i <= 3; i++) {
            for (int j = -3; j <= 3; j++) {
                Geometry slab = rectangle(i * 608, j * 408, 600, 400);
                for (int bay = 0; bay < 24; bay++) {
                    double x = i * 608 - 300 + 50 + bay % 6 * 100;
                    double y = j * 408 - 200 + 50 + Math.floorDiv(bay, 6) * 100;
                    slab = slab.difference(rectangle(x, y, 55, 70));
                }
                units.add(slab);
            }
        }
        return units;
    }

    private static List<Geometry> turned(List<Geometry> units, double degrees) {
        AffineTransformation turn = AffineTransformation.rotationInstance(Math.toRadians(degrees));
        return units.stream().map(turn::transform).toList();
    }

    /** {@return a polygon of x0, y0, x1, y1, …} */
    static Geometry polygon(double... corners) {
        Coordinate[] ring = new Coordinate[corners.length / 2 + 1];
        for (int i = 0; i < ring.length; i++) {
            ring[i] = new Coordinate(corners[2 * i % corners.length], corners[(2 * i + 1) % corners.length]);
        }
        return GEOMETRY.createPolygon(ring);
    }

    private static Geometry rectangle(double x, double y, double width, double height) {
        GeometricShapeFactory shape = new GeometricShapeFactory(GEOMETRY);
        shape.setCentre(new Coordinate(x, y));
        shape.setWidth(width);
        shape.setHeight(height);
        return shape.createRectangle();
    }

    /** {@return the open share in a circle of 4096 sides, whose area is 4·10⁻⁷ short} */
    static double openShare(List<Geometry> units, double x, double y, double radius) {
        Geometry circle = GEOMETRY.createPoint(new Coordinate(x, y)).buffer(radius, 1024);
        double solid = units.stream()
                .filter(unit -> unit.getEnvelopeInternal().intersects(circle.getEnvelopeInternal()))
                .mapToDouble(unit -> unit.intersection(circle).getArea())
                .sum();
        return 1 - solid / circle.getArea();
    }
}
