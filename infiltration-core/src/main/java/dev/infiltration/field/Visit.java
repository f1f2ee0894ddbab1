// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One crew's work on one surface on one date.
 *
 * <p>Work past midnight, to 12:00 of the next day, belongs to the visit's date.
 *
 * @param id                 identifies the visit in the book
 * @param surface            id of the surface tested
 * @param date               the date of the visit
 * @param method             id or alias of the test method; absent: chosen by the kind of surface
 * @param purpose            why the tests were made
 * @param campaign           joins visits to the surface whose locations count together
 * @param requestedLocations number of locations that the purchaser asked for
 * @param crew               who was there
 * @param instruments        ids of the instruments used
 * @param swept              whether loose material was broomed off
 * @param standingWater      whether water stood on the surface
 * @param potableWater       whether the water was potable
 * @param weather            weather and last rain
 * @param tests              the tests, in the order written
 * @param amendments         corrections made later
 * @param extra              the host's own values, kept and written back untouched
 */
public record Visit(
        @NotEmpty @Nullable String id,
        @NotEmpty @Nullable String surface,
        @NotNull @Nullable LocalDate date,
        @Nullable String method,
        @Nullable Purpose purpose,
        @Nullable String campaign,
        @Nullable Integer requestedLocations,
        List<@Valid CrewMember> crew,
        List<String> instruments,
        @Nullable Boolean swept,
        @Nullable Boolean standingWater,
        @Nullable Boolean potableWater,
        @Valid @Nullable Weather weather,
        List<@Valid LocationTest> tests,
        List<@Valid Amendment> amendments,
        Map<String, Object> extra) {

    /** Copies the collections; absent ones become empty. */
    public Visit {
        crew = Frozen.list(crew, "crew");
        instruments = Frozen.list(instruments, "instruments");
        tests = Frozen.list(tests, "tests");
        amendments = Frozen.list(amendments, "amendments");
        extra = Frozen.extra(extra);
    }

    /**
     * {@return a record of what is given, all else absent}
     *
     * @param id      identifies the visit in the book
     * @param surface id of the surface tested
     * @param date    the date of the visit
     */
    public static Visit of(@Nullable String id, @Nullable String surface, @Nullable LocalDate date) {
        return new Visit(
                id, surface, date, null, null, null, null, List.of(), List.of(), null, null, null, null, List.of(),
                List.of(), Map.of());
    }

    /**
     * {@return this record with another {@code id}}
     *
     * @param id identifies the visit in the book
     */
    public Visit withId(@Nullable String id) {
        return new Visit(
                id,
                surface,
                date,
                method,
                purpose,
                campaign,
                requestedLocations,
                crew,
                instruments,
                swept,
                standingWater,
                potableWater,
                weather,
                tests,
                amendments,
                extra);
    }

    /**
     * {@return this record with another {@code surface}}
     *
     * @param surface id of the surface tested
     */
    public Visit withSurface(@Nullable String surface) {
        return new Visit(
                id,
                surface,
                date,
                method,
                purpose,
                campaign,
                requestedLocations,
                crew,
                instruments,
                swept,
                standingWater,
                potableWater,
                weather,
                tests,
                amendments,
                extra);
    }

    /**
     * {@return this record with another {@code date}}
     *
     * @param date the date of the visit
     */
    public Visit withDate(@Nullable LocalDate date) {
        return new Visit(
                id,
                surface,
                date,
                method,
                purpose,
                campaign,
                requestedLocations,
                crew,
                instruments,
                swept,
                standingWater,
                potableWater,
                weather,
                tests,
                amendments,
                extra);
    }

    /**
     * {@return this record with another {@code method}}
     *
     * @param method id or alias of the test method; absent: chosen by the kind of surface
     */
    public Visit withMethod(@Nullable String method) {
        return new Visit(
                id,
                surface,
                date,
                method,
                purpose,
                campaign,
                requestedLocations,
                crew,
                instruments,
                swept,
                standingWater,
                potableWater,
                weather,
                tests,
                amendments,
                extra);
    }

    /**
     * {@return this record with another {@code purpose}}
     *
     * @param purpose why the tests were made
     */
    public Visit withPurpose(@Nullable Purpose purpose) {
        return new Visit(
                id,
                surface,
                date,
                method,
                purpose,
                campaign,
                requestedLocations,
                crew,
                instruments,
                swept,
                standingWater,
                potableWater,
                weather,
                tests,
                amendments,
                extra);
    }

    /**
     * {@return this record with another {@code campaign}}
     *
     * @param campaign joins visits to the surface whose locations count together
     */
    public Visit withCampaign(@Nullable String campaign) {
        return new Visit(
                id,
                surface,
                date,
                method,
                purpose,
                campaign,
                requestedLocations,
                crew,
                instruments,
                swept,
                standingWater,
                potableWater,
                weather,
                tests,
                amendments,
                extra);
    }

    /**
     * {@return this record with another {@code requestedLocations}}
     *
     * @param requestedLocations number of locations that the purchaser asked for
     */
    public Visit withRequestedLocations(@Nullable Integer requestedLocations) {
        return new Visit(
                id,
                surface,
                date,
                method,
                purpose,
                campaign,
                requestedLocations,
                crew,
                instruments,
                swept,
                standingWater,
                potableWater,
                weather,
                tests,
                amendments,
                extra);
    }

    /**
     * {@return this record with another {@code crew}}
     *
     * @param crew who was there
     */
    public Visit withCrew(List<CrewMember> crew) {
        return new Visit(
                id,
                surface,
                date,
                method,
                purpose,
                campaign,
                requestedLocations,
                crew,
                instruments,
                swept,
                standingWater,
                potableWater,
                weather,
                tests,
                amendments,
                extra);
    }

    /**
     * {@return this record with another {@code instruments}}
     *
     * @param instruments ids of the instruments used
     */
    public Visit withInstruments(List<String> instruments) {
        return new Visit(
                id,
                surface,
                date,
                method,
                purpose,
                campaign,
                requestedLocations,
                crew,
                instruments,
                swept,
                standingWater,
                potableWater,
                weather,
                tests,
                amendments,
                extra);
    }

    /**
     * {@return this record with another {@code swept}}
     *
     * @param swept whether loose material was broomed off
     */
    public Visit withSwept(@Nullable Boolean swept) {
        return new Visit(
                id,
                surface,
                date,
                method,
                purpose,
                campaign,
                requestedLocations,
                crew,
                instruments,
                swept,
                standingWater,
                potableWater,
                weather,
                tests,
                amendments,
                extra);
    }

    /**
     * {@return this record with another {@code standingWater}}
     *
     * @param standingWater whether water stood on the surface
     */
    public Visit withStandingWater(@Nullable Boolean standingWater) {
        return new Visit(
                id,
                surface,
                date,
                method,
                purpose,
                campaign,
                requestedLocations,
                crew,
                instruments,
                swept,
                standingWater,
                potableWater,
                weather,
                tests,
                amendments,
                extra);
    }

    /**
     * {@return this record with another {@code potableWater}}
     *
     * @param potableWater whether the water was potable
     */
    public Visit withPotableWater(@Nullable Boolean potableWater) {
        return new Visit(
                id,
                surface,
                date,
                method,
                purpose,
                campaign,
                requestedLocations,
                crew,
                instruments,
                swept,
                standingWater,
                potableWater,
                weather,
                tests,
                amendments,
                extra);
    }

    /**
     * {@return this record with another {@code weather}}
     *
     * @param weather weather and last rain
     */
    public Visit withWeather(@Nullable Weather weather) {
        return new Visit(
                id,
                surface,
                date,
                method,
                purpose,
                campaign,
                requestedLocations,
                crew,
                instruments,
                swept,
                standingWater,
                potableWater,
                weather,
                tests,
                amendments,
                extra);
    }

    /**
     * {@return this record with another {@code tests}}
     *
     * @param tests the tests, in the order written
     */
    public Visit withTests(List<LocationTest> tests) {
        return new Visit(
                id,
                surface,
                date,
                method,
                purpose,
                campaign,
                requestedLocations,
                crew,
                instruments,
                swept,
                standingWater,
                potableWater,
                weather,
                tests,
                amendments,
                extra);
    }

    /**
     * {@return this record with another {@code amendments}}
     *
     * @param amendments corrections made later
     */
    public Visit withAmendments(List<Amendment> amendments) {
        return new Visit(
                id,
                surface,
                date,
                method,
                purpose,
                campaign,
                requestedLocations,
                crew,
                instruments,
                swept,
                standingWater,
                potableWater,
                weather,
                tests,
                amendments,
                extra);
    }

    /**
     * {@return this record with another {@code extra}}
     *
     * @param extra the host's own values, kept and written back untouched
     */
    public Visit withExtra(Map<String, Object> extra) {
        return new Visit(
                id,
                surface,
                date,
                method,
                purpose,
                campaign,
                requestedLocations,
                crew,
                instruments,
                swept,
                standingWater,
                potableWater,
                weather,
                tests,
                amendments,
                extra);
    }

    /** Why tests were made. */
    public enum Purpose implements Word {
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
}
