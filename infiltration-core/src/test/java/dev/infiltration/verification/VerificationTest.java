// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.check.SpacingChecks;
import dev.infiltration.plan.PlanChecks;
import dev.infiltration.rate.RateChecks;
import dev.infiltration.rate.UncertaintyChecks;
import dev.infiltration.rate.WaterChecks;
import dev.infiltration.statistics.CompareChecks;
import dev.infiltration.statistics.SummaryChecks;
import dev.infiltration.statistics.TrendChecks;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Repeats every external check and compares the page that lists them; {@code -Ddocs.write=true} updates it. */
class VerificationTest {

    private static final Path PAGE = Path.of("..", "docs", "verification.md");

    private static final Map<String, List<Check>> PARTS = parts();

    private static Map<String, List<Check>> parts() {
        Map<String, List<Check>> parts = new LinkedHashMap<>();
        parts.put("Units", UnitChecks.all().toList());
        parts.put("Rates", RateChecks.all().toList());
        parts.put("Water", WaterChecks.all().toList());
        parts.put("Uncertainty", UncertaintyChecks.all().toList());
        parts.put("Locations and surfaces", SummaryChecks.all().toList());
        parts.put("Comparisons", CompareChecks.all().toList());
        parts.put("Trends", TrendChecks.all().toList());
        parts.put("Distances between locations", SpacingChecks.all().toList());
        parts.put("Planning", PlanChecks.all().toList());
        return parts;
    }

    private static Stream<Check> all() {
        return PARTS.values().stream().flatMap(List::stream);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("all")
    void figureIsThatOfItsSource(Check check) {
        assertTrue(check.holds());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("all")
    void everyCheckSaysHowItsFigureCameHere(Check check) {
        assertFalse(check.marks().isEmpty());
    }

    @Test
    void noCheckStandsTwice() {
        Set<String> met = new HashSet<>();
        PARTS.forEach((part, checks) -> checks.forEach(check ->
                assertTrue(met.add(part + check.what() + check.source() + check.expected()), check.toString())));
        assertTrue(met.size() >= 120, met.size() + " checks");
    }

    @Test
    void pageIsThatOfTheCode() throws IOException {
        if (Boolean.getBoolean("docs.write")) {
            Files.writeString(PAGE, page());
        }
        assertEquals(page(), Files.readString(PAGE));
    }

    private static String page() {
        return HEAD.replace("{checks}", String.valueOf(all().count())).replace("{counts}", counts())
                + PARTS.entrySet().stream()
                        .map(part -> section(part.getKey(), part.getValue()))
                        .collect(Collectors.joining());
    }

    private static String counts() {
        return PARTS.entrySet().stream()
                .map(part -> "| [" + part.getKey() + "](#"
                        + part.getKey().toLowerCase(Locale.ROOT).replace(' ', '-') + ") | "
                        + part.getValue().size() + " |\n")
                .collect(Collectors.joining());
    }

    private static String section(String part, List<Check> checks) {
        return checks.stream()
                .map(VerificationTest::row)
                .collect(Collectors.joining(
                        "",
                        "\n## " + part
                                + "\n\n| figure | source | mark | expected | got | tolerance |\n|---|---|---|---|---|---|\n",
                        ""));
    }

    private static String row(Check check) {
        return Stream.of(check.what(), check.source(), check.marks(), check.expected(), check.got(), check.tolerance())
                .map(cell -> cell.replace("|", "\\|").replace("<", "&lt;"))
                .collect(Collectors.joining(" | ", "| ", " |\n"));
    }

    private static final String HEAD = """
            # Verification

            Every value of this library that is checked against an independent source: a standard, a published table, a worked
            example, the documentation of a general-purpose package, or arithmetic that any reader can repeat. There are {checks}; none is invented.
            The build calculates each value again and fails if the difference from the source exceeds the tolerance. This test
            writes the page:

            ```
            mvn -q -pl infiltration-core -am test -Dtest=VerificationTest -Dsurefire.failIfNoSpecifiedTests=false -Ddocs.write=true
            ```

            *Got* has the digits of the expected value, ten at most: further digits differ between machines. Laws (half the time
            doubles the rate), comparisons with reference libraries on random data, and tests of behaviour are in separate tests.

            The mark gives the origin of the expected value.

            | mark | the value was |
            |---|---|
            | published | read in the publication or on its publisher's pages |
            | seen | read where another public source quotes the publication (named where it matters) |
            | secondary | read in a published source that describes the standard |
            | memory | known from memory, not read while the test was made |
            | common practice | a fact of the trade, without a source |
            | recomputed | worked from the published data by code of its own, with 30 to 50 digits: more digits than are printed, or an example whose data alone was seen |
            | derived | arithmetic on other values |

            A source with several marks has several figures: the printed one as it was read, and its further digits. Standards are
            under licence: the latest licensed edition governs, and the engineer of record.

            | part | checks |
            |---|---|
            {counts}""";
}
