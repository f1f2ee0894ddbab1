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
 * @param locations   the locations that tests may name
 * @param zones the zones that locations name, with their areas
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
        List<@Valid SurfaceZone> zones,
        Map<String, Object> extra) {

    /** Copies the collections; absent ones become empty. */
    public Surface {
        locations = Copies.list(locations, "locations");
        zones = Copies.list(zones, "zones");
        extra = Copies.extra(extra);
    }

    /**
     * {@return a record with these parts; the others are absent}
     *
     * @param id identifies the surface in the book
     */
    public static Surface of(@Nullable String id) {
        Draft draft = new Draft();
        draft.id = id;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code id}}
     *
     * @param id identifies the surface in the book
     */
    public Surface withId(@Nullable String id) {
        Draft draft = new Draft(this);
        draft.id = id;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code type}}
     *
     * @param type the family of pavement
     */
    public Surface withType(@Nullable Type type) {
        Draft draft = new Draft(this);
        draft.type = type;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code description}}
     *
     * @param description unit type, laying pattern, joint filling, mix
     */
    public Surface withDescription(@Nullable String description) {
        Draft draft = new Draft(this);
        draft.description = description;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code area}}
     *
     * @param area its area; the number of locations is counted by the system this is written in
     */
    public Surface withArea(@Nullable Reading<Area> area) {
        Draft draft = new Draft(this);
        draft.area = area;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code placedOn}}
     *
     * @param placedOn the day it was placed
     */
    public Surface withPlacedOn(@Nullable LocalDate placedOn) {
        Draft draft = new Draft(this);
        draft.placedOn = placedOn;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code thickness}}
     *
     * @param thickness thickness of the pavement course
     */
    public Surface withThickness(@Nullable Reading<Length> thickness) {
        Draft draft = new Draft(this);
        draft.thickness = thickness;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code thicknessIs}}
     *
     * @param thicknessIs whether the thickness was measured or estimated
     */
    public Surface withThicknessIs(@Nullable ThicknessBasis thicknessIs) {
        Draft draft = new Draft(this);
        draft.thicknessIs = thicknessIs;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code joints}}
     *
     * @param joints units and joints of a jointed surface
     */
    public Surface withJoints(@Nullable Joints joints) {
        Draft draft = new Draft(this);
        draft.joints = joints;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code locations}}
     *
     * @param locations the locations that tests may name
     */
    public Surface withLocations(List<Location> locations) {
        Draft draft = new Draft(this);
        draft.locations = locations;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code zones}}
     *
     * @param zones the zones that locations name, with their areas
     */
    public Surface withZones(List<SurfaceZone> zones) {
        Draft draft = new Draft(this);
        draft.zones = zones;
        return draft.toRecord();
    }

    /**
     * {@return this record with other {@code extra}}
     *
     * @param extra the host's own values, kept and written back untouched
     */
    public Surface withExtra(Map<String, Object> extra) {
        Draft draft = new Draft(this);
        draft.extra = extra;
        return draft.toRecord();
    }

    /** The family of pavement. */
    public enum Type implements JsonName {
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
    public enum ThicknessBasis implements JsonName {
        /** Measured. */
        ACTUAL,
        /** Estimated. */
        ESTIMATED
    }

    /** The parts of a record that is being made; the only place that knows their order. */
    private static final class Draft {
        private @Nullable String id;
        private @Nullable Type type;
        private @Nullable String description;
        private @Nullable Reading<Area> area;
        private @Nullable LocalDate placedOn;
        private @Nullable Reading<Length> thickness;
        private @Nullable ThicknessBasis thicknessIs;
        private @Nullable Joints joints;
        private List<Location> locations = List.of();
        private List<SurfaceZone> zones = List.of();
        private Map<String, Object> extra = Map.of();

        private Draft() {}

        private Draft(Surface from) {
            id = from.id;
            type = from.type;
            description = from.description;
            area = from.area;
            placedOn = from.placedOn;
            thickness = from.thickness;
            thicknessIs = from.thicknessIs;
            joints = from.joints;
            locations = from.locations;
            zones = from.zones;
            extra = from.extra;
        }

        private Surface toRecord() {
            return new Surface(
                    id, type, description, area, placedOn, thickness, thicknessIs, joints, locations, zones, extra);
        }
    }
}
