// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.check.PouringAt;
import dev.infiltration.check.VisitAt;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.LocationTest;
import dev.infiltration.review.Review;
import dev.infiltration.summary.LocationRate;
import dev.infiltration.summary.SurfaceRate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where figures come from, on the invented demo season. */
class ProvenanceSectionTest {

    private static final Review REVIEW = Review.of(Pages.demo());
    private static final List<String> HEADS =
            List.of("Run or prewetting", "Place in the book", "M", "D", "t", "K", "I", "Used");

    private static List<List<String>> rows(Review review, String visit) {
        var table = Pages.table(Pages.visit(review, visit).getElementById("origins"), "Values used for each run");
        assertEquals(HEADS, table.select("thead th").eachText());
        return Pages.rows(table);
    }

    private static List<String> row(Review review, String visit, String place) {
        return rows(review, visit).stream()
                .filter(row -> row.get(1).equals(place))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void boundOfADiscontinuedPrewettingHasARow() {
        List<String> row = row(REVIEW, "V3", "/visits/2/tests/0/preWet");
        assertEquals("V3, A1, prewetting", row.get(0));
        assertTrue(row.get(2).endsWith(", less the water left at a depth of 44 mm"), row.get(2));
        assertTrue(row.get(5).startsWith("K = 4583666000 "), row.get(5));
        assertTrue(row.get(6).startsWith("at most 13.2 mm/h"), row.get(6));
        assertEquals("yes", row.get(7));
    }

    @Test
    void figureThatDoesNotCountSaysWhy() {
        assertEquals("yes", row(REVIEW, "V2", "/visits/1/tests/2/runs/1").get(7));
        assertEquals(
                "no: only the first 2 runs of a day, or since maintenance on that day, are used",
                row(REVIEW, "V2", "/visits/1/tests/2/runs/2").get(7));
        assertEquals("no: void", row(REVIEW, "V5", "/visits/4/tests/1/runs/0").get(7));
    }

    @Test
    void prewettingDoesNotCountWhereRunsWereMade() {
        FieldBook book = Pages.demo(
                "V3",
                visit -> visit.withTests(visit.tests().stream()
                        .map(test -> "A1".equals(test.location())
                                ? test.withRuns(visit.tests().get(1).runs())
                                : test)
                        .toList()));
        assertEquals(
                "no: runs were made there",
                row(Review.of(book), "V3", "/visits/2/tests/0/preWet").get(7));
    }

    @Test
    void ofTwoDiscontinuedPrewettingsTheLaterCounts() {
        FieldBook book = Pages.demo("V3", visit -> {
            List<LocationTest> tests = new ArrayList<>(visit.tests());
            tests.add(0, tests.get(0).withId("V3-A1-first"));
            return visit.withTests(tests);
        });
        Review review = Review.of(book);
        assertEquals(
                "no: a later prewetting is used",
                row(review, "V3", "/visits/2/tests/0/preWet").get(7));
        assertEquals("yes", row(review, "V3", "/visits/2/tests/1/preWet").get(7));
    }

    @Test
    void rateOfEveryLocationIsTheMeanOfWhatCounts() {
        int stated = 0;
        for (SurfaceRate surface : REVIEW.surfaces()) {
            VisitAt visit = surface.visit();
            List<List<String>> rows = rows(REVIEW, visit.subject());
            for (LocationRate location : REVIEW.locations(visit)) {
                double[] counted = rows.stream()
                        .filter(row -> row.get(0).startsWith(visit.subject() + ", " + location.location() + ", "))
                        .filter(row -> row.get(7).equals("yes"))
                        .mapToDouble(row -> Double.parseDouble(row.get(6).replaceAll(".*unrounded (\\S+) mm/h", "$1")))
                        .toArray();
                double mean = java.util.Arrays.stream(counted).average().orElseThrow();
                double rate = location.outcome().figure().orElseThrow().millimetresPerHour();
                assertEquals(rate, mean, 1e-9 * rate);
                stated += counted.length;
            }
        }
        assertTrue(stated > 50, () -> "few figures");
    }

    @Test
    void runOfAnotherVisitThatTheRateRestsOnHasARowToo() {
        FieldBook demo = Pages.demo();
        var first = demo.visits().get(0);
        List<dev.infiltration.field.Visit> visits = new ArrayList<>(demo.visits());
        visits.add(1, first.withId("V1b").withTests(List.of(first.tests().get(0).withId("V1b-A1"))));
        Review review = Review.of(demo.withVisits(visits));
        VisitAt second = Pages.visitAt(review, "V1b");
        List<PouringAt> counted = review.locations(second).get(0).counted();
        List<String> places =
                rows(review, "V1b").stream().map(row -> row.get(1)).toList();
        counted.forEach(pouring -> assertTrue(places.contains(pouring.place().toString()), pouring.subject()));
    }
}
