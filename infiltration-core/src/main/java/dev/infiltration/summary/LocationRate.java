// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import dev.infiltration.check.CheckedBook;
import dev.infiltration.check.PouringAt;
import dev.infiltration.check.TestAt;
import dev.infiltration.check.VisitAt;
import dev.infiltration.field.JsonName;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.rate.RingTerm;
import dev.infiltration.rate.Uncertainty;
import dev.infiltration.rate.UncertaintyBudget;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What a location comes to at a visit: the mean of the first runs that the method counts, in the last series with a run of
 * that visit that is not void.
 *
 * <p>A discontinued prewetting without any run gives an upper bound.
 *
 * @param visit    the visit
 * @param location the id of the location
 * @param outcome  the rate, a bound, or none
 * @param runs     the number of runs that the figure rests on
 * @param from     what the figure rests on
 * @param counted  the runs, or the prewetting, that the figure rests on
 */
public record LocationRate(
        VisitAt visit, String location, RateOutcome outcome, int runs, Source from, List<PouringAt> counted) {

    /** Copies the list. */
    public LocationRate {
        counted = List.copyOf(counted);
    }

    /** What a figure rests on. */
    public enum Source implements JsonName {
        /** Runs. */
        RUNS,
        /** A discontinued prewetting. */
        PREWETTING
    }

    /** Where the method is unknown, as many runs count as the standards allow. */
    private static final int RUNS_WITHOUT_METHOD = 2;

    /**
     * {@return the rows of a visit: one for every location that has a prewetting or a run}
     *
     * @param book  the checked book
     * @param visit the visit
     */
    public static List<LocationRate> of(CheckedBook book, VisitAt visit) {
        List<LocationRate> rates = new ArrayList<>();
        byLocation(visit).forEach((location, tests) -> {
            if (tests.stream().anyMatch(test -> test.test().isMade())) {
                rates.add(of(book, visit, location, tests));
            }
        });
        return rates;
    }

    /** {@return the tests of a visit by the location they name, in the order of first mention} */
    static Map<String, List<TestAt>> byLocation(VisitAt visit) {
        Map<String, List<TestAt>> tests = new LinkedHashMap<>();
        for (TestAt test : visit.tests()) {
            String location = test.test().location();
            if (location != null && !location.isEmpty()) {
                tests.computeIfAbsent(location, key -> new ArrayList<>()).add(test);
            }
        }
        return tests;
    }

    private static LocationRate of(CheckedBook book, VisitAt visit, String location, List<TestAt> tests) {
        if (tests.stream().allMatch(test -> test.runs().isEmpty())) {
            return fromPreWetting(visit, location, book.preWettings(tests.get(0)));
        }
        int most = visit.method().map(method -> method.runsPerDay()).orElse(RUNS_WITHOUT_METHOD);
        List<PouringAt> runs = book.runsForRate(tests.get(0), most);
        if (!runs.isEmpty() && runs.get(0).pouring().isVoid()) {
            RateOutcome none = new RateOutcome.Withheld(book.reasonsOfVoidRuns(tests.get(0)));
            return new LocationRate(visit, location, none, 0, Source.RUNS, List.of());
        }
        List<RateOutcome> outcomes = runs.stream().map(PouringAt::outcome).toList();
        RateOutcome mean = Outcomes.join(outcomes, Figures::mean);
        List<PouringAt> used = IntStream.range(0, runs.size())
                .filter(i -> outcomes.get(i).figure().isPresent())
                .mapToObj(runs::get)
                .toList();
        return new LocationRate(visit, location, mean, used.size(), Source.RUNS, used);
    }

    /**
     * Of several discontinued prewettings the last; one that drained or is void gives no rate. One whose end should be
     * recorded and is not withholds it.
     */
    private static LocationRate fromPreWetting(VisitAt visit, String location, List<PouringAt> preWettings) {
        Optional<PouringAt> preWetting = preWettings.stream()
                .filter(PouringAt::isEndMissing)
                .findFirst()
                .or(() -> preWettings.stream()
                        .filter(preWet -> preWet.pouring().isStopped())
                        .reduce((earlier, later) -> later));
        RateOutcome outcome = preWetting.map(PouringAt::outcome).orElse(new RateOutcome.Withheld(List.of()));
        List<PouringAt> counted =
                outcome.figure().isPresent() ? preWetting.stream().toList() : List.of();
        return new LocationRate(visit, location, outcome, 0, Source.PREWETTING, counted);
    }

    /**
     * {@return the rate's uncertainty in mm/h}: what its runs share does not average out; where the error of the end point is
     * stated, the difference of the runs is a term too; empty unless the rate was measured
     */
    public Optional<Uncertainty> uncertainty() {
        List<Uncertainty> each =
                budgets().stream().map(UncertaintyBudget::uncertainty).toList();
        if (each.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                hasEndPoint()
                        ? Uncertainty.meanOfRepeats(counted.get(0).place() + ", difference of the runs", each)
                        : Uncertainty.mean(each));
    }

    /** {@return what {@link #uncertainty} covers, in words}: {@link UncertaintyBudget#INSTRUMENTS_ONLY}, or more */
    public Optional<String> uncertaintyCovers() {
        return budgets().stream()
                .findFirst()
                .map(budget -> !hasEndPoint()
                        ? UncertaintyBudget.INSTRUMENTS_ONLY
                        : budget.label() + (counted.size() > 1 ? "; difference of the runs included" : ""));
    }

    /** {@return whether {@link #uncertainty} includes how far the end point may be off}: only then is it shown with the rate */
    public boolean hasEndPoint() {
        List<UncertaintyBudget> budgets = budgets();
        return !budgets.isEmpty() && budgets.stream().allMatch(budget -> budget.includes(RingTerm.END_POINT));
    }

    /** The budget of each run of a measured rate; empty where one has none. */
    private List<UncertaintyBudget> budgets() {
        List<UncertaintyBudget> each =
                counted.stream().flatMap(run -> run.budget().stream()).toList();
        return outcome.rate().isEmpty() || each.size() < counted.size() ? List.of() : each;
    }
}
