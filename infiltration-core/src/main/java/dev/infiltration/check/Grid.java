// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Predicate;
import javax.measure.quantity.Length;

/**
 * A spatial index: what lies within a radius of a point lies in its cell or in those around it.
 *
 * <p>Tests at one point with one ring are held once, with the locations they name.
 */
final class Grid {

    private static final double EQUATOR = 6_378_137;
    private static final double FLATTENING = 1 / 298.257223563;

    /** Room for rounding, in metres: candidates are then compared exactly. */
    private static final double ROOM = 1e-3;

    private final double size;
    private final Map<Cell, Map<Object, SameLocationTests>> cells = new HashMap<>();

    /**
     * @param size the side of a cell, in metres; a radius up to it needs the nearest cells alone
     */
    Grid(double size) {
        this.size = Math.min(size, Double.MAX_VALUE / 2) + ROOM;
    }

    private record Cell(long x, long y, long z) {}

    /** A point in metres. */
    record Point(double x, double y, double z) {

        /** {@return the straight line to another point, in metres} */
        double to(Point other) {
            return Math.sqrt(
                    (x - other.x) * (x - other.x) + (y - other.y) * (y - other.y) + (z - other.z) * (z - other.z));
        }
    }

    static Point local(Reading<Length> x, Reading<Length> y) {
        return new Point(x.in(FieldUnit.METRE), y.in(FieldUnit.METRE), 0);
    }

    /** Earth-centred coordinates on WGS 84: a chord is never longer than the geodesic. */
    static Point onEllipsoid(double northing, double easting) {
        double latitude = StrictMath.toRadians(northing);
        double longitude = StrictMath.toRadians(easting);
        double squaredEccentricity = FLATTENING * (2 - FLATTENING);
        double sine = StrictMath.sin(latitude);
        double normal = EQUATOR / Math.sqrt(1 - squaredEccentricity * sine * sine);
        double equatorial = normal * StrictMath.cos(latitude);
        return new Point(
                equatorial * StrictMath.cos(longitude),
                equatorial * StrictMath.sin(longitude),
                normal * (1 - squaredEccentricity) * sine);
    }

    void add(Point point, Object likeness, LocatedTest test) {
        cells.computeIfAbsent(cell(point, 0, 0, 0), key -> new HashMap<>())
                .computeIfAbsent(likeness, key -> new SameLocationTests(point, test))
                .add(test);
    }

    void remove(Point point, Object likeness, LocatedTest test) {
        Cell cell = cell(point, 0, 0, 0);
        Map<Object, SameLocationTests> inCell = cells.getOrDefault(cell, new HashMap<>());
        SameLocationTests alike = inCell.get(likeness);
        if (alike != null && alike.remove(test)) {
            inCell.remove(likeness);
        }
        if (inCell.isEmpty()) {
            cells.remove(cell);
        }
    }

    /** {@return whether something held within a radius of the point, or a little farther away, is as asked} */
    boolean anyAround(Point point, double radius, Predicate<SameLocationTests> asked) {
        Predicate<SameLocationTests> near = alike -> !(point.to(alike.point()) > radius + ROOM) && asked.test(alike);
        if (radius > size) {
            return cells.values().stream().anyMatch(inCell -> any(inCell, near));
        }
        for (int x = -1; x <= 1; x++) {
            for (int y = -1; y <= 1; y++) {
                for (int z = -1; z <= 1; z++) {
                    Map<Object, SameLocationTests> inCell = cells.get(cell(point, x, y, z));
                    if (inCell != null && any(inCell, near)) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private static boolean any(Map<Object, SameLocationTests> inCell, Predicate<SameLocationTests> asked) {
        for (SameLocationTests alike : inCell.values()) {
            if (asked.test(alike)) {
                return true;
            }
        }
        return false;
    }

    private Cell cell(Point point, int x, int y, int z) {
        return new Cell(index(point.x) + x, index(point.y) + y, index(point.z) + z);
    }

    private long index(double metres) {
        return (long) Math.floor(metres / size);
    }
}
