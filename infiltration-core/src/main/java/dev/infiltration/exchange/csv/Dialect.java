// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

/**
 * How a table is written.
 *
 * @param separator   what parts the cells
 * @param decimalMark what stands in numbers
 */
record Dialect(char separator, char decimalMark) {

    static final Dialect POINT = new Dialect(',', '.');
    static final Dialect COMMA = new Dialect(';', ',');

    /** {@return what a row has in a column} */
    String text(Column column, Object value) {
        Cells.Cell cell = column.field().cell();
        String text = cell.text(value);
        return switch (cell.datatype()) {
            case "number" -> text.replace('.', decimalMark);
            case "integer", "date", "boolean" -> text;
            default -> Formulas.defused(text);
        };
    }
}
