// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.review;

import dev.infiltration.check.CheckedBook;
import dev.infiltration.check.Checker;
import dev.infiltration.check.Effect;
import dev.infiltration.check.Finding;
import dev.infiltration.check.TestAt;
import dev.infiltration.check.VisitAt;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Gaps;
import dev.infiltration.field.Place;
import dev.infiltration.field.Problem;
import dev.infiltration.field.ReadBook;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.summary.LocationRate;
import dev.infiltration.summary.SurfaceRate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A field book reviewed: what could not be read, what was not followed, and what every run, location and surface comes to.
 *
 * <p>The one call most embedders make:
 *
 * <pre>{@code
 * Review review = Review.of(FieldBookJson.withDefaults().read(path));
 * review.outcome("/visits/0/tests/0/runs/0").ifPresent(System.out::println);
 * }</pre>
 */
public final class Review {

    private final FieldBook book;
    private final List<Problem> problems;
    private final List<Finding> findings;
    private final List<String> policyChanges;
    private final List<RunRate> runs = new ArrayList<>();
    private final Map<String, RunRate> runsByPointer = new HashMap<>();
    private final List<LocationRate> locations = new ArrayList<>();
    private final List<SurfaceRate> surfaces = new ArrayList<>();
    private final Gaps gaps;

    private Review(CheckedBook checked, List<Problem> problems, Gaps gaps) {
        this.book = checked.book();
        this.problems = problems;
        this.gaps = gaps;
        this.policyChanges = checked.changes();
        this.findings = checked.findings().stream()
                .map(finding -> gaps.isEmpty()
                        ? finding
                        : finding.withWhere(finding.where().in(gaps)))
                .toList();
        for (VisitAt visit : checked.visits()) {
            visit.tests().forEach(this::addRuns);
            List<LocationRate> rates = LocationRate.of(checked, visit);
            locations.addAll(rates);
            surfaces.add(SurfaceRate.of(visit, rates));
        }
    }

    private void addRuns(TestAt test) {
        test.runs().forEach(run -> {
            RunRate rate = new RunRate(run, run.place().in(gaps), run.outcome());
            runs.add(rate);
            runsByPointer.put(rate.where().toString(), rate);
        });
    }

    /**
     * {@return the review of a book, by the built-in methods}
     *
     * @param book the book
     */
    public static Review of(FieldBook book) {
        return of(ReadBook.of(book), Checker.withDefaults());
    }

    /**
     * {@return the review of what was read, by the built-in methods}
     *
     * @param read what was read; where nothing was, the review holds its problems alone
     */
    public static Review of(ReadBook read) {
        return of(read, Checker.withDefaults());
    }

    /**
     * {@return the review of what was read}
     *
     * @param read    what was read
     * @param checker the checker, with methods, limits and the day
     */
    public static Review of(ReadBook read, Checker checker) {
        Objects.requireNonNull(checker, "checker");
        return new Review(checker.check(read.book().orElse(FieldBook.empty())), read.problems(), read.gaps());
    }

    /** {@return the book} */
    public FieldBook book() {
        return book;
    }

    /** {@return what could not be read, in order of place} */
    public List<Problem> problems() {
        return problems;
    }

    /** {@return what the user wanted otherwise than the catalogue and the published equation have it, a line each} */
    public List<String> policyChanges() {
        return policyChanges;
    }

    /** {@return every finding, sorted by place and then as the catalogue lists the rules} */
    public List<Finding> findings() {
        return findings;
    }

    /**
     * {@return the findings that weigh at least so much}
     *
     * @param least the lightest effect wanted
     */
    public List<Finding> findings(Effect least) {
        return findings.stream()
                .filter(finding -> finding.effect().compareTo(least) <= 0)
                .toList();
    }

    /**
     * {@return the findings that bear on a run}: its own, and those of its prewetting, test, visit, ring, location and surface
     *
     * @param run the run
     */
    public List<Finding> findings(RunRate run) {
        return findings.stream().filter(finding -> Bearing.isOn(run, finding)).toList();
    }

    /** {@return every run with what it comes to, in the order of the document} */
    public List<RunRate> runs() {
        return List.copyOf(runs);
    }

    /**
     * {@return what the run at a place comes to; empty when no run stands there}
     *
     * @param pointer the JSON Pointer of the run
     */
    public Optional<RateOutcome> outcome(String pointer) {
        return Optional.ofNullable(runsByPointer.get(pointer)).map(RunRate::outcome);
    }

    /**
     * {@return what the run at a place comes to; empty when no run stands there}
     *
     * @param place the place of the run
     */
    public Optional<RateOutcome> outcome(Place place) {
        return outcome(place.toString());
    }

    /**
     * {@return the place of a visit of this review, as the document counts}
     *
     * @param visit the visit
     */
    public Place placeOf(VisitAt visit) {
        return visit.place().in(gaps);
    }

    /** {@return one row for every visit and location with a prewetting or a run} */
    public List<LocationRate> locations() {
        return List.copyOf(locations);
    }

    /** {@return one row for every visit} */
    public List<SurfaceRate> surfaces() {
        return List.copyOf(surfaces);
    }
}
