// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.exchange.ReferenceJson;
import dev.infiltration.field.Ring;
import dev.infiltration.rate.RateEquation;
import dev.infiltration.rate.ReferenceCheck;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Runs the guide's snippet of a host's own test, as a host that is right and as one that is wrong. */
class GuideOnTestsTest {

    private static final Path PAGE = Path.of("..", "docs", "guide.md");
    private static final Path HERE = Path.of("src/test/java/dev/infiltration/examples/GuideOnTestsTest.java");

    @TempDir
    private Path folder;

    private final RateEquation equation = RateEquation.asPublished();
    private double factor = 1;

    private double rateOfTheHost(double kilograms, double millimetres, double seconds) {
        return factor * RateEquation.millimetresPerHour(kilograms, millimetres, seconds);
    }

    private static Ring thereAndBack(Ring ring) {
        return Ring.of(ring.id()).withInsideDiameter(ring.insideDiameter()).withInsideDiameters(ring.insideDiameters());
    }

    private void snippet(Path own) throws IOException {
        // begin
        List<ReferenceCheck> checks = new ArrayList<>();
        checks.addAll(ReferenceJson.shipped().checkMetric(this::rateOfTheHost));
        checks.addAll(ReferenceJson.shipped().check((ring, run) -> equation.rate(thereAndBack(ring), run)));
        checks.addAll(ReferenceJson.read(own).cases().orElseThrow().check(equation::rate));

        for (ReferenceCheck check : checks) {
            assertTrue(check.isPassed(), check::toString);
        }
        // end
    }

    private Path ownCases() throws IOException {
        String page = Files.readString(Path.of("..", "docs", "reference-cases.md"));
        String block = page.substring(page.indexOf("```json\n") + 8);
        return Files.writeString(folder.resolve("own.json"), block.substring(0, block.indexOf("```")));
    }

    @Test
    void aHostThatIsRightPasses() throws IOException {
        snippet(ownCases());
    }

    @Test
    void aHostThatIsWrongIsToldByHowMuch() throws IOException {
        Path own = ownCases();
        factor = 1.01;
        AssertionError failed = assertThrows(AssertionError.class, () -> snippet(own));
        assertTrue(failed.getMessage().contains("off by 0.01, allowed 0.00005"), failed.getMessage());
    }

    @Test
    void snippetStandsInTheGuide() throws IOException {
        Snippets.assertStandsAlike(PAGE, 1, HERE);
    }

    /** What the README tells hosts to write is what the build makes. */
    @Test
    void coordinatesOfTheReadmeAreThoseOfTheBuild() throws IOException {
        String readme = Snippets.all(Path.of("..", "README.md"), "xml").get(0);
        String parent = Files.readString(Path.of("..", "pom.xml"));
        String core = Files.readString(Path.of("..", "infiltration-core", "pom.xml"));
        for (String part : List.of("groupId", "version")) {
            assertEquals(first(parent, part), first(readme, part));
        }
        assertTrue(core.contains("<artifactId>" + first(readme, "artifactId") + "</artifactId>"));
    }

    private static String first(String xml, String name) {
        int start = xml.indexOf("<" + name + ">") + name.length() + 2;
        return xml.substring(start, xml.indexOf("</" + name + ">"));
    }
}
