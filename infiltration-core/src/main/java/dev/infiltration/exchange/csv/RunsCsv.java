// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import dev.infiltration.exchange.TableMapping;
import dev.infiltration.exchange.text.Output;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Place;
import dev.infiltration.field.ReadBook;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Reads and writes field books as tables of runs: CSV (RFC 4180), one row for each run, units in the headers.
 *
 * <p>The columns may be in any order. Their headers are the names of this library, those of the trade or those of a
 * {@link TableMapping}. Commas, semicolons or tabs separate the cells. Decimal commas are read if commas do not separate the
 * cells, and times as a stopwatch shows them. A cell that cannot be read is a problem with its row and column; its test,
 * visit, location, ring, surface or site is excluded as well.
 *
 * <p>Reading ends with a problem where a table exceeds 1 048 576 rows, 16 384 columns or 32 767 characters in a cell.
 *
 * <p>A table cannot contain everything in a book: {@link #write(FieldBook, Writer)} returns what it leaves out.
 */
public final class RunsCsv {

    private final TableMapping mapping;
    private final Dialect dialect;

    private RunsCsv(TableMapping mapping, Dialect dialect) {
        this.mapping = mapping;
        this.dialect = dialect;
    }

    /** {@return tables with commas between cells and points in numbers} */
    public static RunsCsv withDefaults() {
        return new RunsCsv(TableMapping.none(), Dialect.POINT);
    }

    /**
     * {@return tables that are read by a mapping}
     *
     * @param mapping the meaning of their headers
     */
    public RunsCsv withMapping(TableMapping mapping) {
        return new RunsCsv(Objects.requireNonNull(mapping, "mapping"), dialect);
    }

    /** {@return tables that are written with semicolons between cells and commas in numbers} */
    public RunsCsv withDecimalComma() {
        return new RunsCsv(mapping, Dialect.COMMA);
    }

    /**
     * Reads a table to the end of the stream, which stays open.
     *
     * @param csv the table's bytes: UTF-8, or by their byte-order mark UTF-16 or UTF-32
     * @return the book as far as it can be read, and every problem
     * @throws IOException if the stream cannot be read
     */
    public ReadBook read(InputStream csv) throws IOException {
        return new TableReading(csv, mapping).all();
    }

    /**
     * Reads a table from a file.
     *
     * @param csv the file
     * @return the book as far as it can be read, and every problem
     * @throws IOException if the file cannot be read
     */
    public ReadBook read(Path csv) throws IOException {
        try (InputStream bytes = Files.newInputStream(csv)) {
            return read(bytes);
        }
    }

    /**
     * Reads a table visit by visit, so that only one visit is in memory: at each change to another visit, passes on a book of
     * the rows before it. Later rows of an earlier visit are a problem and are left out.
     *
     * @param csv   the table's bytes, as for {@link #read(InputStream)}
     * @param parts takes each part and its problems
     * @throws IOException if the stream cannot be read
     */
    public void readVisits(InputStream csv, Consumer<ReadBook> parts) throws IOException {
        new TableReading(csv, mapping).visits(parts);
    }

    /**
     * Writes a book: the columns that it fills, one for each unit, and rows ending in CR LF. Texts that a spreadsheet would run
     * as formulas get a leading apostrophe, which reading removes.
     *
     * @param book   the book
     * @param target where to; it is flushed and stays open
     * @return the places of values that a table cannot contain or that would change when read back, in the order of the book
     * @throws IOException if the target cannot be written to
     */
    public List<Place> write(FieldBook book, Writer target) throws IOException {
        writeParts(List.of(book), target);
        return notHeld(book);
    }

    /**
     * Writes books as one table, with only one in memory; {@link #notHeld} returns what a table cannot contain of each.
     *
     * @param parts  the books; they are iterated twice, first for the columns
     * @param target where to; it is flushed and stays open
     * @throws IOException if the target cannot be written to
     */
    public void writeParts(Iterable<FieldBook> parts, Writer target) throws IOException {
        List<Column> columns = columns(parts);
        target.write(line(columns.stream().map(Column::header)));
        for (FieldBook part : parts) {
            for (WrittenRow row : (Iterable<WrittenRow>) new BookRows(part).rows()::iterator) {
                target.write(line(columns.stream().map(column -> cell(row, column))));
            }
        }
        target.flush();
    }

    private String line(Stream<String> cells) {
        return cells.collect(Collectors.joining(String.valueOf(dialect.separator()), "", "\r\n"));
    }

    private static List<Column> columns(Iterable<FieldBook> parts) {
        WrittenColumns columns = new WrittenColumns();
        parts.forEach(part -> new BookRows(part).rows().forEachOrdered(columns::add));
        return columns.sorted();
    }

    private String cell(WrittenRow row, Column column) {
        @Nullable Object value = row.value(column.field(), column.path());
        boolean isOfOtherUnit = value != null
                && column.unit() != null
                && AmountCell.reading(value).unit() != column.unit();
        return value == null || isOfOtherUnit ? "" : dialect.cell(column, value);
    }

    /**
     * {@return the places of values that a table cannot contain or that would change when read back, in the order of the book}: hosts' own values,
     * instruments, maintenance, amendments, stated resolutions, records that two rows cannot tell apart
     *
     * @param book the book
     */
    public List<Place> notHeld(FieldBook book) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            writeParts(List.of(book), new OutputStreamWriter(bytes, StandardCharsets.UTF_8));
            ReadBook read = new TableReading(new ByteArrayInputStream(bytes.toByteArray()), TableMapping.none()).all();
            return Differences.between(book, read.readPart().orElse(FieldBook.empty()));
        } catch (IOException never) {
            throw new UncheckedIOException(never);
        }
    }

    /**
     * Writes the description of a table of this book for programs: a metadata document in the W3C's Metadata Vocabulary for
     * Tabular Data. Its file is in the folder of the table and has the name of the table followed by {@code -metadata.json}.
     *
     * @param book   the book
     * @param url    the table's name, as seen from the metadata
     * @param target where to; it is flushed and stays open
     * @throws IOException if the target cannot be written to
     */
    public void writeMetadata(FieldBook book, String url, Writer target) throws IOException {
        List<Column> columns = columns(List.of(book));
        Output.PAGE.write(target, json -> new CsvwJson(json, dialect).write(url, columns));
    }
}
