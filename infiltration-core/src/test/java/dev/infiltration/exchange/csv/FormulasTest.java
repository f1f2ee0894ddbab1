// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.FieldBook;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Photo;
import dev.infiltration.field.Visit;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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
                "\ta",
                "\ra",
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

    /** The parts that a text falls into where another character parts the cells than in the file. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            a;=1+1           | a;'=1+1
            a; =1+1          | a;' =1+1
            a,-1;+2          | a,'-1;'+2
            a;"=1+1          | a;'"=1+1
            a;'=1+1          | a;''=1+1
            a; b - c; O'Hara | a; b - c; O'Hara
            """)
    void partThatWouldRunGetsAnApostrophe(String text, String cell) {
        assertEquals(cell, Formulas.defused(text));
        assertEquals(text, Formulas.read(cell));
        String lines = text.replace(';', '\n');
        assertEquals(cell.replace(';', '\n'), Formulas.defused(lines));
        assertEquals(lines, Formulas.read(Formulas.defused(lines)));
    }

    @Provide
    Arbitrary<String> texts() {
        return Arbitraries.strings().withChars("='+-@ \ta\uFF1D;,\"\n\r\u00A0").ofMaxLength(8);
    }

    @Property(tries = 1000, seed = "20260603")
    void whatIsDefusedReadsBackAndDoesNotRun(@ForAll("texts") String text) {
        String cell = Formulas.defused(text);
        assertEquals(text, Formulas.read(cell));
        for (String part : cell.split("[;,\t\n\r]", -1)) {
            String bare = part.replace('"', ' ').strip();
            assertTrue(bare.isEmpty() || "=+-@\uFF1D".indexOf(bare.charAt(0)) < 0, cell);
        }
    }

    /** Whichever character a spreadsheet takes for what parts the cells, and wherever it takes quotes for such. */
    @Property(tries = 500, seed = "20260603")
    void noPartOfATableRuns(@ForAll("texts") String text) throws IOException {
        LocationTest test =
                LocationTest.of(text, text, null).withNote(text).withPhotos(List.of(Photo.of(text), Photo.of(text)));
        FieldBook book =
                FieldBook.of().withVisits(List.of(Visit.of(text, null, null).withTests(List.of(test))));
        for (RunsCsv csv :
                List.of(RunsCsv.withDefaults(), RunsCsv.withDefaults().withDecimalComma())) {
            String table = new String(RunsCsvRoundTripTest.written(csv, book), StandardCharsets.UTF_8);
            assertFalse(
                    Pattern.compile("(^|[;,\t\n\r])[\"\\h]*[=+@\uFF1D-]")
                            .matcher(table)
                            .find(),
                    table);
        }
    }

    @Test
    void cellWithASeparatorOfAnySpreadsheetStandsInQuotes() throws IOException {
        LocationTest test = LocationTest.of(null, "A1", null).withNote("a;b");
        LocationTest other = LocationTest.of(null, "A2", null).withNote("a\tb");
        FieldBook book =
                FieldBook.of().withVisits(List.of(Visit.of("V1", null, null).withTests(List.of(test, other))));
        String table = new String(RunsCsvRoundTripTest.written(RunsCsv.withDefaults(), book), StandardCharsets.UTF_8);
        assertTrue(table.contains(",\"a;b\",") && table.contains(",\"a\tb\","), table);
    }

    @Test
    void formulasInEveryTextAreCarriedThroughATable() throws IOException {
        String formula = "=cmd|' /C calc'!A0";
        LocationTest test = LocationTest.of(null, formula, null)
                .withNote("-" + formula)
                .withPhotos(List.of(Photo.of("@" + formula)));
        FieldBook book =
                FieldBook.of().withVisits(List.of(Visit.of(formula, null, null).withTests(List.of(test))));
        byte[] table = RunsCsvRoundTripTest.written(RunsCsv.withDefaults(), book);
        String text = new String(table, StandardCharsets.UTF_8);
        assertTrue(text.contains("'=cmd") && !text.matches("(?s).*[,\n\"][=+@-].*"), text);
        assertEquals(Optional.of(book.visits()), Csv.read(text).book().map(FieldBook::visits));
    }
}
