// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Visit;
import dev.infiltration.review.Review;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/**
 * What a report states of each test, on the invented demo season: prewetting time, mass, inside diameter, time, rate, number of
 * tests at each location (ASTM C1701/C1701M, 10.1, memory).
 */
class TestFiguresTest {

    private static final String NOTHING = "Nothing that the method asks a report to state is missing.";

    private static Element items(String id, UnaryOperator<Visit> change) {
        return Pages.visit(Review.of(Pages.demo(id, change)), id).getElementById("items");
    }

    private static List<List<String>> figures(Element items) {
        return Pages.rows(Pages.table(items, "Figures of the tests"));
    }

    private static UnaryOperator<Visit> first(UnaryOperator<LocationTest> change) {
        return visit -> {
            List<LocationTest> tests = new ArrayList<>(visit.tests());
            tests.set(0, change.apply(tests.get(0)));
            return visit.withTests(tests);
        };
    }

    @Test
    void figuresOfEachTestAreStated() {
        Element items = items("V1", visit -> visit);
        assertTrue(items.text().contains(NOTHING), items.text());
        assertEquals(
                List.of("Test", "Prewetting time", "Mass", "Inside diameter", "Time", "Rate", "Tests at the location"),
                items.select("thead th").eachText());
        List<List<String>> rows = figures(items);
        assertEquals(
                List.of(
                        "A1, test V1-A1, run 1",
                        "A1, test V1-A1, run 2",
                        "A2, test V1-A2, run 1",
                        "A3, test V1-A3, run 1"),
                rows.stream().map(row -> row.get(0)).toList());
        assertEquals(
                List.of("2", "2", "1", "1"),
                rows.stream().map(row -> row.get(6)).toList());
    }

    @Test
    void readingThatIsMissingIsNamed() {
        Element items = items(
                "V1",
                first(test -> test.withPreWet(test.preWet().withElapsed(null))
                        .withRuns(List.of(
                                test.runs().get(0).withWater(null),
                                test.runs().get(1).withElapsed(null)))));
        assertFalse(items.text().contains(NOTHING));
        assertEquals(
                "Missing: prewetting time of A1, test V1-A1; mass of A1, test V1-A1, run 1;"
                        + " rate of A1, test V1-A1, run 1; time of A1, test V1-A1, run 2; rate of A1, test V1-A1, run 2.",
                items.selectFirst("p").text());
        assertEquals("not recorded", figures(items).get(0).get(1));
        assertEquals("not recorded", figures(items).get(0).get(2));
        assertEquals("not recorded", figures(items).get(1).get(4));
    }

    @Test
    void diameterThatIsMissingIsNamedBesideTheItems() {
        Element items = items(
                "V1", first(test -> test.withRing("no such ring")).andThen(visit -> visit.withWeather(null))::apply);
        String missing = items.selectFirst("p").text();
        assertTrue(missing.startsWith("Missing: Last rain depth; inside diameter of A1, test V1-A1;"), missing);
    }

    @Test
    void repeatTestWithoutAPrewettingHasThatOfItsLocation() {
        Element items = items("V1", visit -> {
            LocationTest test = visit.tests().get(0);
            LocationTest repeat =
                    test.withId("V1-A1b").withPreWet(null).withRuns(test.runs().subList(1, 2));
            return visit.withTests(List.of(test.withRuns(test.runs().subList(0, 1)), repeat));
        });
        List<List<String>> rows = figures(items);
        assertEquals(rows.get(0).get(1), rows.get(1).get(1));
        assertEquals("2", rows.get(1).get(6));
        assertTrue(items.text().contains(NOTHING), items.text());
    }

    @Test
    void discontinuedPrewettingStandsForTheTest() {
        List<String> row = figures(items("V3", visit -> visit)).get(0);
        assertEquals("A1, test V3-A1, prewetting", row.get(0));
        assertTrue(row.get(5).startsWith("at most "), row.toString());
        assertEquals("3.60 kg, less the water left at a depth of 44 mm", row.get(2));
        assertEquals("1", row.get(6));
    }

    @Test
    void drainedPrewettingWithoutARunIsNoRate() {
        Element items = items("V1", first(test -> test.withRuns(List.of())));
        List<String> row = figures(items).get(0);
        assertEquals(List.of("no rate: no run was made", "0"), row.subList(5, 7));
        assertEquals(
                "Missing: rate of A1, test V1-A1, prewetting.",
                items.selectFirst("p").text());
    }

    @Test
    void voidRunsAreNoTests() {
        List<List<String>> rows = figures(items("V5", visit -> visit));
        assertEquals(
                List.of("B1, test V5-B1, run 1", "B2, test V5-B2, run 2", "B3, test V5-B3, run 1"),
                rows.stream().map(row -> row.get(0)).toList());
    }

    @Test
    void visitWithoutATestLacksAllFigures() {
        Element items = items("V1", visit -> visit.withTests(List.of()));
        assertFalse(items.text().contains(NOTHING));
        assertTrue(items.text().contains("Missing: every figure of a test, for none was made."), items.text());
    }
}
