// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import dev.infiltration.exchange.text.ByteOrderMark;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.exc.JacksonIOException;
import tools.jackson.databind.MappingIterator;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvReadFeature;
import tools.jackson.dataformat.csv.CsvSchema;

/** Reads rows of cells (RFC 4180) without interpreting them. */
final class Table implements AutoCloseable {

    private static final CsvMapper CSV =
            CsvMapper.builder().enable(CsvReadFeature.WRAP_AS_ARRAY).build();

    /** The number of characters of the header that are searched for the separator. */
    private static final int HEAD = 1 << 16;

    private final MappingIterator<String[]> rows;
    private final char separator;
    private int row;

    private Table(MappingIterator<String[]> rows, char separator) {
        this.rows = rows;
        this.separator = separator;
    }

    /** {@return the rows of bytes}: in UTF-8 or the encoding of the byte-order mark; the separator is the most frequent of , ; tab in the header */
    static Table read(InputStream bytes) throws IOException {
        Reader reader = new BufferedReader(ByteOrderMark.reader(bytes).reader(), HEAD);
        char separator = separator(reader);
        CsvSchema schema = CsvSchema.emptySchema().withColumnSeparator(separator);
        return new Table(
                CSV.readerFor(String[].class).with(schema).readValues(new TableLimits(reader, separator)), separator);
    }

    private static char separator(Reader reader) throws IOException {
        reader.mark(HEAD);
        int[] counts = new int[128];
        boolean quoted = false;
        int c = reader.read();
        for (int length = 1; c >= 0 && length < HEAD && (quoted || (c != '\n' && c != '\r')); length++) {
            quoted ^= c == '"';
            counts[quoted || c > 127 ? 0 : c]++;
            c = reader.read();
        }
        reader.reset();
        return counts[';'] > counts[','] ? ';' : counts['\t'] > counts[','] ? '\t' : ',';
    }

    char separator() {
        return separator;
    }

    /** {@return the number of the row read last}, from 1, as a spreadsheet shows it */
    int row() {
        return row;
    }

    /**
     * {@return the cells of the next row, or null after the last}
     *
     * @throws IOException     if the bytes cannot be read
     * @throws BrokenException if a quote is at a place where none is allowed
     */
    String @Nullable [] next() throws IOException {
        try {
            row++;
            return rows.hasNext() ? rows.next() : null;
        } catch (JacksonIOException failed) {
            throw failed.getCause();
        } catch (JacksonException broken) {
            throw new BrokenException(broken);
        }
    }

    /** Reports a quote at a place where none is allowed. */
    static final class BrokenException extends IOException {

        private static final long serialVersionUID = 1L;

        BrokenException(JacksonException cause) {
            super(cause.getOriginalMessage(), cause);
        }
    }

    @Override
    public void close() {
        rows.close();
    }
}
