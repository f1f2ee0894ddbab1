// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import dev.infiltration.exchange.TableMapping;
import dev.infiltration.exchange.text.Found;
import dev.infiltration.field.Problem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The first row of a table: its columns. */
final class TableHead {

    private final TableMapping mapping;
    private final String[] headers;
    private final List<@Nullable Column> columns = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();

    TableHead(String[] headers, TableMapping mapping) {
        this.mapping = mapping;
        Set<Column> met = new HashSet<>();
        this.headers = headers;
        for (String header : headers) {
            columns.add(header.isBlank() ? null : column(header, met));
        }
    }

    private @Nullable Column column(String header, Set<Column> met) {
        String name = mapping.headers().getOrDefault(header.strip(), header);
        if (name.isEmpty()) {
            return null;
        }
        Optional<Column> column = Column.of(name);
        if (column.isEmpty()) {
            problem(header, "the name of a column, with a unit that it may have");
        } else if (!met.add(column.get())) {
            problem(header, "it once");
            return null;
        }
        return column.orElse(null);
    }

    private void problem(String header, String expected) {
        int column = columns.size() + 1;
        String message =
                "found the header " + Found.quoted(header) + ", expected " + expected + "; the column is left out";
        problems.add(new Problem(1, column, Cell.where(1, column), message));
    }

    /** {@return each column; null for one that is ignored} */
    List<@Nullable Column> columns() {
        return columns;
    }

    /** {@return whether the header is blank} */
    boolean isBare(int at) {
        return headers[at].isBlank();
    }

    List<Problem> problems() {
        return problems;
    }
}
