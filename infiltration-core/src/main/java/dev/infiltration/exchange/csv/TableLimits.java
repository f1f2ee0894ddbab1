// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;

/** A reader that stops where a table exceeds the limits of a spreadsheet: rows, columns, length of a cell. */
final class TableLimits extends FilterReader {

    /** Common practice: the size of a sheet. */
    private static final int ROWS = 1 << 20;

    private static final int COLUMNS = 1 << 14;
    private static final int CELL = (1 << 15) - 1;

    private final char separator;
    private boolean isQuoted;
    private int rows;
    private int columns;
    private int length;

    TableLimits(Reader table, char separator) {
        super(table);
        this.separator = separator;
    }

    /** Reports that a table is too large. */
    static final class ExceededException extends IOException {

        private static final long serialVersionUID = 1L;

        ExceededException(String found) {
            super(found);
        }
    }

    @Override
    public int read() throws IOException {
        int c = super.read();
        if (c >= 0 && !isWithin((char) c)) {
            throw exceeded();
        }
        return c;
    }

    @Override
    public int read(char[] buffer, int offset, int wanted) throws IOException {
        if (!isWithin()) {
            throw exceeded();
        }
        int count = super.read(buffer, offset, wanted);
        for (int i = 0; i < count; i++) {
            if (!isWithin(buffer[offset + i])) {
                return Math.max(i, 1);
            }
        }
        return count;
    }

    private boolean isWithin(char c) {
        isQuoted ^= c == '"';
        if (!isQuoted && c == '\n') {
            rows++;
            columns = 0;
            length = 0;
        } else if (!isQuoted && c == separator) {
            columns++;
            length = 0;
        } else {
            length++;
        }
        return isWithin();
    }

    private boolean isWithin() {
        return rows <= ROWS && columns < COLUMNS && length <= CELL + 2;
    }

    private ExceededException exceeded() {
        return new ExceededException(
                length > CELL
                        ? "a cell of more than " + CELL + " characters"
                        : rows > ROWS ? "more than " + ROWS + " rows" : "more than " + COLUMNS + " columns");
    }
}
