// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import dev.infiltration.exchange.text.Digits;
import dev.infiltration.exchange.text.Stopwatch;
import dev.infiltration.field.WaterReading;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * Reads and writes amounts: numbers in the unit of their column or followed by a unit; times also as a stopwatch shows them.
 *
 * @param units  the permitted units
 * @param result converts the reading to the value
 */
record AmountCell(List<FieldUnit<?>> units, Function<Reading<?>, Object> result) implements Cells.Cell {

    private static final Pattern PARTS = Pattern.compile("([^\\s\\p{L}%\"\\[°]+(?:[eE][+-]?[0-9]+)?)\\s*(.*)");

    @Override
    public @Nullable Object parse(String text, Cells.At place) {
        @Nullable BigDecimal shown = isTime() ? shown(text.replace(',', '.')) : null;
        if (shown != null) {
            return reading(shown, FieldUnit.SECOND);
        }
        Matcher parts = PARTS.matcher(text);
        return parts.matches() ? reading(place.numbers().parse(parts.group(1)), unit(parts.group(2), place)) : null;
    }

    private boolean isTime() {
        return units.get(0).kind() == Time.class;
    }

    private static @Nullable BigDecimal shown(String text) {
        @Nullable BigDecimal minutes = Stopwatch.MINUTES.seconds(text);
        return minutes == null ? Stopwatch.HOURS.seconds(text) : minutes;
    }

    /** The unit after the number, or the unit of the column; if both are given, they must agree. */
    private @Nullable FieldUnit<?> unit(String behind, Cells.At place) {
        @Nullable FieldUnit<?> column = place.unit();
        if (behind.isEmpty()) {
            return column;
        }
        @Nullable FieldUnit<?> unit = FieldUnit.parse(behind).orElse(null);
        return unit != null && units.contains(unit) && (column == null || column == unit) ? unit : null;
    }

    private @Nullable Object reading(@Nullable BigDecimal number, @Nullable FieldUnit<?> unit) {
        return number == null || unit == null || !Digits.isAmount(number)
                ? null
                : result.apply(typed(Digits.held(number), unit));
    }

    private static <Q extends Quantity<Q>> Reading<Q> typed(BigDecimal number, FieldUnit<Q> unit) {
        return Reading.of(number, unit);
    }

    @Override
    public String expected() {
        return "an amount in " + units.stream().map(FieldUnit::code).collect(Collectors.joining(", "))
                + ", the unit in the header or behind the number" + (isTime() ? ", or such as 2:21.7" : "");
    }

    @Override
    public String text(Object value) {
        return reading(value).value().toString();
    }

    static Reading<?> reading(Object value) {
        return value instanceof WaterReading water ? water.reading() : (Reading<?>) value;
    }

    @Override
    public String datatype() {
        return "number";
    }

    /** {@return the unit for a header: ASCII characters without brackets} */
    static String spelled(FieldUnit<?> unit) {
        return unit.spellings().stream()
                .filter(spelling -> spelling.matches("[A-Za-z%1][A-Za-z0-9 /().]*"))
                .reduce((first, next) -> next.length() < first.length() ? next : first)
                .map(Objects::requireNonNull)
                .orElse(unit.code());
    }
}
