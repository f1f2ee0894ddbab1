// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.review;

import dev.infiltration.check.VisitAt;
import dev.infiltration.summary.ActionTable;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The action that the user's own table gives after a visit, or what is open in place of it.
 *
 * @param visit      the visit
 * @param chosen     the action, its due day and the decisions it is based on; null where the action is open
 * @param conditions the conditions that select the action, or that select nothing or an action that requires nothing where the
 *                   action is open; a text each
 * @param unresolved what is incomplete in the record; empty where nothing is
 */
public record VisitAction(
        VisitAt visit,
        ActionTable.@Nullable Choice chosen,
        List<String> conditions,
        List<UnresolvedLocation> unresolved) {

    /** Copies the lists. */
    public VisitAction {
        conditions = List.copyOf(conditions);
        unresolved = List.copyOf(unresolved);
    }

    /** {@return the action; empty where it is open} */
    public Optional<ActionTable.Choice> choice() {
        return Optional.ofNullable(chosen);
    }

    /** {@return whether no action can be given until the record is complete} */
    public boolean isOpen() {
        return chosen == null;
    }

    /** {@return whether every decision it is based on is confirmed and the record of the visit is complete} */
    public boolean isConfirmed() {
        return chosen != null && unresolved.isEmpty() && chosen.isConfirmed();
    }

    /** {@return the action, or what is open and what completes the record, for people} */
    @Override
    public String toString() {
        if (chosen == null) {
            return "open: " + unresolved.stream().map(Object::toString).collect(Collectors.joining("; ")) + "; "
                    + UnresolvedLocation.REMEDY;
        }
        return chosen.isConfirmed() && !isConfirmed() ? chosen + " (the record is incomplete)" : chosen.toString();
    }
}
