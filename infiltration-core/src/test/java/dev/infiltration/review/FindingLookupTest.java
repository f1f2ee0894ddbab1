// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.review;

import static dev.infiltration.Amounts.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import dev.infiltration.ChangedSeasons;
import dev.infiltration.Season;
import dev.infiltration.check.Finding;
import dev.infiltration.check.TestAt;
import dev.infiltration.check.VisitAt;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Place;
import dev.infiltration.field.Visit;
import dev.infiltration.summary.LocationRate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** What a look-up finds is what reading all findings of the review finds. */
class FindingLookupTest {

    @Provide
    Arbitrary<FieldBook> books() {
        return ChangedSeasons.timed("2026-06-03T09:10");
    }

    /** Two visits, so that findings of the other one are to be left out. */
    private static Review review(FieldBook book) {
        List<Visit> visits = Stream.concat(
                        book.visits().stream(), book.visits().stream().map(visit -> visit.withId("again")))
                .toList();
        return Review.of(book.withVisits(visits));
    }

    @Property(tries = 200)
    void lookUpsFindWhatReadingAllFindingsFinds(@ForAll("books") FieldBook book) {
        Review review = review(book);
        for (RunRate run : review.runs()) {
            List<Finding> expected = review.findings().stream()
                    .filter(finding -> isOn(run, finding))
                    .toList();
            assertEquals(expected, review.findings(run));
            assertEquals(
                    Optional.of(run.outcome()),
                    review.outcome(Place.parse(run.where().toString())));
        }
        review.surfaces().forEach(row -> ofVisit(review, row.visit()));
        review.locations().forEach(row -> ofLocation(review, row));
    }

    private static void ofVisit(Review review, VisitAt visit) {
        List<Finding> expected = outsideFirst(review, visit)
                .filter(finding -> isWithin(finding, visit.place())
                        ? !isWithin(finding, visit.place().member("tests"))
                        : isOf("surface", visit.visit().surface(), finding))
                .toList();
        assertEquals(expected, review.findings(visit));
        for (TestAt test : visit.tests()) {
            List<Finding> ofTest = outsideFirst(review, visit)
                    .filter(finding -> isOn(test, finding))
                    .toList();
            assertEquals(ofTest, review.findings(test));
        }
    }

    private static void ofLocation(Review review, LocationRate row) {
        List<TestAt> tests = row.visit().tests().stream()
                .filter(test -> row.location().equals(test.test().location()))
                .toList();
        assertEquals(tests, review.tests(row));
        assertEquals(
                review.runs().stream()
                        .filter(run -> tests.contains(run.run().test()))
                        .toList(),
                review.runs(row));
        assertEquals(
                tests.stream()
                        .flatMap(test -> review.findings(test).stream())
                        .distinct()
                        .toList(),
                review.findings(row));
        assertEquals(Optional.of(row), review.location(row.visit(), row.location()));
    }

    private static Stream<Finding> outsideFirst(Review review, VisitAt visit) {
        return Stream.concat(
                review.findings().stream().filter(finding -> !isWithin(finding, Place.parse("/visits"))),
                review.findings().stream().filter(finding -> isWithin(finding, visit.place())));
    }

    private static boolean isOn(RunRate run, Finding finding) {
        TestAt test = run.run().test();
        boolean isOfOtherRun = isWithin(finding, test.place().member("runs")) && !isWithin(finding, run.where());
        return !isOfOtherRun && isOn(test, finding);
    }

    private static boolean isOn(TestAt test, Finding finding) {
        VisitAt visit = test.visit();
        if (isWithin(finding, visit.place())) {
            return isWithin(finding, test.place())
                    || !isWithin(finding, visit.place().member("tests"));
        }
        return isOf("ring", test.test().ring(), finding)
                || isOf("surface", visit.visit().surface(), finding)
                || isOf("location", test.test().location(), finding);
    }

    private static boolean isOf(String kind, String id, Finding finding) {
        return id != null && finding.subject().equals(kind + " " + id);
    }

    private static boolean isWithin(Finding finding, Place place) {
        return finding.where().isWithin(place);
    }

    @Test
    void aFindingOnARingIsFoundWithItsTestsAndOnOneRunWithThatRunAlone() {
        Review review = review(Season.si()
                .ring(ring -> ring.withInsideDiameter(mm("200")))
                .run(0, 1, run -> run.withWater(null))
                .book());
        RunRate first = review.runs().get(0);
        RunRate second = review.runs().get(1);
        assertFalse(review.findings(first).isEmpty());
        assertFalse(review.findings(first).equals(review.findings(second)));
    }
}
