// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/** The Java snippets of a page, and the code between {@code // begin} and {@code // end} of the test that runs one. */
public final class Snippets {

    private static final String FENCE = "```";

    private Snippets() {}

    /** Sees that the first snippet of a page is the code of a test. */
    static void assertStandsAlike(Path page, Path test) throws IOException {
        assertStandsAlike(page, 0, test);
    }

    /** Sees that a snippet of a page, counted from 0, is the code of a test. */
    static void assertStandsAlike(Path page, int snippet, Path test) throws IOException {
        String shown = all(page, "java").get(snippet);
        String source = Files.readString(test);
        String run = source.substring(source.indexOf("// begin\n") + 9, source.indexOf("        // end"));
        assertEquals(plain(shown), plain(run));
        assertFalse(plain(shown).isEmpty());
    }

    /** {@return what stands in the fenced blocks of a language} */
    public static List<String> all(Path page, String language) throws IOException {
        String[] blocks = Files.readString(page).split("(?m)^" + FENCE + language + "\n");
        return Arrays.stream(blocks)
                .skip(1)
                .map(block -> block.substring(0, block.indexOf(FENCE)))
                .toList();
    }

    /** Sees that the snippets of a page are the code between each {@code // begin} and {@code // end} of a test, in order. */
    static void assertAllStandAlike(Path page, Path test) throws IOException {
        List<String> shown = all(page, "java").stream().map(Snippets::plain).toList();
        List<String> run = Arrays.stream(Files.readString(test).split("// begin\n"))
                .skip(1)
                .map(block -> plain(block.substring(0, block.indexOf("        // end"))))
                .toList();
        assertEquals(shown, run);
        assertFalse(shown.isEmpty());
    }

    /** Line breaks are the formatter's. */
    private static String plain(String code) {
        return code.replaceAll("\\s+", "");
    }
}
