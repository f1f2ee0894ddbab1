// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import java.util.regex.Pattern;

/**
 * How a table is written.
 *
 * @param separator   what parts the cells
 * @param decimalMark what stands in numbers
 */
record Dialect(char separator, char decimalMark) {

    static final Dialect POINT = new Dialect(',', '.');
    static final Dialect COMMA = new Dialect(';', ',');

    private static final Pattern SEPARATORS = Pattern.compile("[,;\\t\"\\r\\n]");

    /** {@return what a row has in a column}, in quotes where a spreadsheet may take it apart, whatever it takes for a separator */
    String cell(Column column, Object value) {
        Cells.Cell cell = column.field().cell();
        String text = cell.text(value);
        return switch (cell.datatype()) {
            case "number" -> text.replace('.', decimalMark);
            case "integer", "date", "boolean" -> text;
            default -> quoted(Formulas.defused(text));
        };
    }

    private static String quoted(String text) {
        return SEPARATORS.matcher(text).find() ? Quotes.around(text) : text;
    }
}
