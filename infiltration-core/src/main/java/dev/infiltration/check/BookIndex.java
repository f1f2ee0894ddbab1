// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Instrument;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Maintenance;
import dev.infiltration.field.Place;
import dev.infiltration.field.Ring;
import dev.infiltration.field.Site;
import dev.infiltration.field.Surface;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.Visit;
import dev.infiltration.method.Methods;
import dev.infiltration.rate.RateEquation;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A field book by its ids: what each name means, and which tests were made at the same location. */
final class BookIndex {

    private final FieldBook book;
    private final Methods methods;
    private final RateEquation equation;
    private final Map<String, SurfaceAt> surfaces = new LinkedHashMap<>();
    private final Set<String> doubledSurfaces = new HashSet<>();
    private final Map<String, Ring> rings = new HashMap<>();
    private final Set<String> doubledRings = new HashSet<>();
    private final Map<String, Place> ringPlaces = new HashMap<>();
    private final Map<Place, Set<String>> withheld = new HashMap<>();
    private final Map<String, Instrument> instruments = new HashMap<>();
    private final List<VisitAt> visits = new ArrayList<>();
    private final Map<Spot, List<TestAt>> spots = new LinkedHashMap<>();
    private final Map<Day, List<TestAt>> days = new HashMap<>();
    private final Map<Day, List<Series>> series = new HashMap<>();

    BookIndex(FieldBook book, Methods methods, RateEquation equation) {
        this.book = book;
        this.methods = methods;
        this.equation = equation;
        addSurfaces();
        addRings();
        for (Instrument instrument : book.instruments()) {
            String id = Texts.given(instrument.id());
            if (id != null) {
                instruments.putIfAbsent(id, instrument);
            }
        }
        addMaintenance();
        addVisits();
    }

    private static final List<Class<?>> SCOPES =
            List.of(TestRun.class, LocationTest.class, Visit.class, Ring.class, Surface.class);

    /** Where tests were made: a location of a surface; what is not named is known by the record itself. */
    record Spot(Object surface, Object location) {}

    /** A spot on a date. */
    record Day(Spot spot, Object date) {}

    private void addSurfaces() {
        for (int i = 0; i < book.sites().size(); i++) {
            Site site = book.sites().get(i);
            Place list = Place.BOOK.member("sites").entry(i).member("surfaces");
            for (int j = 0; j < site.surfaces().size(); j++) {
                SurfaceAt surface = new SurfaceAt(site, site.surfaces().get(j), list.entry(j));
                String id = Texts.given(surface.surface().id());
                if (id != null && surfaces.putIfAbsent(id, surface) != null) {
                    doubledSurfaces.add(id);
                }
            }
        }
    }

    private void addRings() {
        for (int i = 0; i < book.rings().size(); i++) {
            String id = Texts.given(book.rings().get(i).id());
            if (id != null && rings.putIfAbsent(id, book.rings().get(i)) != null) {
                doubledRings.add(id);
            }
            if (id != null) {
                ringPlaces.putIfAbsent(id, Place.BOOK.member("rings").entry(i));
            }
        }
    }

    private void addMaintenance() {
        Set<String> met = new HashSet<>();
        for (Maintenance entry : book.maintenance()) {
            String id = Texts.given(entry.id());
            SurfaceAt surface = surface(entry.surface());
            if (surface != null && (id == null || met.add(id))) {
                surface.add(entry);
            }
        }
    }

    private void addVisits() {
        Set<String> met = new HashSet<>();
        for (Visit visit : book.visits()) {
            String id = Texts.given(visit.id());
            VisitAt at = new VisitAt(this, visits.size(), visit, id != null && !met.add(id));
            visits.add(at);
            for (TestAt test : at.tests()) {
                Spot spot = spot(test);
                spots.computeIfAbsent(spot, key -> new ArrayList<>()).add(test);
                days.computeIfAbsent(day(spot, test), key -> new ArrayList<>()).add(test);
            }
        }
    }

    private static Spot spot(TestAt test) {
        VisitAt visit = test.visit();
        String surface = Texts.given(visit.visit().surface());
        String location = Texts.given(test.test().location());
        return new Spot(
                surface == null || visit.isLaterDouble() ? visit.index() : surface,
                location == null ? List.of(visit.index(), test.index()) : location);
    }

    private static Day day(Spot spot, TestAt test) {
        VisitAt visit = test.visit();
        return new Day(
                spot,
                visit.visit().date() == null ? visit.index() : visit.visit().date());
    }

    /** The series of a test's location and date. */
    List<Series> series(TestAt test) {
        Day day = day(spot(test), test);
        return series.computeIfAbsent(day, key -> Series.of(days.getOrDefault(key, List.of(test))));
    }

    /** All tests at a test's location, whatever the date. */
    List<TestAt> testsAtSpot(TestAt test) {
        return spots.getOrDefault(spot(test), List.of(test));
    }

    Iterable<List<TestAt>> spots() {
        return spots.values();
    }

    FieldBook book() {
        return book;
    }

    Methods methods() {
        return methods;
    }

    RateEquation equation() {
        return equation;
    }

    List<VisitAt> visits() {
        return visits;
    }

    Iterable<SurfaceAt> surfaces() {
        return surfaces.values();
    }

    @Nullable
    SurfaceAt surface(@Nullable String id) {
        return id == null ? null : surfaces.get(id);
    }

    boolean isDoubledSurface(@Nullable String id) {
        return id != null && doubledSurfaces.contains(id);
    }

    @Nullable
    Ring ring(@Nullable String id) {
        return id == null ? null : rings.get(id);
    }

    boolean isDoubledRing(@Nullable String id) {
        return id != null && doubledRings.contains(id);
    }

    @Nullable
    Instrument instrument(@Nullable String id) {
        return id == null ? null : instruments.get(id);
    }

    /** Findings that withhold rates, by the record they bear on: a run, test, visit, ring or surface. */
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
        if (withheld.isEmpty()) {
            return Set.of();
        }
        TestAt test = pouring.test();
        List<Place> scopes = new ArrayList<>(
                List.of(pouring.place(), test.place(), test.visit().place()));
        test.visit().surface().map(SurfaceAt::place).ifPresent(scopes::add);
        String ring = test.test().ring();
        if (ring != null && ringPlaces.containsKey(ring)) {
            scopes.add(ringPlaces.get(ring));
        }
        Set<String> rules = new HashSet<>();
        scopes.forEach(scope -> rules.addAll(withheld.getOrDefault(scope, Set.of())));
        return rules;
    }
}
