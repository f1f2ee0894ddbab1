// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import jdk.jshell.JShell;
import jdk.jshell.Snippet.Status;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;
import org.junit.jupiter.api.Test;

/** The script of plain numbers runs in a shell with the launcher's own imports; every result prints as a table. */
class RatesScriptTest {

    private static final Path STARTUP = Path.of("src", "main", "jshell", "startup.jsh");
    private static final Path SCRIPT = Path.of("demo", "rates.jsh");

    private static String printed(List<String> wrong) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PrintStream before = System.out;
        System.setOut(new PrintStream(bytes, true, StandardCharsets.UTF_8));
        try (JShell shell = JShell.builder().executionEngine("local").build()) {
            shell.addToClasspath(System.getProperty("java.class.path"));
            type(shell, Files.readString(STARTUP), wrong);
            type(shell, "import java.util.*;\n", wrong); // one of JShell's defaults
            type(shell, Files.readString(SCRIPT), wrong);
        } finally {
            System.setOut(before);
        }
        return bytes.toString(StandardCharsets.UTF_8);
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

    @Test
    void everyResultPrintsAsATable() throws IOException {
        List<String> wrong = new ArrayList<>();
        String said = printed(wrong);
        assertEquals(List.of(), wrong);
        assertFalse(said.contains("@"), "an object without words: " + said);
        for (String title : List.of(
                "rates in mm/h\n",
                "after / before\n",
                "recovery: (after − before) / (new − before)\n",
                "run 2 / run 1\n",
                "second group / first group\n",
                "rates over years\n",
                "pairs that rise less pairs that fall\n")) {
            assertTrue(said.contains(title), said);
        }
        assertTrue(
                said.contains("6 of 6 pass; at least 60.7 % of the area passes (one-sided 95 % confidence)\n19\n"),
                said);
        assertTrue(said.contains("after is significantly higher than before (p = 0.03125, two-sided)"), said);
    }
}
