// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.review;

import dev.infiltration.check.VisitAt;
import dev.infiltration.compare.PairedComparison;
import dev.infiltration.compare.Recovery;
import dev.infiltration.field.Maintenance;
import dev.infiltration.statistics.McNemar;
import dev.infiltration.summary.Criterion;
import dev.infiltration.summary.LocationRate;
import dev.infiltration.units.InfiltrationRate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Comparison of the last visit before a maintenance with the first after it, location by location.
 *
 * <p>Only locations with a measured rate at both visits are compared, and only the maintained ones where every entry names its
 * locations. Locations with a bound are excluded. Visits of different methods are not compared. The notes state both.
 */
public final class BeforeAfter {

    private final List<Maintenance> maintenance;
    private final VisitAt before;
    private final VisitAt after;
    private final @Nullable VisitAt first;
    private final Map<String, Double> ratesBefore;
    private final Map<String, Double> ratesAfter;
    private final Map<String, Double> ratesFirst;
    private final List<String> locations;
    private final List<String> excluded;
    private final boolean isOfSurface;

    private BeforeAfter(Review review, List<Maintenance> maintenance, Visits visits) {
        this.maintenance = maintenance;
        this.before = visits.before();
        this.after = visits.after();
        this.first = visits.first();
        this.isOfSurface =
                SurfaceHistory.isRepresentative(review, before) && SurfaceHistory.isRepresentative(review, after);
        this.ratesBefore = measured(review, before);
        this.ratesAfter = measured(review, after);
        this.ratesFirst = first == null || !isOneMethod(first, before) ? Map.of() : measured(review, first);
        List<String> both = review.locations(before).stream()
                .map(LocationRate::location)
                .filter(location -> isAt(review, after, location) && isWorkedOn(location))
                .toList();
        this.locations = isOneMethod()
                ? both.stream()
                        .filter(location -> ratesBefore.containsKey(location) && ratesAfter.containsKey(location))
                        .toList()
                : List.of();
        this.excluded = isOneMethod()
                ? both.stream()
                        .filter(location -> !locations.contains(location))
                        .toList()
                : List.of();
    }

    /**
     * The visits compared.
     *
     * @param before the last before the maintenance
     * @param after  the first after it
     * @param first  the first of all, taken as the new surface; null where that is the one before
     */
    record Visits(VisitAt before, VisitAt after, @Nullable VisitAt first) {}

    static BeforeAfter of(Review review, List<Maintenance> maintenance, Visits visits) {
        return new BeforeAfter(review, maintenance, visits);
    }

    private static Map<String, Double> measured(Review review, VisitAt visit) {
        Map<String, Double> rates = new LinkedHashMap<>();
        review.locations(visit)
                .forEach(location -> location.outcome()
                        .rate()
                        .ifPresent(rate -> rates.put(location.location(), rate.millimetresPerHour())));
        return rates;
    }

    private static boolean isAt(Review review, VisitAt visit, String location) {
        return review.locations(visit).stream().anyMatch(each -> each.location().equals(location));
    }

    private boolean isWorkedOn(String location) {
        return maintenance.isEmpty()
                || maintenance.stream()
                        .map(Maintenance::locations)
                        .anyMatch(worked -> worked.isEmpty() || worked.contains(location));
    }

    private boolean isOneMethod() {
        return isOneMethod(before, after);
    }

    private static boolean isOneMethod(VisitAt one, VisitAt other) {
        return SurfaceHistory.methodOf(one).equals(SurfaceHistory.methodOf(other));
    }

    /** {@return the entries of the book between the two visits; none where only the purpose of the later visit states maintenance} */
    public List<Maintenance> maintenance() {
        return List.copyOf(maintenance);
    }

    /** {@return the last visit before} */
    public VisitAt before() {
        return before;
    }

    /** {@return the first visit after} */
    public VisitAt after() {
        return after;
    }

    /** {@return ids of the locations compared} */
    public List<String> locations() {
        return locations;
    }

    /** {@return the comparison, without pairs where nothing can be compared} */
    public PairedComparison comparison() {
        return PairedComparison.of(rates(ratesBefore, locations), rates(ratesAfter, locations));
    }

    /** {@return the change in which of these locations pass a criterion} */
    public McNemar passing(Criterion criterion) {
        return comparison().passing(rate -> criterion.passes(new InfiltrationRate(rate)));
    }

    /** {@return the visit taken as the new surface: the first of all, if method and locations are the same} */
    public Optional<VisitAt> referenceVisit() {
        return locationsSinceNew().isEmpty() ? Optional.empty() : Optional.ofNullable(first);
    }

    /** {@return the recovery of the rate lost since new; empty where no visit gives the rate of the new surface} */
    public Optional<Recovery> recovery() {
        List<String> all = locationsSinceNew();
        return all.isEmpty()
                ? Optional.empty()
                : Optional.of(Recovery.of(rates(ratesFirst, all), rates(ratesBefore, all), rates(ratesAfter, all)))
                        .filter(recovery -> Double.isFinite(recovery.share()));
    }

    private List<String> locationsSinceNew() {
        return locations.stream().filter(ratesFirst::containsKey).toList();
    }

    private static double[] rates(Map<String, Double> rates, List<String> locations) {
        return locations.stream().mapToDouble(rates::get).toArray();
    }

    /** {@return notes on the comparison: what was excluded, and why} */
    public List<String> notes() {
        List<String> notes = new ArrayList<>();
        if (!isOneMethod()) {
            notes.add("not compared: tested by " + SurfaceHistory.methodOf(before) + " and by "
                    + SurfaceHistory.methodOf(after));
        } else if (locations.isEmpty()) {
            notes.add("not compared: no location was measured at both visits");
        }
        if (!excluded.isEmpty()) {
            notes.add("excluded, because of a bound or no rate: " + String.join(", ", excluded));
        }
        if (!locations.isEmpty() && !isOfSurface) {
            notes.add(SurfaceHistory.THESE_LOCATIONS);
        }
        if (maintenance.isEmpty()) {
            notes.add("the book has no entry of the maintenance");
        }
        recovery()
                .ifPresent(recovery -> notes.add("the rates of the first visit ("
                        + referenceVisit().orElseThrow().subject() + ", "
                        + referenceVisit().orElseThrow().visit().date() + ") are taken as those of the new surface"));
        return notes;
    }
}
