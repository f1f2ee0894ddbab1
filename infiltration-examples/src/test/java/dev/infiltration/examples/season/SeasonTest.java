// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The command as its users see it: status, standard output, standard error. */
class SeasonTest {

    private static final String DEMO = "demo/harrow-quay.json";
    private static final String CRITERIA = "demo/harrow-quay-criteria.json";
    private static final Path GOLDEN =
            Path.of("src/test/resources/dev/infiltration/examples/season/harrow-quay-review.json");

    /** A run of the command. */
    record Ran(int status, String out, String err) {

        static Ran of(byte[] in, String... args) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ByteArrayOutputStream err = new ByteArrayOutputStream();
            InputStream input = new ByteArrayInputStream(in);
            PrintStream errors = new PrintStream(err, true, StandardCharsets.UTF_8);
            int status = new Season(input, out, errors).run(args);
            return new Ran(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
        }

        static Ran of(String... args) {
            return of(new byte[0], args);
        }
    }

    @Test
    void demoSeasonIsReviewedAsItWasBefore() throws IOException {
        Ran ran = Ran.of(DEMO, "--json", "--today", "2026-11-24");
        if (Boolean.getBoolean("docs.write")) {
            Files.writeString(GOLDEN, ran.out());
        }
        assertEquals(Files.readString(GOLDEN), ran.out());
        assertEquals(0, ran.status());
        assertEquals("", ran.err());
    }

    @Test
    void messagesEscapeWhatControlsATerminalOrReordersText() {
        Ran ran = Ran.of("--a\u001B[31m\u202Eb");
        assertTrue(ran.err().startsWith("season: no such option: --a\\u001B[31m\\u202Eb\n"), ran.err());
    }

    @Test
    void demoSaysThatItIsInvented() throws IOException {
        assertTrue(Files.readString(Path.of(DEMO)).contains("invented data"));
        assertTrue(Ran.of(DEMO).out().contains("invented"));
    }

    @Test
    void textTellsWhatCanBeDoneAndWhomToDeferTo() {
        String text = Ran.of(DEMO).out();
        assertTrue(text.contains("DEVIATION prewet.mass, V2, A2, prewetting"));
        assertTrue(text.contains("What can be done: let the location drain, then prewet again with the right mass"));
        assertTrue(text.contains("limits not verified against the licensed edition"));
        assertTrue(text.contains("engineer of record"));
        assertTrue(text.contains("at most 13.2 mm/h (0.519 in/h), from the discontinued prewetting"));
    }

    @Test
    void strictSeasonWithADeviationIsNotClean() {
        assertEquals(1, Ran.of(DEMO, "--strict").status());
    }

    @Test
    void strictSeasonWithoutOneIsClean() {
        byte[] empty = utf8("{\"format\": \"infiltration-field-book/1\"}");
        assertEquals(0, Ran.of(empty, "-", "--strict").status());
    }

    @Test
    void strictSeasonWithAProblemIsNotClean() {
        byte[] unknown = utf8("{\"format\": \"infiltration-field-book/1\", \"surprise\": 1}");
        assertEquals(1, Ran.of(unknown, "-", "--strict").status());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
                    --surprise                | no such option: --surprise
                    --today                   | --today needs a value
                    --today 31-12-2026        | --today: expected yyyy-MM-dd, got 31-12-2026
                    no-such-file.json         | no such file: no-such-file.json
                    a.json b.json             | one book at a time, got a.json and b.json
                    --mapping                 | --mapping needs a value
                    --mapping m.json          | --mapping goes with a table of runs: BOOK.csv
                    a.json --mapping m.json   | --mapping goes with a table of runs: BOOK.csv
                    - --mapping m.json        | --mapping goes with a table of runs: BOOK.csv
                    --reference a.json --mapping m.json | --reference goes with --json and --strict alone
                    """)
    void wrongUsageIsToldOnStandardErrorAlone(String words, String message) {
        Ran ran = Ran.of(words.split(" "));
        assertEquals(2, ran.status());
        assertEquals("", ran.out());
        assertTrue(ran.err().startsWith("season: " + message), ran.err());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " \n ",
                "[]",
                "[1, 2]",
                "null",
                "42",
                "\"book\"",
                "{}",
                "NaN",
                "{\"format\": \"another/1\"}",
                "{\"format\":",
                "{\"format\": 1}",
                "\u0000",
                "<html>"
            })
    void nothingReadableIsOneMessage(String text) {
        Ran ran = Ran.of(utf8(text), "-", "--json");
        assertEquals(2, ran.status());
        assertEquals("", ran.out());
        assertTrue(ran.err().startsWith("season: nothing readable: line "), ran.err());
        assertEquals(1, ran.err().lines().count(), ran.err());
        assertFalse(ran.err().contains("\tat "), ran.err());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"value\": \"NaN\", \"unit\": \"kg\"}",
                "{\"value\": 1e999999999, \"unit\": \"kg\"}",
                "{\"value\": 18.00, \"unit\": \"mm\"}",
                "{\"value\": 18.00, \"unit\": \"kilogrammmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmm\"}",
                "{\"value\": 18.00}",
                "18.00"
            })
    void anUnreadableAmountWithholdsItsRunAndNothingElse(String water) {
        String book =
                "{\"format\": \"infiltration-field-book/1\", \"rings\": [{\"id\": \"R\", \"insideDiameter\": {\"value\": 300, \"unit\":"
                        + " \"mm\"}}], \"visits\": [{\"id\": \"V\", \"surface\": \"S\", \"date\": \"2026-06-03\", \"tests\": ["
                        + "{\"id\": \"T0\", \"location\": \"A\", \"ring\": \"R\", \"runs\": [{\"water\": " + water
                        + "}]},"
                        + "{\"id\": \"T1\", \"location\": \"B\", \"ring\": \"R\", \"runs\": [{\"water\": {\"value\": 18.00, \"unit\": \"kg\"}}]}]}]}";
        Ran ran = assertTimeout(Duration.ofSeconds(1), () -> Ran.of(utf8(book), "-", "--json"));
        assertEquals(0, ran.status(), ran.err());
        assertTrue(ran.out().contains("\"where\":\"/visits/0/tests/0/runs/0/water"), ran.out());
        assertTrue(
                ran.out()
                        .contains("{\"where\":\"/visits/0/tests/0/runs/0\",\"outcome\":\"withheld\",\"rules\":"
                                + "[\"data.reference\",\"data.unreadable\",\"run.unusable\"]}"),
                ran.out());
        assertTrue(
                ran.out()
                        .contains("{\"where\":\"/visits/0/tests/1/runs/0\",\"outcome\":\"withheld\",\"rules\":"
                                + "[\"data.reference\",\"run.unusable\"]}"),
                ran.out());
    }

    @Test
    void deepNestingIsAProblemAtItsPlace() {
        String book = "{\"format\": \"infiltration-field-book/1\", \"extra\": {\"deep\": " + "[".repeat(200_000);
        Ran ran = assertTimeout(Duration.ofSeconds(1), () -> Ran.of(utf8(book), "-", "--json"));
        assertEquals(0, ran.status(), ran.err());
        assertTrue(ran.out().contains("\"problems\":[{\"line\":1,"), ran.out());
    }

    @Test
    void longStringIsAProblemAtItsPlace() {
        String book = "{\"format\": \"infiltration-field-book/1\", \"sites\": [{\"id\": \"" + "x".repeat(50_000_000)
                + "\"}]}";
        Ran ran = Ran.of(utf8(book), "-", "--json");
        assertEquals(0, ran.status(), ran.err());
        assertTrue(ran.out().length() < 2_000, "an answer of " + ran.out().length() + " characters");
        assertTrue(ran.out().contains("\"where\":\"/sites/0/id\""), ran.out());
    }

    @Test
    void randomBytesAreOneMessage() {
        for (int seed = 0; seed < 200; seed++) {
            byte[] bytes = new byte[1 + seed * 7];
            new Random(seed).nextBytes(bytes);
            Ran ran = Ran.of(bytes, "-");
            assertEquals(2, ran.status());
            assertEquals("", ran.out());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16", "UTF-16LE", "UTF-16BE", "UTF-32LE", "UTF-32BE"})
    void everyMarkedEncodingIsReadAlike(String name) throws IOException {
        String mark = name.equals("UTF-16") ? "" : "\uFEFF";
        byte[] bytes = (mark + Files.readString(Path.of(DEMO))).getBytes(Charset.forName(name));
        assertEquals(Ran.of(DEMO, "--json").out(), Ran.of(bytes, "-", "--json").out());
    }

    @Test
    void criterionOfAFileIsDecided() {
        Ran ran = Ran.of(DEMO, "--criterion", CRITERIA);
        assertEquals(0, ran.status(), ran.err());
        assertTrue(ran.out().contains("Not met, confirmed: maintenance, every location"), ran.out());
        assertTrue(ran.out().contains("Action: clean locally by 2024-11-10"), ran.out());
        assertTrue(ran.out()
                .contains("the limit applies to method unit-pavement; these rates were measured by pervious-concrete"));
        assertFalse(Ran.of(DEMO).out().contains("confirmed:"));
    }

    @Test
    void criteriaOfSeveralFilesAddUp(@TempDir Path folder) throws IOException {
        Path other = Files.writeString(folder.resolve("other.json"), """
                {"format": "infiltration-criterion/1", "criteria": [{"type": "median", "relation": "more-than", "method": "C1781",
                 "limit": {"value": 1, "unit": "mm/h"}, "purpose": "acceptance", "source": "invented"}]}
                """);
        String out = Ran.of(DEMO, "--criterion", CRITERIA, "--criterion", other.toString())
                .out();
        assertTrue(out.contains("acceptance, median > 1 mm/h"), out);
        assertTrue(out.contains("maintenance, mean ≥ 2000 mm/h"), out);
    }

    @Test
    void everyFaultOfACriterionIsToldOnStandardErrorAlone(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(
                folder.resolve("wrong.json"),
                Files.readString(Path.of(CRITERIA)).replace("at-least", ">=").replace("mm/h", "furlong"));
        Ran ran = Ran.of(DEMO, "--criterion", file.toString());
        assertEquals(2, ran.status());
        assertEquals("", ran.out());
        assertEquals(4, ran.err().lines().count(), ran.err());
        assertTrue(ran.err().contains("line 7, column 16, /criteria/0/relation: found \">=\""), ran.err());
        assertTrue(ran.err().contains("/criteria/1/limit/unit"), ran.err());
    }

    @Test
    void demoShowsWhatCleaningDidAndHowTheRateGoes() {
        String out = Ran.of(DEMO).out();
        assertTrue(out.contains("after is significantly higher than before (p = 0.03125, two-sided)"), out);
        assertTrue(out.contains("Trend of the geometric mean, 2021-09-29 to 2024-09-11, 4 visits"), out);
    }

    @Test
    void outHoldsTextAndJson(@TempDir Path folder) throws IOException {
        Path out = folder.resolve("a folder").resolve("of its own");
        assertEquals(0, Ran.of(DEMO, "--out", out.toString()).status());
        assertEquals(Ran.of(DEMO).out(), Files.readString(out.resolve("review.txt")));
        assertEquals(Ran.of(DEMO, "--json").out(), Files.readString(out.resolve("review.json")));
    }

    @Test
    void outThatCannotBeWrittenLeavesStandardOutputEmpty(@TempDir Path folder) throws IOException {
        Path file = Files.createFile(folder.resolve("file"));
        Ran ran = Ran.of(DEMO, "--out", file.toString());
        assertEquals(2, ran.status());
        assertEquals("", ran.out());
        assertTrue(ran.err().startsWith("season: "), ran.err());
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
