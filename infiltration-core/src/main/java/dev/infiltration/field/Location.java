// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import dev.infiltration.units.Reading;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotEmpty;
import java.util.Map;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * A spot on a surface where a ring is set.
 *
 * @param id        identifies the location on its surface
 * @param zone      the part of the surface it stands for: run-on edge, wheel path, interior
 * @param selection how it was chosen
 * @param x         distance from the datum of the surface, along
 * @param y         distance from the datum of the surface, across
 * @param position  where it lies on WGS 84
 * @param slope     steepest slope of the surface there, as a ratio
 * @param extra     the host's own values, kept and written back untouched
 */
public record Location(
        @NotEmpty @Nullable String id,
        @Nullable String zone,
        @Nullable Selection selection,
        @Nullable Reading<Length> x,
        @Nullable Reading<Length> y,
        @Valid @Nullable Position position,
        @Nullable Reading<Dimensionless> slope,
        Map<String, Object> extra) {

    /** Copies the collections; absent ones become empty. */
    public Location {
        extra = Copies.extra(extra);
    }

    /**
     * {@return a record of what is given, all else absent}
     *
     * @param id identifies the location on its surface
     */
    public static Location of(@Nullable String id) {
        return new Location(id, null, null, null, null, null, null, Map.of());
    }

    /**
     * {@return this record with another {@code id}}
     *
     * @param id identifies the location on its surface
     */
    public Location withId(@Nullable String id) {
        return new Location(id, zone, selection, x, y, position, slope, extra);
    }

    /**
     * {@return this record with another {@code zone}}
     *
     * @param zone the part of the surface it stands for: run-on edge, wheel path, interior
     */
    public Location withZone(@Nullable String zone) {
        return new Location(id, zone, selection, x, y, position, slope, extra);
    }

    /**
     * {@return this record with another {@code selection}}
     *
     * @param selection how it was chosen
     */
    public Location withSelection(@Nullable Selection selection) {
        return new Location(id, zone, selection, x, y, position, slope, extra);
    }

    /**
     * {@return this record with another {@code x}}
     *
     * @param x distance from the datum of the surface, along
     */
    public Location withX(@Nullable Reading<Length> x) {
        return new Location(id, zone, selection, x, y, position, slope, extra);
    }

    /**
     * {@return this record with another {@code y}}
     *
     * @param y distance from the datum of the surface, across
     */
    public Location withY(@Nullable Reading<Length> y) {
        return new Location(id, zone, selection, x, y, position, slope, extra);
    }

    /**
     * {@return this record with another {@code position}}
     *
     * @param position where it lies on WGS 84
     */
    public Location withPosition(@Nullable Position position) {
        return new Location(id, zone, selection, x, y, position, slope, extra);
    }

    /**
     * {@return this record with another {@code slope}}
     *
     * @param slope steepest slope of the surface there, as a ratio
     */
    public Location withSlope(@Nullable Reading<Dimensionless> slope) {
        return new Location(id, zone, selection, x, y, position, slope, extra);
    }

    /**
     * {@return this record with another {@code extra}}
     *
     * @param extra the host's own values, kept and written back untouched
     */
    public Location withExtra(Map<String, Object> extra) {
        return new Location(id, zone, selection, x, y, position, slope, extra);
    }

    /** How a location was chosen. */
    public enum Selection implements JsonName {
        /** Drawn at random over the surface. */
        RANDOM,
        /** Drawn at random within its zone. */
        STRATIFIED,
        /** Chosen for what is suspected there. */
        TARGETED,
        /** The same spot at every visit. */
        FIXED
    }
}
