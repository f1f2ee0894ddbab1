// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import static dev.infiltration.plan.JointPattern.millimetres;

import dev.infiltration.plan.JointPattern.Voids;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A pattern as polygons: the faces in one cell, and the two vectors by which the cell repeats. Lengths in mm.
 *
 * @param ax    first vector, along x
 * @param ay    first vector, along y
 * @param bx    second vector, along x
 * @param by    second vector, along y
 * @param faces the faces of the units anticlockwise, voids in them clockwise
 * @param reach how far the faces reach from the datum
 */
record Tiling(double ax, double ay, double bx, double by, List<double[]> faces, double reach) {

    private Tiling(double ax, double ay, double bx, double by, List<double[]> faces) {
        this(ax, ay, bx, by, faces, reach(faces));
    }

    static Tiling of(JointPattern pattern) {
        double length = pattern.pitch(pattern.length());
        double width = pattern.pitch(pattern.width());
        return switch (pattern.laying()) {
            case STACK -> new Tiling(length, 0, 0, width, List.of(unit(pattern, 0, 0)));
            case RUNNING_BOND -> new Tiling(length, 0, length / 2, width, List.of(unit(pattern, 0, 0)));
            case HERRINGBONE_90, HERRINGBONE_45 -> herringbone(pattern, length, width);
            case BASKET_WEAVE -> basketWeave(pattern);
            case HEXAGONAL -> hexagonal(pattern, length);
            case GRID -> new Tiling(length, 0, 0, width, grid(pattern, Objects.requireNonNull(pattern.voids())));
        };
    }

    /** One unit along x, one across at its left end; the pair goes up in steps of a width and down in steps of a length. */
    private static Tiling herringbone(JointPattern pattern, double length, double width) {
        double[] across = turned(unit(pattern, (length + width) / 2, (length - width) / 2));
        return new Tiling(width, width, length, -length, List.of(unit(pattern, 0, 0), across));
    }

    private static Tiling basketWeave(JointPattern pattern) {
        double block = pattern.block();
        int units = pattern.unitsInBlock();
        double pitch = pattern.pitch(pattern.width());
        List<double[]> faces = new ArrayList<>();
        for (int i = 0; i < units; i++) {
            double side = (i - (units - 1) / 2.0) * pitch;
            faces.add(unit(pattern, 0, side));
            faces.add(turned(unit(pattern, 0, -block - side)));
        }
        return new Tiling(block, block, block, -block, faces);
    }

    private static Tiling hexagonal(JointPattern pattern, double pitch) {
        double corner = pattern.face(pattern.length()) / StrictMath.sqrt(3);
        double[] face = IntStream.range(0, 6)
                .mapToDouble(i -> StrictMath.toRadians(30 + 60 * i))
                .flatMap(angle -> DoubleStream.of(corner * StrictMath.cos(angle), corner * StrictMath.sin(angle)))
                .toArray();
        return new Tiling(pitch, 0, pitch / 2, pitch * StrictMath.sqrt(3) / 2, List.of(face));
    }

    private static List<double[]> grid(JointPattern pattern, Voids voids) {
        double stepX = millimetres(pattern.length()) / voids.along();
        double stepY = millimetres(pattern.width()) / voids.across();
        List<double[]> faces = new ArrayList<>(List.of(unit(pattern, 0, 0)));
        for (int i = 0; i < voids.along(); i++) {
            for (int j = 0; j < voids.across(); j++) {
                double x = (i - (voids.along() - 1) / 2.0) * stepX;
                double y = (j - (voids.across() - 1) / 2.0) * stepY;
                // A negative width turns the rectangle round: a hole.
                faces.add(rectangle(x, y, millimetres(voids.length()), -millimetres(voids.width())));
            }
        }
        return faces;
    }

    private static double[] unit(JointPattern pattern, double x, double y) {
        return rectangle(x, y, pattern.face(pattern.length()), pattern.face(pattern.width()));
    }

    private static double[] rectangle(double x, double y, double length, double width) {
        double left = x - length / 2;
        double right = x + length / 2;
        double low = y - width / 2;
        double high = y + width / 2;
        return new double[] {left, low, right, low, right, high, left, high};
    }

    /** {@return a polygon turned by a right angle, anticlockwise, about the datum} */
    private static double[] turned(double[] polygon) {
        return IntStream.range(0, polygon.length)
                .mapToDouble(i -> i % 2 == 0 ? -polygon[i + 1] : polygon[i - 1])
                .toArray();
    }

    /** {@return the area of the cell that repeats} */
    double cell() {
        return Math.abs(ax * by - ay * bx);
    }

    /** {@return about how many faces and voids are looked at for a circle}: those of all cells that may reach into it */
    double facesNear(double radius) {
        double whole = radius + reach;
        return Math.PI * whole * whole / cell() * faces.size();
    }

    /** {@return the solid area inside a circle} */
    double solid(double x, double y, double radius) {
        return cellsNear(x, y, radius)
                .mapToDouble(cell -> solidOfCell(x - cell[0], y - cell[1], radius))
                .sum();
    }

    private double solidOfCell(double x, double y, double radius) {
        double solid = 0;
        for (double[] face : faces) {
            solid += CirclePolygon.area(face, x, y, radius);
        }
        return solid;
    }

    /** {@return all faces that reach into a circle, and some beside it, each face before its voids} */
    Stream<double[]> facesNear(double x, double y, double radius) {
        return cellsNear(x, y, radius).flatMap(cell -> faces.stream().map(face -> moved(face, cell[0], cell[1])));
    }

    /** {@return where the cells lie whose faces may reach into a circle} */
    private Stream<double[]> cellsNear(double x, double y, double radius) {
        double whole = radius + reach;
        double det = ax * by - ay * bx;
        double i = (x * by - y * bx) / det;
        double j = (ax * y - ay * x) / det;
        double spanI = whole * StrictMath.hypot(bx, by) / cell();
        double spanJ = whole * StrictMath.hypot(ax, ay) / cell();
        return steps(i, spanI)
                .boxed()
                .flatMap(m -> steps(j, spanJ).mapToObj(n -> corner(m, n)))
                .filter(cell -> StrictMath.hypot(x - cell[0], y - cell[1]) < whole);
    }

    /** {@return the place like a point of the cell or one beside it that lies nearest to the datum} */
    double[] nearest(double x, double y) {
        return IntStream.range(0, 9)
                .mapToObj(k -> corner(k / 3 - 1, k % 3 - 1))
                .map(cell -> new double[] {x + cell[0], y + cell[1]})
                .min(Comparator.comparingDouble(place -> StrictMath.hypot(place[0], place[1])))
                .orElseThrow();
    }

    private static IntStream steps(double middle, double span) {
        return IntStream.rangeClosed((int) Math.ceil(middle - span), (int) Math.floor(middle + span));
    }

    private double[] corner(int m, int n) {
        return new double[] {m * ax + n * bx, m * ay + n * by};
    }

    private static double[] moved(double[] polygon, double x, double y) {
        double[] moved = polygon.clone();
        for (int i = 0; i < moved.length; i += 2) {
            moved[i] += x;
            moved[i + 1] += y;
        }
        return moved;
    }

    /** {@return how far faces reach from the datum} */
    private static double reach(List<double[]> faces) {
        return faces.stream()
                .flatMapToDouble(face -> IntStream.iterate(0, i -> i < face.length, i -> i + 2)
                        .mapToDouble(i -> StrictMath.hypot(face[i], face[i + 1])))
                .max()
                .orElseThrow();
    }
}
