// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import dev.infiltration.units.Reading;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotEmpty;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * A permeable pavement of one kind that is tested and maintained as one.
 *
 * @param id          identifies the surface in the book
 * @param type        the family of pavement
 * @param description unit type, laying pattern, joint filling, mix
 * @param area        its area; the number of locations is counted by the system this is written in
 * @param placedOn    the day it was placed
 * @param thickness   thickness of the pavement course
 * @param thicknessIs whether the thickness was measured or estimated
 * @param joints      units and joints of a jointed surface
 * @param locations   the spots that tests may name
 * @param extra       the host's own values, kept and written back untouched
 */
public record Surface(
        @NotEmpty @Nullable String id,
        @Nullable Type type,
        @Nullable String description,
        @Nullable Reading<Area> area,
        @Nullable LocalDate placedOn,
        @Nullable Reading<Length> thickness,
        @Nullable ThicknessBasis thicknessIs,
        @Nullable Joints joints,
        List<@Valid Location> locations,
        Map<String, Object> extra) {

    /** Copies the collections; absent ones become empty. */
    public Surface {
        locations = Frozen.list(locations, "locations");
        extra = Frozen.extra(extra);
    }

    /**
     * {@return a record of what is given, all else absent}
     *
     * @param id identifies the surface in the book
     */
    public static Surface of(@Nullable String id) {
        return new Surface(id, null, null, null, null, null, null, null, List.of(), Map.of());
    }

    /**
     * {@return this record with another {@code id}}
     *
     * @param id identifies the surface in the book
     */
    public Surface withId(@Nullable String id) {
        return new Surface(id, type, description, area, placedOn, thickness, thicknessIs, joints, locations, extra);
    }

    /**
     * {@return this record with another {@code type}}
     *
     * @param type the family of pavement
     */
    public Surface withType(@Nullable Type type) {
        return new Surface(id, type, description, area, placedOn, thickness, thicknessIs, joints, locations, extra);
    }

    /**
     * {@return this record with another {@code description}}
     *
     * @param description unit type, laying pattern, joint filling, mix
     */
    public Surface withDescription(@Nullable String description) {
        return new Surface(id, type, description, area, placedOn, thickness, thicknessIs, joints, locations, extra);
    }

    /**
     * {@return this record with another {@code area}}
     *
     * @param area its area; the number of locations is counted by the system this is written in
     */
    public Surface withArea(@Nullable Reading<Area> area) {
        return new Surface(id, type, description, area, placedOn, thickness, thicknessIs, joints, locations, extra);
    }

    /**
     * {@return this record with another {@code placedOn}}
     *
     * @param placedOn the day it was placed
     */
    public Surface withPlacedOn(@Nullable LocalDate placedOn) {
        return new Surface(id, type, description, area, placedOn, thickness, thicknessIs, joints, locations, extra);
    }

    /**
     * {@return this record with another {@code thickness}}
     *
     * @param thickness thickness of the pavement course
     */
    public Surface withThickness(@Nullable Reading<Length> thickness) {
        return new Surface(id, type, description, area, placedOn, thickness, thicknessIs, joints, locations, extra);
    }

    /**
     * {@return this record with another {@code thicknessIs}}
     *
     * @param thicknessIs whether the thickness was measured or estimated
     */
    public Surface withThicknessIs(@Nullable ThicknessBasis thicknessIs) {
        return new Surface(id, type, description, area, placedOn, thickness, thicknessIs, joints, locations, extra);
    }

    /**
     * {@return this record with another {@code joints}}
     *
     * @param joints units and joints of a jointed surface
     */
    public Surface withJoints(@Nullable Joints joints) {
        return new Surface(id, type, description, area, placedOn, thickness, thicknessIs, joints, locations, extra);
    }

    /**
     * {@return this record with another {@code locations}}
     *
     * @param locations the spots that tests may name
     */
    public Surface withLocations(List<Location> locations) {
        return new Surface(id, type, description, area, placedOn, thickness, thicknessIs, joints, locations, extra);
    }

    /**
     * {@return this record with another {@code extra}}
     *
     * @param extra the host's own values, kept and written back untouched
     */
    public Surface withExtra(Map<String, Object> extra) {
        return new Surface(id, type, description, area, placedOn, thickness, thicknessIs, joints, locations, extra);
    }

    /** The family of pavement. */
    public enum Type implements Word {
        /** Pervious concrete, placed in situ. */
        PERVIOUS_CONCRETE,
        /** Porous asphalt. */
        POROUS_ASPHALT,
        /** Permeable pavers with open joints. */
        PAVERS,
        /** Concrete or plastic grids with filled voids. */
        GRID,
        /** Any other permeable surface. */
        OTHER
    }

    /** How a thickness is known. */
    public enum ThicknessBasis implements Word {
        /** Measured. */
        ACTUAL,
        /** Estimated. */
        ESTIMATED
    }
}
