// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import dev.infiltration.units.FieldUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A column of one table.
 *
 * @param field the field of its cells
 * @param index the position in a list, from 0, where the field is numbered
 * @param unit  the unit of its amounts, where the header has one
 */
record Column(Field field, int index, @Nullable FieldUnit<?> unit) {

    private static final Pattern HEADER = Pattern.compile("(.*?)\\s*(?:\\[(.*)]|\\((.*)\\))?\\s*:?", Pattern.DOTALL);
    private static final Pattern NUMBER = Pattern.compile("\\b([1-9][0-9]?)\\b");

    /** The unit text of a header whose cells are as a stopwatch shows them: {@code m:ss.s}, {@code h:mm:ss}. */
    private static final Pattern WATCH =
            Pattern.compile("(?:hh?:)?m(?:m|in)?:s(?:s|ec)?(?:[.,][s0]+)?", Pattern.CASE_INSENSITIVE);

    /** {@return the column of a header; empty when no column has this name or it has another unit} */
    static Optional<Column> of(String header) {
        Matcher parts = HEADER.matcher(header.strip());
        return parts.matches() ? of(HeaderWords.of(parts.group(1)), unit(parts)) : Optional.empty();
    }

    private static @Nullable String unit(Matcher parts) {
        return parts.group(2) == null ? parts.group(3) : parts.group(2);
    }

    private static Optional<Column> of(String name, @Nullable String unit) {
        Matcher number = NUMBER.matcher(name);
        boolean isNumbered = number.find();
        @Nullable Field field = Fields.find(isNumbered ? number.replaceFirst("#") : name);
        if (field == null || (isNumbered != field.isNumbered())) {
            return Optional.empty();
        }
        int index = isNumbered ? Integer.parseInt(number.group(1)) - 1 : 0;
        return unit == null ? Optional.of(new Column(field, index, null)) : of(field, index, unit.strip());
    }

    private static Optional<Column> of(Field field, int index, String unit) {
        if (WATCH.matcher(unit).matches() && field.cell().units().contains(FieldUnit.SECOND)) {
            return Optional.of(new Column(field, index, null));
        }
        return FieldUnit.parse(unit)
                .filter(field.cell().units()::contains)
                .map(parsed -> new Column(field, index, parsed));
    }

    /** {@return the header for writing} */
    String header() {
        String name = field.name().replace("#", Integer.toString(index + 1));
        return unit == null ? name : name + " [" + AmountCell.spelled(unit) + "]";
    }

    Column in(FieldUnit<?> other) {
        return new Column(field, index, other);
    }

    /** {@return the path of its value; positions sort as texts} */
    List<String> path() {
        return Arrays.asList(
                field.path().replace("#", index < 10 ? "0" + index : "" + index).split("\\.", -1));
    }
}
