// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The table of docs/units.md is the table of the code; {@code -Ddocs.write=true} writes it anew. */
class UnitsPageTest {

    private static final Path PAGE = Path.of("../docs/units.md");
    private static final String BEGIN = "<!-- table of units: begin -->\n";
    private static final String END = "<!-- table of units: end -->\n";

    @Test
    void tableOfUnitsIsThatOfTheCode() throws IOException {
        String page = Files.readString(PAGE);
        int begin = page.indexOf(BEGIN) + BEGIN.length();
        int end = page.indexOf(END);
        if (Boolean.getBoolean("docs.write")) {
            Files.writeString(PAGE, page.substring(0, begin) + table() + page.substring(end));
        } else {
            assertEquals(table(), page.substring(begin, end));
        }
    }

    private static String table() {
        return FieldUnit.all().stream()
                .map(UnitsPageTest::row)
                .collect(Collectors.joining(
                        "", "| kind | code | printed | system | read too | is |\n|---|---|---|---|---|---|\n", ""));
    }

    private static String row(FieldUnit<?> unit) {
        String readToo =
                unit.spellings().stream().skip(1).map(UnitsPageTest::code).collect(Collectors.joining(" "));
        return String.join(
                        " | ",
                        "| " + unit.kind().getSimpleName(),
                        code(unit.code()),
                        unit.symbol(),
                        system(unit.system()),
                        readToo,
                        size(unit))
                + " |\n";
    }

    private static String code(String text) {
        return "`" + text + "`";
    }

    private static String system(UnitSystem system) {
        return switch (system) {
            case SI -> "SI";
            case INCH_POUND -> "inch-pound";
            case NEITHER -> "";
        };
    }

    /** {@return what one of the unit is; on a scale of temperature with its own zero, what a value is} */
    private static String size(FieldUnit<?> unit) {
        Factor factor = unit.factor();
        String ratio = factor.denominator().compareTo(BigDecimal.ONE) == 0
                ? factor.numerator().toPlainString()
                : factor.numerator().toPlainString() + "/" + factor.denominator();
        String value = factor.offset().signum() == 0 ? "" : "(value + " + factor.offset() + ") · ";
        return (value + ratio + " " + reference(unit)).strip();
    }

    private static String reference(FieldUnit<?> unit) {
        return FieldUnit.allOf(unit.kind()).stream()
                .filter(any -> any.factor().equals(Factor.of("1")))
                .map(FieldUnit::symbol)
                .collect(Collectors.joining());
    }
}
