// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The first Java snippet of a page, and the code between {@code // begin} and {@code // end} of the test that runs it. */
final class Snippets {

    private static final String FENCE = "```";

    private Snippets() {}

    static void assertStandsAlike(Path page, Path test) throws IOException {
        String text = Files.readString(page);
        String block = text.substring(text.indexOf(FENCE + "java\n") + FENCE.length() + 5);
        String shown = block.substring(0, block.indexOf(FENCE));
        String source = Files.readString(test);
        String run = source.substring(source.indexOf("// begin\n") + 9, source.indexOf("        // end"));
        assertEquals(plain(shown), plain(run));
        assertFalse(plain(shown).isEmpty());
    }

    /** Line breaks are the formatter's. */
    private static String plain(String code) {
        return code.replaceAll("\\s+", "");
    }
}
