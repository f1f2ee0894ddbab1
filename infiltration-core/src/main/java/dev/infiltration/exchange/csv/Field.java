// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import java.util.List;

/**
 * What a column may hold: a member of one of the row's records.
 *
 * @param name      the header without its unit; {@code #} stands for a number from 1
 * @param level     the record
 * @param path      the member, and members of it, with {@code #} for the position in a list
 * @param cell      how its cells are read and written
 * @param spellings what else the trade calls it
 */
record Field(String name, RowRecord level, String path, Cells.Cell cell, List<String> spellings) {

    static Field of(String name, RowRecord level, String path, String... spellings) {
        return new Field(name, level, path, Cells.of(Paths.type(level.type(), path)), List.of(spellings));
    }

    boolean isNumbered() {
        return path.contains("#");
    }

    /** {@return whether this names its record} */
    boolean isId() {
        return path.equals("id");
    }
}
