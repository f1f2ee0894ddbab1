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

/** Evaluates a criterion for the rates of a surface. */
final class Judgement {

    /** Larger than the rounding error of a share times a count, smaller than one location in any count. */
    private static final double ROUNDING = 1e-12;

    private final Criterion criterion;
    private final RateSummary summary;
    private final Set<Bias> biases;
    private final List<RateOutcome> locations;
    private final List<String> reasons = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private int lackingLocations;

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
            case SHARE_OF_LOCATIONS -> byLocations(criterion.requiredShareOrLevel());
        };
    }

    private Verdict byFigure(RateOutcome outcome, Optional<Interval> interval) {
        Optional<InfiltrationRate> figure = outcome.figure();
        if (figure.isEmpty()) {
            return none("no location has a rate or a bound that can be combined");
        }
        boolean isMet = criterion.passes(figure.get());
        boolean isMeasured = outcome instanceof Measured;
        boolean isRepresentative = summary.sample().isRepresentative();
        add(
                reasons,
                !isRepresentative,
                "the locations are not representative of the surface (not selected at random, or areas of the zones"
                        + " unknown)");
        if (isMeasured) {
            interval.ifPresent(limits -> addInterval(limits, estimate(figure.get()), isMet));
            addTooFew(
                    isRepresentative && interval.isEmpty(),
                    "no confidence interval: too few locations, or a rate of zero");
        } else {
            addBounds(outcome, isMet, isRepresentative);
        }
        SummaryWords.excluded(summary).ifPresent(notes::add);
        return verdict(isMet, outcome);
    }

    /** The estimate that the interval belongs to, in mm/h. */
    private double estimate(InfiltrationRate rate) {
        OptionalDouble ofSurface =
                criterion.type() == Criterion.Type.MEAN ? summary.surfaceMean() : summary.surfaceGeometricMean();
        return ofSurface.orElse(rate.millimetresPerHour());
    }

    /** The literal result is confirmed if the whole interval is on its side of the limit. */
    private void addInterval(Interval interval, double estimate, boolean isMet) {
        boolean low = criterion.passes(new InfiltrationRate(interval.low()));
        boolean high = criterion.passes(new InfiltrationRate(interval.high()));
        String limits = words(interval, estimate);
        addTooFew(low != high, limits + ", contains the limit");
        add(reasons, low == high && low != isMet, limits + ", is entirely on the other side of the limit");
    }

    /** The interval of the median is that of the geometric mean: of log-normal rates they are equal. */
    private String words(Interval interval, double estimate) {
        String mean = criterion.type() == Criterion.Type.MEAN ? "mean" : "geometric mean";
        return "the confidence interval of the " + mean + ", " + criterion.text(interval, estimate);
    }

    private void addBounds(RateOutcome outcome, boolean isMet, boolean isRepresentative) {
        add(reasons, !settles(outcome, isMet), "it is based on " + bounds(outcome));
        addTooFew(
                isRepresentative && locations.size() < RateSummary.FEWEST_FOR_SCATTER,
                "too few locations for a confidence interval");
        Optional<LogNormalFit> fit =
                criterion.type() == Criterion.Type.GEOMETRIC_MEAN ? summary.boundedFit() : Optional.empty();
        fit.ifPresent(each -> addInterval(each.interval(Interval.LEVEL), each.geometricMean(), isMet));
        add(
                notes,
                fit.isEmpty(),
                "no confidence interval is computed from bounds; the result applies to the tested locations only");
    }

    private void addTooFew(boolean isTrue, String reason) {
        add(reasons, isTrue, reason);
        lackingLocations += isTrue ? 1 : 0;
    }

    /** A one-sided bound of level c is a limit of the two-sided interval of level 2c − 1. */
    private Verdict byBound() {
        Optional<Interval> interval = summary.geometricMeanInterval(2 * criterion.requiredShareOrLevel() - 1);
        if (interval.isEmpty()) {
            return none("no confidence bound: too few locations, or locations not representative of the surface");
        }
        double bound = criterion.relation().isFloor()
                ? interval.get().low()
                : interval.get().high();
        InfiltrationRate figure = new InfiltrationRate(bound);
        return verdict(criterion.passes(figure), new Measured(figure));
    }

    private Verdict byLocations(double share) {
        if (locations.isEmpty()) {
            return none("no location has a rate or a bound");
        }
        int n = locations.size();
        long needed = needed(share, n);
        boolean isMet = passing(locations) >= needed;
        long sure = locations.stream().filter(this::isSure).count();
        long surePasses = surePasses().passing();
        boolean isSettled = isMet ? surePasses >= needed : n - (sure - surePasses) < needed;
        add(reasons, !isSettled, "it is based on bounds");
        if (isMet) {
            SummaryWords.excluded(summary).ifPresent(reasons::add);
        }
        addShare(share, isMet);
        return verdict(isMet, null);
    }

    /** The smallest number of locations that reaches the share: 55 of 100 reach 0.55, although the product of doubles is above 55. */
    private static long needed(double share, int n) {
        return (long) Math.ceil(share * n * (1 - ROUNDING));
    }

    /** The notes about the area, if only a share of the locations must pass. */
    private void addShare(double share, boolean isMet) {
        if (share < 1) {
            boolean isRandom = summary.sample().selection() == Selection.RANDOM;
            add(notes, isRandom && isOpenForArea(share), "not confirmed for the area of the surface: " + surePasses());
            add(notes, !isRandom, "no statement about the area: the locations were not selected at random");
        } else {
            add(notes, isMet, "applies to the tested locations only, not to the whole area");
        }
    }

    /** Undecided locations count as failing for the lower limit of the share and as passing for the upper one. */
    private boolean isOpenForArea(double share) {
        int passing = surePasses().passing();
        PassingShare most = new PassingShare(passing + undecided(), locations.size());
        return surePasses().interval(Interval.LEVEL).low() <= share
                && share <= most.interval(Interval.LEVEL).high();
    }

    /** The number of locations whose bound does not decide if they pass. */
    int undecided() {
        return (int) locations.stream().filter(outcome -> !isSure(outcome)).count();
    }

    /** The locations that pass by their rate, or by a bound that decides it. */
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

    /** Whether a bound decides the result: an upper bound below a lower limit fails, a lower bound above it passes. */
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
                "findings on these tests may bias the rate " + (against == Bias.RAISES ? "high" : "low"));
        add(notes, biases.contains(Bias.EITHER), "findings on these tests may bias the rate in either direction");
        String how = criterion.otherMethodJustification();
        add(notes, how != null, "limit of " + criterion.method() + ": " + how);
        LiteralResult literalResult = isMet ? LiteralResult.MET : LiteralResult.NOT_MET;
        return new Verdict(
                literalResult, figure, reasons, notes, lackingLocations > 0 && lackingLocations == reasons.size());
    }

    private static void add(List<String> list, boolean isTrue, String text) {
        if (isTrue) {
            list.add(text);
        }
    }
}
