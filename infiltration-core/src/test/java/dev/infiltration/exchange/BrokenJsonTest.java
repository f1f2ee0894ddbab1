// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import static dev.infiltration.exchange.Samples.book;
import static dev.infiltration.exchange.Samples.document;
import static dev.infiltration.exchange.Samples.harrowQuay;
import static dev.infiltration.exchange.Samples.places;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Place;
import dev.infiltration.field.Problem;
import dev.infiltration.field.ReadBook;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the field book says of JSON that is broken: what stays, and where the problem stands. */
class BrokenJsonTest {

    private static final String START = "{\"format\":\"infiltration-field-book/1\",";

    private static Problem only(ReadBook read) {
        assertEquals(1, read.problems().size(), () -> read.problems().toString());
        return read.problems().get(0);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            # members up to where they break                                     | as if these had been
            "visits":[{"id":"V1","tests":[{"id":"T1"},{"id":"T2","note":"a       | "visits":[{"id":"V1","tests":[{"id":"T1"}]}]
            "visits":[{"id":"V1","tests":[{"id":"T1","runs":[{}]                 | "visits":[{"id":"V1"}]
            "visits":[{"id":"V1","tests":[{"runs":[{"end":"                      | "visits":[{"id":"V1"}]
            "visits":[{"id":"V1","swept":true                                    | ``
            "visits":[{"id":"V1","tests":[]                                      | ``
            "visits":[{"id":"V0"},{"id":"V1"                                     | "visits":[{"id":"V0"}]
            "visits":[{"id":"V0"},{"id":"V1","tests":[{"id":"T1"}                | "visits":[{"id":"V0"},{"id":"V1","tests":[{"id":"T1"}]}]
            "visits":[{"id":"V1","tests":[{}],"requestedLocations":1             | "visits":[{"id":"V1","tests":[{}]}]
            "visits":[{"id":"V1","tests":[{}],"requestedLocations":1x            | "visits":[{"id":"V1","tests":[{}]}]
            "visits":[{"tests":[{}],"requestedLocations":1 ,                     | "visits":[{"tests":[{}],"requestedLocations":1}]
            "visits":[{"tests":[{}],"swept":true                                 | "visits":[{"tests":[{}],"swept":true}]
            "visits":[{"tests":[{}],"swept":truex                                | "visits":[{"tests":[{}],"swept":true}]
            "visits":[{"tests":[{}],"campaign":"2026"                            | "visits":[{"tests":[{}],"campaign":"2026"}]
            "visits":[{"tests":[{}],"campaign":"2026                             | "visits":[{"tests":[{}]}]
            "visits":[{"tests":[{}],"weather":{"source":"x","air":{              | "visits":[{"tests":[{}]}]
            "visits":[{"tests":[{}],"weather":{"source":"x"                      | "visits":[{"tests":[{}]}]
            "visits":[{"tests":[{}],"crew":[{"role":"x"}                         | "visits":[{"tests":[{}]}]
            "visits":[{"tests":[{}],"instruments":["B1","                        | "visits":[{"tests":[{}]}]
            "rings":[{"id":"R0"},{"id":"R1","height":{"value":4,"unit":"in"}     | "rings":[{"id":"R0"}]
            "rings":[{"id":"R0"},{"id":"R1"}                                     | "rings":[{"id":"R0"},{"id":"R1"}]
            "rings":[{"id":"R0"},                                                | "rings":[{"id":"R0"}]
            "instruments":[{"id":"B1"                                            | ``
            "maintenance":[{"id":"M1","locations":["A1"]                         | ``
            "sites":[{"id":"HQ"                                                  | ``
            "sites":[{"id":"HQ","surfaces":[{"id":"S"}],"position":{"latitude":4 | "sites":[{"id":"HQ","surfaces":[{"id":"S"}]}]
            "sites":[{"id":"HQ","surfaces":[{"id":"S"                            | "sites":[{"id":"HQ"}]
            "sites":[{"surfaces":[{"id":"S","locations":[{"id":"A"},{"id":       | "sites":[{"surfaces":[{"id":"S","locations":[{"id":"A"}]}]}]
            "sites":[{"surfaces":[{"id":"S","locations":[{"id":"A"               | "sites":[{"surfaces":[{"id":"S"}]}]
            "sites":[{"surfaces":[{"id":"S","locations":[{"id":"A"}],"area":{    | "sites":[{"surfaces":[{"id":"S","locations":[{"id":"A"}]}]}]
            "rings":[{}],"extra":{"a":1                                          | "rings":[{}]
            "rings":[{}],"unknown":{"a":1                                        | "rings":[{}]
            "rings":[{}],"rings":[                                               | "rings":[{}]
            "rings":[{}]}}                                                       | "rings":[{}]
            "rings":[{}]}x                                                       | "rings":[{}]
            "rings":[{}]                                                         | "rings":[{}]
            """)
    void whatStoodCompleteStays(String members, String asIf) {
        ReadBook read = Samples.JSON.read(START + members);
        assertEquals(asIf.isEmpty() ? FieldBook.of() : book(Samples.read(asIf)), book(read));
        assertTrue(
                only(read).message().endsWith("; reading ends here"), only(read).message());
    }

    @Test
    void entryWithAValueThatCannotBeReadStaysWithItsCompleteEntries() {
        ReadBook read = Samples.JSON.read(START + "\"visits\":[{\"tests\":[{}],\"date\":0,\"weather\":{");
        assertEquals(List.of("/visits/0/date", "/visits/0/weather"), places(read));
        assertEquals(1, book(read).visits().size());
    }

    @Test
    void testThatIsLeftOutForItsContentIsTheInnermostAllTheSame() {
        ReadBook read = Samples.JSON.read(START + "\"visits\":[{\"id\":\"V1\",\"tests\":[{\"note\":0,\"runs\":[");
        assertEquals(List.of("/visits/0/tests/0/note", "/visits/0/tests/0/runs"), places(read));
        assertEquals(book(Samples.read("\"visits\":[{\"id\":\"V1\"}]")), book(read));
    }

    @Test
    void lostTestBeforeTheBreakKeepsItsVisit() {
        ReadBook read = Samples.JSON.read(START + "\"visits\":[{\"id\":\"V1\",\"tests\":[null");
        assertEquals(List.of("/visits/0/tests/0", "/visits/0/tests"), places(read));
        assertEquals(book(Samples.read("\"visits\":[{\"id\":\"V1\",\"tests\":[{}]}]")), book(read));
    }

    @Test
    void gapsBeforeTheBreakCount() {
        ReadBook read = Samples.JSON.read(START + "\"rings\":[null,{\"id\":\"R1\"},");
        assertEquals(
                "/rings/1", Place.BOOK.member("rings").entry(0).in(read.gaps()).toString());
    }

    /** The text breaks at the caret, which is not part of it. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            # where         | text
            ``              | ^
            ``              | ^x
            ``              | {^
            ``              | {^,
            ``              | {"a^
            ``              | {"a":1,^}
            ``              | {"a":1,"b^
            /a              | {"a"^
            /a              | {"a"^,
            /a              | {"a":^
            /a              | {"a":^x}
            /a              | {"a":^NaN}
            /a              | {"a":^+1}
            /a              | {"a":^.5}
            /a              | {"a":^'x'}
            /a              | {"a":^/**/1}
            /a              | {"a":n^aN}
            /a              | {"a":nul^}
            /a              | {"a":tru^
            /a              | {"a":-^
            /a              | {"a":-^Infinity
            /a              | {"a":0^1}
            /a              | {"a":1^x}
            /a              | {"a":1^
            /a              | {"a":1.^}
            /a              | {"a":1e^,
            /a              | {"a":1e+^,
            /a              | {"a":"x^
            /a              | {"a":"\\^x"}
            /a              | {"a":"\\u12^g4"}
            /a              | {"a":"\\u12^"}
            /a              | {"a":"\\^
            ``              | {"a":1 ^
            ``              | {"a":true^
            ``              | {"a":true^x
            ``              | {"a":"x"^"b":1}
            ``              | {"a":1 ^]
            ``              | {"a":[]^
            /a              | {"a":[^
            /a/0            | {"a":[^x]}
            /a/0            | {"a":[^,]}
            /a/0            | {"a":[1^
            /a              | {"a":[1 ^2]}
            /a/1            | {"a":[1,^]}
            /a/1            | {"a":[1,^
            /a              | {"a":[1,"x"^}
            /a              | {"a":{^
            /a              | {"a":{"b":1 ^
            /a/b/1/c        | {"a":{"b":[0,{"c":^
            /a~1b~0/ü~0     | {"a/b~":{"\\u00fc~":^x
            ``              | {"a":1}^,
            ``              | {} ^{}
            """)
    void problemStandsAtTheFirstCharacterThatCannotStand(String where, String text) {
        int caret = text.indexOf('^');
        Problem problem = only(Samples.JSON.read(text.replace("^", "")));
        assertEquals(where, problem.where(), text);
        assertEquals(1, problem.line());
        assertEquals(caret + 1, problem.column(), text);
    }

    @Test
    void controlCharacterInAStringCannotStand() {
        Problem problem = only(Samples.JSON.read(document("\"x\":\"a\tb\"")));
        assertEquals("/x", problem.where());
        assertEquals(START.length() + "\"x\":\"a".length() + 1, problem.column());
        assertEquals("found \"\\u0009\", expected the rest of a string; reading ends here", problem.message());
    }

    /** A valid book that is cut off at any character has one problem at its end, and more text never gives less of a book. */
    @Test
    void bookCutOffAnywhereHasOneProblemAtItsEnd() {
        String whole = harrowQuay();
        int end = whole.lastIndexOf('}');
        int entries = 0;
        for (int length = 0; length <= end; length++) {
            String text = whole.substring(0, length);
            ReadBook read = Samples.JSON.read(text);
            Problem problem = only(read);
            assertEquals(text.lines().count() + (text.isEmpty() || text.endsWith("\n") ? 1 : 0), problem.line(), text);
            assertEquals(text.length() - text.lastIndexOf('\n'), problem.column(), text);
            assertEquals(text.contains("book/1\""), read.readPart().isPresent(), text);
            int now = entries(read);
            assertTrue(now >= entries, text);
            entries = now;
        }
        assertEquals(9, entries);
    }

    private static int entries(ReadBook read) {
        FieldBook book = read.readPart().orElse(FieldBook.of());
        int inSites = book.sites().stream()
                .flatMap(site -> site.surfaces().stream())
                .mapToInt(surface -> 1 + surface.locations().size())
                .sum();
        int inVisits = book.visits().stream()
                .mapToInt(visit -> 1 + visit.tests().size())
                .sum();
        return inSites
                + inVisits
                + book.rings().size()
                + book.instruments().size()
                + book.maintenance().size();
    }
}
