// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import java.util.regex.Pattern;

/**
 * The separator and the decimal mark of a written table.
 *
 * @param separator   the separator of the cells
 * @param decimalMark the decimal mark of the numbers
 */
record Dialect(char separator, char decimalMark) {

    static final Dialect POINT = new Dialect(',', '.');
    static final Dialect COMMA = new Dialect(';', ',');

    private static final Pattern SEPARATORS = Pattern.compile("[,;\\t\"\\r\\n]");

    /** {@return the text of a value}, in quotes if a spreadsheet with any usual separator may split it */
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
