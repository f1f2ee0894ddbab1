// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.Problem;
import dev.infiltration.field.ReadBook;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;

/** A valid book with a change in its text: nothing is thrown, and every report is true. */
class MutationTest {

    private static final String SOUND = Samples.harrowQuay();

    private static final List<String> PIECES = List.of(
            "",
            "\"",
            "\\",
            "{",
            "}",
            "[",
            "]",
            ",",
            ":",
            "null",
            "true",
            "0",
            "-",
            "1e999999999",
            "\"\"",
            "{}",
            "[]",
            "[null]",
            "\"extra\":{},",
            "\"id\":7,",
            "\"x\":[1],",
            "\"unit\":\"kg\"",
            "\u0000",
            "\n",
            "\uD83D\uDCA7",
            "\uD83D",
            "9",
            "NaN",
            "\"2026-06-31\"");

    private record Change(int at, int removed, String inserted) {

        private String of(String text) {
            int from = Math.min(at, text.length());
            return text.substring(0, from) + inserted + text.substring(Math.min(from + removed, text.length()));
        }
    }

    @Provide
    Arbitrary<String> changedBooks() {
        Arbitrary<Integer> removed = Arbitraries.frequencyOf(
                Tuple.of(3, Arbitraries.integers().between(0, 3)),
                Tuple.of(1, Arbitraries.integers().between(0, 400)));
        Arbitrary<Change> changes = Combinators.combine(
                        Arbitraries.integers().between(0, SOUND.length()), removed, Arbitraries.of(PIECES))
                .as(Change::new);
        return changes.list().ofMinSize(1).ofMaxSize(3).map(list -> {
            String text = SOUND;
            for (Change change : list) {
                text = change.of(text);
            }
            return text;
        });
    }

    /** One value or one key at a time is replaced by another, so that the JSON stays sound. */
    @Provide
    Arbitrary<String> strangeBooks() {
        List<int[]> values = values();
        return Combinators.combine(
                        Arbitraries.of(values),
                        Arbitraries.of(values),
                        Arbitraries.of(
                                "null", "7", "\"x\"", "[]", "{}", "true", "[{}]", "{\"value\":1}", "1e-999999999"))
                .as((one, other, value) -> replaced(one, other, value));
    }

    private static String replaced(int[] one, int[] other, String value) {
        int[] first = one[0] <= other[0] ? one : other;
        int[] second = first == one ? other : one;
        String tail = first[0] == second[0]
                ? SOUND.substring(first[1])
                : SOUND.substring(first[1], second[0]) + value + SOUND.substring(second[1]);
        return SOUND.substring(0, first[0]) + value + tail;
    }

    /** {@return where each string and number starts and ends} */
    private static List<int[]> values() {
        var matcher = java.util.regex.Pattern.compile("\"[^\"]*\"(?=[,}\\]])|-?[0-9.]+(?=[,}\\]])|true|false")
                .matcher(SOUND);
        return matcher.results()
                .map(found -> new int[] {found.start(), found.end()})
                .toList();
    }

    @Property(tries = 3_000)
    void changedTextIsReadAsFarAsItCanBe(@ForAll("changedBooks") String text) throws IOException {
        ReadBook read = Samples.JSON.read(text);
        assertBelievable(text, read);
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        Samples.JSON.readEither(new ByteArrayInputStream(bytes));
        Samples.JSON.readLines(new ByteArrayInputStream(bytes));
    }

    private static List<String> places(ReadBook read) {
        return read.problems().stream().map(Problem::where).toList();
    }

    @Property(tries = 3_000)
    void strangeValuesLeaveAllElse(@ForAll("strangeBooks") String text) throws IOException {
        ReadBook read = Samples.JSON.read(text);
        assertBelievable(text, read);
        assertTrue(
                read.readPart().isPresent()
                        || places(read).equals(List.of("/format"))
                        || text.contains("\"format\": null"),
                text);
        assertTrue(
                read.problems().stream().noneMatch(problem -> problem.message().endsWith("reading ends here")));
    }

    private static void assertBelievable(String text, ReadBook read) throws IOException {
        if (read.readPart().isEmpty()) {
            assertEquals(1, read.problems().size(), text);
        }
        List<Problem> problems = read.problems();
        assertEquals(
                problems.stream()
                        .sorted(Comparator.comparing(Problem::line).thenComparing(Problem::column))
                        .toList(),
                problems);
        List<String> lines = text.lines().toList();
        for (Problem problem : problems) {
            assertTrue(problem.line() >= 1 && problem.column() >= 1);
            assertTrue(problem.line() <= lines.size() + 1, text);
            assertTrue(problem.where().isEmpty() || problem.where().startsWith("/"));
            assertFalse(problem.message().isBlank());
        }
        if (read.readPart().isPresent()) {
            StringWriter written = new StringWriter();
            Samples.JSON.write(read.readPart().orElseThrow(), written);
            assertEquals(read.readPart(), Samples.JSON.read(written.toString()).book());
        }
    }
}
