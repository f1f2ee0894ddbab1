// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import dev.infiltration.summary.Decision.AsStated;
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
     * An action with what it takes.
     *
     * @param action what is to be done, in the user's words: no action, clean locally, clean, restore, investigate below
     * @param due    how long after the test; absent for what asks for nothing by a day, like no action
     * @param when   what must hold, all of it
     */
    public record Row(String action, @Nullable Period due, List<Condition> when) {

        /** Copies the conditions. */
        public Row {
            when = List.copyOf(when);
        }
    }

    /**
     * A criterion and how it must have come out, read literally.
     *
     * @param criterion the criterion
     * @param is        the outcome
     */
    public record Condition(Criterion criterion, AsStated is) {}

    /**
     * The action to take.
     *
     * @param action  what is to be done
     * @param due     by when; absent where the table names no time
     * @param because the decisions it rests on, with how sure each is
     */
    public record Choice(String action, @Nullable LocalDate due, List<Decision> because) {

        /** Copies the decisions. */
        public Choice {
            because = List.copyOf(because);
        }

        /** {@return whether every decision it rests on is shown} */
        public boolean isShown() {
            return because.stream().allMatch(Decision::isShown);
        }

        /** {@return the action for people} */
        @Override
        public String toString() {
            return action + (due == null ? "" : " by " + due) + (isShown() ? "" : " (what it rests on is not shown)");
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
                                deciding.apply(condition.criterion()).asStated() == condition.is()))
                .findFirst()
                .map(row -> new Choice(
                        row.action(),
                        row.due() == null ? null : tested.plus(row.due()),
                        row.when().stream()
                                .map(condition -> deciding.apply(condition.criterion()))
                                .toList()));
    }
}
