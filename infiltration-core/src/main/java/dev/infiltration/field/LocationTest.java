// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import dev.infiltration.units.Reading;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotEmpty;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;

/**
 * A test at one location: the prewetting and the runs made there with one ring, or why none was made.
 *
 * @param id                 identifies the test in the book
 * @param location           id of the location on the surface of the visit
 * @param notTested          reason why no test was made
 * @param ring               id of the ring, required once the test was made
 * @param ringOffset         position of the centre of the ring in the joint pattern
 * @param surfaceTemperature temperature of the surface
 * @param waterTemperature   temperature of the water
 * @param clearSpacing       measured clear distance to the nearest other tested location
 * @param preWet             the prewetting
 * @param runs               the runs, in the order written
 * @param photos             photographs of the test
 * @param note               anything else
 * @param extra              the host's own values, kept and written back untouched
 */
@NamesRing
public record LocationTest(
        @Nullable String id,
        @NotEmpty @Nullable String location,
        @Nullable NotTested notTested,
        @Nullable String ring,
        @Nullable Offset ringOffset,
        @Nullable Reading<Temperature> surfaceTemperature,
        @Nullable Reading<Temperature> waterTemperature,
        @Nullable Reading<Length> clearSpacing,
        @Valid @Nullable PreWet preWet,
        List<@Valid TestRun> runs,
        List<@Valid Photo> photos,
        @Nullable String note,
        Map<String, Object> extra) {

    /** Copies the collections; absent ones become empty. */
    public LocationTest {
        runs = Copies.list(runs, "runs");
        photos = Copies.list(photos, "photos");
        extra = Copies.extra(extra);
    }

    /**
     * {@return a record with these parts; the others are absent}
     *
     * @param id       identifies the test in the book
     * @param location id of the location on the surface of the visit
     * @param ring     id of the ring, required once the test was made
     */
    public static LocationTest of(@Nullable String id, @Nullable String location, @Nullable String ring) {
        Draft draft = new Draft();
        draft.id = id;
        draft.location = location;
        draft.ring = ring;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code id}}
     *
     * @param id identifies the test in the book
     */
    public LocationTest withId(@Nullable String id) {
        Draft draft = new Draft(this);
        draft.id = id;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code location}}
     *
     * @param location id of the location on the surface of the visit
     */
    public LocationTest withLocation(@Nullable String location) {
        Draft draft = new Draft(this);
        draft.location = location;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code notTested}}
     *
     * @param notTested reason why no test was made
     */
    public LocationTest withNotTested(@Nullable NotTested notTested) {
        Draft draft = new Draft(this);
        draft.notTested = notTested;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code ring}}
     *
     * @param ring id of the ring, required once the test was made
     */
    public LocationTest withRing(@Nullable String ring) {
        Draft draft = new Draft(this);
        draft.ring = ring;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code ringOffset}}
     *
     * @param ringOffset position of the centre of the ring in the joint pattern
     */
    public LocationTest withRingOffset(@Nullable Offset ringOffset) {
        Draft draft = new Draft(this);
        draft.ringOffset = ringOffset;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code surfaceTemperature}}
     *
     * @param surfaceTemperature temperature of the surface
     */
    public LocationTest withSurfaceTemperature(@Nullable Reading<Temperature> surfaceTemperature) {
        Draft draft = new Draft(this);
        draft.surfaceTemperature = surfaceTemperature;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code waterTemperature}}
     *
     * @param waterTemperature temperature of the water
     */
    public LocationTest withWaterTemperature(@Nullable Reading<Temperature> waterTemperature) {
        Draft draft = new Draft(this);
        draft.waterTemperature = waterTemperature;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code clearSpacing}}
     *
     * @param clearSpacing measured clear distance to the nearest other tested location
     */
    public LocationTest withClearSpacing(@Nullable Reading<Length> clearSpacing) {
        Draft draft = new Draft(this);
        draft.clearSpacing = clearSpacing;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code preWet}}
     *
     * @param preWet the prewetting
     */
    public LocationTest withPreWet(@Nullable PreWet preWet) {
        Draft draft = new Draft(this);
        draft.preWet = preWet;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code runs}}
     *
     * @param runs the runs, in the order written
     */
    public LocationTest withRuns(List<TestRun> runs) {
        Draft draft = new Draft(this);
        draft.runs = runs;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code photos}}
     *
     * @param photos photographs of the test
     */
    public LocationTest withPhotos(List<Photo> photos) {
        Draft draft = new Draft(this);
        draft.photos = photos;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code note}}
     *
     * @param note anything else
     */
    public LocationTest withNote(@Nullable String note) {
        Draft draft = new Draft(this);
        draft.note = note;
        return draft.toRecord();
    }

    /**
     * {@return this record with other {@code extra}}
     *
     * @param extra the host's own values, kept and written back untouched
     */
    public LocationTest withExtra(Map<String, Object> extra) {
        Draft draft = new Draft(this);
        draft.extra = extra;
        return draft.toRecord();
    }

    /** Why a location was not tested. */
    public enum NotTested implements JsonName {
        /** Water stood there. */
        STANDING_WATER,
        /** A vehicle was parked there. */
        PARKED_VEHICLE,
        /** Traffic did not allow it. */
        TRAFFIC,
        /** Snow or ice lay there. */
        SNOW,
        /** Another reason; the note says which. */
        OTHER
    }

    /** {@return whether something was poured: a prewetting or a run is recorded, void or not} */
    public boolean isMade() {
        return preWet != null || !runs.isEmpty();
    }

    /** The parts of a record that is being made; the only place that knows their order. */
    private static final class Draft {
        private @Nullable String id;
        private @Nullable String location;
        private @Nullable NotTested notTested;
        private @Nullable String ring;
        private @Nullable Offset ringOffset;
        private @Nullable Reading<Temperature> surfaceTemperature;
        private @Nullable Reading<Temperature> waterTemperature;
        private @Nullable Reading<Length> clearSpacing;
        private @Nullable PreWet preWet;
        private List<TestRun> runs = List.of();
        private List<Photo> photos = List.of();
        private @Nullable String note;
        private Map<String, Object> extra = Map.of();

        private Draft() {}

        private Draft(LocationTest from) {
            id = from.id;
            location = from.location;
            notTested = from.notTested;
            ring = from.ring;
            ringOffset = from.ringOffset;
            surfaceTemperature = from.surfaceTemperature;
            waterTemperature = from.waterTemperature;
            clearSpacing = from.clearSpacing;
            preWet = from.preWet;
            runs = from.runs;
            photos = from.photos;
            note = from.note;
            extra = from.extra;
        }

        private LocationTest toRecord() {
            return new LocationTest(
                    id,
                    location,
                    notTested,
                    ring,
                    ringOffset,
                    surfaceTemperature,
                    waterTemperature,
                    clearSpacing,
                    preWet,
                    runs,
                    photos,
                    note,
                    extra);
        }
    }
}
