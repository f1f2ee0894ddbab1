// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.trend;

import dev.infiltration.statistics.TextTable;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** When a falling rate will come to a limit, or why nobody can say. */
public sealed interface LimitDate {

    /** {@return what must be known beside the answer, or why there is none} */
    List<String> notes();

    /**
     * A date, with the earliest and latest that one further test could read the limit, by Fieller's limits.
     *
     * @param expected the day on which the fitted line comes to the limit
     * @param earliest the first day that fits, or null: not bounded
     * @param latest   the last day that fits, or null: not bounded
     * @param level    how often such limits are right
     * @param notes     what must be known beside the date: that it lies beyond the tests, that another curve fits better
     */
    record Expected(
            LocalDate expected,
            @Nullable LocalDate earliest,
            @Nullable LocalDate latest,
            double level,
            List<String> notes)
            implements LimitDate {

        /** Copies what must be known. */
        public Expected {
            notes = List.copyOf(notes);
        }

        /** {@return the crossing as a small table} */
        @Override
        public String toString() {
            TextTable table = TextTable.titled("expected date at the limit")
                    .with("expected", expected)
                    .with("earliest", earliest == null ? "not bounded" : earliest)
                    .with("latest", latest == null ? "not bounded" : latest)
                    .with("prediction level", TextTable.number(100 * level) + " %");
            return (notes.isEmpty() ? table : table.with("note", String.join("; ", notes))).toString();
        }
    }

    /**
     * No date.
     *
     * @param notes why
     */
    record NotGiven(List<String> notes) implements LimitDate {

        /** Copies the reasons. */
        public NotGiven {
            notes = List.copyOf(notes);
        }

        /** {@return the reasons in words} */
        @Override
        public String toString() {
            return "no date: " + String.join("; ", notes) + "\n";
        }
    }

    /** {@return the day on which the fitted line comes to the limit, for {@link Expected} alone} */
    default Optional<LocalDate> date() {
        return this instanceof Expected given ? Optional.of(given.expected()) : Optional.empty();
    }
}
