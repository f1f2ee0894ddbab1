// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Location;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Place;
import dev.infiltration.field.Ring;
import dev.infiltration.field.Surface;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.Visit;
import dev.infiltration.rule.Effect;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The visits of a field book, or some of them, in their surroundings, and which tests were made at the same location. */
final class BookIndex {

    private static final List<Class<?>> SCOPES =
            List.of(TestRun.class, LocationTest.class, Visit.class, Ring.class, Location.class, Surface.class);

    private final BookLookup register;
    private final List<VisitAt> visits = new ArrayList<>();
    private final Map<Spot, List<TestAt>> spots = new LinkedHashMap<>();
    private final Map<Day, DaySeries> series = new HashMap<>();
    private final Map<Place, Set<String>> withheld = new HashMap<>();
    private @Nullable Budgets budgets;

    /** A visit of the book at its position. */
    record Indexed(int index, Visit visit, boolean isLaterDouble) {}

    /** Where tests were made: a location of a surface; what is not named is known by the record itself. */
    record Spot(Object surface, Object location) {}

    /** A spot on a date. */
    private record Day(Spot spot, Object date) {}

    BookIndex(BookLookup register, List<Indexed> visits) {
        this.register = register;
        Map<Day, List<TestAt>> days = new LinkedHashMap<>();
        for (Indexed visit : visits) {
            VisitAt at = new VisitAt(this, visit.index(), visit.visit(), visit.isLaterDouble());
            this.visits.add(at);
            for (TestAt test : at.tests()) {
                spots.computeIfAbsent(spot(test), key -> new ArrayList<>()).add(test);
                days.computeIfAbsent(day(test), key -> new ArrayList<>()).add(test);
            }
        }
        days.forEach((day, tests) -> series.put(day, new DaySeries(Series.of(tests))));
    }

    /** {@return the index of a whole book} */
    static BookIndex of(BookLookup register) {
        List<Indexed> visits = new ArrayList<>();
        Set<String> met = new HashSet<>();
        for (Visit visit : register.book().visits()) {
            String id = SubjectText.given(visit.id());
            visits.add(new Indexed(visits.size(), visit, id != null && !met.add(id)));
        }
        return new BookIndex(register, visits);
    }

    static Spot spot(TestAt test) {
        VisitAt visit = test.visit();
        String surface = SubjectText.given(visit.visit().surface());
        String location = SubjectText.given(test.test().location());
        return new Spot(
                surface == null || visit.isLaterDouble() ? visit.index() : surface,
                location == null ? List.of(visit.index(), test.index()) : location);
    }

    private static Day day(TestAt test) {
        VisitAt visit = test.visit();
        return new Day(
                spot(test),
                visit.visit().date() == null ? visit.index() : visit.visit().date());
    }

    BookLookup register() {
        return register;
    }

    FieldBook book() {
        return register.book();
    }

    List<VisitAt> visits() {
        return visits;
    }

    /** The series of a test's location and date. */
    DaySeries series(TestAt test) {
        return series.getOrDefault(day(test), DaySeries.NONE);
    }

    /** Tests by location, whatever the date. */
    Map<Spot, List<TestAt>> spots() {
        return spots;
    }

    /** What makes rates uncertain; made when first asked for. */
    Budgets budgets() {
        Budgets known = budgets;
        if (known == null) {
            known = Budgets.of(visits);
            budgets = known;
        }
        return known;
    }

    /**
     * Findings that withhold rates, by the record they bear on: a run, test, visit, ring or surface. A location that occurs
     * twice bears on the tests that name it, which know.
     */
    void withhold(List<Finding> findings) {
        for (Finding finding : findings) {
            if (finding.effect() == Effect.NO_RATE) {
                withheld.computeIfAbsent(scope(finding.where()), key -> new HashSet<>())
                        .add(finding.rule());
            }
        }
    }

    private static Place scope(Place where) {
        Place place = where;
        while (!place.isBook() && SCOPES.stream().noneMatch(place::isEntryOf)) {
            place = place.outer();
        }
        return place;
    }

    /** The rules whose findings withhold the rate of a prewetting or run. */
    Set<String> withholding(PouringAt pouring) {
        Set<String> rules = new HashSet<>();
        if (register.unreadable().withholds(pouring)) {
            rules.add(BuiltInRule.DATA_UNREADABLE.id());
        }
        if (withheld.isEmpty()) {
            return rules;
        }
        TestAt test = pouring.test();
        List<Place> scopes = new ArrayList<>(
                List.of(pouring.place(), test.place(), test.visit().place()));
        test.visit().surface().map(SurfaceAt::place).ifPresent(scopes::add);
        Place ring = register.ringPlace(test.test().ring());
        if (ring != null) {
            scopes.add(ring);
        }
        scopes.forEach(scope -> rules.addAll(withheld.getOrDefault(scope, Set.of())));
        return rules;
    }
}
