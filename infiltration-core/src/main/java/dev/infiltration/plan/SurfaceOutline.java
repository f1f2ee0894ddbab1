// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import dev.infiltration.units.FieldUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Length;

/**
 * The outline of a part of a surface: a polygon, and holes in it such as tree pits and drains.
 *
 * <p>Corners are measured from the datum of the surface. They may run either way round; edges must not cross.
 */
public final class SurfaceOutline {

    private static final int FEWEST = 3;

    private final FieldUnit<Length> unit;

    /** The polygon, then its holes. */
    private final List<double[]> rings;

    private SurfaceOutline(FieldUnit<Length> unit, List<double[]> rings) {
        this.unit = unit;
        this.rings = rings;
        Crossings.refuse(rings);
    }

    /**
     * {@return the outline of a polygon}
     *
     * @param unit    the unit of the corners
     * @param corners x and y of each corner in turn
     * @throws IllegalArgumentException if there are fewer than three corners, one is not finite, or edges cross
     */
    public static SurfaceOutline of(FieldUnit<Length> unit, double... corners) {
        return new SurfaceOutline(Objects.requireNonNull(unit, "unit"), List.of(checked(corners)));
    }

    /**
     * {@return this outline with a hole in it}
     *
     * @param corners x and y of each corner of the hole in turn, in the same unit
     * @throws IllegalArgumentException if they are none, or the hole does not lie inside, clear of other holes
     */
    public SurfaceOutline withHole(double... corners) {
        double[] hole = checked(corners);
        if (!contains(hole[0], hole[1])) {
            throw new IllegalArgumentException("corners: the hole lies outside");
        }
        List<double[]> more = new ArrayList<>(rings);
        more.add(hole);
        return new SurfaceOutline(unit, more);
    }

    private static double[] checked(double... corners) {
        boolean isPolygon = corners.length % 2 == 0 && corners.length >= 2 * FEWEST;
        for (double coordinate : corners) {
            isPolygon &= Double.isFinite(coordinate);
        }
        if (!isPolygon || CirclePolygon.signedArea(corners) == 0) {
            throw new IllegalArgumentException("corners: expected x and y of three corners or more round an area");
        }
        return corners.clone();
    }

    /** {@return the unit of its corners} */
    public FieldUnit<Length> unit() {
        return unit;
    }

    /** {@return its area less the holes, in the square of its unit} */
    public double area() {
        double holes = rings.stream()
                .skip(1)
                .mapToDouble(ring -> Math.abs(CirclePolygon.signedArea(ring)))
                .sum();
        return Math.abs(CirclePolygon.signedArea(rings.get(0))) - holes;
    }

    /**
     * {@return whether a point lies in it and in no hole}
     *
     * @param x along, in its unit
     * @param y across, in its unit
     */
    public boolean contains(double x, double y) {
        boolean inside = false;
        for (double[] ring : rings) {
            inside ^= isInside(ring, x, y);
        }
        return inside;
    }

    /** Edges that a ray to the right crosses, odd or even. */
    private static boolean isInside(double[] ring, double x, double y) {
        boolean inside = false;
        int last = ring.length - 2;
        for (int i = 0; i < ring.length; last = i, i += 2) {
            boolean spans = (ring[i + 1] > y) != (ring[last + 1] > y);
            if (spans && x < ring[i] + (ring[last] - ring[i]) * (y - ring[i + 1]) / (ring[last + 1] - ring[i + 1])) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** {@return whether a circle lies in it and touches no edge, of holes neither} */
    boolean containsCircle(double x, double y, double radius) {
        return contains(x, y) && rings.stream().allMatch(ring -> isClear(ring, x, y, radius));
    }

    private static boolean isClear(double[] ring, double x, double y, double radius) {
        int last = ring.length - 2;
        for (int i = 0; i < ring.length; last = i, i += 2) {
            if (distance(ring[last], ring[last + 1], ring[i], ring[i + 1], x, y) < radius) {
                return false;
            }
        }
        return true;
    }

    private static double distance(double fromX, double fromY, double toX, double toY, double x, double y) {
        double stepX = toX - fromX;
        double stepY = toY - fromY;
        double along = ((x - fromX) * stepX + (y - fromY) * stepY) / (stepX * stepX + stepY * stepY);
        double nearest = Math.min(1, Math.max(0, along));
        return StrictMath.hypot(fromX + nearest * stepX - x, fromY + nearest * stepY - y);
    }

    /** {@return left, low, right and high of the polygon} */
    double[] bounds() {
        double[] bounds = {Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
        double[] ring = rings.get(0);
        for (int i = 0; i < ring.length; i++) {
            bounds[i % 2] = Math.min(bounds[i % 2], ring[i]);
            bounds[2 + i % 2] = Math.max(bounds[2 + i % 2], ring[i]);
        }
        return bounds;
    }
}
