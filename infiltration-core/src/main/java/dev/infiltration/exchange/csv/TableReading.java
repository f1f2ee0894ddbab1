// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import dev.infiltration.exchange.TableMapping;
import dev.infiltration.field.IndexMap;
import dev.infiltration.field.Problem;
import dev.infiltration.field.ReadBook;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** One pass over a table, into one book or a book for every visit. */
final class TableReading {

    private final Table table;
    private final List<Problem> problems = new ArrayList<>();
    private final @Nullable RowReader reader;
    private final Set<Object> met = new HashSet<>();
    private TableBook book;
    private @Nullable Object visit;
    private boolean isAgain;

    TableReading(InputStream csv, TableMapping mapping) throws IOException {
        this.table = Table.read(Objects.requireNonNull(csv, "csv"));
        this.reader = head(mapping);
        this.book = new TableBook(new Constants(), problems);
    }

    /** {@return a reader of rows, or null when the table has no column that could be read} */
    private @Nullable RowReader head(TableMapping mapping) throws IOException {
        String @Nullable [] headers = row();
        TableHead head = new TableHead(headers == null ? new String[0] : headers, mapping);
        if (head.columns().stream().allMatch(Objects::isNull)) {
            problems.add(problem(1, "no header of a column of runs, expected some in the first row; nothing is read"));
            return null;
        }
        problems.addAll(head.problems());
        return new RowReader(head, mapping, table.separator(), problems);
    }

    /** {@return the book of all rows} */
    ReadBook all() throws IOException {
        if (reader != null) {
            book = new TableBook(reader.constants(), problems);
            for (Optional<Row> row = next(reader); row.isPresent(); row = next(reader)) {
                book.add(row.get());
            }
        }
        return part();
    }

    /** Hands out a book for every visit whose rows stand together. */
    void visits(Consumer<ReadBook> parts) throws IOException {
        if (reader != null) {
            book = new TableBook(reader.constants(), problems);
            for (Optional<Row> row = next(reader); row.isPresent(); row = next(reader)) {
                addToVisit(row.get(), reader, parts);
            }
        }
        parts.accept(part());
    }

    private void addToVisit(Row row, RowReader reader, Consumer<ReadBook> parts) {
        if (row.hasVisit() && !row.visit().equals(visit)) {
            if (visit != null) {
                parts.accept(part());
                book = new TableBook(reader.constants(), problems);
            }
            visit = row.visit();
            isAgain = !met.add(visit);
            if (isAgain) {
                problems.add(problem(
                        row.number(), "the visit again, expected its rows to stand together; these rows are left out"));
            }
        }
        if (!isAgain || !row.hasVisit()) {
            book.add(row);
        }
    }

    /** {@return the next row that is not blank, or empty when there is none or quotes stand where they cannot} */
    private Optional<Row> next(RowReader reader) throws IOException {
        for (String @Nullable [] texts = row(); texts != null; texts = row()) {
            Optional<Row> row = reader.read(table.row(), texts);
            if (row.isPresent()) {
                return row;
            }
        }
        return Optional.empty();
    }

    private String @Nullable [] row() throws IOException {
        try {
            return table.next();
        } catch (TableLimits.ExceededException exceeded) {
            problems.add(problem(table.row(), exceeded.getMessage() + "; reading ends here"));
            return null;
        } catch (Table.BrokenException broken) {
            problems.add(problem(table.row(), "a quote where none can stand; reading ends here"));
            return null;
        }
    }

    private static Problem problem(int row, String message) {
        return new Problem(row, 1, "#row=" + row, "found " + message);
    }

    private ReadBook part() {
        problems.sort(Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column));
        ReadBook part = new ReadBook(reader == null ? null : book.toBook(), problems, IndexMap.none(), List.of());
        problems.clear();
        return part;
    }
}
