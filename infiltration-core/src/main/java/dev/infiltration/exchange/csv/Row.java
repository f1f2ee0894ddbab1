// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A row that was read: its cells, and which records they speak of. */
final class Row {

    private final int number;
    private final Constants constants;
    private final List<Cell> cells = new ArrayList<>();
    private final Set<RowRecord> levels = EnumSet.noneOf(RowRecord.class);

    /**
     * Starts a row without cells.
     *
     * @param number    its number, from 1
     * @param constants what it takes where it has no cell; no record stands for it on their account alone
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

    /** {@return what its cell or the mapping says, or nothing}; what cannot be read is not nothing */
    String id(Field field) {
        @Nullable Cell cell = cell(field);
        return cell == null ? "" : String.valueOf(cell.value() == null ? cell.text() : cell.value());
    }

    /** {@return the row's own cell, not what the mapping says} */
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

    /** {@return what tells the row's visit from others}: its id, or its surface and date where it has none */
    Object visit() {
        String id = id(Fields.VISIT_ID);
        return id.isEmpty() ? List.of(id(Fields.SURFACE_ID), id(Fields.DATE)) : id;
    }

    /** {@return what tells the row's test from others of its visit}: its id, or its location where it has none */
    List<String> test() {
        String id = id(Fields.TEST_ID);
        return id.isEmpty() ? List.of("location", id(Fields.LOCATION_ID)) : List.of("test", id);
    }
}
