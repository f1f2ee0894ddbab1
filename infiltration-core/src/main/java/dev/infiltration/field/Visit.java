// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import dev.infiltration.units.Reading;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * One crew's work on one surface on one date.
 *
 * <p>Work past midnight, to 12:00 of the next day, belongs to the visit's date.
 *
 * @param id                 identifies the visit in the book
 * @param surface            id of the surface tested
 * @param date               the date of the visit
 * @param method             id or alias of the test method; absent: chosen by the type of the surface
 * @param purpose            why the tests were made
 * @param campaign           name that joins visits of a surface; their locations are counted together
 * @param references numbers or texts that the report refers to, by kind: permit, order
 * @param requestedLocations number of locations that the purchaser requested
 * @param crew               persons present
 * @param instruments        ids of the instruments used
 * @param swept              whether loose material was broomed off
 * @param standingWater      whether water stood on the surface
 * @param potableWater       whether the water was potable
 * @param endPointWithin how far the judgement "no free water left" may be off, either way
 * @param weather            weather and last rain
 * @param tests              the tests, in the order written
 * @param amendments         corrections made later
 * @param preparedBy who prepared the record, and when
 * @param reviewedBy who reviewed the record, and when
 * @param extra              the host's own values, kept and written back untouched
 */
public record Visit(
        @NotEmpty @Nullable String id,
        @NotEmpty @Nullable String surface,
        @NotNull @Nullable LocalDate date,
        @Nullable String method,
        @Nullable Purpose purpose,
        @Nullable String campaign,
        Map<String, String> references,
        @Nullable Integer requestedLocations,
        List<@Valid CrewMember> crew,
        List<String> instruments,
        @Nullable Boolean swept,
        @Nullable Boolean standingWater,
        @Nullable Boolean potableWater,
        @Nullable Reading<Time> endPointWithin,
        @Valid @Nullable Weather weather,
        List<@Valid LocationTest> tests,
        List<@Valid Amendment> amendments,
        @Valid @Nullable SignOff preparedBy,
        @Valid @Nullable SignOff reviewedBy,
        Map<String, Object> extra) {

    /** Copies the collections; absent ones become empty. */
    public Visit {
        crew = Copies.list(crew, "crew");
        instruments = Copies.list(instruments, "instruments");
        tests = Copies.list(tests, "tests");
        amendments = Copies.list(amendments, "amendments");
        references = Copies.texts(references, "references");
        extra = Copies.extra(extra);
    }

    /**
     * {@return a record with these parts; the others are absent}
     *
     * @param id      identifies the visit in the book
     * @param surface id of the surface tested
     * @param date    the date of the visit
     */
    public static Visit of(@Nullable String id, @Nullable String surface, @Nullable LocalDate date) {
        Draft draft = new Draft();
        draft.id = id;
        draft.surface = surface;
        draft.date = date;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code id}}
     *
     * @param id identifies the visit in the book
     */
    public Visit withId(@Nullable String id) {
        Draft draft = new Draft(this);
        draft.id = id;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code surface}}
     *
     * @param surface id of the surface tested
     */
    public Visit withSurface(@Nullable String surface) {
        Draft draft = new Draft(this);
        draft.surface = surface;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code date}}
     *
     * @param date the date of the visit
     */
    public Visit withDate(@Nullable LocalDate date) {
        Draft draft = new Draft(this);
        draft.date = date;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code method}}
     *
     * @param method id or alias of the test method; absent: chosen by the type of the surface
     */
    public Visit withMethod(@Nullable String method) {
        Draft draft = new Draft(this);
        draft.method = method;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code purpose}}
     *
     * @param purpose why the tests were made
     */
    public Visit withPurpose(@Nullable Purpose purpose) {
        Draft draft = new Draft(this);
        draft.purpose = purpose;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code campaign}}
     *
     * @param campaign name that joins visits of a surface; their locations are counted together
     */
    public Visit withCampaign(@Nullable String campaign) {
        Draft draft = new Draft(this);
        draft.campaign = campaign;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code references}}
     *
     * @param references numbers or texts that the report refers to, by kind: permit, order
     */
    public Visit withReferences(Map<String, String> references) {
        Draft draft = new Draft(this);
        draft.references = references;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code requestedLocations}}
     *
     * @param requestedLocations number of locations that the purchaser requested
     */
    public Visit withRequestedLocations(@Nullable Integer requestedLocations) {
        Draft draft = new Draft(this);
        draft.requestedLocations = requestedLocations;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code crew}}
     *
     * @param crew persons present
     */
    public Visit withCrew(List<CrewMember> crew) {
        Draft draft = new Draft(this);
        draft.crew = crew;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code instruments}}
     *
     * @param instruments ids of the instruments used
     */
    public Visit withInstruments(List<String> instruments) {
        Draft draft = new Draft(this);
        draft.instruments = instruments;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code swept}}
     *
     * @param swept whether loose material was broomed off
     */
    public Visit withSwept(@Nullable Boolean swept) {
        Draft draft = new Draft(this);
        draft.swept = swept;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code standingWater}}
     *
     * @param standingWater whether water stood on the surface
     */
    public Visit withStandingWater(@Nullable Boolean standingWater) {
        Draft draft = new Draft(this);
        draft.standingWater = standingWater;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code potableWater}}
     *
     * @param potableWater whether the water was potable
     */
    public Visit withPotableWater(@Nullable Boolean potableWater) {
        Draft draft = new Draft(this);
        draft.potableWater = potableWater;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code endPointWithin}}
     *
     * @param endPointWithin how far the judgement "no free water left" may be off, either way
     */
    public Visit withEndPointWithin(@Nullable Reading<Time> endPointWithin) {
        Draft draft = new Draft(this);
        draft.endPointWithin = endPointWithin;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code weather}}
     *
     * @param weather weather and last rain
     */
    public Visit withWeather(@Nullable Weather weather) {
        Draft draft = new Draft(this);
        draft.weather = weather;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code tests}}
     *
     * @param tests the tests, in the order written
     */
    public Visit withTests(List<LocationTest> tests) {
        Draft draft = new Draft(this);
        draft.tests = tests;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code amendments}}
     *
     * @param amendments corrections made later
     */
    public Visit withAmendments(List<Amendment> amendments) {
        Draft draft = new Draft(this);
        draft.amendments = amendments;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code preparedBy}}
     *
     * @param preparedBy who prepared the record, and when
     */
    public Visit withPreparedBy(@Nullable SignOff preparedBy) {
        Draft draft = new Draft(this);
        draft.preparedBy = preparedBy;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code reviewedBy}}
     *
     * @param reviewedBy who reviewed the record, and when
     */
    public Visit withReviewedBy(@Nullable SignOff reviewedBy) {
        Draft draft = new Draft(this);
        draft.reviewedBy = reviewedBy;
        return draft.toRecord();
    }

    /**
     * {@return this record with other {@code extra}}
     *
     * @param extra the host's own values, kept and written back untouched
     */
    public Visit withExtra(Map<String, Object> extra) {
        Draft draft = new Draft(this);
        draft.extra = extra;
        return draft.toRecord();
    }

    /** Why tests were made. */
    public enum Purpose implements JsonName {
        /** To accept new work. */
        ACCEPTANCE,
        /** To see how the surface stands. */
        ROUTINE,
        /** To show what maintenance did. */
        AFTER_MAINTENANCE,
        /** To look into a complaint. */
        COMPLAINT,
        /** To learn. */
        RESEARCH,
        /** To practise. */
        TRAINING
    }

    /** The parts of a record that is being made; the only place that knows their order. */
    private static final class Draft {
        private @Nullable String id;
        private @Nullable String surface;
        private @Nullable LocalDate date;
        private @Nullable String method;
        private @Nullable Purpose purpose;
        private @Nullable String campaign;
        private Map<String, String> references = Map.of();
        private @Nullable Integer requestedLocations;
        private List<CrewMember> crew = List.of();
        private List<String> instruments = List.of();
        private @Nullable Boolean swept;
        private @Nullable Boolean standingWater;
        private @Nullable Boolean potableWater;
        private @Nullable Reading<Time> endPointWithin;
        private @Nullable Weather weather;
        private List<LocationTest> tests = List.of();
        private List<Amendment> amendments = List.of();
        private @Nullable SignOff preparedBy;
        private @Nullable SignOff reviewedBy;
        private Map<String, Object> extra = Map.of();

        private Draft() {}

        private Draft(Visit from) {
            id = from.id;
            surface = from.surface;
            date = from.date;
            method = from.method;
            purpose = from.purpose;
            campaign = from.campaign;
            references = from.references;
            requestedLocations = from.requestedLocations;
            crew = from.crew;
            instruments = from.instruments;
            swept = from.swept;
            standingWater = from.standingWater;
            potableWater = from.potableWater;
            endPointWithin = from.endPointWithin;
            weather = from.weather;
            tests = from.tests;
            amendments = from.amendments;
            preparedBy = from.preparedBy;
            reviewedBy = from.reviewedBy;
            extra = from.extra;
        }

        private Visit toRecord() {
            return new Visit(
                    id,
                    surface,
                    date,
                    method,
                    purpose,
                    campaign,
                    references,
                    requestedLocations,
                    crew,
                    instruments,
                    swept,
                    standingWater,
                    potableWater,
                    endPointWithin,
                    weather,
                    tests,
                    amendments,
                    preparedBy,
                    reviewedBy,
                    extra);
        }
    }
}
