// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import dev.infiltration.field.Location;
import dev.infiltration.field.Location.Selection;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Length;

/**
 * Draws locations at random: by zones, each with its share of the area, apart from each other and clear of edges.
 *
 * <p>The same zones, distances and seed give the same locations on every machine. A zone is given its share of the number
 * rounded down or up at random, so that over many seeds no zone, however small, is over- or underrated. Within a zone every
 * place is equally likely, less those too near to a location drawn before. Coordinates are whole hundredths of the unit.
 *
 * <pre>{@code
 * LocationSample draw = LocationSample.of(List.of(
 *                 new LocationSample.Zone("run-on edge", edge), new LocationSample.Zone("interior", interior)))
 *         .withRing(Reading.of("300", FieldUnit.MILLIMETRE))
 *         .withClearDistance(Reading.of("1", FieldUnit.METRE));
 * LocationSample.Drawn drawn = draw.draw(4, 20260603);
 * }</pre>
 */
public final class LocationSample {

    /** The most locations that one draw or one plan may have. */
    public static final int MOST_LOCATIONS = 10_000;

    /** Tries for one location: enough where a zone fills a hundredth of the rectangle round it. */
    private static final int TRIES = 20_000;

    /** Tries for all locations of a draw, so that a crowded zone takes no longer than a second. */
    private static final int ALL_TRIES = 1_000_000;

    private static final int DECIMALS = 2;
    private static final double HUNDREDTHS = 100;

    private final List<Zone> zones;
    private final FieldUnit<Length> unit;
    private final double radius;
    private final double clearDistance;

    private LocationSample(List<Zone> zones, double radius, double clearDistance) {
        this.zones = zones;
        this.unit = zones.get(0).outline().unit();
        this.radius = radius;
        this.clearDistance = clearDistance;
    }

    /**
     * A part of a surface that locations are drawn in by its share of the area: run-on edge, low spot, wheel path, interior.
     *
     * <p>Clogging starts where run-on enters and in low spots; locations drawn over the whole surface alone may miss it (Brown
     * and Borst 2014, J. Environ. Eng. 140(3), published). Zones should not overlap; two of one name are two parts of it.
     *
     * @param name    what it is called
     * @param outline where it lies
     */
    public record Zone(String name, SurfaceOutline outline) {

        /** Checks that both are there. */
        public Zone {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(outline, "outline");
        }
    }

    /**
     * What was drawn.
     *
     * @param locations the locations, zone by zone
     * @param missing   how many more were asked for that the tries found no room for
     * @param seed      the seed that they were drawn with
     */
    public record Drawn(List<Location> locations, int missing, long seed) {

        /** Copies the list. */
        public Drawn {
            locations = List.copyOf(locations);
        }
    }

    /**
     * {@return a draw in zones, of points without distance}
     *
     * @param zones the zones, at least one, all in the same unit
     * @throws IllegalArgumentException if there is none or their units differ
     */
    public static LocationSample of(List<Zone> zones) {
        if (zones.stream().map(zone -> zone.outline().unit()).distinct().count() != 1) {
            throw new IllegalArgumentException("zones: expected at least one, all in the same unit");
        }
        return new LocationSample(List.copyOf(zones), 0, 0);
    }

    /**
     * {@return this draw for rings of a diameter}: none reaches over the edge of its zone
     *
     * @param diameter diameter of the ring, 0 or more
     * @throws IllegalArgumentException if it is negative
     */
    public LocationSample withRing(Reading<Length> diameter) {
        return new LocationSample(zones, distance(diameter, "diameter") / 2, clearDistance);
    }

    /**
     * {@return this draw with a distance between the rings, edge to edge}
     *
     * @param distance the clear distance, 0 or more
     * @throws IllegalArgumentException if it is negative
     */
    public LocationSample withClearDistance(Reading<Length> distance) {
        return new LocationSample(zones, radius, distance(distance, "distance"));
    }

    private double distance(Reading<Length> length, String name) {
        if (length.value().signum() < 0) {
            throw new IllegalArgumentException(name + ": expected 0 or more, got " + length);
        }
        return length.in(unit);
    }

    /**
     * {@return a number of locations}, with ids L1, L2, …; a zone without room for one more location gets no further ones
     *
     * @param count how many, 0 to {@link #MOST_LOCATIONS}
     * @param seed  any number: it stands for the draw and should be reported with it
     * @throws IllegalArgumentException if {@code count} is out of its range
     */
    public Drawn draw(int count, long seed) {
        if (count < 0 || count > MOST_LOCATIONS) {
            throw new IllegalArgumentException("count: expected 0 to " + MOST_LOCATIONS + ", got " + count);
        }
        SeededSample random = new SeededSample(seed);
        int[] counts = counts(count, random.share());
        Placing placing = new Placing(random, new PlacedRings(clearDistance + 2 * radius), new ArrayList<>());
        for (int i = 0; i < counts.length; i++) {
            placing.place(zones.get(i), counts[i]);
        }
        return new Drawn(placing.drawn, count - placing.drawn.size(), seed);
    }

    /** Cuts the number by cumulated shares, all cuts moved by the same random part of one. */
    private int[] counts(int count, double shift) {
        double whole = zones.stream().mapToDouble(zone -> zone.outline().area()).sum();
        int[] counts = new int[zones.size()];
        double area = 0;
        int before = 0;
        for (int i = 0; i < counts.length; i++) {
            area += zones.get(i).outline().area();
            boolean isLast = i == counts.length - 1;
            int upTo = isLast ? count : (int) Math.min(count, Math.floor(count * (area / whole) + shift));
            counts[i] = upTo - before;
            before = upTo;
        }
        return counts;
    }

    private static double hundredths(double from, double to, double share) {
        return Math.round((from + (to - from) * share) * HUNDREDTHS) / HUNDREDTHS;
    }

    private Reading<Length> written(double coordinate) {
        return Reading.of(BigDecimal.valueOf(Math.round(coordinate * HUNDREDTHS), DECIMALS), unit);
    }

    /** Places locations one after the other. */
    private final class Placing {

        private final SeededSample random;
        private final PlacedRings rings;
        private final List<Location> drawn;
        private int tries;

        private Placing(SeededSample random, PlacedRings rings, List<Location> drawn) {
            this.random = random;
            this.rings = rings;
            this.drawn = drawn;
        }

        /** Places locations in a zone until the first that finds no room. */
        void place(Zone zone, int count) {
            boolean hasRoom = true;
            for (int i = 0; i < count && hasRoom; i++) {
                hasRoom = place(zone);
            }
        }

        private boolean place(Zone zone) {
            double[] bounds = zone.outline().bounds();
            for (int i = 0; i < TRIES && tries < ALL_TRIES; i++) {
                tries++;
                double x = hundredths(bounds[0], bounds[2], random.share());
                double y = hundredths(bounds[1], bounds[3], random.share());
                if (rings.isFree(x, y) && zone.outline().containsCircle(x, y, radius)) {
                    add(zone, x, y);
                    return true;
                }
            }
            return false;
        }

        private void add(Zone zone, double x, double y) {
            rings.add(x, y);
            drawn.add(Location.of("L" + (drawn.size() + 1))
                    .withZone(zone.name())
                    .withSelection(zones.size() == 1 ? Selection.RANDOM : Selection.STRATIFIED)
                    .withX(written(x))
                    .withY(written(y)));
        }
    }
}
