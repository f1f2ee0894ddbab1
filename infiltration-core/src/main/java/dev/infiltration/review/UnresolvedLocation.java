// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.review;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A location of a visit whose record is incomplete. While a visit has one, no decision on the visit is confirmed and no action
 * that requires nothing is given.
 *
 * @param location the id of the location; null where the record does not name it, or where the visit as a whole is incomplete
 * @param reasons  what is missing or could not be read, a text each; never empty
 */
public record UnresolvedLocation(@Nullable String location, List<String> reasons) {

    /** What completes the record, for people. */
    public static final String REMEDY = "look up the field sheet and complete the record, or test again";

    /**
     * Copies the reasons.
     *
     * @throws IllegalArgumentException if there is no reason
     */
    public UnresolvedLocation {
        reasons = List.copyOf(reasons);
        if (reasons.isEmpty()) {
            throw new IllegalArgumentException("reasons: expected at least one");
        }
    }

    /** {@return the location and the reasons, for people} */
    @Override
    public String toString() {
        return (location == null ? "" : "location " + location + ": ") + String.join("; ", reasons);
    }
}
