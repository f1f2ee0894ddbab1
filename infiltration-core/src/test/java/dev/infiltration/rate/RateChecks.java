// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.exchange.ReferenceJson;
import dev.infiltration.rate.ReferenceCase.Outcome;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import dev.infiltration.units.UnitSystem;
import dev.infiltration.verification.Check;
import dev.infiltration.verification.Table;
import java.util.stream.Stream;
import javax.measure.quantity.Speed;

/** The rate against the shipped cases, and its constant against geometry. */
public final class RateChecks {

    private RateChecks() {}

    /** {@return the checks} */
    public static Stream<Check> all() {
        return Stream.concat(
                ReferenceJson.shipped().check(RateEquation.asPublished()::rate).stream()
                        .map(RateChecks::check),
                constants());
    }

    private static Check check(ReferenceCheck check) {
        ReferenceCase each = check.reference();
        String source = each.basis().toString();
        Reading<Speed> rate = each.rate();
        if (rate == null) {
            return Check.exact(
                    each.id(), source, each.outcome().word(), check.got().word());
        }
        FieldUnit<Speed> unit = rate.unit();
        String bound =
                each.outcome() == Outcome.MEASURED ? "" : ", " + each.outcome().word();
        Check found = Check.relative(
                each.tolerance().doubleValue(),
                each.id() + bound + ", in " + unit.symbol(),
                source.startsWith("common practice") ? "which way it pushes the rate (common practice)" : source,
                rate.value().stripTrailingZeros().toPlainString(),
                check.got().figure().orElseThrow().in(unit));
        return new Check(
                found.what(), found.source(), found.expected(), found.got(), found.tolerance(), check.isPassed());
    }

    private static Stream<Check> constants() {
        return Table.at(RateConstantTest.class, "constantIsThatOfTheGeometryOfTheRing")
                .flatMap(row -> {
                    double density = row.number("kg/m3");
                    RateEquation equation = RateEquation.asPublished().withWaterDensity(density);
                    String what = "constant for water of " + row.text("kg/m3") + " kg/m³, ";
                    return Stream.of(
                            Check.relative(
                                    1e-14,
                                    what + "(mm³·s)/(kg·h)",
                                    "K = 3600·4/(π·ρ), 30 digits (derived); " + row.text("source"),
                                    row.text("(mm3 s)/(kg h)"),
                                    equation.constant(UnitSystem.SI).value()),
                            Check.relative(
                                    1e-14,
                                    what + "(in³·s)/(lb·h)",
                                    "K = 3600·4/(π·ρ), 30 digits (derived); " + row.text("source"),
                                    row.text("(in3 s)/(lb h)"),
                                    equation.constant(UnitSystem.INCH_POUND).value()));
                });
    }
}
