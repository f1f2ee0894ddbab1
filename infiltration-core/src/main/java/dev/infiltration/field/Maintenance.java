// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import jakarta.validation.constraints.NotEmpty;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A cleaning or restoration of a surface, or of some of its locations.
 *
 * @param id             identifies the entry in the book
 * @param surface        id of the surface
 * @param locations      ids of the maintained locations; empty: the whole surface
 * @param start          start
 * @param end            end
 * @param technique      technique: vacuum sweeping, pressure washing, replacement of joint filling
 * @param passes         number of passes
 * @param wet            whether water was used
 * @param jointsRefilled whether joints were refilled
 * @param note           anything else
 * @param extra          the host's own values, kept and written back untouched
 */
public record Maintenance(
        @NotEmpty @Nullable String id,
        @Nullable String surface,
        List<String> locations,
        @Nullable ClockTime start,
        @Nullable ClockTime end,
        @Nullable String technique,
        @Nullable Integer passes,
        @Nullable Boolean wet,
        @Nullable Boolean jointsRefilled,
        @Nullable String note,
        Map<String, Object> extra) {

    /** Copies the collections; absent ones become empty. */
    public Maintenance {
        locations = Copies.list(locations, "locations");
        extra = Copies.extra(extra);
    }

    /**
     * {@return a record with these parts; the others are absent}
     *
     * @param id      identifies the entry in the book
     * @param surface id of the surface
     */
    public static Maintenance of(@Nullable String id, @Nullable String surface) {
        return new Maintenance(id, surface, List.of(), null, null, null, null, null, null, null, Map.of());
    }

    /**
     * {@return this record with another {@code id}}
     *
     * @param id identifies the entry in the book
     */
    public Maintenance withId(@Nullable String id) {
        return new Maintenance(id, surface, locations, start, end, technique, passes, wet, jointsRefilled, note, extra);
    }

    /**
     * {@return this record with another {@code surface}}
     *
     * @param surface id of the surface
     */
    public Maintenance withSurface(@Nullable String surface) {
        return new Maintenance(id, surface, locations, start, end, technique, passes, wet, jointsRefilled, note, extra);
    }

    /**
     * {@return this record with another {@code locations}}
     *
     * @param locations ids of the maintained locations; empty: the whole surface
     */
    public Maintenance withLocations(List<String> locations) {
        return new Maintenance(id, surface, locations, start, end, technique, passes, wet, jointsRefilled, note, extra);
    }

    /**
     * {@return this record with another {@code start}}
     *
     * @param start start
     */
    public Maintenance withStart(@Nullable ClockTime start) {
        return new Maintenance(id, surface, locations, start, end, technique, passes, wet, jointsRefilled, note, extra);
    }

    /**
     * {@return this record with another {@code end}}
     *
     * @param end end
     */
    public Maintenance withEnd(@Nullable ClockTime end) {
        return new Maintenance(id, surface, locations, start, end, technique, passes, wet, jointsRefilled, note, extra);
    }

    /**
     * {@return this record with another {@code technique}}
     *
     * @param technique technique: vacuum sweeping, pressure washing, replacement of joint filling
     */
    public Maintenance withTechnique(@Nullable String technique) {
        return new Maintenance(id, surface, locations, start, end, technique, passes, wet, jointsRefilled, note, extra);
    }

    /**
     * {@return this record with another {@code passes}}
     *
     * @param passes number of passes
     */
    public Maintenance withPasses(@Nullable Integer passes) {
        return new Maintenance(id, surface, locations, start, end, technique, passes, wet, jointsRefilled, note, extra);
    }

    /**
     * {@return this record with another {@code wet}}
     *
     * @param wet whether water was used
     */
    public Maintenance withWet(@Nullable Boolean wet) {
        return new Maintenance(id, surface, locations, start, end, technique, passes, wet, jointsRefilled, note, extra);
    }

    /**
     * {@return this record with another {@code jointsRefilled}}
     *
     * @param jointsRefilled whether joints were refilled
     */
    public Maintenance withJointsRefilled(@Nullable Boolean jointsRefilled) {
        return new Maintenance(id, surface, locations, start, end, technique, passes, wet, jointsRefilled, note, extra);
    }

    /**
     * {@return this record with another {@code note}}
     *
     * @param note anything else
     */
    public Maintenance withNote(@Nullable String note) {
        return new Maintenance(id, surface, locations, start, end, technique, passes, wet, jointsRefilled, note, extra);
    }

    /**
     * {@return this record with other {@code extra}}
     *
     * @param extra the host's own values, kept and written back untouched
     */
    public Maintenance withExtra(Map<String, Object> extra) {
        return new Maintenance(id, surface, locations, start, end, technique, passes, wet, jointsRefilled, note, extra);
    }
}
