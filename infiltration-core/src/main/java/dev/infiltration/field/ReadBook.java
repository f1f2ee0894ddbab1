// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What was read from a document: the book, as far as it could be read, and every problem met on the way.
 *
 * @param read     the book; null when nothing was readable
 * @param problems the problems, in order of place
 * @param gaps     where entries were left out, so that pointers can count as the document counts
 */
public record ReadBook(@Nullable FieldBook read, List<Problem> problems, Gaps gaps) {

    /** Copies the problems. */
    public ReadBook {
        problems = List.copyOf(problems);
        Objects.requireNonNull(gaps, "gaps");
    }

    /**
     * {@return a book that was built in code, not read: no problems, no gaps}
     *
     * @param book the book
     */
    public static ReadBook of(FieldBook book) {
        return new ReadBook(Objects.requireNonNull(book, "book"), List.of(), Gaps.none());
    }

    /** {@return the book, or empty when nothing was readable} */
    public Optional<FieldBook> book() {
        return Optional.ofNullable(read);
    }
}
