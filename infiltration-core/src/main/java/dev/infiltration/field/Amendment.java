// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A correction of an earlier record: the value before, the value now, and the reason.
 *
 * @param at    time of the correction
 * @param by    initials of the person who made it
 * @param where JSON Pointer of the value
 * @param was   the value before
 * @param now   the value now
 * @param why   the reason
 * @param extra the host's own values, kept and written back untouched
 */
public record Amendment(
        @Nullable ClockTime at,
        @Nullable String by,
        @Nullable String where,
        @Nullable String was,
        @Nullable String now,
        @Nullable String why,
        Map<String, Object> extra) {

    /** Copies the collections; absent ones become empty. */
    public Amendment {
        extra = Copies.extra(extra);
    }

    /**
     * {@return a record with these parts; the others are absent}
     *
     * @param at    time of the correction
     * @param by    initials of the person who made it
     * @param where JSON Pointer of the value
     * @param was   the value before
     * @param now   the value now
     * @param why   the reason
     */
    public static Amendment of(
            @Nullable ClockTime at,
            @Nullable String by,
            @Nullable String where,
            @Nullable String was,
            @Nullable String now,
            @Nullable String why) {
        return new Amendment(at, by, where, was, now, why, Map.of());
    }

    /**
     * {@return this record with another {@code at}}
     *
     * @param at time of the correction
     */
    public Amendment withAt(@Nullable ClockTime at) {
        return new Amendment(at, by, where, was, now, why, extra);
    }

    /**
     * {@return this record with another {@code by}}
     *
     * @param by initials of the person who made it
     */
    public Amendment withBy(@Nullable String by) {
        return new Amendment(at, by, where, was, now, why, extra);
    }

    /**
     * {@return this record with another {@code where}}
     *
     * @param where JSON Pointer of the value
     */
    public Amendment withWhere(@Nullable String where) {
        return new Amendment(at, by, where, was, now, why, extra);
    }

    /**
     * {@return this record with another {@code was}}
     *
     * @param was the value before
     */
    public Amendment withWas(@Nullable String was) {
        return new Amendment(at, by, where, was, now, why, extra);
    }

    /**
     * {@return this record with another {@code now}}
     *
     * @param now the value now
     */
    public Amendment withNow(@Nullable String now) {
        return new Amendment(at, by, where, was, now, why, extra);
    }

    /**
     * {@return this record with another {@code why}}
     *
     * @param why the reason
     */
    public Amendment withWhy(@Nullable String why) {
        return new Amendment(at, by, where, was, now, why, extra);
    }

    /**
     * {@return this record with other {@code extra}}
     *
     * @param extra the host's own values, kept and written back untouched
     */
    public Amendment withExtra(Map<String, Object> extra) {
        return new Amendment(at, by, where, was, now, why, extra);
    }
}
