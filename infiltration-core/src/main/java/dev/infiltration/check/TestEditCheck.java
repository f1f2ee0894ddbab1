// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.check.BookIndex.Indexed;
import dev.infiltration.check.BookIndex.Spot;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Visit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Checks one test while somebody types, as the whole book would be checked with the test written so.
 *
 * <p>It looks at the visit, at the tests of the same location, and at those of the same surface close in time; not at the rest
 * of the book. Made once for a checked book; it never changes, and threads may share it.
 */
public final class TestEditCheck {

    /** More than any method's time between locations, a doubtful hour included, in seconds. */
    private final BigDecimal reach;

    private final Checker checker;
    private final BookIndex index;
    private final Map<String, List<TestAt>> byId = new HashMap<>();
    private final Map<String, NavigableMap<BigDecimal, Set<Integer>>> byStart = new HashMap<>();
    private final Map<String, Map<LocalDate, Set<Integer>>> byDate = new HashMap<>();

    TestEditCheck(Checker checker, BookIndex index) {
        this.checker = checker;
        this.index = index;
        this.reach = index.register().methods().longestSpacingTime().add(BigDecimal.valueOf(86_400));
        for (VisitAt visit : index.visits()) {
            visit.tests().forEach(this::add);
        }
    }

    private void add(TestAt test) {
        String id = SubjectText.given(test.test().id());
        if (id != null && !test.visit().isLaterDouble()) {
            byId.computeIfAbsent(id, key -> new ArrayList<>()).add(test);
        }
        VisitAt visit = test.visit();
        String surface = SubjectText.given(visit.visit().surface());
        if (surface == null || visit.isLaterDouble() || !test.test().isMade()) {
            return;
        }
        TimeRange start = test.firstStart();
        if (start != null) {
            byStart.computeIfAbsent(surface, key -> new TreeMap<>())
                    .computeIfAbsent(start.written(), key -> new TreeSet<>())
                    .add(visit.index());
        }
        if (visit.visit().date() != null) {
            byDate.computeIfAbsent(surface, key -> new HashMap<>())
                    .computeIfAbsent(visit.visit().date(), key -> new TreeSet<>())
                    .add(visit.index());
        }
    }

    /**
     * {@return the findings at a test and inside it, were it written otherwise}: those that the whole book would give
     *
     * @param test    the test in the checked book
     * @param typed   what the test is now
     */
    public List<Finding> findings(TestAt test, LocationTest typed) {
        VisitAt visit = test.visit();
        if (visit.isLaterDouble()) {
            return List.of();
        }
        List<LocationTest> tests = new ArrayList<>(visit.visit().tests());
        tests.set(test.index(), typed);
        Visit now = visit.visit().withTests(tests);
        TestAt probe = new BookIndex(index.register(), List.of(new Indexed(visit.index(), now, false)))
                .visits()
                .get(0)
                .tests()
                .get(test.index());
        Set<Integer> visits = neighbours(probe);
        visits.add(visit.index());
        List<Indexed> indexed = new ArrayList<>();
        for (int each : visits) {
            VisitAt other = index.visits().get(each);
            indexed.add(new Indexed(each, each == visit.index() ? now : other.visit(), other.isLaterDouble()));
        }
        BookIndex neighbourhood = new BookIndex(index.register(), indexed);
        return checker.check(neighbourhood, in(neighbourhood, probe), isLaterDouble(test, typed));
    }

    private static TestAt in(BookIndex neighbourhood, TestAt probe) {
        return neighbourhood.visits().stream()
                .filter(visit -> visit.index() == probe.visit().index())
                .findFirst()
                .orElseThrow()
                .tests()
                .get(probe.index());
    }

    /** Visits with a test at the same location, or on the same surface close in time or on the same date. */
    private Set<Integer> neighbours(TestAt probe) {
        Set<Integer> visits = new TreeSet<>();
        Spot spot = BookIndex.spot(probe);
        index.spots()
                .getOrDefault(spot, List.of())
                .forEach(test -> visits.add(test.visit().index()));
        String surface = SubjectText.given(probe.visit().visit().surface());
        TimeRange start = probe.firstStart();
        if (surface != null && start != null && byStart.containsKey(surface)) {
            Collection<Set<Integer>> close = byStart.get(surface)
                    .subMap(
                            start.written().subtract(reach),
                            true,
                            start.written().add(reach),
                            true)
                    .values();
            close.forEach(visits::addAll);
        }
        LocalDate date = probe.visit().visit().date();
        if (surface != null && date != null) {
            visits.addAll(byDate.getOrDefault(surface, Map.of()).getOrDefault(date, Set.of()));
        }
        return visits;
    }

    /** Whether another test, earlier in the book, has the id. */
    private boolean isLaterDouble(TestAt test, LocationTest typed) {
        String id = SubjectText.given(typed.id());
        List<TestAt> same = id == null ? List.of() : byId.getOrDefault(id, List.of());
        return same.stream().anyMatch(other -> other.place().compareTo(test.place()) < 0);
    }
}
