// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A list of values in one cell, separated by semicolons; a value that would be split or stripped is in quotes.
 *
 * @param element reads and writes one value
 */
record ListCell(Cells.Cell element) implements Cells.Cell {

    /** The separator of the values. */
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
        List<String> parts = new ArrayList<>();
        for (int at = 0; at < text.length(); ) {
            int start = Quotes.afterBlanks(text, at);
            int quoted = Quotes.end(text, start);
            int end = Quotes.afterBlanks(text, quoted);
            boolean isQuoted = quoted > start && (end == text.length() || text.startsWith(SEPARATOR, end));
            if (!isQuoted) {
                int separator = text.indexOf(SEPARATOR, at);
                end = separator < 0 ? text.length() : separator;
            }
            parts.add(
                    isQuoted
                            ? Quotes.within(text.substring(start, quoted))
                            : text.substring(at, end).strip());
            at = end + 1;
        }
        parts.removeIf(String::isEmpty);
        return parts;
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
                        .filter(text -> !text.isEmpty())
                        .map(text -> Quotes.whole(text, SEPARATOR))
                        .collect(Collectors.joining(SEPARATOR + " "));
    }

    @Override
    public String datatype() {
        return element.datatype();
    }
}
