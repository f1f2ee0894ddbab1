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
 * A location on a surface where a ring is placed.
 *
 * @param id        identifies the location on its surface
 * @param zone      zone of the surface: run-on edge, wheel path, interior
 * @param selection how it was selected
 * @param x         distance from the datum of the surface, along
 * @param y         distance from the datum of the surface, across
 * @param position  position on WGS 84
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
     * {@return a record with these parts; the others are absent}
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
     * @param zone zone of the surface: run-on edge, wheel path, interior
     */
    public Location withZone(@Nullable String zone) {
        return new Location(id, zone, selection, x, y, position, slope, extra);
    }

    /**
     * {@return this record with another {@code selection}}
     *
     * @param selection how it was selected
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
     * @param position position on WGS 84
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
     * {@return this record with other {@code extra}}
     *
     * @param extra the host's own values, kept and written back untouched
     */
    public Location withExtra(Map<String, Object> extra) {
        return new Location(id, zone, selection, x, y, position, slope, extra);
    }

    /** How a location was selected. */
    public enum Selection implements JsonName {
        /** Selected at random over the surface. */
        RANDOM,
        /** Selected at random within its zone. */
        STRATIFIED,
        /** Selected because a problem is suspected there. */
        TARGETED,
        /** The same location at every visit. */
        FIXED
    }
}
