// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.units;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is read as which unit: the UCUM codes and, per kind of quantity, the spellings of the trade. */
final class Spellings {

    static final List<FieldUnit<?>> UNITS = List.of(
            FieldUnit.METRE,
            FieldUnit.CENTIMETRE,
            FieldUnit.MILLIMETRE,
            FieldUnit.FOOT,
            FieldUnit.INCH,
            FieldUnit.KILOGRAM,
            FieldUnit.GRAM,
            FieldUnit.POUND,
            FieldUnit.OUNCE,
            FieldUnit.SECOND,
            FieldUnit.MINUTE,
            FieldUnit.HOUR,
            FieldUnit.DAY,
            FieldUnit.CELSIUS,
            FieldUnit.FAHRENHEIT,
            FieldUnit.KELVIN,
            FieldUnit.SQUARE_METRE,
            FieldUnit.HECTARE,
            FieldUnit.SQUARE_FOOT,
            FieldUnit.ACRE,
            FieldUnit.LITRE,
            FieldUnit.MILLILITRE,
            FieldUnit.US_GALLON,
            FieldUnit.MILLIMETRE_PER_HOUR,
            FieldUnit.INCH_PER_HOUR,
            FieldUnit.CENTIMETRE_PER_HOUR,
            FieldUnit.MILLIMETRE_PER_MINUTE,
            FieldUnit.CENTIMETRE_PER_SECOND,
            FieldUnit.METRE_PER_SECOND,
            FieldUnit.METRE_PER_DAY,
            FieldUnit.LITRE_PER_SECOND_HECTARE,
            FieldUnit.ONE,
            FieldUnit.PERCENT);

    private static final Map<String, FieldUnit<?>> BY_TEXT = byText();

    private Spellings() {}

    static Optional<FieldUnit<?>> of(String text) {
        return Optional.ofNullable(BY_TEXT.get(text));
    }

    static List<String> of(FieldUnit<?> unit) {
        return BY_TEXT.entrySet().stream()
                .filter(spelled -> spelled.getValue() == unit)
                .map(Map.Entry::getKey)
                .toList();
    }

    private static Map<String, FieldUnit<?>> byText() {
        Map<String, FieldUnit<?>> table = new LinkedHashMap<>();
        UNITS.forEach(unit -> add(table, unit, unit.code()));
        add(table, FieldUnit.INCH, "in", "inch", "inches", "\"");
        add(table, FieldUnit.FOOT, "ft", "foot", "feet");
        add(table, FieldUnit.POUND, "lb", "lbs", "pound", "pounds");
        add(table, FieldUnit.OUNCE, "oz");
        add(table, FieldUnit.SQUARE_FOOT, "ft2", "sq ft");
        add(table, FieldUnit.ACRE, "acre");
        add(table, FieldUnit.HECTARE, "ha");
        add(table, FieldUnit.US_GALLON, "gal");
        add(table, FieldUnit.LITRE, "l", "liter", "liters", "litre", "litres");
        add(table, FieldUnit.MILLILITRE, "ml");
        add(table, FieldUnit.FAHRENHEIT, "F", "degF", "°F");
        add(table, FieldUnit.CELSIUS, "C", "degC", "°C");
        add(table, FieldUnit.SECOND, "sec", "second", "seconds");
        add(table, FieldUnit.HOUR, "hr", "hour", "hours");
        add(table, FieldUnit.INCH_PER_HOUR, "in/h", "in/hr");
        add(table, FieldUnit.MILLIMETRE_PER_HOUR, "mm/hr");
        add(table, FieldUnit.LITRE_PER_SECOND_HECTARE, "L/(s.ha)");
        return Collections.unmodifiableMap(table);
    }

    /** No spelling belongs to two units. */
    private static void add(Map<String, FieldUnit<?>> table, FieldUnit<?> unit, String... spellings) {
        for (String spelling : spellings) {
            if (table.put(spelling, unit) != null) {
                throw new IllegalStateException("two units are spelled " + spelling);
            }
        }
    }
}
