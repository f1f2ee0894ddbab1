// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import dev.infiltration.exchange.text.Found;
import dev.infiltration.field.Problem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The values of the mapping for rows without such a cell. */
final class Constants {

    private final List<Cell> cells = new ArrayList<>();
    private final Set<Cell> told = new HashSet<>();

    void add(Cell cell) {
        cells.add(cell);
    }

    static Problem problem(String header, String text, String expected) {
        String found = Found.quoted(header) + " as " + Found.quoted(text);
        return new Problem(
                1, 1, "#row=1", "the mapping: found " + found + ", expected " + expected + "; it is left out");
    }

    /** {@return all of them, at row 1 and column 0, each with a value} */
    List<Cell> cells() {
        return cells;
    }

    /** {@return the first of a field, or null} */
    @Nullable
    Cell of(Field field) {
        return cells.stream()
                .filter(cell -> cell.header().field().equals(field))
                .findFirst()
                .orElse(null);
    }

    /** {@return whether no row was reported yet that has no record for this constant} */
    boolean isNews(Cell constant) {
        return told.add(constant);
    }
}
