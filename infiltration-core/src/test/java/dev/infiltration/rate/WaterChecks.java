// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.verification.Check;
import dev.infiltration.verification.Table;
import dev.infiltration.verification.Table.Row;
import java.util.stream.Stream;

/** Water against the releases of IAPWS, the metrologists' tables and a general library. */
public final class WaterChecks {

    private static final double LAST_DIGIT = 0.5000001e-6;

    /** Half a unit of the last digit of the metrologists' table. */
    private static final double LAST_OF_TABLE = 0.50001e-4;

    private WaterChecks() {}

    /** {@return the checks} */
    public static Stream<Check> all() {
        return Stream.of(viscosityRelease(), densityRelease(), tables(), ratios())
                .flatMap(each -> each);
    }

    private static Stream<Check> viscosityRelease() {
        return Table.file("infiltration-core", "rate/iapws-r12-08.csv")
                .map(row -> Check.within(
                        LAST_DIGIT,
                        "viscosity at " + row.text("T_K") + " K, " + row.text("rho_kg_m3") + " kg/m³, in µPa·s",
                        "IAPWS R12-08 (2008), Table 4 (seen)",
                        row.text("mu_uPa_s"),
                        Iapws.viscosity(row.number("T_K"), row.number("rho_kg_m3")) * 1e6));
    }

    private static Stream<Check> densityRelease() {
        return Table.file("infiltration-core", "rate/iapws-sr6-08.csv")
                .map(row -> Check.within(
                        LAST_DIGIT,
                        "density at " + row.text("T_K") + " K, in kg/m³",
                        "IAPWS SR6-08(2011), Table 8 (seen)",
                        row.text("rho"),
                        Iapws.density(row.number("T_K"))));
    }

    private static Stream<Check> tables() {
        return Table.file("infiltration-core", "rate/water-0-40C.csv").flatMap(WaterChecks::table);
    }

    private static Stream<Check> table(Row row) {
        Water water = Water.at(row.number("t_C"));
        String at = " at " + row.text("t_C") + " °C, in ";
        return Stream.of(
                        column(
                                row,
                                "rho_tanaka_table",
                                LAST_OF_TABLE,
                                "density" + at + "kg/m³",
                                "CIPM table, Tanaka et al. 2001, Metrologia 38, 301 (seen)",
                                water.density()),
                        column(
                                row,
                                "rho_ittc_table",
                                1.3e-3,
                                "density" + at + "kg/m³",
                                "ITTC 7.5-02-01-03 (2011), Table 1 (seen)",
                                water.density()),
                        column(
                                row,
                                "mu_korson_table",
                                1.8e-3,
                                "viscosity" + at + "mPa·s",
                                "Korson et al. 1969, J. Phys. Chem. 73, 34, Table II (seen)",
                                water.viscosity() * 1e3))
                .flatMap(each -> each);
    }

    private static Stream<Check> column(
            Row row, String column, double tolerance, String what, String source, double got) {
        return row.has(column)
                ? Stream.of(Check.within(tolerance, what, source, row.text(column), got))
                : Stream.empty();
    }

    private static Stream<Check> ratios() {
        return Table.at(NormalizedRateTest.class, "laminarFactorIsTheRatioOfViscosities")
                .map(row -> Check.within(
                        row.number("within"),
                        "factor on a laminar rate from " + row.text("from") + " to " + row.text("to") + " °C",
                        row.text("source, mark").replaceFirst(", (derived|seen)", " ($1)"),
                        row.text("factor"),
                        new NormalizedRate(
                                        new InfiltrationRate(2540),
                                        Water.at(row.number("from")),
                                        Water.at(row.number("to")),
                                        1)
                                .factor()));
    }
}
