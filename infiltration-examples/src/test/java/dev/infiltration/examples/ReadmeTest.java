// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.check.Finding;
import dev.infiltration.exchange.FieldBookJson;
import dev.infiltration.field.ReadBook;
import dev.infiltration.report.SeasonText;
import dev.infiltration.review.Review;
import dev.infiltration.rule.Effect;
import dev.infiltration.summary.SurfaceRate;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Runs the snippet of the README, and sees that it stands there as it is run here. */
class ReadmeTest {

    private static final Path README = Path.of("..", "README.md");
    private static final Path HERE = Path.of("src/test/java/dev/infiltration/examples/ReadmeTest.java");

    @Test
    void snippetRuns() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PrintStream before = System.out;
        System.setOut(new PrintStream(bytes, true, StandardCharsets.UTF_8));
        try {
            snippet(Path.of("demo", "harrow-quay.json"));
        } finally {
            System.setOut(before);
        }
        List<String> printed = bytes.toString(StandardCharsets.UTF_8).lines().toList();
        assertTrue(printed.get(0).startsWith("DEVIATION visit.rain /visits/1/weather (V2)"), printed.get(0));
        assertTrue(printed.get(printed.size() - 1).startsWith("V14 Optional["), printed.get(printed.size() - 1));
    }

    private static void snippet(Path book) throws IOException {
        // begin
        ReadBook read = FieldBookJson.withDefaults().read(book); // the path of a field book
        Review review = Review.of(read);

        for (Finding finding : review.findings(Effect.DEVIATION)) {
            System.out.println(finding.effect() + " " + finding + ". " + finding.remedy());
        }
        for (SurfaceRate surface : review.surfaces()) {
            System.out.println(surface.visit().subject() + " " + surface.mean().figure());
        }
        // end
    }

    @Test
    void outputIsThatOfTheDemoSeason() throws IOException {
        String readme = Files.readString(README);
        String output = readme.substring(readme.indexOf("```text\n") + 8);
        output = output.substring(0, output.indexOf("```"));
        assertTrue(output.lines().count() >= 8, output);
        Review review = Review.of(FieldBookJson.withDefaults().read(Path.of("demo", "harrow-quay.json")));
        assertTrue(SeasonText.of(review).contains(output), output);
    }

    @Test
    void snippetStandsInTheReadme() throws IOException {
        Snippets.assertStandsAlike(README, HERE);
    }
}
