// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import dev.infiltration.exchange.text.Found;
import dev.infiltration.field.Problem;
import org.jspecify.annotations.Nullable;

/**
 * A cell that is not blank.
 *
 * @param row    its row, from 1
 * @param column its column, from 1; 0 for a value of the mapping
 * @param header its column
 * @param text   its text
 * @param value  its value; null where it cannot be read
 * @param expected what was expected
 */
record Cell(
        int row,
        int column,
        Column header,
        String text,
        @Nullable Object value,
        String expected) {

    /** {@return a fragment identifier of RFC 7111} */
    static String where(int row, int column) {
        return "#cell=" + row + "," + column;
    }

    RowRecord level() {
        return header.field().level();
    }

    Problem problem(String expected, String loss) {
        String message = header.header() + ": found " + Found.quoted(text) + ", expected " + expected + "; " + loss;
        return new Problem(row, Math.max(column, 1), where(row, column), message);
    }
}
