// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A result for people: a title over rows of name and value, the same in every locale.
 *
 * @param title what the table shows
 * @param rows  its rows, top first
 */
public record TextTable(String title, List<Row> rows) {

    /** Significant digits for people; {@code double}s themselves are never rounded. */
    private static final MathContext DIGITS = new MathContext(4);

    private static final MathContext RATE_DIGITS = new MathContext(3);

    private static final double SHORTEST_PLAIN = 1e-5;
    private static final double LONGEST_PLAIN = 1e12;

    /**
     * One row.
     *
     * @param name  what the value is
     * @param value the value in words or figures
     */
    public record Row(String name, String value) {}

    /** Copies the rows. */
    public TextTable {
        rows = List.copyOf(rows);
    }

    /**
     * {@return a table without rows}
     *
     * @param title what it shows
     */
    public static TextTable titled(String title) {
        return new TextTable(title, List.of());
    }

    /**
     * {@return this table with one row more}
     *
     * @param name  what the value is
     * @param value anything that prints well
     */
    public TextTable with(String name, Object value) {
        return new TextTable(
                title,
                Stream.concat(rows.stream(), Stream.of(new Row(name, value.toString())))
                        .toList());
    }

    /**
     * {@return a number for people, to four significant digits}
     *
     * @param value the number
     */
    public static String number(double value) {
        return number(value, DIGITS);
    }

    /**
     * {@return a rate for people without its unit, to three significant digits}
     *
     * @param value the rate
     */
    public static String rate(double value) {
        return number(value, RATE_DIGITS);
    }

    private static String number(double value, MathContext digits) {
        if (!Double.isFinite(value)) {
            return Double.isNaN(value) ? "not known" : value > 0 ? "no upper limit" : "no lower limit";
        }
        BigDecimal rounded = new BigDecimal(value).round(digits).stripTrailingZeros();
        double size = Math.abs(value);
        boolean plain = size == 0 || (size >= SHORTEST_PLAIN && size < LONGEST_PLAIN);
        return plain ? rounded.toPlainString() : rounded.toString();
    }

    /** {@return the table as lines of text, names padded to one width} */
    @Override
    public String toString() {
        int width = rows.stream().mapToInt(row -> row.name().length()).max().orElse(0);
        return rows.stream()
                .map(row -> "  " + row.name() + " ".repeat(width - row.name().length() + 2) + row.value() + "\n")
                .collect(Collectors.joining("", title + "\n", ""));
    }
}
