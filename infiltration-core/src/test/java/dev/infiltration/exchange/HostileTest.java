// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import static dev.infiltration.exchange.Samples.book;
import static dev.infiltration.exchange.Samples.document;
import static dev.infiltration.exchange.Samples.places;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.ReadBook;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Documents that were made to cost time or memory cost neither. */
class HostileTest {

    private static final Duration LIMIT = Duration.ofSeconds(20);

    private static ReadBook inTime(Supplier<ReadBook> reading) {
        return assertTimeout(LIMIT, reading::get);
    }

    private static String limitOf(ReadBook read, String where) {
        assertEquals(List.of(where), places(read));
        return read.problems().get(0).message();
    }

    @ParameterizedTest
    @ValueSource(strings = {"[", "{\"a\":"})
    void deepNestingIsOneProblem(String open) {
        ReadBook read =
                inTime(() -> Samples.JSON.read(document("\"rings\":[{}],\"extra\":{\"a\":" + open.repeat(200_000))));
        String deepest = "/extra/a" + (open.equals("[") ? "/0" : "/a").repeat(198);
        assertTrue(limitOf(read, deepest).endsWith("; reading ends here"));
        assertEquals(1, book(read).rings().size());
    }

    @Test
    void deepNestingUnderAnUnknownKeyIsOneProblem() {
        ReadBook read = inTime(() -> Samples.JSON.read(document("\"rings\":[{}],\"a\":" + "[".repeat(200_000))));
        limitOf(read, "/a" + "/0".repeat(199));
        assertEquals(1, book(read).rings().size());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            # value          | found
            [[[[[["deep"]]]]]] | objects and lists nested deeper than 5
            {"a":{"b":{"c":{"d":{}}}}} | objects and lists nested deeper than 5
            "abcdefghijklmnopqrstuvwxyz" | a string of more than 25 characters
            12345678         | a number of more than 7 characters
            """)
    void valueBeyondALimitIsLeftOutAloneAndReadingGoesOn(String value, String found) {
        FieldBookJson json = FieldBookJson.withDefaults()
                .withLimits(ReadLimits.withDefaults()
                        .withNesting(5)
                        .withStringLength(25)
                        .withNumberLength(7));
        String document = document("\"rings\":[{\"id\":\"R1\",\"extra\":{\"a\":" + value
                + "}},{\"id\":\"R2\"}],\"sites\":[{\"id\":\"S\"}]");
        ReadBook read = json.read(document);
        assertTrue(limitOf(read, places(read).get(0)).startsWith("found " + found + ", expected "));
        assertTrue(places(read).get(0).startsWith("/rings/0/extra/a"));
        assertEquals(2, book(read).rings().size());
        assertEquals(1, book(read).sites().size());
        assertEquals(1, read.unreadable().size());
    }

    @Test
    void nestingUpToTheLimitIsRead() {
        ReadBook read = Samples.JSON.read(document("\"extra\":{\"a\":" + "[".repeat(198) + "]".repeat(198) + "}"));
        assertEquals(List.of(), read.problems());
        ReadBook deeper = Samples.JSON.read(document("\"extra\":{\"a\":" + "[".repeat(199) + "]".repeat(199) + "}"));
        assertEquals(1, deeper.problems().size());
    }

    @Test
    void longStringIsOneProblem() {
        String text = document("\"rings\":[{}],\"extra\":{\"a\":\"" + "x".repeat(50_000_000) + "\"}");
        ReadBook read = inTime(() -> Samples.JSON.read(text));
        assertTrue(limitOf(read, "/extra/a").startsWith("found a string of more than 10000000 characters, expected "));
        assertEquals(text.indexOf("\"x") + 1, read.problems().get(0).column());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # where      | member
            ''           | "aaaaaaaaaaaaaaaaaaaaaaaaaa":1
            /extra/a     | "extra":{"a":"aaaaaaaaaaaaaaaaaaaaaaaaaa"}
            /extra/a     | "extra":{"a":"aaaaaaaaaaaaaaaaaaaaaaaaa\\u0061"}
            """)
    void lengthOfStringsAndKeysIsCountedInCharactersMeant(String where, String member) {
        FieldBookJson json = FieldBookJson.withDefaults()
                .withLimits(ReadLimits.withDefaults().withStringLength(25));
        String document = document(member);
        assertEquals(where, json.read(document).problems().get(0).where());
        assertTrue(json.read(document).problems().get(0).message().contains("limit")
                || json.read(document).problems().get(0).message().contains("more than 25"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", "1.", "1e", "-0."})
    void longNumberIsOneProblem(String start) {
        String number = start + "1".repeat(1_000_000);
        ReadBook read = inTime(() -> Samples.JSON.read(document("\"rings\":[{}],\"extra\":{\"a\":" + number + "}")));
        assertTrue(limitOf(read, "/extra/a").startsWith("found a number of more than 1000 characters, expected "));
    }

    @Test
    void numberUpToTheLimitIsRead() {
        ReadBook read = Samples.JSON.read(document("\"extra\":{\"a\":" + "1".repeat(1_000) + "}"));
        assertEquals(List.of(), read.problems());
    }

    @Test
    void longDigitsInAStringAreAProblemOfTheValue() {
        ReadBook read = inTime(() ->
                Samples.read("\"rings\":[{\"height\":{\"unit\":\"m\",\"value\":\"" + "1".repeat(5_000_000) + "\"}}]"));
        assertEquals(List.of("/rings/0/height/value"), places(read));
    }

    @Test
    void longDocumentIsReadUpToTheLimit() throws IOException {
        FieldBookJson json = FieldBookJson.withDefaults()
                .withLimits(ReadLimits.withDefaults().withDocumentLength(60));
        String document = document("\"rings\":[{}]");
        assertEquals(List.of(), json.read(document).problems());
        String longer = document("\"rings\":[{},{\"id\":\"R2\"}]");
        ReadBook read = json.read(longer);
        assertEquals("found more than the limit of 60 characters; reading ends here", limitOf(read, "/rings/1"));
        assertEquals(61, read.problems().get(0).column());
        assertEquals(
                read.problems(),
                json.read(new ByteArrayInputStream(longer.getBytes(java.nio.charset.StandardCharsets.UTF_8)))
                        .problems());
    }

    @Test
    void manyFaultsAreToldInTime() {
        String rings = IntStream.range(0, 200_000)
                .mapToObj(i -> "\n{\"id\":" + i + "}")
                .collect(Collectors.joining(","));
        ReadBook read = inTime(() -> Samples.read("\"rings\":[" + rings + "]"));
        assertEquals(200_000, read.problems().size());
        assertEquals(200_001, read.problems().get(199_999).line());
    }

    /** Keys with the same hash: all of the same number of pairs Aa and BB. */
    @Test
    void keysThatCollideAreReadInTime() {
        String keys = IntStream.range(0, 1 << 15)
                .mapToObj(i -> "\""
                        + IntStream.range(0, 15)
                                .mapToObj(bit -> (i >> bit & 1) == 0 ? "Aa" : "BB")
                                .collect(Collectors.joining())
                        + "\":1")
                .collect(Collectors.joining(","));
        ReadBook read = inTime(() -> Samples.read("\"extra\":{" + keys + "}"));
        assertEquals(List.of(), read.problems());
        assertEquals(1 << 15, book(read).extra().size());
    }

    @Test
    void manyRepeatedKeysAreReadInTime() {
        ReadBook read = inTime(() -> Samples.read("\"extra\":{" + "\"a\":1,".repeat(200_000) + "\"b\":1}"));
        assertEquals(199_999, read.problems().size());
    }

    @Test
    void randomBytesAreNoBookAndOneProblem() throws IOException {
        Random random = new Random(20260603);
        for (int i = 0; i < 2_000; i++) {
            byte[] bytes = new byte[random.nextInt(200)];
            random.nextBytes(bytes);
            for (ReadBook read : List.of(
                    Samples.JSON.read(new ByteArrayInputStream(bytes)),
                    Samples.JSON.readLines(new ByteArrayInputStream(bytes)),
                    Samples.JSON.readEither(new ByteArrayInputStream(bytes)))) {
                assertTrue(read.readPart().isEmpty());
                assertEquals(1, read.problems().size());
            }
        }
    }
}
