// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import static dev.infiltration.exchange.Samples.book;
import static dev.infiltration.exchange.Samples.message;
import static dev.infiltration.exchange.Samples.places;
import static dev.infiltration.exchange.Samples.read;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Location;
import dev.infiltration.field.Place;
import dev.infiltration.field.ReadBook;
import dev.infiltration.field.Ring;
import dev.infiltration.field.Site;
import dev.infiltration.field.Surface;
import dev.infiltration.field.UnreadableValue;
import dev.infiltration.field.Visit;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the field book says of reading, line by line, for JSON that is sound. */
class ReadingRulesTest {

    @Test
    void nullEqualsAbsent() {
        ReadBook read = read("""
                "sites":null,"rings":[{"id":"R1","height":null,"insideDiameters":null,"extra":null}],
                "visits":[{"id":null,"date":null,"requestedLocations":null,"swept":null,"weather":null,"crew":[{"role":null}]}]""");
        assertEquals(List.of(), read.problems());
        assertEquals(
                read("\"rings\":[{\"id\":\"R1\"}],\"visits\":[{\"crew\":[{}]}]").book(), read.readPart());
    }

    @Test
    void nullAmongExternalIdsIsAbsent() {
        Site site = book(read("\"sites\":[{\"externalIds\":{\"a\":null,\"b\":\"2\"}}]"))
                .sites()
                .get(0);
        assertEquals(Map.of("b", "2"), site.externalIds());
    }

    @Test
    void missingIdsAreReadAsAbsent() {
        ReadBook read =
                read("\"sites\":[{\"surfaces\":[{\"locations\":[{}]}]}],\"rings\":[{}],\"visits\":[{\"tests\":[{}]}]");
        assertEquals(List.of(), read.problems());
        assertNull(book(read).visits().get(0).tests().get(0).id());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # where                                   | members
            /ring                                     | "ring":[{"id":"R9"}],"rings":[{"id":"R1"}]
            /a~1b~0c                                  | "a/b~c":{"x":[1,{"y":null}]},"rings":[{"id":"R1"}]
            /rings/0/Id                               | "rings":[{"Id":"R9","id":"R1"}]
            /rings/0/height/Value                     | "rings":[{"id":"R1","height":{"Value":1,"value":4,"unit":"in"}}]
            /rings/0/                                 | "rings":[{"":0,"id":"R1"}]
            """)
    void unknownKeyIsLeftOutAlone(String where, String members) {
        ReadBook read = read(members);
        assertEquals(List.of(where), places(read));
        assertTrue(message(read).endsWith("the key is left out"), message(read));
        assertEquals("R1", book(read).rings().get(0).id());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # where                   | members
            /rings                    | "rings":[{"id":"R1"}],"rings":[{"id":"R1"}]
            /rings/0/id               | "rings":[{"id":"R1","id":"R1"}]
            /rings/0/id               | "rings":[{"id":"R1","\\u0069d":"R1"}]
            /rings/0/height/unit      | "rings":[{"id":"R1","height":{"value":4,"unit":"in","unit":"kg"}}]
            /rings/0/extra/a          | "rings":[{"id":"R1","extra":{"a":1,"a":2}}]
            /rings/0/extra/a/1/b      | "rings":[{"id":"R1","extra":{"a":[0,{"b":1,"b":2}]}}]
            /sites/0/externalIds/a    | "sites":[{"externalIds":{"a":"1","a":"2"}}],"rings":[{"id":"R1"}]
            /format                   | "rings":[{"id":"R1"}],"format":"another"
            """)
    void ofTwoKeysWithOneValueTheFirstStays(String where, String members) {
        ReadBook read = read(members);
        assertEquals(List.of(where), places(read));
        assertEquals("R1", book(read).rings().get(0).id());
    }

    @Test
    void ofTwoValuesOfAKeyNeitherIsKeptAndBothAreWrittenBack() throws java.io.IOException {
        ReadBook read = read("\"rings\":[{\"id\":\"R1\",\"id\":\"R9\"}]");
        assertEquals(List.of("/rings/0/id"), places(read));
        assertNull(book(read).rings().get(0).id());
        java.io.StringWriter text = new java.io.StringWriter();
        Samples.JSON.write(read, text);
        assertEquals(read.unreadable(), Samples.JSON.read(text.toString()).unreadable());
    }

    @Test
    void firstOfTwoKeysStaysAlsoWhereItIsNull() {
        ReadBook read = read("\"rings\":[{\"id\":null,\"id\":\"R9\"}]");
        assertEquals(List.of("/rings/0/id"), places(read));
        assertNull(book(read).rings().get(0).id());
    }

    @Test
    void firstOfTwoKeysStaysInExtra() {
        ReadBook read = read("\"extra\":{\"a\":\"1\",\"a\":\"2\",\"b\":null}");
        Map<String, Object> extra = book(read).extra();
        assertEquals("1", extra.get("a"));
        assertTrue(extra.containsKey("b"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # record      | where                                        | members; an entry beside it is marked "ok"
            test          | /visits/0/tests/0/note                       | "visits":[{"id":"ok","tests":[{"note":1},{"id":"ok"}]}]
            test          | /visits/0/tests/0/notTested                  | "visits":[{"id":"ok","tests":[{"notTested":"fog"},{"id":"ok"}]}]
            test          | /visits/0/tests/0/runs                       | "visits":[{"id":"ok","tests":[{"runs":{}},{"id":"ok"}]}]
            test          | /visits/0/tests/0/runs/1                     | "visits":[{"id":"ok","tests":[{"runs":[{},7]},{"id":"ok"}]}]
            test          | /visits/0/tests/0/runs/0/pours/0/after/unit  | "visits":[{"id":"ok","tests":[{"runs":[{"pours":[{"after":{"value":1,"unit":"mm"}}]}]},{"id":"ok"}]}]
            test          | /visits/0/tests/0/preWet/events/0/kind       | "visits":[{"id":"ok","tests":[{"preWet":{"events":[{"kind":"quake"}]}},{"id":"ok"}]}]
            test          | /visits/0/tests/0/photos/1                   | "visits":[{"id":"ok","tests":[{"photos":["a",2]},{"id":"ok"}]}]
            test          | /visits/0/tests/0/extra                      | "visits":[{"id":"ok","tests":[{"extra":[]},{"id":"ok"}]}]
            test          | /visits/0/tests/0                            | "visits":[{"id":"ok","tests":[7,{"id":"ok"}]}]
            visit         | /visits/0/date                               | "visits":[{"date":"2026-06-31","tests":[{"id":"T"}]},{"id":"ok"}]
            visit         | /visits/0/crew/0                             | "visits":[{"crew":["MV"]},{"id":"ok"}]
            visit         | /visits/0/weather/air/value                  | "visits":[{"weather":{"air":{"value":"warm","unit":"degF"}}},{"id":"ok"}]
            visit         | /visits/0/amendments/0/at                    | "visits":[{"amendments":[{"at":"noon"}]},{"id":"ok"}]
            visit         | /visits/0/tests                              | "visits":[{"tests":"none"},{"id":"ok"}]
            visit         | /visits/0                                    | "visits":[[],{"id":"ok"}]
            ring          | /rings/0/insideDiameters/1                   | "rings":[{"insideDiameters":[{"value":1,"unit":"m"},2]},{"id":"ok"}]
            ring          | /rings/0                                     | "rings":[true,{"id":"ok"}]
            instrument    | /instruments/0/kind                          | "instruments":[{"kind":"sextant"},{"id":"ok"}]
            instrument    | /instruments/0                               | "instruments":["B1",{"id":"ok"}]
            maintenance   | /maintenance/0/locations/0                   | "maintenance":[{"locations":[1]},{"id":"ok"}]
            maintenance   | /maintenance/0                               | "maintenance":[0.5,{"id":"ok"}]
            surface       | /sites/0/surfaces/0/area/unit                | "sites":[{"id":"ok","surfaces":[{"area":{"value":1,"unit":"m"}},{"id":"ok"}]}]
            surface       | /sites/0/surfaces/0/locations                | "sites":[{"id":"ok","surfaces":[{"locations":7},{"id":"ok"}]}]
            surface       | /sites/0/surfaces/0                          | "sites":[{"id":"ok","surfaces":["HQ-A",{"id":"ok"}]}]
            location      | /sites/0/surfaces/0/locations/0/position     | "sites":[{"id":"ok","surfaces":[{"id":"ok","locations":[{"position":"north"},{"id":"ok"}]}]}]
            location      | /sites/0/surfaces/0/locations/0              | "sites":[{"id":"ok","surfaces":[{"id":"ok","locations":[false,{"id":"ok"}]}]}]
            """)
    void unreadableValueIsLeftOutAlone(String record, String where, String members) {
        ReadBook read = read(members);
        assertEquals(List.of(where), places(read));
        assertTrue(message(read).endsWith("; it is left out"), message(read));
        assertEquals(
                List.of(where),
                read.unreadable().stream().map(UnreadableValue::where).toList());
        assertEquals(count(members, "\"ok\""), count(book(read).toString(), "id=ok"));
    }

    private static int count(String text, String part) {
        return text.split(java.util.regex.Pattern.quote(part), -1).length - 1;
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # where                       | members                                                      | as if these had been
            /sites/0/timeZone             | "sites":[{"id":"HQ","timeZone":"Harrow/Quay"}]               | "sites":[{"id":"HQ"}]
            /sites/0/surfaces             | "sites":[{"id":"HQ","surfaces":"none"}]                      | "sites":[{"id":"HQ"}]
            /sites/0                      | "sites":[1,{"id":"HQ"}]                                      | "sites":[{"id":"HQ"}]
            /sites/0/position/latitude    | "sites":[{"position":{"latitude":"N","longitude":-87.2}}]    | "sites":[{"position":{"longitude":-87.2}}]
            /sites/0/position/accuracy/unit | "sites":[{"position":{"latitude":1,"accuracy":{"value":3,"unit":"kg"}}}] | "sites":[{"position":{"latitude":1}}]
            /sites/0/externalIds/a        | "sites":[{"externalIds":{"a":1,"b":"2"}}]                    | "sites":[{"externalIds":{"b":"2"}}]
            /sites/0/extra/a              | "sites":[{"extra":{"a":1e99999999999,"b":2}}]                | "sites":[{"extra":{"b":2}}]
            /extra                        | "extra":"x"                                                  | "extra":{}
            /visits                       | "visits":{"id":"V1"},"rings":[]                              | "rings":[]
            """)
    void valueInNoEntryIsLeftOutAlone(String where, String members, String asIf) {
        ReadBook read = read(members);
        assertEquals(List.of(where), places(read));
        assertTrue(message(read).endsWith("; it is left out"), message(read));
        assertEquals(read(asIf).readPart(), read.readPart());
    }

    @Test
    void everyProblemOfAnEntryIsTold() {
        ReadBook read = read("""
                "visits":[{"date":"yesterday","tests":[
                {"runs":[{"water":{"value":"much","unit":"mm","resolution":true,"extra":0}}],"note":[]},
                {"id":"ok"}],"swept":"yes"}]""");
        assertEquals(
                List.of(
                        "/visits/0/date",
                        "/visits/0/tests/0/runs/0/water/value",
                        "/visits/0/tests/0/runs/0/water/unit",
                        "/visits/0/tests/0/runs/0/water/resolution",
                        "/visits/0/tests/0/runs/0/water/extra",
                        "/visits/0/tests/0/note",
                        "/visits/0/swept"),
                places(read));
        assertEquals(1, book(read).visits().size());
    }

    @Test
    void problemsStandInOrderOfPlaceWithLineAndColumn() {
        ReadBook read = Samples.JSON.read("""
                {"format":"infiltration-field-book/1",
                 "rings":[{"height":{"unit":"kg","value":
                   "1,5"}},
                  5],
                 "é😀":0, "rings":0}""");
        assertEquals(
                List.of(
                        "2:29 /rings/0/height/unit",
                        "3:4 /rings/0/height/value",
                        "4:3 /rings/1",
                        "5:2 /é😀",
                        "5:10 /rings"),
                read.problems().stream()
                        .map(problem -> problem.line() + ":" + problem.column() + " " + problem.where())
                        .toList());
    }

    @Test
    void nullInAListIsCountedAndAProblemWhereEachElementCounts() {
        ReadBook read = read(
                "\"rings\":[null,{\"id\":\"R1\"}],\"visits\":[{\"crew\":[null],\"instruments\":[null,\"B1\"],\"tests\":[null,{\"runs\":[null,{}]}]}]");
        assertEquals(List.of("/visits/0/tests/0", "/visits/0/tests/1/runs/0"), places(read));
        assertEquals(List.of(Ring.of("R1")), book(read).rings());
        assertEquals(
                "/rings/1", Place.BOOK.member("rings").entry(0).in(read.gaps()).toString());
        assertEquals(
                "/visits/0/tests/1/runs/1",
                Place.BOOK
                        .member("visits")
                        .entry(0)
                        .member("tests")
                        .entry(1)
                        .member("runs")
                        .entry(1)
                        .in(read.gaps())
                        .toString());
        assertEquals(List.of("B1"), book(read).visits().get(0).instruments());
    }

    @Test
    void pointersCountWhatWasLeftOut() {
        ReadBook read =
                read("\"visits\":[null,{\"id\":\"V1\",\"tests\":[{\"id\":\"T0\"},{\"id\":7},{\"id\":\"T1\"}]}]");
        Place visit = Place.BOOK.member("visits").entry(0);
        assertEquals(
                "/visits/1/tests/0",
                visit.member("tests").entry(0).in(read.gaps()).toString());
        assertEquals(
                "/visits/1/tests/2",
                visit.member("tests").entry(2).in(read.gaps()).toString());
    }

    @Test
    void entriesAroundOneLeftOutStay() {
        FieldBook book = book(read("""
                "sites":[{"id":"HQ","surfaces":[{"id":"HQ-A","locations":[{"id":1},{"id":"A2"}]}]}],
                "visits":[{"id":"V1","swept":true,"tests":[{"id":1},{"id":"T2"}]}]"""));
        assertEquals(
                List.of(Location.of(null), Location.of("A2")),
                book.sites().get(0).surfaces().get(0).locations());
        Visit visit = book.visits().get(0);
        assertEquals(true, visit.swept());
        assertEquals("T2", visit.tests().get(1).id());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # line:column | where   | document
            1:1           | ''      | ''
            1:4           | ''      | '   '
            1:1           | ''      | []
            1:1           | ''      | [{"format":"infiltration-field-book/1"}]
            1:1           | ''      | "NaN"
            1:1           | ''      | null
            1:1           | ''      | true
            1:1           | ''      | NaN
            1:1           | ''      | {}
            1:2           | ''      | ' {"rings":[]}'
            1:1           | ''      | {"format":null}
            1:11          | /format | {"format":"infiltration-field-book/2"}
            1:11          | /format | {"format":"Infiltration-field-book/1","rings":7,"x":0}
            1:11          | /format | {"format":1,"rings":[
            1:11          | /format | {"format":{"a":[1]}}
            1:11          | /rings/0 | {"rings":[x
            """)
    void nothingReadableIsNoBookAndOneProblem(String place, String where, String document) {
        ReadBook read = Samples.JSON.read(document);
        assertEquals(Optional.empty(), read.readPart());
        assertEquals(List.of(where), places(read));
        assertEquals(
                place,
                read.problems().get(0).line() + ":" + read.problems().get(0).column());
    }

    @Test
    void formatMayStandAnywhere() {
        ReadBook read = Samples.JSON.read("{\"rings\":[{\"id\":\"R1\"}],\"format\":\"infiltration-field-book/1\"}");
        assertEquals(List.of(), read.problems());
        assertEquals("R1", book(read).rings().get(0).id());
    }

    @Test
    void extraIsReadAsItStands() {
        ReadBook read =
                read("\"extra\":{\"a\":[1,null,\"x\",{\"b\":1.50}],\"c\":null,\"d\":true,\"e\":{},\"f\":1E+400}");
        Map<String, Object> extra = book(read).extra();
        assertEquals(List.of("a", "c", "d", "e", "f"), List.copyOf(extra.keySet()));
        assertEquals(
                Arrays.asList(new java.math.BigDecimal("1"), null, "x", Map.of("b", new java.math.BigDecimal("1.50"))),
                extra.get("a"));
        assertEquals(new java.math.BigDecimal("1E+400"), extra.get("f"));
    }

    @Test
    void everyRecordTakesExtra() {
        String extra = "\"extra\":{\"k\":1}";
        ReadBook read = read("""
                "sites":[{EXTRA,"position":{EXTRA},"surfaces":[{EXTRA,"locations":[{EXTRA}]}]}],"rings":[{EXTRA}],
                "instruments":[{EXTRA}],"maintenance":[{EXTRA}],EXTRA,
                "visits":[{EXTRA,"crew":[{EXTRA}],"weather":{EXTRA},"amendments":[{EXTRA}],"tests":[{EXTRA,"preWet":{EXTRA,
                "head":{EXTRA},"events":[{EXTRA}],"pours":[{EXTRA}]},"runs":[{EXTRA}]}]}]""".replace("EXTRA", extra));
        assertEquals(List.of(), read.problems());
        assertEquals(18, count(book(read).toString(), "extra={k=1}"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\\u001b[31m", "\\u0000", "\\u202e", "\\u2028", "\\ud800"})
    void messagesHoldNoCharacterThatDoesSomething(String escape) {
        String message = message(read("\"rings\":[{\"height\":\"" + escape + "\"}]"));
        assertTrue(
                message.chars()
                        .noneMatch(c -> Character.getType(c) == Character.CONTROL
                                || c == 0x202e
                                || c == 0x2028
                                || Character.isSurrogate((char) c)),
                message);
    }

    @Test
    void messagesAreShort() {
        String message = message(read("\"rings\":[{\"height\":\"" + "x".repeat(1_000) + "\"}]"));
        assertTrue(message.contains("\"" + "x".repeat(40) + "…\""), message);
    }

    @Test
    void keysAreThoseOfTheFieldBook() {
        assertEquals(List.of(), Samples.JSON.read(Samples.harrowQuay()).problems());
        Surface surface = book(Samples.JSON.read(Samples.harrowQuay()))
                .sites()
                .get(0)
                .surfaces()
                .get(0);
        assertEquals(Surface.ThicknessBasis.ACTUAL, surface.thicknessIs());
    }
}
