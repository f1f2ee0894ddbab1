// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Someone who took part in a visit, by initials.
 *
 * @param initials initials, not names
 * @param role     what they did
 * @param extra    the host's own values, kept and written back untouched
 */
public record CrewMember(
        @Nullable String initials, @Nullable String role, Map<String, Object> extra) {

    /** Copies the collections; absent ones become empty. */
    public CrewMember {
        extra = Copies.extra(extra);
    }

    /**
     * {@return a record with these parts; the others are absent}
     *
     * @param initials initials, not names
     * @param role     what they did
     */
    public static CrewMember of(@Nullable String initials, @Nullable String role) {
        return new CrewMember(initials, role, Map.of());
    }

    /**
     * {@return this record with another {@code initials}}
     *
     * @param initials initials, not names
     */
    public CrewMember withInitials(@Nullable String initials) {
        return new CrewMember(initials, role, extra);
    }

    /**
     * {@return this record with another {@code role}}
     *
     * @param role what they did
     */
    public CrewMember withRole(@Nullable String role) {
        return new CrewMember(initials, role, extra);
    }

    /**
     * {@return this record with other {@code extra}}
     *
     * @param extra the host's own values, kept and written back untouched
     */
    public CrewMember withExtra(Map<String, Object> extra) {
        return new CrewMember(initials, role, extra);
    }
}
