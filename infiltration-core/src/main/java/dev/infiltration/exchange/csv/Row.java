// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A row that was read: its cells and the ids of their records. */
final class Row {

    private final int number;
    private final Constants constants;
    private final List<Cell> cells = new ArrayList<>();
    private final Set<RowRecord> levels = EnumSet.noneOf(RowRecord.class);

    /**
     * Starts a row without cells.
     *
     * @param number    its number, from 1
     * @param constants the values used where the row has no cell; they alone create no record
     */
    Row(int number, Constants constants) {
        this.number = number;
        this.constants = constants;
    }

    int number() {
        return number;
    }

    List<Cell> cells() {
        return cells;
    }

    void add(Cell cell) {
        cells.add(cell);
        levels.add(cell.level());
    }

    boolean has(RowRecord level) {
        return levels.contains(level);
    }

    /** {@return the cell of the row or of the mapping, or empty}; a cell that cannot be read is not empty */
    String id(Field field) {
        @Nullable Cell cell = cell(field);
        return cell == null ? "" : String.valueOf(cell.value() == null ? cell.text() : cell.value());
    }

    /** {@return the cell of the row, without the mapping} */
    @Nullable
    Cell own(Field field) {
        return cells.stream()
                .filter(cell -> cell.header().field().equals(field))
                .findFirst()
                .orElse(null);
    }

    @Nullable
    Object value(Field field) {
        @Nullable Cell cell = cell(field);
        return cell == null ? null : cell.value();
    }

    private @Nullable Cell cell(Field field) {
        @Nullable Cell own = own(field);
        return own == null ? constants.of(field) : own;
    }

    boolean hasPlace() {
        return has(RowRecord.SITE) || hasSurface();
    }

    boolean hasSurface() {
        return has(RowRecord.SURFACE)
                || has(RowRecord.LOCATION)
                || (hasVisit() && !id(Fields.SURFACE_ID).isEmpty())
                || (hasTest() && !id(Fields.LOCATION_ID).isEmpty());
    }

    boolean hasVisit() {
        return has(RowRecord.VISIT) || has(RowRecord.TEST) || has(RowRecord.RUN);
    }

    boolean hasTest() {
        return hasVisit()
                && (has(RowRecord.TEST) || has(RowRecord.RUN) || has(RowRecord.LOCATION) || has(RowRecord.RING));
    }

    /** {@return the key of the visit}: its id, or its surface and date if it has no id */
    Object visit() {
        String id = id(Fields.VISIT_ID);
        return id.isEmpty() ? List.of(id(Fields.SURFACE_ID), id(Fields.DATE)) : id;
    }

    /** {@return the key of the test in its visit}: its id, or its location if it has no id */
    List<String> test() {
        String id = id(Fields.TEST_ID);
        return id.isEmpty() ? List.of("location", id(Fields.LOCATION_ID)) : List.of("test", id);
    }
}
