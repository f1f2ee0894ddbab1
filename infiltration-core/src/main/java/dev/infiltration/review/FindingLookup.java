// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.review;

import dev.infiltration.check.Finding;
import dev.infiltration.check.TestAt;
import dev.infiltration.check.VisitAt;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Place;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.Visit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Findings by the run, test or visit that they bear on; a look-up costs as much as it finds. */
final class FindingLookup {

    private static final Comparator<Numbered> ORDER = Comparator.comparingInt(Numbered::number);

    /** By visit, of what is not in its tests. */
    private final Map<Place, List<Numbered>> ofVisits = new HashMap<>();
    /** By test, all within it. */
    private final Map<Place, List<Numbered>> ofTests = new HashMap<>();
    /** By test, of what is not in its runs. */
    private final Map<Place, List<Numbered>> besideRuns = new HashMap<>();

    private final Map<Place, List<Numbered>> ofRuns = new HashMap<>();
    /** By subject, of what is in no visit: a ring, a location or a surface is named by id. */
    private final Map<String, List<Numbered>> bySubject = new HashMap<>();

    private record Numbered(int number, Finding finding) {}

    FindingLookup(List<Finding> findings) {
        for (int i = 0; i < findings.size(); i++) {
            add(new Numbered(i, findings.get(i)));
        }
    }

    private void add(Numbered numbered) {
        Place run = around(numbered, TestRun.class);
        Place test = around(numbered, LocationTest.class);
        Place visit = around(numbered, Visit.class);
        Place where = numbered.finding().where();
        if (visit.isBook()) {
            put(bySubject, numbered.finding().subject(), numbered);
        } else if (!where.isWithin(visit.member("tests"))) {
            put(ofVisits, visit, numbered);
        }
        if (!test.isBook()) {
            put(ofTests, test, numbered);
            put(where.isWithin(test.member("runs")) ? ofRuns : besideRuns, run.isBook() ? test : run, numbered);
        }
    }

    private static <K> void put(Map<K, List<Numbered>> findings, K key, Numbered numbered) {
        findings.computeIfAbsent(key, absent -> new ArrayList<>()).add(numbered);
    }

    /** {@return the record of a class that a finding is in; the book where it is in none} */
    private static Place around(Numbered numbered, Class<?> record) {
        Place place = numbered.finding().where();
        while (!place.isBook() && !place.isEntryOf(record)) {
            place = place.outer();
        }
        return place;
    }

    /** {@return what bears on a run, in the order of the findings} */
    List<Finding> of(RunRate run) {
        Place test = run.where().outer().outer();
        Place visit = test.outer().outer();
        return inOrder(
                Stream.of(named(run.run().test()), in(ofVisits, visit), in(besideRuns, test), in(ofRuns, run.where()))
                        .flatMap(each -> each));
    }

    /** {@return what bears on a test: first what is in no visit} */
    List<Finding> of(TestAt at, Place test) {
        Stream<Numbered> own = Stream.concat(in(ofVisits, test.outer().outer()), in(ofTests, test));
        return both(named(at), own);
    }

    /** {@return what bears on a visit as a whole: first what is in no visit} */
    List<Finding> of(VisitAt at, Place visit) {
        return both(subject("surface", at.visit().surface()), in(ofVisits, visit));
    }

    private static List<Finding> both(Stream<Numbered> elsewhere, Stream<Numbered> own) {
        return Stream.of(inOrder(elsewhere), inOrder(own)).flatMap(List::stream).toList();
    }

    private static List<Finding> inOrder(Stream<Numbered> findings) {
        return findings.sorted(ORDER).map(Numbered::finding).toList();
    }

    private static Stream<Numbered> in(Map<Place, List<Numbered>> findings, Place place) {
        return findings.getOrDefault(place, List.of()).stream();
    }

    private Stream<Numbered> named(TestAt at) {
        return Stream.of(
                        subject("ring", at.test().ring()),
                        subject("surface", at.visit().visit().surface()),
                        subject("location", at.test().location()))
                .flatMap(each -> each);
    }

    private Stream<Numbered> subject(String kind, @Nullable String id) {
        return id == null ? Stream.empty() : bySubject.getOrDefault(kind + " " + id, List.of()).stream();
    }
}
