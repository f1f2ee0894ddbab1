// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import java.time.LocalDate;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Who prepared or reviewed a record, by initials, and when.
 *
 * @param initials initials, not names
 * @param role     the person's role
 * @param on       the date
 * @param extra    the host's own values, kept and written back untouched
 */
public record SignOff(
        @Nullable String initials,
        @Nullable String role,
        @Nullable LocalDate on,
        Map<String, Object> extra) {

    /** Copies the collections; absent ones become empty. */
    public SignOff {
        extra = Copies.extra(extra);
    }

    /**
     * {@return a record with these parts; the others are absent}
     *
     * @param initials initials, not names
     * @param role     the person's role
     * @param on       the date
     */
    public static SignOff of(@Nullable String initials, @Nullable String role, @Nullable LocalDate on) {
        return new SignOff(initials, role, on, Map.of());
    }

    /**
     * {@return this record with other {@code extra}}
     *
     * @param extra the host's own values, kept and written back untouched
     */
    public SignOff withExtra(Map<String, Object> extra) {
        return new SignOff(initials, role, on, extra);
    }
}
