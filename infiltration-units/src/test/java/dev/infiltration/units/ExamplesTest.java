// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

/** The examples in doc comments do what stands beside them. */
class ExamplesTest {

    @Test
    void packageExampleIsTrue() throws IOException {
        Reading<Length> diameter = Reading.of("11.95", FieldUnit.INCH);
        double millimetres = diameter.in(FieldUnit.MILLIMETRE);
        InfiltrationRate rate = InfiltrationRate.of(100, FieldUnit.INCH_PER_HOUR);
        assertStandsIn("package-info.java", "double millimetres = diameter.in(FieldUnit.MILLIMETRE);", millimetres);
        assertStandsIn(
                "package-info.java", "FieldUnit.parse(\"lbs\", Mass.class);", FieldUnit.parse("lbs", Mass.class));
        assertStandsIn(
                "package-info.java", "rate.in(FieldUnit.MILLIMETRE_PER_HOUR);", rate.in(FieldUnit.MILLIMETRE_PER_HOUR));
    }

    @Test
    void readingExampleIsTrue() throws IOException {
        Reading<Mass> poured = Reading.of("40.00", FieldUnit.POUND);
        assertStandsIn("Reading.java", "poured.in(FieldUnit.KILOGRAM);", poured.in(FieldUnit.KILOGRAM));
        assertStandsIn(
                "Reading.java",
                "poured.sameAmountAs(Reading.of(\"640.0\", FieldUnit.OUNCE));",
                poured.sameAmountAs(Reading.of("640.0", FieldUnit.OUNCE)));
    }

    private static void assertStandsIn(String file, String code, Object result) throws IOException {
        String line = Files.readString(Path.of("src/main/java/dev/infiltration/units", file))
                .lines()
                .filter(text -> text.contains(code))
                .findFirst()
                .orElseThrow(() -> new AssertionError(file + " has no " + code));
        assertTrue(line.contains("//"), line);
        assertEquals(result.toString(), line.substring(line.indexOf("//") + 2).strip());
    }
}
