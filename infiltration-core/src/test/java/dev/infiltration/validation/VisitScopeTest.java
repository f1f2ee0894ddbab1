// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.ChangedSeasons;
import dev.infiltration.Season;
import dev.infiltration.check.Checker;
import dev.infiltration.check.Finding;
import dev.infiltration.field.ClockTime;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Pouring.End;
import dev.infiltration.field.Visit;
import dev.infiltration.rule.Effect;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** Validation of a single record reports everything that does not depend on the book, and nothing that the book could change. */
class VisitScopeTest {

    private static final String VISIT = "/visits/0";
    private static final String TEST = "/visits/0/tests/0";

    /** What depends on the book if all times are local: ids, area and kind of the surface, distances, rates. */
    private static final Set<String> NEEDS_BOOK = Set.of(
            "data.reference",
            "report.missing",
            "visit.location-count",
            "visit.mixed-units",
            "visit.resolution",
            "visit.resolution-unshown",
            "visit.spacing",
            "visit.spacing-unknown",
            "visit.surface-type",
            "run.implausible",
            "run.slope-uncovered");

    record Walk(@FollowsMethod(effect = Effect.CAUTION) Visit visit) {}

    record Spot(
            @FollowsMethod(method = "unit-pavement", effect = Effect.CAUTION)
            LocationTest test) {}

    /** The findings, with one word for each report item. */
    private static Set<String> told(Stream<Finding> findings, String root) {
        Set<String> told = new HashSet<>();
        findings.filter(finding -> (finding.where() + "/").startsWith(root + "/"))
                .forEach(finding -> {
                    String head = finding.rule() + " " + finding.effect() + " " + finding.where();
                    if (finding.rule().equals("report.missing")) {
                        Arrays.stream(finding.observed().split(" ")).forEach(item -> told.add(head + " " + item));
                    } else {
                        told.add(head);
                    }
                });
        return told;
    }

    private static Set<String> inBook(FieldBook book, String root) {
        return told(Checker.withDefaults().check(book).findings().stream(), root);
    }

    private static Set<String> alone(Object host, String root) {
        return told(Validators.DEFAULT.validate(host).stream().map(Validators::finding), root);
    }

    private static Set<String> visitAlone(FieldBook book) {
        return alone(new Walk(book.visits().get(0)), VISIT);
    }

    private static Set<String> without(Set<String> all, Set<String> others) {
        Set<String> left = new HashSet<>(all);
        left.removeAll(others);
        return left;
    }

    @Property(tries = 300)
    void visitIsToldNothingThatItsBookTakesBack(@ForAll("books") FieldBook book) {
        assertEquals(Set.of(), without(visitAlone(book), inBook(book, VISIT)));
    }

    @Property(tries = 300)
    void visitIsToldAllThatNeedsNoBook(@ForAll("booksOfLocalTimes") FieldBook book) {
        assertEquals(Set.of(), needingNoBook(without(inBook(book, VISIT), visitAlone(book))));
    }

    @Property(tries = 300)
    void testIsToldNothingThatItsBookTakesBack(@ForAll("books") FieldBook book) {
        FieldBook named = byUnitPavement(book);
        assertEquals(Set.of(), without(testAlone(named), inBook(named, TEST)));
    }

    @Property(tries = 300)
    void testIsToldAllThatNeedsNoBook(@ForAll("booksOfLocalTimes") FieldBook book) {
        FieldBook named = byUnitPavement(book);
        assertEquals(Set.of(), needingNoBook(without(inBook(named, TEST), testAlone(named))));
    }

    private static Set<String> testAlone(FieldBook book) {
        return alone(new Spot(book.visits().get(0).tests().get(0)), TEST);
    }

    private static FieldBook byUnitPavement(FieldBook book) {
        return book.withVisits(Season.changed(book.visits(), 0, visit -> visit.withMethod("unit-pavement")));
    }

    private static Set<String> needingNoBook(Set<String> told) {
        told.removeIf(one -> NEEDS_BOOK.contains(one.substring(0, one.indexOf(' '))));
        return told;
    }

    @Provide
    Arbitrary<FieldBook> books() {
        return ChangedSeasons.timed("2026-06-03T07:11:30Z", "2026-06-02T23:11:30-05:00");
    }

    @Provide
    Arbitrary<FieldBook> booksOfLocalTimes() {
        return ChangedSeasons.timed("2026-06-03T07:14", "2026-06-03T07:10");
    }

    @Test
    void instantIsNotComparedWithTheDateInAnUnknownZone() {
        FieldBook book = Season.si()
                .site(site -> site.withTimeZone(ZoneId.of("Pacific/Auckland")))
                .preWet(
                        0,
                        wet -> wet.withStart(ClockTime.parse("2026-06-02T21:10:00Z"))
                                .withEnd(End.STOPPED))
                .test(0, test -> test.withRuns(List.of()))
                .book();
        assertEquals(Set.of(), clock(inBook(book, TEST)));
        assertEquals(Set.of(), clock(visitAlone(book)));
    }

    private static Set<String> clock(Set<String> told) {
        Set<String> clock = new HashSet<>(told);
        clock.removeIf(one -> !one.startsWith("data.clock"));
        return clock;
    }
}
