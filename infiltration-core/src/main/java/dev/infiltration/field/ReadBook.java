// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What was read from a document: the book, as far as it could be read, every problem, and every value that could not be read.
 *
 * @param read       the book; null when nothing was readable
 * @param problems   the problems, in order of place
 * @param gaps       positions of the entries in the document, so that pointers count excluded entries too
 * @param unreadable the values that could not be read, with their original texts, in order of place
 */
public record ReadBook(
        @Nullable FieldBook read, List<Problem> problems, IndexMap gaps, List<UnreadableValue> unreadable) {

    /** Copies the lists. */
    public ReadBook {
        problems = List.copyOf(problems);
        Objects.requireNonNull(gaps, "gaps");
        unreadable = List.copyOf(unreadable);
    }

    /**
     * {@return a book that was built in code, not read: no problems, no gaps}
     *
     * @param book the book
     */
    public static ReadBook of(FieldBook book) {
        return new ReadBook(Objects.requireNonNull(book, "book"), List.of(), IndexMap.none(), List.of());
    }

    /**
     * {@return the book without the values that could not be read; empty when nothing was readable}
     *
     * <p>A result of this part alone may be wrong: {@code Review} and {@code Checker} take the whole {@code ReadBook}.
     */
    public Optional<FieldBook> readPart() {
        return Optional.ofNullable(read);
    }

    /**
     * {@return the book, of which every value could be read}
     *
     * @throws IllegalStateException if a value could not be read, with all problems
     */
    public FieldBook complete() {
        FieldBook book = read;
        if (book == null || !unreadable.isEmpty()) {
            throw new IllegalStateException(problems.stream()
                    .map(problem -> problem.where() + ": " + problem.message())
                    .collect(Collectors.joining("\n", "the document is not complete:\n", "")));
        }
        return book;
    }

    /**
     * {@return the book, of which every value could be read; empty when nothing was readable}
     *
     * @throws IllegalStateException if a value could not be read, with all problems
     */
    public Optional<FieldBook> book() {
        return read == null ? Optional.empty() : Optional.of(complete());
    }
}
