// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.Season;
import dev.infiltration.field.IndexMap;
import dev.infiltration.field.ReadBook;
import dev.infiltration.field.UnreadableValue;
import dev.infiltration.method.Band;
import dev.infiltration.method.Limit;
import dev.infiltration.method.MassStep;
import dev.infiltration.method.Methods;
import dev.infiltration.method.TestMethod;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Holds {@code docs/rules.md} to the catalogue and the methods' data. */
class RulesPageTest {

    private static final Path PAGE = Path.of("..", "docs", "rules.md");

    @Test
    void pageSaysWhatTheCodeDoes() throws IOException {
        String page = page();
        if (Boolean.getBoolean("docs.write")) {
            Files.writeString(PAGE, page);
        }
        assertEquals(page, Files.readString(PAGE), "run again with -Ddocs.write=true");
    }

    private static String page() {
        StringBuilder page = new StringBuilder(HEAD);
        Map<String, List<Finding>> found = found();
        for (BuiltInRule entry : BuiltInRule.values()) {
            List<Finding> findings = found.get(entry.id());
            row(
                    page,
                    "`" + entry.id() + "`",
                    entry.holds(),
                    all(findings, finding -> finding.effect()),
                    all(findings, finding -> finding.bias()),
                    all(findings, finding -> finding.basis()).replace(" or ", "; "),
                    entry.remedy());
        }
        page.append(METHODS);
        Methods.builtIn().all().forEach(method -> method(page, method));
        return page.append(FOOT).toString();
    }

    /** What each rule finds in the rows where it is broken. */
    private static Map<String, List<Finding>> found() {
        Stream<Finding> inBooks = RuleTableTest.rows()
                .filter(row -> row.kind() == Row.Kind.BROKEN)
                .flatMap(row -> row
                        .checker()
                        .withToday(Season.TODAY)
                        .check(row.season().book())
                        .findings()
                        .stream()
                        .filter(finding -> finding.rule().equals(row.rule())));
        return Stream.concat(inBooks, unreadable()).collect(Collectors.groupingBy(Finding::rule));
    }

    /** Only a book that was read from a document has values that could not be read. */
    private static Stream<Finding> unreadable() {
        List<UnreadableValue> values = Stream.of("/visits/0/tests/0/runs/0/elapsed", "/visits/0/swept", "/visits/0/id")
                .map(place -> new UnreadableValue(place, place, "?"))
                .toList();
        ReadBook read = new ReadBook(Season.si().book(), List.of(), IndexMap.none(), values);
        return Checker.withDefaults().withToday(Season.TODAY).check(read).findings().stream()
                .filter(finding -> finding.rule().equals(BuiltInRule.DATA_UNREADABLE.id()));
    }

    private static String all(List<Finding> findings, Function<Finding, Object> part) {
        return findings.stream()
                .map(part)
                .map(Object::toString)
                .distinct()
                .sorted()
                .collect(Collectors.joining(" or "));
    }

    private static void method(StringBuilder page, TestMethod method) {
        page.append("\n### `")
                .append(method.id())
                .append("`\n\n")
                .append(method.designation())
                .append(": ");
        page.append(method.verification()).append(".\n\n");
        row(page, "what", "SI", "inch-pound", "basis");
        row(page, "---", "---", "---", "---");
        for (Limit<?> limit : Limit.all()) {
            band(page, limit.key(), method.limit(limit));
            if (limit == Limit.PREWET_MASS) {
                method.massSteps().forEach(step -> step(page, step));
            }
        }
        row(
                page,
                "`runsPerDay`",
                "at most " + method.runsPerDay(),
                "at most " + method.runsPerDay(),
                RuleBases.RUNS_A_DAY.toString());
        row(
                page,
                "`locationCount`",
                method.locationCount().si().toString(),
                method.locationCount().inchPound().toString(),
                method.locationCount().basis().toString());
    }

    private static void step(StringBuilder page, MassStep step) {
        String when = step.below() == null ? "any longer prewetting" : "prewetting below " + step.below();
        band(page, "massSteps", when, step.mass());
    }

    private static void band(StringBuilder page, String name, Band<?> band) {
        band(page, name, "", band);
    }

    private static void band(StringBuilder page, String name, String when, Band<?> band) {
        String what = "`" + name + "`" + (when.isEmpty() ? "" : ", " + when);
        row(
                page,
                what,
                band.si().toString(),
                band.inchPound().toString(),
                band.basis().toString());
    }

    private static void row(StringBuilder page, String... cells) {
        page.append("| ").append(String.join(" | ", cells)).append(" |\n");
    }

    private static final String HEAD = """
            # Rules

            Every rule of the catalogue, in the order in which findings at one place are listed. Ids are stable. The bias is
            the effect on the rate: a pass based on RAISES is not confirmed, and a fail based on LOWERS is not confirmed. A rule whose
            inputs are missing reports nothing, except the rules about missing data (`…-unrecorded`, `…-unshown`, `data.required`). If two
            effects or biases are listed, the record decides: a missing surface leaves no rate, a missing instrument is a caution. The
            basis gives the source of the requirement and the quality of that source.

            This page is written from the code and compared with it on every build; this command updates it:

                mvn -o test -pl infiltration-core -am -Dtest=RulesPageTest -Ddocs.write=true -Dsurefire.failIfNoSpecifiedTests=false

            | id | holds when | effect if not | bias | basis | what can be done |
            |---|---|---|---|---|---|
            """;

    private static final String METHODS = """

            ## Beside the catalogue

            `test.ring-placement` (CAUTION, EITHER): the joints inside the ring stand for those of the surface within the user's limit,
            judged where the book has `joints` of the surface and `ringOffset` of the test. No method states such a limit, so without
            `UserLimits.withRingMismatch` it says nothing. It lives with the plan of a visit ([planning.md](planning.md)); a checker takes
            it in by `withRule(RingPlacement.rule())`.

            ## Limits of the built-in methods

            A reading is judged by the limits of the unit system it was written in; bounds are included; comparison is by exact
            decimals. Clauses are those of C1701; C1781 is believed to be the same. Values marked memory were not read in the
            licensed edition: the latest licensed edition and the engineer of record govern.
            """;

    private static final String FOOT = """

            ## User rules

            A user rule is one function, `Rule.onRun("harrow.sealant", Effect.CAUTION, run -> …)`, in a namespace of the
            user; see `Rule`. A `Policy` switches rules off, changes their effects and sets the limits that no method gives
            (`ring.out-of-round`, `run.pair-spread`, `run.prewet-ratio`); every review lists what was changed.
            """;
}
