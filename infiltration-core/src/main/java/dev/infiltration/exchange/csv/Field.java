// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import java.util.List;

/**
 * A component of one of the records of a row; a column contains its values.
 *
 * @param name      the header without its unit; {@code #} represents a number from 1
 * @param level     the record
 * @param path      the path of components, with {@code #} for the position in a list
 * @param cell      how its cells are read and written
 * @param spellings other names used in the trade
 */
record Field(String name, RowRecord level, String path, Cells.Cell cell, List<String> spellings) {

    static Field of(String name, RowRecord level, String path, String... spellings) {
        return new Field(name, level, path, Cells.of(Paths.type(level.type(), path)), List.of(spellings));
    }

    boolean isNumbered() {
        return path.contains("#");
    }

    /** {@return whether this is the id of its record} */
    boolean isId() {
        return path.equals("id");
    }
}
