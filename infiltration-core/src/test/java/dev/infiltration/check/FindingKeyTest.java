// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.Season;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Instrument;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Pouring;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The key of a finding names it, whatever comes before it in the book. */
class FindingKeyTest {

    private static List<String> keys(FieldBook book) {
        return Checker.withDefaults().withToday(Season.TODAY).check(book).findings().stream()
                .map(Finding::key)
                .toList();
    }

    private static String keyOf(FieldBook book, String rule) {
        List<String> found =
                keys(book).stream().filter(key -> key.startsWith(rule + ":")).toList();
        assertEquals(1, found.size(), found.toString());
        return found.get(0);
    }

    private static FieldBook firstVisit(FieldBook book, UnaryOperator<Visit> change) {
        List<Visit> visits = new ArrayList<>(book.visits());
        visits.set(0, change.apply(visits.get(0)));
        return book.withVisits(visits);
    }

    private static FieldBook firstTest(FieldBook book, UnaryOperator<LocationTest> change) {
        return firstVisit(book, visit -> {
            List<LocationTest> tests = new ArrayList<>(visit.tests());
            tests.set(0, change.apply(tests.get(0)));
            return visit.withTests(tests);
        });
    }

    @Test
    void keysOfAllRowsAreUniqueInTheirBook() {
        List<String> repeated = RuleTableTest.rows()
                .flatMap(row -> {
                    List<String> keys =
                            row
                                    .checker()
                                    .withToday(Season.TODAY)
                                    .check(row.season().book())
                                    .findings()
                                    .stream()
                                    .map(Finding::key)
                                    .toList();
                    return new TreeSet<>(keys).size() == keys.size() ? Stream.of() : Stream.of(row + " " + keys);
                })
                .toList();
        assertEquals(List.of(), repeated);
    }

    @Test
    void keyStaysWhenAVisitBeforeItComes() {
        FieldBook book = Season.si().visit(visit -> visit.withSwept(false)).book();
        List<Visit> visits = new ArrayList<>(book.visits());
        visits.add(0, Visit.of("earlier", visits.get(0).surface(), LocalDate.of(2019, 4, 1)));
        String before = keyOf(book, "visit.unswept");
        assertEquals(before, keyOf(book.withVisits(visits), "visit.unswept"));
        assertEquals("visit.unswept:/visits/" + book.visits().get(0).id(), before);
    }

    @Test
    void keyStaysWhenATestBeforeItComes() {
        FieldBook book =
                Season.si().run(0, 0, run -> run.withEnd(Pouring.End.VOID)).book();
        FieldBook more = firstVisit(book, visit -> {
            List<LocationTest> tests = new ArrayList<>(visit.tests());
            tests.add(0, LocationTest.of("other", "nowhere", null));
            return visit.withTests(tests);
        });
        assertEquals(keyOf(book, "run.void"), keyOf(more, "run.void"));
    }

    @Test
    void runIsNamedByItsStartAndElseByItsNumber() {
        FieldBook book =
                Season.si().run(0, 0, run -> run.withEnd(Pouring.End.VOID)).book();
        TestRun run = book.visits().get(0).tests().get(0).runs().get(0);
        String timed = keyOf(book, "run.void");
        assertTrue(timed.endsWith("/runs/" + run.start()), timed);
        FieldBook untimed = firstTest(book, test -> {
            List<TestRun> runs = new ArrayList<>(test.runs());
            runs.set(0, run.withStart(null));
            return test.withRuns(runs);
        });
        String numbered = keyOf(untimed, "run.void");
        assertTrue(numbered.endsWith("/runs/#1"), numbered);
    }

    @Test
    void secondRecordOfOneIdTakesAnOrdinal() {
        FieldBook book = Season.si().book();
        Visit visit = book.visits().get(0);
        String key = keyOf(book.withVisits(List.of(visit, visit)), "data.duplicate");
        assertEquals("data.duplicate:/visits/" + visit.id() + "#2", key);
    }

    @Test
    void eachInstrumentWithAnOverdueCheckHasItsKey() {
        FieldBook book = Season.si()
                .visit(visit -> visit.withInstruments(List.of("b/1", "b#1")))
                .book();
        LocalDate due = LocalDate.of(2000, 1, 1);
        List<Instrument> instruments = Stream.of("b/1", "b#1")
                .map(id -> Instrument.of(id).withCheckDue(due))
                .toList();
        String visit =
                "instrument.check-overdue:/visits/" + book.visits().get(0).id();
        List<String> found = keys(book.withInstruments(instruments)).stream()
                .filter(key -> key.startsWith("instrument.check-overdue:"))
                .sorted()
                .toList();
        assertEquals(List.of(visit + "/b~11", visit + "/b~21"), found);
    }
}
