// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import dev.infiltration.field.Location;
import dev.infiltration.field.Position;
import dev.infiltration.plan.VisitPlan.TooNear;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * Which of the locations listed are planned for: the first ones, less those too near to one before; the others are spares.
 *
 * @param planned those planned for, in the order listed
 * @param spares  those beyond, in the order listed
 * @param tooNear spares with the planned locations that they lie too near to
 */
record LocationSelection(List<Location> planned, List<Location> spares, List<TooNear> tooNear) {

    /** Room for the rounding of coordinates, in metres. */
    private static final double ROOM = 1e-9;

    /**
     * {@return the choice}
     *
     * @param listed   the locations listed
     * @param count    how many are planned for
     * @param diameter of the ring, in metres
     * @param clear    what the method asks for between rings, in metres
     */
    static LocationSelection of(List<Location> listed, long count, double diameter, double clear) {
        LocationSelection choice = new LocationSelection(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        Cells before = new Cells(clear + diameter);
        for (Location location : listed) {
            Spot spot = Spot.of(choice.planned.size(), location);
            boolean isApart = choice.name(before.near(spot), spot, diameter, clear);
            if (isApart && choice.planned.size() < count) {
                choice.planned.add(location);
                before.add(spot);
            } else {
                choice.spares.add(location);
            }
        }
        return choice;
    }

    /** A location with its coordinates as numbers, NaN where one is not recorded: most pairs are far apart at first sight. */
    private record Spot(int number, Location location, double x, double y, double latitude, double longitude) {

        /** Less than a degree of a meridian, in metres. */
        private static final double DEGREE = 109_000;

        static Spot of(int number, Location location) {
            Optional<Position> position =
                    Optional.ofNullable(location.position()).filter(Position::isOnEarth);
            boolean isLocal = location.x() != null && location.y() != null;
            return new Spot(
                    number,
                    location,
                    isLocal ? metres(location.x()) : Double.NaN,
                    isLocal ? metres(location.y()) : Double.NaN,
                    degrees(position.map(Position::latitude)),
                    degrees(position.map(Position::longitude)));
        }

        private static double metres(@Nullable Reading<Length> distance) {
            return distance == null ? Double.NaN : distance.in(FieldUnit.METRE);
        }

        private static double degrees(Optional<BigDecimal> angle) {
            return angle.map(BigDecimal::doubleValue).orElse(Double.NaN);
        }

        boolean isLocal() {
            return !Double.isNaN(x);
        }

        boolean isPlaced() {
            return !Double.isNaN(latitude);
        }

        /** {@return whether another spot may be within a distance in metres}: comparisons with NaN are false */
        boolean mayBeWithin(double metres, Spot other) {
            if (isLocal() && other.isLocal()) {
                return Math.abs(x - other.x) <= metres && Math.abs(y - other.y) <= metres;
            }
            double east = Math.abs(longitude - other.longitude);
            double narrow = Math.cos(Math.toRadians(Math.max(Math.abs(latitude), Math.abs(other.latitude))));
            boolean isFarEast = east < 1 && east * narrow * DEGREE > metres;
            return Math.abs(latitude - other.latitude) * DEGREE <= metres && !isFarEast;
        }
    }

    /** Spots in cells twice as wide as the distance of interest: only those in adjacent cells are compared. */
    private static final class Cells {

        private final double width;
        private final Map<Cell, List<Spot>> spots = new HashMap<>();

        private enum Kind {
            /** By coordinates on the surface. */
            LOCAL,
            /** By latitude. */
            PLACED,
            /** By latitude, of those without coordinates on the surface. */
            ONLY_PLACED
        }

        private record Cell(Kind kind, double column, double row) {}

        Cells(double metres) {
            width = 2 * metres;
        }

        void add(Spot spot) {
            if (spot.isLocal()) {
                put(new Cell(Kind.LOCAL, cell(spot.x()), cell(spot.y())), spot);
            } else if (spot.isPlaced()) {
                put(new Cell(Kind.ONLY_PLACED, band(spot), 0), spot);
            }
            if (spot.isPlaced()) {
                put(new Cell(Kind.PLACED, band(spot), 0), spot);
            }
        }

        private void put(Cell cell, Spot spot) {
            spots.computeIfAbsent(cell, key -> new ArrayList<>()).add(spot);
        }

        private double cell(double metres) {
            return Math.floor(metres / width);
        }

        private double band(Spot spot) {
            return cell(spot.latitude() * Spot.DEGREE);
        }

        /** {@return the spots that may be within the distance, in the order added, and some farther ones} */
        List<Spot> near(Spot spot) {
            List<Spot> near = new ArrayList<>();
            for (int column = -1; column <= 1; column++) {
                for (int row = -1; row <= 1 && spot.isLocal(); row++) {
                    near.addAll(in(new Cell(Kind.LOCAL, cell(spot.x()) + column, cell(spot.y()) + row)));
                }
                Kind others = spot.isLocal() ? Kind.ONLY_PLACED : Kind.PLACED;
                near.addAll(in(new Cell(others, band(spot) + column, 0)));
            }
            near.sort(Comparator.comparingInt(Spot::number));
            return near;
        }

        private List<Spot> in(Cell cell) {
            return spots.getOrDefault(cell, List.of());
        }
    }

    /** Names the planned ones that a location lies too near to, and tells whether there is none. */
    private boolean name(List<Spot> before, Spot spot, double diameter, double clear) {
        boolean isApart = true;
        for (Spot other : before) {
            OptionalDouble between = spot.mayBeWithin(clear + diameter, other)
                    ? metres(other.location(), spot.location())
                    : OptionalDouble.empty();
            if (between.isPresent() && between.getAsDouble() - diameter < clear - ROOM) {
                tooNear.add(
                        new TooNear(other.location(), spot.location(), Math.max(0, between.getAsDouble() - diameter)));
                isApart = false;
            }
        }
        return isApart;
    }

    /** {@return the distance from middle to middle, by coordinates, else at most by positions; empty where neither tells} */
    private static OptionalDouble metres(Location one, Location other) {
        if (one.x() != null && one.y() != null && other.x() != null && other.y() != null) {
            double x = other.x().in(FieldUnit.METRE) - one.x().in(FieldUnit.METRE);
            double y = other.y().in(FieldUnit.METRE) - one.y().in(FieldUnit.METRE);
            return OptionalDouble.of(StrictMath.hypot(x, y));
        }
        return atMost(one.position(), other.position());
    }

    private static OptionalDouble atMost(@Nullable Position one, @Nullable Position other) {
        if (one == null || other == null || one.accuracy() == null || other.accuracy() == null) {
            return OptionalDouble.empty();
        }
        double doubt = one.accuracy().in(FieldUnit.METRE) + other.accuracy().in(FieldUnit.METRE);
        return one.metresTo(other).stream().map(between -> between + doubt).findFirst();
    }
}
