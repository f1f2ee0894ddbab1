// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import static dev.infiltration.exchange.Samples.JSON;
import static dev.infiltration.exchange.Samples.book;
import static dev.infiltration.exchange.Samples.places;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.Place;
import dev.infiltration.field.Problem;
import dev.infiltration.field.ReadBook;
import dev.infiltration.field.Visit;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the field book says of files read line by line. */
class BookLinesTest {

    private static final String BOOK = "{\"format\":\"infiltration-field-book/1\",\"rings\":[{\"id\":\"R1\"}]}";

    private static ReadBook lines(String... lines) throws IOException {
        return JSON.readLines(stream(String.join("\n", lines)));
    }

    private static InputStream stream(String text) {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }

    private static List<String> ids(ReadBook read) {
        return book(read).visits().stream().map(Visit::id).toList();
    }

    private static String place(Problem problem) {
        return problem.line() + ":" + problem.column() + " " + problem.where();
    }

    private static String position(ReadBook read, int visit) {
        return Place.BOOK.member("visits").entry(visit).in(read.gaps()).toString();
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n"})
    void firstLineIsTheBookAndEveryFurtherOneAVisit(String lineEnd) throws IOException {
        String text = String.join(lineEnd, BOOK, "{\"id\":\"V1\"}", " {\"id\":\"V2\"} ", "{\"id\":\"V3\"}");
        for (String end : List.of("", lineEnd)) {
            ReadBook read = JSON.readLines(stream(text + end));
            assertEquals(List.of(), read.problems());
            assertEquals(List.of("V1", "V2", "V3"), ids(read));
            assertEquals("R1", book(read).rings().get(0).id());
            assertTrue(read.gaps().isEmpty());
        }
    }

    @Test
    void blankLineIsCountedAndIsNothing() throws IOException {
        ReadBook read = lines(BOOK, "", "{\"id\":\"V1\"}", " \t\r", "null", "{\"id\":\"V4\",\"crew\":[null,{}]}");
        assertEquals(List.of(), read.problems());
        assertEquals(List.of("/visits/1", "/visits/4"), List.of(position(read, 0), position(read, 1)));
        Place member = Place.BOOK.member("visits").entry(1).member("crew").entry(0);
        assertEquals("/visits/4/crew/1", member.in(read.gaps()).toString());
    }

    @Test
    void visitsInTheFirstLineAreAProblem() throws IOException {
        ReadBook read =
                lines("{\"format\":\"infiltration-field-book/1\",\"visits\":[{\"id\":\"V9\"}]}", "{\"id\":\"V1\"}");
        assertEquals(
                List.of("1:39 /visits"),
                read.problems().stream().map(BookLinesTest::place).toList());
        assertEquals(List.of("V1"), ids(read));
    }

    @Test
    void brokenLineIsItsOwnProblemAndReadingGoesOn() throws IOException {
        ReadBook read = lines(
                BOOK,
                "{\"id\":\"V0\"",
                "{\"id\":\"V1\",\"tests\":[{\"id\":\"T1\"},{\"id\":",
                "nonsense",
                "{\"id\":\"V3\"}}",
                "{\"id\":\"V4\",\"date\":7,\"é\":0}",
                "[]",
                "{\"id\":\"V6\"}");
        assertEquals(
                List.of(
                        "2:11 /visits/0",
                        "3:39 /visits/1/tests/1/id",
                        "4:2 /visits/2",
                        "5:12 /visits/3",
                        "6:19 /visits/4/date",
                        "6:21 /visits/4/é",
                        "7:1 /visits/5"),
                read.problems().stream().map(BookLinesTest::place).toList());
        assertEquals(List.of("V1", "V3", "V4", "V6"), ids(read));
        assertEquals("T1", book(read).visits().get(0).tests().get(0).id());
        assertEquals(
                List.of("/visits/1", "/visits/3", "/visits/4"),
                List.of(position(read, 0), position(read, 1), position(read, 2)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            # line:column where | first line
            1:1                 | ``
            1:1                 | []
            1:1                 | {}
            1:11 /format        | {"format":"x"}
            1:11 /rings/0       | {"rings":[x
            """)
    void firstLineThatIsNoBookLeavesNothing(String place, String first) throws IOException {
        ReadBook read = lines(first, "{\"id\":\"V1\"}", "nonsense");
        assertTrue(read.readPart().isEmpty());
        assertEquals(
                List.of(place),
                read.problems().stream().map(problem -> place(problem).strip()).toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n"})
    void lineThatBreaksOffDoesSoBeforeItsEnd(String lineEnd) throws IOException {
        ReadBook read = JSON.readLines(stream(BOOK + lineEnd + "{\"id\"" + lineEnd + "{}"));
        assertEquals(
                List.of("2:6 /visits/0/id"),
                read.problems().stream().map(BookLinesTest::place).toList());
    }

    @Test
    void firstLineThatBreaksBehindTheFormatIsReadAsFarAsItStood() throws IOException {
        ReadBook read = lines(BOOK.replace("]}", ",{\"id\""), "{\"id\":\"V1\"}");
        assertEquals(List.of("/rings/1/id"), places(read));
        assertEquals(List.of("V1"), ids(read));
    }

    @Test
    void bytesThatAreNoCharacterBreakTheirLineAlone() throws IOException {
        byte[] bytes = (BOOK + "\n{\"id\":\"V0\",\"note\":\"?\"}\n{\"id\":\"V1\"}").getBytes(StandardCharsets.UTF_8);
        bytes[new String(bytes, StandardCharsets.UTF_8).indexOf('?')] = (byte) 0xFF;
        ReadBook read = JSON.readLines(new ByteArrayInputStream(bytes));
        assertEquals(List.of("V1"), ids(read));
        assertTrue(read.problems().get(0).message().startsWith("found what is no character of UTF-8"));
    }

    @Test
    void lineBeyondTheLimitIsAProblemOfThatLine() throws IOException {
        FieldBookJson json = JSON.withLimits(ReadLimits.withDefaults().withDocumentLength(100));
        String long_ = "{\"id\":\"V0\",\"method\":\"" + "x".repeat(100_000) + "\"}";
        ReadBook read = json.readLines(stream(String.join("\n", BOOK, long_, "{\"id\":\"V1\"}")));
        assertEquals(
                List.of("2:101 /visits/0/method"),
                read.problems().stream().map(BookLinesTest::place).toList());
        assertEquals(List.of("V1"), ids(read));
    }

    @Test
    void emptyFileIsNoBook() throws IOException {
        ReadBook read = JSON.readLines(stream(""));
        assertEquals(
                List.of("1:1 "),
                read.problems().stream().map(BookLinesTest::place).toList());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            # read as  | text, with / for line ends
            document   | BOOK
            document   | BOOK/
            document   | BOOK// /
            document   | {"format":/"infiltration-field-book~1"}
            document   | /BOOK
            lines      | BOOK/{"id":"V1"}
            lines      | BOOK///{"id":"V1"}/
            lines      | BOOK/nonsense
            document   | BOOK nonsense/{"id":"V1"}
            """)
    void eitherIsToldByTheFirstLine(String kind, String text) throws IOException {
        String whole = text.replace("/", "\n").replace("~", "/").replace("BOOK", BOOK);
        ReadBook expected = kind.equals("lines") ? JSON.readLines(stream(whole)) : JSON.read(whole);
        ReadBook read = JSON.readEither(stream(whole));
        assertEquals(expected.readPart(), read.readPart());
        assertEquals(expected.problems(), read.problems());
        if (!read.readPart().orElseThrow().visits().isEmpty()) {
            assertEquals(position(expected, 0), position(read, 0));
        }
    }

    @Test
    void eitherKeepsTheWholeOfADocument() throws IOException {
        String text = "\r\n" + Samples.harrowQuay().replace("\n", "\r\n") + "x";
        assertEquals(JSON.read(text).problems(), JSON.readEither(stream(text)).problems());
        assertEquals(JSON.read(text).readPart(), JSON.readEither(stream(text)).readPart());
    }

    @Test
    void filesAreReadAsStreamsAre(@TempDir Path folder) throws IOException {
        Path lines = Files.writeString(folder.resolve("book.jsonl"), BOOK + "\n{\"id\":\"V1\"}\n");
        Path document = Files.writeString(folder.resolve("book.json"), Samples.harrowQuay());
        assertEquals(List.of("V1"), ids(JSON.readLines(lines)));
        assertEquals(JSON.read(Samples.harrowQuay()).book(), JSON.read(document).readPart());
    }
}
