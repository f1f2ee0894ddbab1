// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.FieldBook;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Visit;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Cells start with none of the characters that the OWASP page on CSV injection lists (published: {@code = + - @}, tab, line
 * ends and full-width forms), unless they are numbers.
 */
class FormulasTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "=HYPERLINK(\"x\",\"y\")",
                "+1",
                "-2+3",
                "@SUM(A1)",
                "\t=1",
                "\r=1",
                " =1",
                "\uFF1D1",
                "\uFF0B1",
                "\uFF0D1",
                "\uFF201"
            })
    void textThatWouldRunGetsAnApostrophe(String text) {
        assertEquals("'" + text, Formulas.defused(text));
        assertEquals(text, Formulas.read(Formulas.defused(text)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "A1", "O'Hara", "'quoted'", "1-2", "a=b", "V1@HQ"})
    void otherTextStaysAsItIs(String text) {
        assertEquals(text, Formulas.defused(text));
        assertEquals(text, Formulas.read(text));
    }

    @Provide
    Arbitrary<String> texts() {
        return Arbitraries.strings().withChars("='+-@ \ta\uFF1D").ofMaxLength(6);
    }

    @Property(tries = 1000, seed = "20260603")
    void whatIsDefusedReadsBackAndDoesNotRun(@ForAll("texts") String text) {
        String cell = Formulas.defused(text);
        assertEquals(text, Formulas.read(cell));
        assertTrue(cell.isBlank() || "=+-@\t\uFF1D".indexOf(cell.strip().charAt(0)) < 0, cell);
    }

    @Test
    void formulasInEveryTextAreCarriedThroughATable() throws IOException {
        String formula = "=cmd|' /C calc'!A0";
        LocationTest test =
                LocationTest.of(null, formula, null).withNote("-" + formula).withPhotos(List.of("@" + formula));
        FieldBook book =
                FieldBook.of().withVisits(List.of(Visit.of(formula, null, null).withTests(List.of(test))));
        byte[] table = RunsCsvRoundTripTest.written(RunsCsv.withDefaults(), book);
        String text = new String(table, StandardCharsets.UTF_8);
        assertTrue(text.contains("'=cmd") && !text.matches("(?s).*[,\n\"][=+@-].*"), text);
        assertEquals(Optional.of(book.visits()), Csv.read(text).book().map(FieldBook::visits));
    }
}
