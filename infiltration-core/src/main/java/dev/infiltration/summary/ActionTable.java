// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import dev.infiltration.summary.Decision.LiteralResult;
import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The user's own actions in order: the first whose conditions all hold is the one to take.
 *
 * @param rows the actions, first choice first; one without conditions always holds
 */
public record ActionTable(List<Row> rows) {

    /** Copies the rows. */
    public ActionTable {
        rows = List.copyOf(rows);
    }

    /**
     * An action with its conditions.
     *
     * @param action what is to be done, in the user's words: no action, clean locally, clean, restore, investigate below
     * @param due    how long after the test; null where no day is required
     * @param when   the conditions, all of which must be true
     * @param isNone whether the action requires nothing; it is never given while the record of the visit is incomplete
     */
    public record Row(String action, @Nullable Period due, List<Condition> when, boolean isNone) {

        /**
         * Copies the conditions.
         *
         * @throws IllegalArgumentException if an action that requires nothing has a due day
         */
        public Row {
            when = List.copyOf(when);
            if (isNone && due != null) {
                throw new IllegalArgumentException(
                        "due: expected none for an action that requires nothing, got " + due);
            }
        }

        /**
         * {@return an action that requires something}
         *
         * @param action what is to be done, in the user's words
         * @param due    how long after the test; null where no day is required
         * @param when   the conditions, all of which must be true
         */
        public static Row of(String action, @Nullable Period due, List<Condition> when) {
            return new Row(action, due, when, false);
        }

        /**
         * {@return an action that requires nothing}
         *
         * @param action the user's words for it
         * @param when   the conditions, all of which must be true
         */
        public static Row none(String action, List<Condition> when) {
            return new Row(action, null, when, true);
        }
    }

    /**
     * A criterion and how it must have come out, read literally.
     *
     * @param criterion the criterion
     * @param is        the outcome
     */
    public record Condition(Criterion criterion, LiteralResult is) {}

    /**
     * The action to take.
     *
     * @param action  what is to be done
     * @param due     by when; absent where the table names no time
     * @param because the decisions it is based on
     * @param isNone  whether it requires nothing
     */
    public record Choice(String action, @Nullable LocalDate due, List<Decision> because, boolean isNone) {

        /** Copies the decisions. */
        public Choice {
            because = List.copyOf(because);
        }

        /** {@return whether every decision it rests on is shown} */
        public boolean isConfirmed() {
            return because.stream().allMatch(Decision::isConfirmed);
        }

        /** {@return the action for people} */
        @Override
        public String toString() {
            return action
                    + (due == null ? "" : " by " + due)
                    + (isConfirmed() ? "" : " (based on a result that is not confirmed)");
        }
    }

    /**
     * {@return the first action whose conditions hold, if there is one}
     *
     * @param tested   the day of the test
     * @param deciding the decision on a criterion
     */
    public Optional<Choice> choose(LocalDate tested, Function<Criterion, Decision> deciding) {
        return rows.stream()
                .filter(row -> row.when().stream()
                        .allMatch(condition ->
                                deciding.apply(condition.criterion()).literalResult() == condition.is()))
                .findFirst()
                .map(row -> new Choice(
                        row.action(),
                        row.due() == null ? null : tested.plus(row.due()),
                        row.when().stream()
                                .map(condition -> deciding.apply(condition.criterion()))
                                .toList(),
                        row.isNone()));
    }
}
