// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.review;

import dev.infiltration.check.CheckedBook;
import dev.infiltration.check.Checker;
import dev.infiltration.check.Finding;
import dev.infiltration.check.PouringAt;
import dev.infiltration.check.TestAt;
import dev.infiltration.check.VisitAt;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.IndexMap;
import dev.infiltration.field.Maintenance;
import dev.infiltration.field.Place;
import dev.infiltration.field.Problem;
import dev.infiltration.field.ReadBook;
import dev.infiltration.field.UnreadableValue;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.rule.Effect;
import dev.infiltration.summary.Criterion;
import dev.infiltration.summary.Decision;
import dev.infiltration.summary.LocationRate;
import dev.infiltration.summary.RateSummary;
import dev.infiltration.summary.Sample;
import dev.infiltration.summary.Specification;
import dev.infiltration.summary.SurfaceRate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

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
    private final Map<Place, RunRate> runsByPlace = new HashMap<>();
    private final Map<Row, List<TestAt>> testsByLocation = new HashMap<>();
    private final Map<Row, LocationRate> rowsByLocation = new HashMap<>();
    private final List<LocationRate> locations = new ArrayList<>();
    private final Map<VisitAt, List<LocationRate>> locationsByVisit = new HashMap<>();
    private final List<SurfaceRate> surfaces = new ArrayList<>();
    private final IndexMap gaps;
    private final List<UnreadableValue> unreadable;
    private final Specification specification;
    /** Made when first asked for. */
    private @Nullable FindingLookup lookup;

    /** A location of a visit. */
    private record Row(VisitAt visit, String location) {}

    private Review(CheckedBook checked, List<Problem> problems, IndexMap gaps) {
        this.book = checked.book();
        this.problems = problems;
        this.gaps = gaps;
        this.unreadable = checked.unreadable();
        this.specification = Specification.none();
        this.policyChanges = checked.changes();
        this.findings = checked.findings();
        for (VisitAt visit : checked.visits()) {
            visit.tests().forEach(this::add);
            List<LocationRate> rates = LocationRate.of(checked, visit);
            locations.addAll(rates);
            rates.forEach(row -> rowsByLocation.put(new Row(visit, row.location()), row));
            locationsByVisit.put(visit, List.copyOf(rates));
            surfaces.add(SurfaceRate.of(visit, rates));
        }
    }

    private Review(Review other, Specification specification) {
        this.book = other.book;
        this.problems = other.problems;
        this.findings = other.findings;
        this.policyChanges = other.policyChanges;
        this.runs.addAll(other.runs);
        this.runsByPlace.putAll(other.runsByPlace);
        this.testsByLocation.putAll(other.testsByLocation);
        this.rowsByLocation.putAll(other.rowsByLocation);
        this.locations.addAll(other.locations);
        this.locationsByVisit.putAll(other.locationsByVisit);
        this.surfaces.addAll(other.surfaces);
        this.gaps = other.gaps;
        this.unreadable = other.unreadable;
        this.specification = specification;
    }

    private void add(TestAt test) {
        String location = test.test().location();
        if (location != null) {
            testsByLocation
                    .computeIfAbsent(new Row(test.visit(), location), key -> new ArrayList<>())
                    .add(test);
        }
        test.runs().forEach(run -> {
            RunRate rate = new RunRate(run, run.place().in(gaps), run.outcome());
            runs.add(rate);
            runsByPlace.put(rate.where(), rate);
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
        return new Review(checker.check(read), read.problems(), read.gaps());
    }

    /**
     * {@return this review with what its surfaces must come up to}
     *
     * @param specification criteria, actions, and the risk that tests are planned by
     */
    public Review withSpecification(Specification specification) {
        return new Review(this, Objects.requireNonNull(specification, "specification"));
    }

    /** {@return what the surfaces must come up to; nothing unless it was given} */
    public Specification specification() {
        return specification;
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
        return lookup().of(run);
    }

    /**
     * {@return the findings that bear on a test}: its own and its runs', and those of its visit, ring, location and surface
     *
     * @param test the test
     */
    public List<Finding> findings(TestAt test) {
        return lookup().of(test, placeOf(test));
    }

    /**
     * {@return the findings that bear on a visit as a whole}: its own and its surface's, its tests' left out
     *
     * @param visit the visit
     */
    public List<Finding> findings(VisitAt visit) {
        return lookup().of(visit, placeOf(visit));
    }

    /**
     * {@return the findings that bear on a location of a visit}: those on its tests, each once
     *
     * @param location a location row of this review
     */
    public List<Finding> findings(LocationRate location) {
        return tests(location).stream()
                .flatMap(test -> findings(test).stream())
                .distinct()
                .toList();
    }

    private FindingLookup lookup() {
        FindingLookup known = lookup;
        if (known == null) {
            known = new FindingLookup(findings);
            lookup = known;
        }
        return known;
    }

    /**
     * {@return the tests of a location of a visit, in the order of the document}
     *
     * @param location a location row of this review
     */
    public List<TestAt> tests(LocationRate location) {
        return testsByLocation.getOrDefault(new Row(location.visit(), location.location()), List.of());
    }

    /**
     * {@return the runs of a location of a visit, in the order of the document}, void or not
     *
     * @param location a location row of this review
     */
    public List<RunRate> runs(LocationRate location) {
        return tests(location).stream()
                .flatMap(test -> test.runs().stream())
                .map(run -> runsByPlace.get(placeOf(run)))
                .filter(Objects::nonNull)
                .toList();
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
        return outcome(Place.parse(pointer));
    }

    /**
     * {@return what the run at a place comes to; empty when no run stands there}
     *
     * @param place the place of the run
     */
    public Optional<RateOutcome> outcome(Place place) {
        return Optional.ofNullable(runsByPlace.get(place)).map(RunRate::outcome);
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

    /** The place of a test of this review, as the document counts. */
    /**
     * {@return where a prewetting or run stands in what was read}, as findings point to it
     *
     * @param pouring the prewetting or run
     */
    public Place placeOf(PouringAt pouring) {
        return pouring.place().in(gaps);
    }

    Place placeOf(TestAt test) {
        return test.place().in(gaps);
    }

    /**
     * {@return the location rows of a visit}
     *
     * @param visit a visit of this review
     */
    public List<LocationRate> locations(VisitAt visit) {
        return locationsByVisit.getOrDefault(visit, List.of());
    }

    /**
     * {@return the row of a location of a visit; empty where it was not tested}
     *
     * @param visit    a visit of this review
     * @param location the id of the location
     */
    public Optional<LocationRate> location(VisitAt visit, @Nullable String location) {
        return location == null ? Optional.empty() : Optional.ofNullable(rowsByLocation.get(new Row(visit, location)));
    }

    /**
     * {@return the surface as it was found at a visit: figures, intervals, what must be known beside them}
     *
     * @param visit a visit of this review
     */
    public RateSummary summary(VisitAt visit) {
        return RateSummary.of(Sample.of(visit, locations(visit)));
    }

    /**
     * {@return the locations of a visit whose record is incomplete}: attempted without a result; with a run of which a value is
     * missing or could not be read; stopped without a recorded depth; or with a value that decides which runs are used and could
     * not be read. While there is one, no decision on the visit is confirmed
     *
     * @param visit a visit of this review
     */
    public List<UnresolvedLocation> unresolved(VisitAt visit) {
        return OpenRecords.of(this, visit);
    }

    /** {@return the values of the document that could not be read, in order of place} */
    public List<UnreadableValue> unreadable() {
        return unreadable;
    }

    /** The maintenance entry that a value belongs to; empty where the entry as a whole could not be read. */
    Optional<Maintenance> maintenanceAt(UnreadableValue value) {
        Place entries = Place.BOOK.member("maintenance");
        return IntStream.range(0, book.maintenance().size())
                .filter(i -> value.isWithin(entries.entry(i).in(gaps)))
                .mapToObj(i -> book.maintenance().get(i))
                .findFirst();
    }

    /** {@return a decision for every visit with a test and every criterion, in that order} */
    public List<VisitDecision> decisions() {
        return specification.criteria().isEmpty() ? List.of() : new Decisions(this).all();
    }

    /**
     * {@return the decision on a surface as it was found at a visit}
     *
     * @param visit     a visit of this review
     * @param criterion what it must come up to
     */
    public Decision decision(VisitAt visit, Criterion criterion) {
        return new Decisions(this).of(visit, criterion);
    }

    /** {@return what the user's table of actions asks for, a visit each} */
    public List<VisitAction> actions() {
        return specification.actions().rows().isEmpty() ? List.of() : new Decisions(this).actions();
    }

    /** {@return a history for every surface with a dated figure, in order of first mention} */
    public List<SurfaceHistory> histories() {
        return SurfaceHistory.of(this);
    }
}
