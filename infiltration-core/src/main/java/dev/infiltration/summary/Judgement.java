// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import dev.infiltration.field.Location.Selection;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.rate.RateOutcome.LowerBound;
import dev.infiltration.rate.RateOutcome.Measured;
import dev.infiltration.rate.RateOutcome.UpperBound;
import dev.infiltration.rule.Bias;
import dev.infiltration.statistics.Interval;
import dev.infiltration.statistics.LogNormalFit;
import dev.infiltration.summary.Decision.LiteralResult;
import dev.infiltration.units.InfiltrationRate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A criterion held against a summary. */
final class Judgement {

    /** More than the product of a share and a count is off, less than a location in any count. */
    private static final double ROUNDING = 1e-12;

    private final Criterion criterion;
    private final RateSummary summary;
    private final Set<Bias> biases;
    private final List<RateOutcome> locations;
    private final List<String> reasons = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private int openByNumber;

    Judgement(Criterion criterion, RateSummary summary, Set<Bias> biases) {
        this.criterion = criterion;
        this.summary = summary;
        this.biases = biases;
        this.locations = summary.sample().spots().stream()
                .map(Sample.Spot::outcome)
                .filter(outcome -> outcome.figure().isPresent())
                .toList();
    }

    Verdict verdict() {
        return switch (criterion.type()) {
            case MEAN -> byFigure(summary.mean(), summary.meanInterval(Interval.LEVEL));
            case GEOMETRIC_MEAN -> byFigure(summary.geometricMean(), summary.geometricMeanInterval(Interval.LEVEL));
            case MEDIAN -> byFigure(summary.median(), summary.geometricMeanInterval(Interval.LEVEL));
            case CONFIDENCE_BOUND -> byBound();
            case EVERY_LOCATION -> byLocations(1);
            case SHARE_OF_LOCATIONS -> byLocations(criterion.share());
        };
    }

    private Verdict byFigure(RateOutcome outcome, Optional<Interval> interval) {
        Optional<InfiltrationRate> figure = outcome.figure();
        if (figure.isEmpty()) {
            return none("no figure: the locations give none");
        }
        boolean isMet = criterion.passes(figure.get());
        boolean isMeasured = outcome instanceof Measured;
        boolean stands = summary.sample().isRepresentative();
        add(reasons, !stands, "the locations do not stand for the surface");
        if (isMeasured) {
            interval.ifPresent(limits -> addInterval(limits, estimate(figure.get()), isMet));
            addTooFew(stands && interval.isEmpty(), "too few locations, or a zero rate, for an interval");
        } else {
            addBounds(outcome, isMet, stands);
        }
        int left = summary.withheld() + summary.notTested();
        add(notes, left > 0, "planned locations left out: " + left);
        return verdict(isMet, outcome);
    }

    /** The estimate that the interval of the figure belongs to, in mm/h. */
    private double estimate(InfiltrationRate figure) {
        OptionalDouble ofSurface =
                criterion.type() == Criterion.Type.MEAN ? summary.surfaceMean() : summary.surfaceGeometricMean();
        return ofSurface.orElse(figure.millimetresPerHour());
    }

    /** The stated side is shown where all of the interval lies on it. */
    private void addInterval(Interval interval, double estimate, boolean isMet) {
        boolean low = criterion.passes(new InfiltrationRate(interval.low()));
        boolean high = criterion.passes(new InfiltrationRate(interval.high()));
        String limits = ": " + criterion.text(interval, estimate);
        addTooFew(low != high, "the interval of the figure holds the limit" + limits);
        add(
                reasons,
                low == high && low != isMet,
                "the interval of the surface lies on the other side of the limit" + limits);
    }

    private void addBounds(RateOutcome outcome, boolean isMet, boolean stands) {
        add(reasons, !settles(outcome, isMet), "it rests on " + bounds(outcome));
        addTooFew(stands && locations.size() < RateSummary.FEWEST_FOR_SCATTER, "too few locations");
        Optional<LogNormalFit> fit =
                criterion.type() == Criterion.Type.GEOMETRIC_MEAN ? summary.boundedFit() : Optional.empty();
        fit.ifPresent(each -> addInterval(each.interval(Interval.LEVEL), each.geometricMean(), isMet));
        add(notes, fit.isEmpty(), "bounds carry no interval: said of the locations tested");
    }

    private void addTooFew(boolean holds, String doubt) {
        add(reasons, holds, doubt);
        openByNumber += holds ? 1 : 0;
    }

    /** The level of the two-sided interval whose ends are each right so often as asked for one side. */
    private Verdict byBound() {
        Optional<Interval> interval = summary.geometricMeanInterval(2 * criterion.share() - 1);
        if (interval.isEmpty()) {
            return none("no bound: the locations do not stand for the surface, or are too few");
        }
        double bound = criterion.relation().isFloor()
                ? interval.get().low()
                : interval.get().high();
        InfiltrationRate figure = new InfiltrationRate(bound);
        return verdict(criterion.passes(figure), new Measured(figure));
    }

    private Verdict byLocations(double share) {
        if (locations.isEmpty()) {
            return none("no figure: no location has one");
        }
        int n = locations.size();
        long needed = needed(share, n);
        boolean isMet = passing(locations) >= needed;
        long sure = locations.stream().filter(this::isSure).count();
        long surePasses = surePasses().passing();
        boolean isSettled = isMet ? surePasses >= needed : n - (sure - surePasses) < needed;
        add(reasons, !isSettled, "it rests on bounds");
        int left = summary.withheld() + summary.notTested();
        add(reasons, isMet && left > 0, left + " planned locations are left out");
        addShare(share, isMet);
        return verdict(isMet, null);
    }

    /** The fewest locations that make up the share: 55 of 100 are 0.55, though their product is rounded up as a double. */
    private static long needed(double share, int n) {
        return (long) Math.ceil(share * n * (1 - ROUNDING));
    }

    /** What the locations say of the area, where only a share of it must pass. */
    private void addShare(double share, boolean isMet) {
        if (share < 1) {
            boolean isFair = summary.sample().selection() == Selection.RANDOM;
            add(notes, isFair && isOpenForArea(share), "not confirmed for the area of the surface: " + surePasses());
            add(notes, !isFair, "nothing is said of the area: the locations are no random ones");
        } else {
            add(notes, isMet, "said of the locations tested, not of all the area");
        }
    }

    /** Undecided locations count as failing for the lower limit of the share and as passing for the upper one. */
    private boolean isOpenForArea(double share) {
        int passing = surePasses().passing();
        PassingShare most = new PassingShare(passing + undecided(), locations.size());
        return surePasses().interval(Interval.LEVEL).low() <= share
                && share <= most.interval(Interval.LEVEL).high();
    }

    /** The number of locations whose bound leaves it open if they pass. */
    int undecided() {
        return (int) locations.stream().filter(outcome -> !isSure(outcome)).count();
    }

    /** Of the locations, those that pass by a rate, or by a bound that settles it. */
    PassingShare surePasses() {
        long sure = locations.stream().filter(this::isSure).filter(this::passes).count();
        return new PassingShare((int) sure, locations.size());
    }

    private long passing(List<RateOutcome> outcomes) {
        return outcomes.stream().filter(this::passes).count();
    }

    private boolean passes(RateOutcome outcome) {
        return outcome.figure().filter(criterion::passes).isPresent();
    }

    private boolean isSure(RateOutcome outcome) {
        return criterion.isSettledBy(outcome);
    }

    /** Whether a bound settles what it says: a rate of at most too little fails, one of at least enough passes. */
    private boolean settles(RateOutcome outcome, boolean isMet) {
        return criterion.relation().isFloor() == isMet ? outcome instanceof LowerBound : outcome instanceof UpperBound;
    }

    private static String bounds(RateOutcome outcome) {
        return outcome instanceof UpperBound ? "upper bounds" : "lower bounds";
    }

    private Verdict none(String why) {
        return new Verdict(LiteralResult.NOT_EVALUATED, null, List.of(why), List.of(), false);
    }

    private Verdict verdict(boolean isMet, @Nullable RateOutcome figure) {
        Bias against = criterion.relation().isFloor() == isMet ? Bias.RAISES : Bias.LOWERS;
        add(
                reasons,
                biases.contains(against),
                "findings on the tests " + (against == Bias.RAISES ? "raise" : "lower") + " the rate");
        add(notes, biases.contains(Bias.EITHER), "findings on the tests may move the rate in either direction");
        String how = criterion.how();
        add(notes, how != null, "limit of " + criterion.method() + ": " + how);
        LiteralResult literalResult = isMet ? LiteralResult.MET : LiteralResult.NOT_MET;
        return new Verdict(literalResult, figure, reasons, notes, openByNumber > 0 && openByNumber == reasons.size());
    }

    private static void add(List<String> list, boolean holds, String text) {
        if (holds) {
            list.add(text);
        }
    }
}
