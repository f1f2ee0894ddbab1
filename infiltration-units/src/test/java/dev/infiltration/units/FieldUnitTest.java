// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.units;

import static java.util.stream.Collectors.toSet;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class FieldUnitTest {

    /** Source: the field book, version 1, "Values" (this project's own format). */
    private static final String SPELLINGS = """
            # kind          | code      | system     | printed  | read too
            Length          | m         | SI         | m        |
            Length          | cm        | SI         | cm       |
            Length          | mm        | SI         | mm       |
            Length          | [ft_i]    | INCH_POUND | ft       | ft,foot,feet
            Length          | [in_i]    | INCH_POUND | in       | in,inch,inches,"
            Mass            | kg        | SI         | kg       |
            Mass            | g         | SI         | g        |
            Mass            | [lb_av]   | INCH_POUND | lb       | lb,lbs,pound,pounds
            Mass            | [oz_av]   | INCH_POUND | oz       | oz
            Time            | s         | NEITHER    | s        | sec,second,seconds
            Time            | min       | NEITHER    | min      |
            Time            | h         | NEITHER    | h        | hr,hour,hours
            Time            | d         | NEITHER    | d        |
            Temperature     | Cel       | SI         | °C       | C,degC,°C
            Temperature     | [degF]    | INCH_POUND | °F       | F,degF,°F
            Temperature     | K         | SI         | K        |
            Area            | m2        | SI         | m²       |
            Area            | har       | SI         | ha       | ha
            Area            | [sft_i]   | INCH_POUND | ft²      | ft2,sq ft
            Area            | [acr_us]  | INCH_POUND | acre     | acre
            Volume          | L         | SI         | L        | l,liter,liters,litre,litres
            Volume          | mL        | SI         | mL       | ml
            Volume          | [gal_us]  | INCH_POUND | gal      | gal
            Speed           | mm/h      | SI         | mm/h     | mm/hr
            Speed           | [in_i]/h  | INCH_POUND | in/h     | in/h,in/hr
            Speed           | cm/h      | SI         | cm/h     |
            Speed           | mm/min    | SI         | mm/min   |
            Speed           | cm/s      | SI         | cm/s     |
            Speed           | m/s       | SI         | m/s      |
            Speed           | m/d       | SI         | m/d      |
            Speed           | L/(s.har) | SI         | L/(s·ha) | L/(s.ha)
            Dimensionless   | 1         | NEITHER    | ''       |
            Dimensionless   | %         | NEITHER    | %        |
            """;

    private static final List<Class<? extends Quantity<?>>> KINDS = List.of(
            Length.class,
            Mass.class,
            Time.class,
            Temperature.class,
            Area.class,
            Volume.class,
            Speed.class,
            Dimensionless.class);

    static List<FieldUnit<?>> units() {
        return FieldUnit.all();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\'', textBlock = SPELLINGS)
    void everySpellingOfTheFieldBookIsRead(String kind, String code, UnitSystem system, String printed, String too) {
        List<String> spellings = Stream.concat(
                        Stream.of(code), Stream.ofNullable(too).flatMap(list -> Arrays.stream(list.split(","))))
                .toList();
        for (String spelling : spellings) {
            FieldUnit<?> unit = FieldUnit.parse(spelling).orElseThrow(() -> new AssertionError(spelling));
            assertEquals(code, unit.code());
            assertEquals(code, unit.toString());
            assertEquals(kind, unit.kind().getSimpleName());
            assertEquals(system, unit.system());
            assertEquals(printed, unit.symbol());
            assertEquals(spellings, unit.spellings());
        }
    }

    @Test
    void nothingElseIsRead() {
        Set<String> listed = SPELLINGS
                .lines()
                .skip(1)
                .map(line -> line.split("\\|", -1))
                .flatMap(cells -> Stream.concat(Stream.of(cells[1]), Arrays.stream(cells[4].split(","))))
                .map(String::strip)
                .filter(spelling -> !spelling.isEmpty())
                .collect(toSet());
        Set<String> read = FieldUnit.all().stream()
                .flatMap(unit -> unit.spellings().stream())
                .collect(toSet());
        assertEquals(new TreeSet<>(listed), new TreeSet<>(read));
    }

    @ParameterizedTest
    @MethodSource("units")
    void spellingIsReadAsItsOwnKindAlone(FieldUnit<?> unit) {
        for (String spelling : unit.spellings()) {
            for (Class<? extends Quantity<?>> kind : KINDS) {
                assertEquals(unit.kind() == kind ? Optional.of(unit) : Optional.empty(), parse(spelling, kind));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("units")
    void spellingIsReadExactly(FieldUnit<?> unit) {
        for (String spelling : unit.spellings()) {
            for (String other : List.of(
                    " " + spelling,
                    spelling + " ",
                    spelling + ".",
                    "1 " + spelling,
                    spelling.toUpperCase(Locale.ROOT),
                    spelling.toLowerCase(Locale.ROOT))) {
                boolean listed =
                        FieldUnit.all().stream().anyMatch(any -> any.spellings().contains(other));
                assertEquals(listed, FieldUnit.parse(other).isPresent(), other);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "1,5",
                "1,5 m",
                "1.5 m",
                "15",
                "LB",
                "IN",
                "M",
                "KG",
                "MM",
                "Inch",
                "Feet",
                "metre",
                "meter",
                "m²",
                "ft²",
                "sqft",
                "ft^2",
                "acres",
                "gallon",
                "f",
                "c",
                "''",
                "hrs",
                "mins",
                "in/hour",
                "mm/s",
                "L/s/ha",
                "L/(s·ha)",
                "percent",
                "null",
                "m\0",
                "\u0664",
                "\u212a",
                "℃",
                "[IN_I]",
                "in_i"
            })
    void whatIsNotListedIsNoUnit(String text) {
        assertEquals(Optional.empty(), FieldUnit.parse(text));
    }

    @Property
    void anyTextIsReadOrRefusedWithoutFail(@ForAll String text) {
        FieldUnit.parse(text).ifPresent(unit -> assertTrue(unit.spellings().contains(text)));
    }

    @Test
    void codesAreUnique() {
        assertEquals(
                FieldUnit.all().size(),
                FieldUnit.all().stream().map(FieldUnit::code).distinct().count());
    }

    @Test
    void unitsOfAKindAreThoseOfTheTable() {
        assertEquals(
                List.of(FieldUnit.CELSIUS, FieldUnit.FAHRENHEIT, FieldUnit.KELVIN), FieldUnit.allOf(Temperature.class));
        assertEquals(
                FieldUnit.all().size(),
                KINDS.stream().mapToInt(kind -> allOf(kind).size()).sum());
    }

    @Test
    void unitIsGivenAsItsOwnKindAlone() {
        assertSame(FieldUnit.INCH, FieldUnit.INCH.as(Length.class).orElseThrow());
        assertEquals(Optional.empty(), FieldUnit.INCH.as(Mass.class));
    }

    @Test
    void missingArgumentIsRefusedByName() {
        assertNamed("text", () -> FieldUnit.parse(null));
        assertNamed("text", () -> FieldUnit.parse(null, Mass.class));
        assertNamed("kind", () -> FieldUnit.parse("no unit", null));
        assertNamed("kind", () -> FieldUnit.INCH.as(null));
    }

    private static void assertNamed(String argument, Runnable call) {
        assertEquals(
                argument, assertThrows(NullPointerException.class, call::run).getMessage());
    }

    @SuppressWarnings("unchecked") // any class of a kind
    private static Optional<?> parse(String text, Class<?> kind) {
        return FieldUnit.parse(text, (Class<Length>) kind);
    }

    @SuppressWarnings("unchecked") // any class of a kind
    private static List<?> allOf(Class<?> kind) {
        return FieldUnit.allOf((Class<Length>) kind);
    }
}
