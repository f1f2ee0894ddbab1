// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A row that was read: its cells, and which records they speak of. */
final class Row {

    private final int number;
    private final List<Cell> cells = new ArrayList<>();
    private final Set<Level> levels = EnumSet.noneOf(Level.class);

    Row(int number) {
        this.number = number;
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

    boolean has(Level level) {
        return levels.contains(level);
    }

    /** {@return what an id's cell says, or nothing where there is none} */
    String id(Field field) {
        @Nullable Object id = value(field);
        return id == null ? "" : id.toString();
    }

    @Nullable
    Object value(Field field) {
        return cells.stream()
                .filter(cell -> cell.header().field().equals(field))
                .map(Cell::value)
                .findFirst()
                .orElse(null);
    }

    @Nullable
    LocalDate date() {
        return (LocalDate) value(Fields.DATE);
    }

    boolean hasVisit() {
        return has(Level.VISIT) || has(Level.TEST) || has(Level.RUN);
    }

    boolean hasTest() {
        return hasVisit() && (has(Level.TEST) || has(Level.RUN) || has(Level.LOCATION) || has(Level.RING));
    }

    /** {@return what tells the row's visit from others}: its id, or its surface and date where it has none */
    Object visit() {
        String id = id(Fields.VISIT_ID);
        return id.isEmpty() ? List.of(id(Fields.SURFACE_ID), String.valueOf(date())) : id;
    }

    /** {@return what tells the row's test from others of its visit}: its id, or its location where it has none */
    List<String> test() {
        String id = id(Fields.TEST_ID);
        return id.isEmpty() ? List.of("location", id(Fields.LOCATION_ID)) : List.of("test", id);
    }
}
