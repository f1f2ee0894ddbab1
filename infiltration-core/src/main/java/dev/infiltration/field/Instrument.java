// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import dev.infiltration.units.Reading;
import jakarta.validation.constraints.NotEmpty;
import java.time.LocalDate;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A balance, watch, tape or thermometer.
 *
 * @param id         identifies the instrument in the book
 * @param kind       what it measures
 * @param resolution the step to which it is read
 * @param tolerance  largest error, either way
 * @param checkedOn  date of the last check
 * @param checkDue the date by which the next check is due
 * @param extra      the host's own values, kept and written back untouched
 */
public record Instrument(
        @NotEmpty @Nullable String id,
        @Nullable Kind kind,
        @Nullable Reading<?> resolution,
        @Nullable Reading<?> tolerance,
        @Nullable LocalDate checkedOn,
        @Nullable LocalDate checkDue,
        Map<String, Object> extra) {

    /** Copies the collections; absent ones become empty. */
    public Instrument {
        extra = Copies.extra(extra);
    }

    /**
     * {@return a record with these parts; the others are absent}
     *
     * @param id identifies the instrument in the book
     */
    public static Instrument of(@Nullable String id) {
        Draft draft = new Draft();
        draft.id = id;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code id}}
     *
     * @param id identifies the instrument in the book
     */
    public Instrument withId(@Nullable String id) {
        Draft draft = new Draft(this);
        draft.id = id;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code kind}}
     *
     * @param kind what it measures
     */
    public Instrument withKind(@Nullable Kind kind) {
        Draft draft = new Draft(this);
        draft.kind = kind;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code resolution}}
     *
     * @param resolution the step to which it is read
     */
    public Instrument withResolution(@Nullable Reading<?> resolution) {
        Draft draft = new Draft(this);
        draft.resolution = resolution;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code tolerance}}
     *
     * @param tolerance largest error, either way
     */
    public Instrument withTolerance(@Nullable Reading<?> tolerance) {
        Draft draft = new Draft(this);
        draft.tolerance = tolerance;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code checkedOn}}
     *
     * @param checkedOn date of the last check
     */
    public Instrument withCheckedOn(@Nullable LocalDate checkedOn) {
        Draft draft = new Draft(this);
        draft.checkedOn = checkedOn;
        return draft.toRecord();
    }

    /**
     * {@return this record with another {@code checkDue}}
     *
     * @param checkDue the date by which the next check is due
     */
    public Instrument withCheckDue(@Nullable LocalDate checkDue) {
        Draft draft = new Draft(this);
        draft.checkDue = checkDue;
        return draft.toRecord();
    }

    /**
     * {@return this record with other {@code extra}}
     *
     * @param extra the host's own values, kept and written back untouched
     */
    public Instrument withExtra(Map<String, Object> extra) {
        Draft draft = new Draft(this);
        draft.extra = extra;
        return draft.toRecord();
    }

    /** What an instrument measures. */
    public enum Kind implements JsonName {
        /** Mass. */
        BALANCE,
        /** Time. */
        WATCH,
        /** Length. */
        TAPE,
        /** Temperature. */
        THERMOMETER
    }

    /** The parts of a record that is being made; the only place that knows their order. */
    private static final class Draft {
        private @Nullable String id;
        private @Nullable Kind kind;
        private @Nullable Reading<?> resolution;
        private @Nullable Reading<?> tolerance;
        private @Nullable LocalDate checkedOn;
        private @Nullable LocalDate checkDue;
        private Map<String, Object> extra = Map.of();

        private Draft() {}

        private Draft(Instrument from) {
            id = from.id;
            kind = from.kind;
            resolution = from.resolution;
            tolerance = from.tolerance;
            checkedOn = from.checkedOn;
            checkDue = from.checkDue;
            extra = from.extra;
        }

        private Instrument toRecord() {
            return new Instrument(id, kind, resolution, tolerance, checkedOn, checkDue, extra);
        }
    }
}
