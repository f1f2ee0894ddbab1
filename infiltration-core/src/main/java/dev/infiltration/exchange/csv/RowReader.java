// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import dev.infiltration.exchange.TableMapping;
import dev.infiltration.exchange.text.ByteOrderMark;
import dev.infiltration.exchange.text.Found;
import dev.infiltration.field.Problem;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads the rows of a table by its headers. */
final class RowReader {

    private final TableHead head;
    private final List<@Nullable Column> columns;
    private final List<Problem> problems;
    private final Set<Integer> bare = new HashSet<>();
    private final Constants constants = new Constants();
    private final Numbers numbers;
    private final TableMapping.DateOrder order;

    RowReader(TableHead head, TableMapping mapping, char separator, List<Problem> problems) {
        this.head = head;
        this.columns = head.columns();
        this.problems = problems;
        this.numbers = new Numbers(separator);
        this.order = DateCells.order(mapping);
        mapping.constants().forEach(this::addConstant);
    }

    private void addConstant(String header, String text) {
        Optional<Cell> cell = Column.of(header).map(column -> cell(1, 0, column, text, null));
        if (cell.isPresent() && cell.get().value() != null) {
            constants.add(cell.get());
        } else {
            String expected = cell.map(Cell::expected).orElse("the name of a column, with its unit");
            problems.add(Constants.problem(header, text, expected));
        }
    }

    Constants constants() {
        return constants;
    }

    /** {@return the row, or empty when it is blank or one of its ids cannot be read} */
    Optional<Row> read(int number, String[] texts) {
        @Nullable LocalDate date = date(texts);
        Row row = new Row(number, constants);
        for (int at = 0; at < texts.length; at++) {
            String text = texts[at] == null ? "" : texts[at].strip();
            @Nullable Column column = at < columns.size() ? columns.get(at) : null;
            if (!text.isEmpty() && column != null) {
                row.add(cell(number, at + 1, column, text, date));
            } else if (!text.isEmpty()) {
                reportBare(number, at, text);
            }
        }
        return row.cells().isEmpty() || isNameless(row) ? Optional.empty() : Optional.of(row);
    }

    /** {@return whether an id cannot be read, so that the records of the row are unknown} */
    private boolean isNameless(Row row) {
        List<Cell> ids = row.cells().stream()
                .filter(cell -> cell.header().field().isId() && cell.value() == null)
                .toList();
        ids.forEach(cell -> problems.add(cell.problem(cell.expected(), "the row is left out")));
        return !ids.isEmpty();
    }

    /** A time of day requires the date, which may be in a later column. */
    private @Nullable LocalDate date(String[] texts) {
        for (int at = 0; at < Math.min(texts.length, columns.size()); at++) {
            @Nullable Column column = columns.get(at);
            if (column != null && column.field().equals(Fields.DATE) && texts[at] != null) {
                return DateCells.date(texts[at].strip(), new Cells.At(null, numbers, order, null));
            }
        }
        @Nullable Cell constant = constants.of(Fields.DATE);
        return constant == null ? null : (LocalDate) constant.value();
    }

    private Cell cell(int row, int at, Column column, String text, @Nullable LocalDate date) {
        Cells.At place = new Cells.At(column.unit(), numbers, order, dated(column) ? date : null);
        String plain = Formulas.read(text);
        boolean isSound = text.indexOf(ByteOrderMark.UNSOUND) < 0;
        Cells.Cell kind = column.field().cell();
        @Nullable Object value = isSound ? kind.parse(plain, place) : null;
        return new Cell(row, at, column, text, value, value == null ? expected(kind) : "");
    }

    /** The date of rain is not the date of the visit. */
    private static boolean dated(Column column) {
        return column.field().level() != RowRecord.VISIT;
    }

    private String expected(Cells.Cell kind) {
        boolean isNumber = !kind.units().isEmpty() || kind.datatype().equals("number");
        return kind.expected() + (isNumber ? " (" + numbers.expected() + ")" : "");
    }

    /** A value without a header is reported once for each column. */
    private void reportBare(int number, int at, String text) {
        if (at >= columns.size() || (columns.get(at) == null && head.isBare(at))) {
            if (bare.add(at)) {
                String message = "found " + Found.quoted(text) + ", expected a header over it; the column is left out";
                problems.add(new Problem(number, at + 1, Cell.where(number, at + 1), message));
            }
        }
    }
}
