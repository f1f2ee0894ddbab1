// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import static dev.infiltration.exchange.Samples.JSON;
import static dev.infiltration.exchange.Samples.book;
import static dev.infiltration.exchange.Samples.document;
import static dev.infiltration.exchange.Samples.harrowQuay;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.Problem;
import dev.infiltration.field.ReadBook;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** UTF-8 with or without a byte-order mark, UTF-16 and UTF-32 by their mark; lines and columns count characters. */
class EncodingTest {

    private static ReadBook read(byte[] bytes) throws IOException {
        return JSON.read(new ByteArrayInputStream(bytes));
    }

    private static byte[] bytes(String mark, String text, String encoding) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.write(HexFormat.of().parseHex(mark));
        bytes.write(text.getBytes(Charset.forName(encoding)));
        return bytes.toByteArray();
    }

    /** Marks: The Unicode Standard, section 23.8, table 23-5 (published). */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            ''       | UTF-8
            EFBBBF   | UTF-8
            FEFF     | UTF-16BE
            FFFE     | UTF-16LE
            0000FEFF | UTF-32BE
            FFFE0000 | UTF-32LE
            """)
    void sameBookIsReadInEveryEncoding(String mark, String encoding) throws IOException {
        String text = harrowQuay();
        assertEquals(
                JSON.read(text).readPart(), read(bytes(mark, text, encoding)).book());
        Problem problem = read(bytes(mark, document("\"😀é\":0,\n \"x\":0"), encoding))
                .problems()
                .get(1);
        assertEquals("2:2 /x", problem.line() + ":" + problem.column() + " " + problem.where());
        String lines = document("\"rings\":[]") + "\n{\"id\":\"é😀\"}\n";
        ReadBook read = JSON.readLines(new ByteArrayInputStream(bytes(mark, lines, encoding)));
        assertEquals("é😀", book(read).visits().get(0).id());
        assertEquals(
                read.readPart(),
                JSON.readEither(new ByteArrayInputStream(bytes(mark, lines, encoding)))
                        .book());
    }

    @Test
    void columnsCountCharactersAndNoMark() throws IOException {
        String text = "\uFEFF{\"😀é\":0,\"x\":x";
        for (ReadBook read : List.of(JSON.read(text), read(text.getBytes(StandardCharsets.UTF_8)))) {
            assertEquals(13, read.problems().get(0).column());
            assertEquals("/x", read.problems().get(0).where());
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # line:column | text, \\r and \\n standing for themselves
            2:2           | \\n x
            2:2           | \\r x
            2:2           | \\r\\n x
            3:1           | \\n\\rx
            4:1           | \\r\\r\\n\\nx
            """)
    void linesEndAtLineFeedsAndCarriageReturns(String place, String text) {
        Problem problem = JSON.read(text.replace("\\n", "\n").replace("\\r", "\r"))
                .problems()
                .get(0);
        assertEquals(place, problem.line() + ":" + problem.column());
    }

    /** Ill-formed sequences: The Unicode Standard, section 3.9, tables 3-6 to 3-8 (published). */
    @ParameterizedTest
    @ValueSource(strings = {"80", "C080", "E080AF", "EDA080", "F0808080", "F4908080", "FF", "C3", "E28C", "F09F98"})
    void bytesThatAreNoCharacterBreakTheTextThere(String hex) throws IOException {
        String start = document("\"rings\":[{\"id\":\"R0\"},{\"id\":\"é").replace("é}", "é");
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.write(start.getBytes(StandardCharsets.UTF_8));
        bytes.write(HexFormat.of().parseHex(hex));
        bytes.write("\"}]}".getBytes(StandardCharsets.UTF_8));
        ReadBook read = read(bytes.toByteArray());
        assertEquals("found what is no character of UTF-8; reading ends here", Samples.message(read));
        assertEquals("/rings/1/id", read.problems().get(0).where());
        assertEquals(start.length() + 1, read.problems().get(0).column());
        assertEquals(1, book(read).rings().size());
    }

    @Test
    void bytesThatAreNoCharacterBehindTheDocumentAreAProblem() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.write(document("\"rings\":[{}]").getBytes(StandardCharsets.UTF_8));
        bytes.write(0xFF);
        ReadBook read = read(bytes.toByteArray());
        assertEquals("found what is no character of UTF-8; reading ends here", Samples.message(read));
        assertEquals(1, book(read).rings().size());
    }

    @Test
    void earlierFaultComesBeforeBytesThatAreNoCharacter() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.write(document("\"rings\":[{}],x").getBytes(StandardCharsets.UTF_8));
        bytes.write(0xFF);
        assertTrue(Samples.message(read(bytes.toByteArray())).startsWith("found \"x\", "));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            FEFF     | UTF-16BE | D83D
            FFFE     | UTF-16LE | 3DD8
            0000FEFF | UTF-32BE | 00110000
            0000FEFF | UTF-32BE | 0000D83D
            FFFE0000 | UTF-32LE | FFFFFFFF
            """)
    void unitsThatAreNoCharacterBreakTheTextThere(String mark, String encoding, String hex) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.write(bytes(mark, "{\"a\":\"", encoding));
        bytes.write(HexFormat.of().parseHex(hex));
        bytes.write("\"}".getBytes(Charset.forName(encoding)));
        ReadBook read = read(bytes.toByteArray());
        assertEquals("found what is no character of " + encoding + "; reading ends here", Samples.message(read));
        assertEquals(7, read.problems().get(0).column());
    }

    @ParameterizedTest
    @ValueSource(strings = {"FE", "FEFF7B", "0000FEFF0000", "EFBB", "FFFE", "EFBBBF", "0000FEFF", ""})
    void bytesThatEndTooSoonAreNoBook(String hex) throws IOException {
        ReadBook read = read(HexFormat.of().parseHex(hex));
        assertTrue(read.readPart().isEmpty());
        assertEquals(1, read.problems().size());
    }

    @Test
    void halfAPairInAStringHeldInMemoryBreaksTheTextThere() {
        ReadBook read = JSON.read(document("\"rings\":[{}],\"a\":\"\uD83D\""));
        assertEquals("found what is no character of Unicode; reading ends here", Samples.message(read));
        assertEquals(1, book(read).rings().size());
    }

    @Test
    void halfAPairWrittenAsAnEscapeIsReadAsItStands() {
        assertEquals(
                "\uD83D",
                book(JSON.read(document("\"rings\":[{\"id\":\"\\ud83d\"}]")))
                        .rings()
                        .get(0)
                        .id());
    }
}
