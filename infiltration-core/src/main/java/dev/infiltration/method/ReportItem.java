// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.method;

import dev.infiltration.field.JsonName;
import dev.infiltration.field.Surface;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Something that a report of the method must state.
 *
 * @param item     what
 * @param surfaces the types of surface for which it is required; empty: all
 */
public record ReportItem(Item item, List<Surface.Type> surfaces) {

    /** What a report may have to state, in the order in which reports and findings list it. */
    public enum Item implements JsonName {
        /** Ids of the visit and of every test. */
        IDENTIFICATION,
        /** The location of every test. */
        LOCATION,
        /** The site in words. */
        SITE_DESCRIPTION,
        /** The pavement in words: unit type, laying pattern, joint filling. */
        PAVEMENT_DESCRIPTION,
        /** The day the surface was placed. */
        AGE,
        /** The thickness and whether it was measured. */
        THICKNESS,
        /** The date of the visit. */
        DATE,
        /** First start and last elapsed time of every test. */
        START_FINISH,
        /** At least one of the crew. */
        CREW,
        /** The weather in words. */
        WEATHER,
        /** The depth of the last rain, or that it is unknown. */
        LAST_RAIN_DEPTH,
        /** The surface temperature of every test. */
        SURFACE_TEMPERATURE,
        /** A photograph of every test. */
        PHOTO
    }

    /** Copies the kinds of surface. */
    public ReportItem {
        Objects.requireNonNull(item, "item");
        surfaces = List.copyOf(surfaces);
    }

    /**
     * {@return an item that is required on all surfaces, or on some types}
     *
     * @param item     what
     * @param surfaces the kinds of surface; none: all
     */
    public static ReportItem of(Item item, Surface.Type... surfaces) {
        return new ReportItem(item, List.of(surfaces));
    }

    /**
     * {@return whether it is required}
     *
     * @param type type of the surface; null if it is not known
     */
    public boolean isAskedFor(Surface.@Nullable Type type) {
        return surfaces.isEmpty() || (type != null && surfaces.contains(type));
    }
}
