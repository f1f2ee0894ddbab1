// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.exchange.FieldBookJson;
import dev.infiltration.field.ReadBook;
import dev.infiltration.review.Review;
import dev.infiltration.review.RunRate;
import dev.infiltration.rule.Effect;
import dev.infiltration.units.FieldUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Runs the snippet of the guide, and sees that it stands there as it is run here. */
class GuideTest {

    private static final Path PAGE = Path.of("..", "docs", "guide.md");
    private static final Path HERE = Path.of("src/test/java/dev/infiltration/examples/GuideTest.java");

    private final List<String> kept = new ArrayList<>();

    private void keep(String line) {
        kept.add(line);
    }

    private void snippet(String json) {
        // begin
        ReadBook read = FieldBookJson.withDefaults().read(json);
        Review review = Review.of(read);

        read.problems().forEach(problem -> keep("problem at line " + problem.line() + ": " + problem.message()));
        for (RunRate run : review.runs()) {
            keep(run.where() + " "
                    + run.outcome()
                            .match(
                                    measured -> "rate " + measured.value().in(FieldUnit.INCH_PER_HOUR) + " in/h",
                                    upper -> "at most " + upper.bound(),
                                    lower -> "at least " + lower.bound(),
                                    withheld -> "no rate because of " + withheld.reasons()));
        }
        review.findings(Effect.DEVIATION).forEach(finding -> keep(finding.rule() + " at " + finding.where()));
        // end
    }

    @Test
    void snippetRuns() throws IOException {
        snippet(Files.readString(Path.of("demo", "harrow-quay.json")));
        long runs = kept.stream().filter(line -> line.startsWith("/visits/")).count();
        assertEquals(63, runs, kept.toString());
        assertEquals(
                1,
                kept.stream().filter("visit.rain at /visits/1/weather"::equals).count(),
                kept.toString());
    }

    @Test
    void snippetStandsInTheGuide() throws IOException {
        Snippets.assertStandsAlike(PAGE, HERE);
    }
}
