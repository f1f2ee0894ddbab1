// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.verification;

import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.stream.Stream;
import javax.measure.Quantity;

/** Units against their legal definitions. */
final class UnitChecks {

    private static final Map<String, FieldUnit<?>> UNITS = Map.of(
            "inch", FieldUnit.INCH,
            "foot (international)", FieldUnit.FOOT,
            "pound (avoirdupois)", FieldUnit.POUND,
            "ounce", FieldUnit.OUNCE,
            "US gallon", FieldUnit.US_GALLON,
            "acre (US survey foot)", FieldUnit.ACRE,
            "square foot", FieldUnit.SQUARE_FOOT,
            "inch per hour", FieldUnit.INCH_PER_HOUR);

    /** The unit of the file and how many of it are one of the table's. */
    private record Scale(FieldUnit<?> unit, int power) {}

    private static final Map<String, Scale> SCALES = Map.of(
            "m", new Scale(FieldUnit.METRE, 0),
            "kg", new Scale(FieldUnit.KILOGRAM, 0),
            "m^2", new Scale(FieldUnit.SQUARE_METRE, 0),
            "m^3", new Scale(FieldUnit.LITRE, -3),
            "m/s", new Scale(FieldUnit.METRE_PER_SECOND, 0),
            "mm/h", new Scale(FieldUnit.MILLIMETRE_PER_HOUR, 0));

    private UnitChecks() {}

    static Stream<Check> all() {
        return Table.file("infiltration-units", "units/units-exact.csv")
                .filter(row -> UNITS.containsKey(row.text("unit")) && SCALES.containsKey(row.text("in")))
                .map(row -> check(row, UNITS.get(row.text("unit")), SCALES.get(row.text("in"))));
    }

    private static Check check(Table.Row row, FieldUnit<?> unit, Scale scale) {
        BigDecimal published = new BigDecimal(row.text("value"));
        BigDecimal size = one(unit, scale.unit()).scaleByPowerOfTen(scale.power());
        BigDecimal got = size.round(new MathContext(published.precision())).setScale(published.scale());
        String source = row.text("source").isEmpty() ? "inch of 25.4 mm" : row.text("source");
        return Check.exact(
                row.text("unit") + " in " + row.text("in"), source + " (seen, GNU units 2.22)", published, got);
    }

    /** One of a unit in another of its kind. */
    @SuppressWarnings("unchecked") // the table pairs units of one kind
    private static <Q extends Quantity<Q>> BigDecimal one(FieldUnit<?> unit, FieldUnit<?> target) {
        return Reading.of("1", (FieldUnit<Q>) unit).exactIn((FieldUnit<Q>) target);
    }
}
