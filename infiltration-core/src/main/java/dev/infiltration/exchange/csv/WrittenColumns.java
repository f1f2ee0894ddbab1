// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import dev.infiltration.units.FieldUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The columns of a table: one for each unit of each field that a row fills, and a few that every table has. */
final class WrittenColumns {

    /** Vessel, before and after of a pour are adjacent. */
    private static final Comparator<Column> ORDER = Comparator.comparing(WrittenColumns::group)
            .thenComparing(Column::index)
            .thenComparing(column -> Fields.ALL.indexOf(column.field()))
            .thenComparing(
                    column -> column.unit() == null ? -1 : FieldUnit.all().indexOf(column.unit()));

    private final Set<Column> columns = new LinkedHashSet<>();

    WrittenColumns() {
        Fields.ALWAYS.forEach(field -> columns.add(new Column(field, 0, null)));
    }

    private static int group(Column column) {
        String list = list(column.field());
        return Fields.ALL.indexOf(Fields.ALL.stream()
                .filter(field -> field.equals(column.field())
                        || (!list.isEmpty()
                                && field.level() == column.field().level()
                                && list(field).equals(list)))
                .findFirst()
                .orElseThrow());
    }

    private static String list(Field field) {
        int number = field.path().indexOf(".#");
        return number < 0 ? "" : field.path().substring(0, number);
    }

    void add(WrittenRow row) {
        for (Field field : Fields.ALL) {
            if (field.isNumbered()) {
                addNumbered(row, field);
            } else {
                add(row, new Column(field, 0, null));
            }
        }
    }

    private void addNumbered(WrittenRow row, Field field) {
        if (row.value(field, Arrays.asList(list(field).split("\\.", -1))) instanceof List<?> entries) {
            for (int index = 0; index < entries.size(); index++) {
                add(row, new Column(field, index, null));
            }
        }
    }

    private void add(WrittenRow row, Column column) {
        @Nullable Object value = row.value(column.field(), column.path());
        boolean isAmount = !column.field().cell().units().isEmpty();
        if (value != null && !(value instanceof List<?> list && list.isEmpty())) {
            columns.add(isAmount ? column.in(AmountCell.reading(value).unit()) : column);
        }
    }

    List<Column> sorted() {
        List<Column> sorted = new ArrayList<>(columns);
        sorted.sort(ORDER);
        return sorted;
    }
}
