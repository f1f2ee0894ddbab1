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
 * @param resolution the step it is read to
 * @param tolerance  how far it may be off, to either side
 * @param checkedOn  when it was last checked
 * @param extra      the host's own values, kept and written back untouched
 */
public record Instrument(
        @NotEmpty @Nullable String id,
        @Nullable Kind kind,
        @Nullable Reading<?> resolution,
        @Nullable Reading<?> tolerance,
        @Nullable LocalDate checkedOn,
        Map<String, Object> extra) {

    /** Copies the collections; absent ones become empty. */
    public Instrument {
        extra = Frozen.extra(extra);
    }

    /**
     * {@return a record of what is given, all else absent}
     *
     * @param id identifies the instrument in the book
     */
    public static Instrument of(@Nullable String id) {
        return new Instrument(id, null, null, null, null, Map.of());
    }

    /**
     * {@return this record with another {@code id}}
     *
     * @param id identifies the instrument in the book
     */
    public Instrument withId(@Nullable String id) {
        return new Instrument(id, kind, resolution, tolerance, checkedOn, extra);
    }

    /**
     * {@return this record with another {@code kind}}
     *
     * @param kind what it measures
     */
    public Instrument withKind(@Nullable Kind kind) {
        return new Instrument(id, kind, resolution, tolerance, checkedOn, extra);
    }

    /**
     * {@return this record with another {@code resolution}}
     *
     * @param resolution the step it is read to
     */
    public Instrument withResolution(@Nullable Reading<?> resolution) {
        return new Instrument(id, kind, resolution, tolerance, checkedOn, extra);
    }

    /**
     * {@return this record with another {@code tolerance}}
     *
     * @param tolerance how far it may be off, to either side
     */
    public Instrument withTolerance(@Nullable Reading<?> tolerance) {
        return new Instrument(id, kind, resolution, tolerance, checkedOn, extra);
    }

    /**
     * {@return this record with another {@code checkedOn}}
     *
     * @param checkedOn when it was last checked
     */
    public Instrument withCheckedOn(@Nullable LocalDate checkedOn) {
        return new Instrument(id, kind, resolution, tolerance, checkedOn, extra);
    }

    /**
     * {@return this record with another {@code extra}}
     *
     * @param extra the host's own values, kept and written back untouched
     */
    public Instrument withExtra(Map<String, Object> extra) {
        return new Instrument(id, kind, resolution, tolerance, checkedOn, extra);
    }

    /** What an instrument measures. */
    public enum Kind implements Word {
        /** Mass. */
        BALANCE,
        /** Time. */
        WATCH,
        /** Length. */
        TAPE,
        /** Temperature. */
        THERMOMETER
    }
}
