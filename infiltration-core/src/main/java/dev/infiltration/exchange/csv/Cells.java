// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import dev.infiltration.exchange.TableMapping;
import dev.infiltration.field.ClockTime;
import dev.infiltration.field.CrewMember;
import dev.infiltration.field.Event;
import dev.infiltration.field.JsonName;
import dev.infiltration.field.Photo;
import dev.infiltration.field.WaterReading;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;

/** Reads and writes the cells of a column, by the type of their values. */
final class Cells {

    private static final Map<String, Boolean> TRUTHS =
            Map.of("yes", true, "y", true, "true", true, "no", false, "n", false, "false", false);

    private static final Map<Class<?>, Cell> OF_CLASS = Map.ofEntries(
            Map.entry(String.class, plain("string", "text", (text, place) -> text)),
            Map.entry(
                    Boolean.class,
                    new Plain("boolean", "yes or no", Cells::truth, truth -> (Boolean) truth ? "yes" : "no")),
            Map.entry(
                    Integer.class,
                    plain(
                            "integer",
                            "a whole number",
                            (text, place) -> whole(place.numbers().parse(text)))),
            Map.entry(
                    BigDecimal.class,
                    plain(
                            "number",
                            "a number such as 44.9021",
                            (text, place) -> place.numbers().parse(text))),
            Map.entry(
                    LocalDate.class,
                    plain("date", "a date such as 2026-06-03, or as the mapping has it", DateCells::date)),
            Map.entry(ZoneId.class, plain("string", "a time zone such as America/Chicago", DateCells::zone)),
            Map.entry(
                    ClockTime.class,
                    plain(
                            "string",
                            "a time such as 2026-06-03T09:10:00 or, with a date in its row, 9:10:00",
                            DateCells::time)),
            Map.entry(CrewMember.class, plain("string", "initials", Entries::crew, Entries::text)),
            Map.entry(
                    Event.class,
                    plain(
                            "string",
                            "events such as \"leak; rain 2026-06-03T09:13:00\"",
                            Entries::event,
                            Entries::text)),
            Map.entry(
                    Photo.class,
                    plain(
                            "string",
                            "a file name",
                            (text, place) -> Photo.of(text),
                            photo -> ((Photo) photo).isNameOnly() ? photo.toString() : "")),
            Map.entry(
                    WaterReading.class, new AmountCell(unitsOf(Set.of(Mass.class, Volume.class)), WaterReading::new)));

    private Cells() {}

    /**
     * The context of a cell.
     *
     * @param unit    the unit of its column
     * @param numbers the numbers of the file
     * @param order   the order of day, month and year
     * @param date    the date of its row
     */
    record At(
            @Nullable FieldUnit<?> unit,
            Numbers numbers,
            TableMapping.DateOrder order,
            @Nullable LocalDate date) {}

    /** Reads and writes the cells of one type. */
    interface Cell {

        /** {@return the value, or null when the text is not one} */
        @Nullable
        Object parse(String text, At place);

        /** {@return the expected form, for a text that is not a value} */
        String expected();

        /** {@return the text of a value, with a decimal point} */
        String text(Object value);

        /** {@return the CSVW datatype} */
        String datatype();

        /** {@return the permitted units; empty when it is not an amount} */
        default List<FieldUnit<?>> units() {
            return List.of();
        }
    }

    static Cell of(Type type) {
        if (type instanceof ParameterizedType generic) {
            Type argument = generic.getActualTypeArguments()[0];
            return generic.getRawType() == Reading.class
                    ? new AmountCell(unitsOf(Set.of((Class<?>) argument)), reading -> reading)
                    : new ListCell(of(argument));
        }
        Class<?> plain = (Class<?>) type;
        return plain.isEnum() ? words(plain.getEnumConstants()) : java.util.Objects.requireNonNull(OF_CLASS.get(plain));
    }

    private static List<FieldUnit<?>> unitsOf(Set<Class<?>> kinds) {
        return FieldUnit.all().stream()
                .filter(unit -> kinds.contains(unit.kind()))
                .toList();
    }

    private static Cell words(Object[] constants) {
        Map<String, Object> words =
                Arrays.stream(constants).collect(Collectors.toMap(word -> ((JsonName) word).word(), word -> word));
        String expected = "one of "
                + Arrays.stream(constants).map(word -> ((JsonName) word).word()).collect(Collectors.joining(", "));
        return new Plain(
                "string",
                expected,
                (text, place) -> words.get(text.toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-")),
                word -> ((JsonName) word).word());
    }

    private static Cell plain(String datatype, String expected, BiFunction<String, At, @Nullable Object> parse) {
        return plain(datatype, expected, parse, Object::toString);
    }

    private static Cell plain(
            String datatype,
            String expected,
            BiFunction<String, At, @Nullable Object> parse,
            Function<Object, String> text) {
        return new Plain(datatype, expected, parse, text);
    }

    private static @Nullable Object truth(String text, At place) {
        return TRUTHS.get(text.toLowerCase(Locale.ROOT));
    }

    private static @Nullable Object whole(@Nullable BigDecimal number) {
        try {
            return number == null ? null : number.intValueExact();
        } catch (ArithmeticException notWhole) {
            return null;
        }
    }

    private record Plain(
            String datatype,
            String expected,
            BiFunction<String, At, @Nullable Object> parser,
            Function<Object, String> writer)
            implements Cell {

        @Override
        public @Nullable Object parse(String text, At place) {
            return parser.apply(text, place);
        }

        @Override
        public String text(Object value) {
            return writer.apply(value);
        }
    }
}
