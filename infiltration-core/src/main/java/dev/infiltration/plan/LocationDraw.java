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
import java.util.Optional;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * Draws locations at random: by zones, each with its share of the area, apart from each other and clear of edges.
 *
 * <p>The same zones, distances and seed give the same locations on every machine. A zone is given its share of the number
 * rounded down or up at random, so that over many seeds no zone, however small, is over- or underrated. Within a zone every
 * place is equally likely, less those too near to a location drawn before. Coordinates are whole hundredths of the unit.
 *
 * <pre>{@code
 * LocationDraw draw = LocationDraw.of(List.of(
 *                 new LocationDraw.Zone("run-on edge", edge), new LocationDraw.Zone("interior", interior)))
 *         .withRing(Reading.of("300", FieldUnit.MILLIMETRE))
 *         .withClearDistance(Reading.of("1", FieldUnit.METRE));
 * LocationDraw.Drawn drawn = draw.draw(4, 20260603);
 * }</pre>
 */
public final class LocationDraw {

    /** Tries for one location: enough where a zone fills a hundredth of the rectangle round it. */
    private static final int TRIES = 20_000;

    private static final int DECIMALS = 2;

    private final List<Zone> zones;
    private final FieldUnit<Length> unit;
    private final double radius;
    private final double clearDistance;

    private LocationDraw(List<Zone> zones, double radius, double clearDistance) {
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
    public record Zone(String name, Outline outline) {

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
    public static LocationDraw of(List<Zone> zones) {
        if (zones.stream().map(zone -> zone.outline().unit()).distinct().count() != 1) {
            throw new IllegalArgumentException("zones: expected at least one, all in the same unit");
        }
        return new LocationDraw(List.copyOf(zones), 0, 0);
    }

    /**
     * {@return this draw for rings of a diameter}: none reaches over the edge of its zone
     *
     * @param diameter diameter of the ring, 0 or more
     * @throws IllegalArgumentException if it is negative
     */
    public LocationDraw withRing(Reading<Length> diameter) {
        return new LocationDraw(zones, distance(diameter, "diameter") / 2, clearDistance);
    }

    /**
     * {@return this draw with a distance between the rings, edge to edge}
     *
     * @param distance the clear distance, 0 or more
     * @throws IllegalArgumentException if it is negative
     */
    public LocationDraw withClearDistance(Reading<Length> distance) {
        return new LocationDraw(zones, radius, distance(distance, "distance"));
    }

    private double distance(Reading<Length> length, String name) {
        if (length.value().signum() < 0) {
            throw new IllegalArgumentException(name + ": expected 0 or more, got " + length);
        }
        return length.in(unit);
    }

    /**
     * {@return a number of locations}, with ids L1, L2, …
     *
     * @param count how many, 0 or more
     * @param seed  any number: it stands for the draw and should be reported with it
     * @throws IllegalArgumentException if {@code count} is negative
     */
    public Drawn draw(int count, long seed) {
        if (count < 0) {
            throw new IllegalArgumentException("count: expected 0 or more, got " + count);
        }
        SeededDraw random = new SeededDraw(seed);
        List<Location> drawn = new ArrayList<>();
        int[] counts = counts(count, random.share());
        for (int i = 0; i < counts.length; i++) {
            Zone zone = zones.get(i);
            for (int k = 0; k < counts[i]; k++) {
                place(zone, drawn, random).ifPresent(drawn::add);
            }
        }
        return new Drawn(drawn, count - drawn.size(), seed);
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

    private Optional<Location> place(Zone zone, List<Location> drawn, SeededDraw random) {
        double[] bounds = zone.outline().bounds();
        for (int i = 0; i < TRIES; i++) {
            Reading<Length> x = between(bounds[0], bounds[2], random.share());
            Reading<Length> y = between(bounds[1], bounds[3], random.share());
            if (isFree(zone, x.value().doubleValue(), y.value().doubleValue(), drawn)) {
                return Optional.of(Location.of("L" + (drawn.size() + 1))
                        .withZone(zone.name())
                        .withSelection(zones.size() == 1 ? Selection.RANDOM : Selection.STRATIFIED)
                        .withX(x)
                        .withY(y));
            }
        }
        return Optional.empty();
    }

    private Reading<Length> between(double from, double to, double share) {
        double value = from + (to - from) * share;
        return Reading.of(BigDecimal.valueOf(Math.round(value * 100), DECIMALS), unit);
    }

    private boolean isFree(Zone zone, double x, double y, List<Location> drawn) {
        return zone.outline().containsCircle(x, y, radius)
                && drawn.stream().allMatch(other -> apart(other, x, y) >= clearDistance + 2 * radius);
    }

    private static double apart(Location other, double x, double y) {
        return StrictMath.hypot(coordinate(other.x()) - x, coordinate(other.y()) - y);
    }

    private static double coordinate(@Nullable Reading<Length> written) {
        return Objects.requireNonNull(written).value().doubleValue();
    }
}
