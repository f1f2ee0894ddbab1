// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Several values in a cell, with semicolons between them.
 *
 * @param element how each is read and written
 */
record ListCell(Cells.Cell element) implements Cells.Cell {

    /** What stands between them. */
    static final String SEPARATOR = ";";

    /** {@return the values, or null when one of them cannot be read} */
    @Override
    public @Nullable Object parse(String text, Cells.At place) {
        List<Object> values = new ArrayList<>();
        for (String part : parts(text)) {
            @Nullable Object value = element.parse(part, place);
            if (value == null) {
                return null;
            }
            values.add(value);
        }
        return values;
    }

    private static List<String> parts(String text) {
        return Stream.of(text.split(SEPARATOR, -1))
                .map(String::strip)
                .filter(part -> !part.isEmpty())
                .toList();
    }

    @Override
    public String expected() {
        return element.expected() + ", with semicolons between";
    }

    @Override
    public String text(Object value) {
        return ((List<?>) value)
                .stream()
                        .map(element::text)
                        .filter(text -> !text.isBlank())
                        .collect(Collectors.joining(SEPARATOR + " "));
    }

    @Override
    public String datatype() {
        return element.datatype();
    }
}
