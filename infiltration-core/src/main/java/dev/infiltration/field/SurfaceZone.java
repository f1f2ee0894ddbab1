// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import dev.infiltration.units.Reading;
import java.util.Map;
import javax.measure.quantity.Area;
import org.jspecify.annotations.Nullable;

/**
 * A zone of a surface, for stratified samples.
 *
 * @param id    identifies the zone on its surface; the {@code zone} of its locations
 * @param area  its area
 * @param extra the host's own values, kept and written back untouched
 */
public record SurfaceZone(@Nullable String id, @Nullable Reading<Area> area, Map<String, Object> extra) {

    /** Copies the collections; absent ones become empty. */
    public SurfaceZone {
        extra = Copies.extra(extra);
    }

    /**
     * {@return a record with these parts; the others are absent}
     *
     * @param id   identifies the zone on its surface
     * @param area its area
     */
    public static SurfaceZone of(@Nullable String id, @Nullable Reading<Area> area) {
        return new SurfaceZone(id, area, Map.of());
    }

    /**
     * {@return this record with other {@code extra}}
     *
     * @param extra the host's own values, kept and written back untouched
     */
    public SurfaceZone withExtra(Map<String, Object> extra) {
        return new SurfaceZone(id, area, extra);
    }
}
