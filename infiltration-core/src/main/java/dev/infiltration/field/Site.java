// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotEmpty;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A place with one or more permeable surfaces.
 *
 * @param id          identifies the site in the book
 * @param name        its name for people
 * @param description what stands there, for a report
 * @param timeZone    the zone of local clock times; absent: times count as written
 * @param position    where it lies
 * @param surfaces    its permeable surfaces
 * @param externalIds its ids in other systems, by system
 * @param extra       the host's own values, kept and written back untouched
 */
public record Site(
        @NotEmpty @Nullable String id,
        @Nullable String name,
        @Nullable String description,
        @Nullable ZoneId timeZone,
        @Valid @Nullable Position position,
        List<@Valid Surface> surfaces,
        Map<String, String> externalIds,
        Map<String, Object> extra) {

    /** Copies the collections; absent ones become empty. */
    public Site {
        surfaces = Copies.list(surfaces, "surfaces");
        externalIds = Copies.texts(externalIds, "externalIds");
        extra = Copies.extra(extra);
    }

    /**
     * {@return a record with these parts; the others are absent}
     *
     * @param id identifies the site in the book
     */
    public static Site of(@Nullable String id) {
        return new Site(id, null, null, null, null, List.of(), Map.of(), Map.of());
    }

    /**
     * {@return this record with another {@code id}}
     *
     * @param id identifies the site in the book
     */
    public Site withId(@Nullable String id) {
        return new Site(id, name, description, timeZone, position, surfaces, externalIds, extra);
    }

    /**
     * {@return this record with another {@code name}}
     *
     * @param name its name for people
     */
    public Site withName(@Nullable String name) {
        return new Site(id, name, description, timeZone, position, surfaces, externalIds, extra);
    }

    /**
     * {@return this record with another {@code description}}
     *
     * @param description what stands there, for a report
     */
    public Site withDescription(@Nullable String description) {
        return new Site(id, name, description, timeZone, position, surfaces, externalIds, extra);
    }

    /**
     * {@return this record with another {@code timeZone}}
     *
     * @param timeZone the zone of local clock times; absent: times count as written
     */
    public Site withTimeZone(@Nullable ZoneId timeZone) {
        return new Site(id, name, description, timeZone, position, surfaces, externalIds, extra);
    }

    /**
     * {@return this record with another {@code position}}
     *
     * @param position where it lies
     */
    public Site withPosition(@Nullable Position position) {
        return new Site(id, name, description, timeZone, position, surfaces, externalIds, extra);
    }

    /**
     * {@return this record with another {@code surfaces}}
     *
     * @param surfaces its permeable surfaces
     */
    public Site withSurfaces(List<Surface> surfaces) {
        return new Site(id, name, description, timeZone, position, surfaces, externalIds, extra);
    }

    /**
     * {@return this record with another {@code externalIds}}
     *
     * @param externalIds its ids in other systems, by system
     */
    public Site withExternalIds(Map<String, String> externalIds) {
        return new Site(id, name, description, timeZone, position, surfaces, externalIds, extra);
    }

    /**
     * {@return this record with other {@code extra}}
     *
     * @param extra the host's own values, kept and written back untouched
     */
    public Site withExtra(Map<String, Object> extra) {
        return new Site(id, name, description, timeZone, position, surfaces, externalIds, extra);
    }
}
