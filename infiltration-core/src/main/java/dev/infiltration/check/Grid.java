// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.units.FieldUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A spatial index: what lies within a reach of a point lies in its cell or one of those around it. */
final class Grid {

    private static final double EQUATOR = 6_378_137;
    private static final double FLATTENING = 1 / 298.257223563;

    /** Room for rounding, in metres: candidates are then compared exactly. */
    private static final double ROOM = 1e-3;

    private final double size;
    private final Map<Cell, List<Spaced>> cells = new HashMap<>();

    Grid(double reach) {
        this.size = Math.min(Math.max(reach, 0), Double.MAX_VALUE / 2) + ROOM;
    }

    private record Cell(long x, long y, long z) {}

    /** A point in metres. */
    record Point(double x, double y, double z) {}

    static Point local(Spaced test) {
        return new Point(test.x().in(FieldUnit.METRE), test.y().in(FieldUnit.METRE), 0);
    }

    /** Earth-centred coordinates on WGS 84: a chord is never longer than the geodesic. */
    static Point onEllipsoid(Spaced test) {
        double latitude = StrictMath.toRadians(test.latitude());
        double longitude = StrictMath.toRadians(test.longitude());
        double squaredEccentricity = FLATTENING * (2 - FLATTENING);
        double sine = StrictMath.sin(latitude);
        double normal = EQUATOR / Math.sqrt(1 - squaredEccentricity * sine * sine);
        double equatorial = normal * StrictMath.cos(latitude);
        return new Point(
                equatorial * StrictMath.cos(longitude),
                equatorial * StrictMath.sin(longitude),
                normal * (1 - squaredEccentricity) * sine);
    }

    void add(Point point, Spaced test) {
        cells.computeIfAbsent(cell(point, 0, 0, 0), key -> new ArrayList<>()).add(test);
    }

    void remove(Point point, Spaced test) {
        Cell cell = cell(point, 0, 0, 0);
        List<Spaced> tests = cells.getOrDefault(cell, new ArrayList<>());
        tests.remove(test);
        if (tests.isEmpty()) {
            cells.remove(cell);
        }
    }

    List<Spaced> around(Point point) {
        List<Spaced> around = new ArrayList<>();
        for (int x = -1; x <= 1; x++) {
            for (int y = -1; y <= 1; y++) {
                for (int z = -1; z <= 1; z++) {
                    around.addAll(cells.getOrDefault(cell(point, x, y, z), List.of()));
                }
            }
        }
        return around;
    }

    private Cell cell(Point point, int x, int y, int z) {
        return new Cell(index(point.x) + x, index(point.y) + y, index(point.z) + z);
    }

    private long index(double metres) {
        return (long) Math.floor(metres / size);
    }
}
