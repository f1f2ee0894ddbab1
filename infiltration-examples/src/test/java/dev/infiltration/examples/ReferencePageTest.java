// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.exchange.ReferenceJson;
import dev.infiltration.rate.RateEquation;
import dev.infiltration.rate.ReferenceCheck;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Runs the snippets of the page on reference cases. */
class ReferencePageTest {

    private static final Path PAGE = Path.of("..", "docs", "reference-cases.md");
    private static final Path HERE = Path.of("src/test/java/dev/infiltration/examples/ReferencePageTest.java");

    @Test
    void snippetRuns() {
        // begin
        List<ReferenceCheck> checks =
                ReferenceJson.shipped().checkMetric((kg, mm, s) -> 4583666000.0 * kg / (mm * mm * s));
        assertEquals(
                List.of(), checks.stream().filter(check -> !check.isPassed()).toList());
        // end
    }

    @Test
    void snippetStandsOnThePage() throws IOException {
        Snippets.assertStandsAlike(PAGE, HERE);
    }

    @Test
    void fileOfThePageIsReadAndPasses() throws IOException {
        String page = Files.readString(PAGE);
        String block = page.substring(page.indexOf("```json\n") + 8);
        List<ReferenceCheck> checks = ReferenceJson.read(block.substring(0, block.indexOf("```")))
                .cases()
                .orElseThrow()
                .check(RateEquation.asPublished()::rate);
        assertEquals(1, checks.stream().filter(ReferenceCheck::isPassed).count());
    }
}
