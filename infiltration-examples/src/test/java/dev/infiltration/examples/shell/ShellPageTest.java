// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.examples.Snippets;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import jdk.jshell.JShell;
import jdk.jshell.Snippet.Status;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Types what the page on the shell shows into a shell with the launcher's own imports. */
class ShellPageTest {

    private static final Path PAGE = Path.of("..", "docs", "shell.md");
    private static final Path FILES = Path.of("src", "main", "jshell");
    private static final Path CHART = Path.of("trend.svg");

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();

    @AfterEach
    void removeChart() throws IOException {
        Files.deleteIfExists(CHART);
    }

    /** {@return what went wrong} */
    private List<String> type(String... texts) {
        PrintStream before = System.out;
        System.setOut(new PrintStream(bytes, true, StandardCharsets.UTF_8));
        try (JShell shell = JShell.builder().executionEngine("local").build()) {
            shell.addToClasspath(System.getProperty("java.class.path"));
            List<String> wrong = new ArrayList<>();
            for (String text : texts) {
                type(shell, text, wrong);
            }
            return wrong;
        } finally {
            System.setOut(before);
        }
    }

    private static void type(JShell shell, String text, List<String> wrong) {
        String rest = text;
        while (!rest.isBlank()) {
            CompletionInfo next = shell.sourceCodeAnalysis().analyzeCompletion(rest);
            for (SnippetEvent event : shell.eval(next.source())) {
                if (event.status() != Status.VALID || event.exception() != null) {
                    wrong.add(next.source() + event);
                }
            }
            rest = next.remaining();
        }
    }

    private static String file(String name) throws IOException {
        return Files.readString(FILES.resolve(name));
    }

    @Test
    void snippetRuns() throws IOException {
        String snippet = Snippets.all(PAGE, "java").get(0);
        String demo = "System.setProperty(\"season.demo\", \"demo/harrow-quay.json\");\n";
        assertEquals(List.of(), type(file("startup.jsh"), demo, snippet));
        assertTrue(snippet.lines().count() < 15);
        String said = bytes.toString(StandardCharsets.UTF_8);
        assertTrue(said.contains("second group / first group\n  locations                 3, 3"), said);
        assertTrue(said.contains("after / before\n  pairs                     1"), said);
        assertTrue(said.contains("2025-10-15 to 2026-06-03"), said);
        assertTrue(Files.readString(CHART).contains("<svg "));
    }

    @Test
    void namesOfThePageAreThoseOfTheShell() throws IOException {
        List<String> names = Arrays.stream(Shorthand.class.getMethods())
                .map(method -> method.getName() + "(")
                .toList();
        List<String> rows = Files.readAllLines(PAGE).stream()
                .filter(line -> line.startsWith("| `"))
                .toList();
        assertEquals(7, rows.size());
        rows.forEach(row -> assertTrue(names.stream().anyMatch(name -> row.startsWith("| `" + name)), row));
    }

    @Test
    void welcomeIsThreeLines() throws IOException {
        assertEquals(List.of(), type(file("welcome.jsh")));
        assertEquals(3, bytes.toString(StandardCharsets.UTF_8).lines().count());
    }
}
