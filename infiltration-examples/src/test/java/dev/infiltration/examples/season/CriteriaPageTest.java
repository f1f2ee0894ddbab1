// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The page on criteria shows the file it names and what the command says. */
class CriteriaPageTest {

    private static final Path PAGE = Path.of("..", "docs", "criteria.md");
    private static final String FILE = "demo/harrow-quay-criteria.json";

    private static String block(String kind) throws IOException {
        String page = Files.readString(PAGE);
        int start = page.indexOf("```" + kind + "\n") + 4 + kind.length();
        return page.substring(start, page.indexOf("```", start));
    }

    @Test
    void fileIsTheDemosOwn() throws IOException {
        assertEquals(Files.readString(Path.of(FILE)), block("json"));
        assertTrue(Files.readString(PAGE).contains("season --criterion infiltration-examples/" + FILE));
    }

    @Test
    void textIsWhatTheCommandSaysInThatOrder() throws IOException {
        String said =
                SeasonTest.Ran.of("demo/harrow-quay.json", "--criterion", FILE).out();
        int from = 0;
        for (String line : block("text").lines().toList()) {
            from = said.indexOf(line + "\n", from);
            assertTrue(from >= 0, line);
        }
    }
}
