// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import dev.infiltration.field.JsonName;
import dev.infiltration.field.Location.Selection;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.rule.Bias;
import dev.infiltration.statistics.Interval;
import dev.infiltration.statistics.TextTable;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import javax.measure.quantity.Speed;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Whether a surface meets a criterion: first by the literal criterion, then whether the result is confirmed.
 *
 * <p>A pass is not confirmed if it is based on upper bounds or on findings that bias the rate high, a fail not if it is based on
 * lower bounds or on findings that lower it (the other way round for a limit from above); neither is shown where the
 * interval of the figure contains the limit, or where the locations carry no interval. The statement itself never changes.
 */
public final class Decision {

    /** How often the scatter of a pilot is not larger than the one planned with. */
    private static final double CAUTION = 0.8;

    private final Criterion criterion;
    private final RateSummary summary;
    private final Verdict verdict;
    private final boolean isOpen;

    private Decision(Criterion criterion, RateSummary summary, Verdict verdict, boolean isOpen) {
        this.criterion = criterion;
        this.summary = summary;
        this.verdict = verdict;
        this.isOpen = isOpen;
    }

    /** The specification read literally: its figure, its rounding, no guard band. */
    public enum LiteralResult implements JsonName {
        /** The figure stands to the limit as it must. */
        MET,
        /** It does not. */
        NOT_MET,
        /** There is no figure, or the criterion belongs to another method. */
        NOT_EVALUATED
    }

    /** A decision with a guard band (JCGM 106:2012, clause 8). */
    public enum Guarded implements JsonName {
        /** Within the limit by at least the guard band. */
        ACCEPTED,
        /** Beyond the limit by at least the guard band. */
        REJECTED,
        /** Closer to the limit than that, or no measured figure. */
        BETWEEN
    }

    /**
     * {@return the decision on a surface}
     *
     * @param criterion what it must come up to
     * @param summary   its locations
     * @param method    id of the method they were tested by; another than the criterion's is refused unless that says how
     * @param biases    what the findings on the tests do to the rates
     */
    public static Decision of(Criterion criterion, RateSummary summary, String method, Set<Bias> biases) {
        boolean isOtherMethod = !criterion.method().equals(method) && criterion.otherMethodJustification() == null;
        Verdict verdict = isOtherMethod
                ? Verdict.otherMethod(criterion, method)
                : new Judgement(criterion, summary, biases).verdict();
        return new Decision(criterion, summary, verdict, false);
    }

    /**
     * {@return this decision with what is incomplete in the record under it}: it is open, and not confirmed
     *
     * @param unresolved what is incomplete, a text each; where there is none, the decision stays as it is
     */
    public Decision withUnresolved(List<String> unresolved) {
        return unresolved.isEmpty() ? this : new Decision(criterion, summary, verdict.unconfirmedBy(unresolved), true);
    }

    /** {@return whether the record under it is incomplete}, so that it cannot be confirmed */
    public boolean isOpen() {
        return isOpen;
    }

    /**
     * {@return the decision on locations tested by the criterion's own method, of whose tests nothing was found}
     *
     * @param criterion what the surface must come up to
     * @param summary   its locations
     */
    public static Decision of(Criterion criterion, RateSummary summary) {
        return of(criterion, summary, criterion.method(), Set.of());
    }

    /** {@return the criterion} */
    public Criterion criterion() {
        return criterion;
    }

    /** {@return whether it is met, read literally} */
    public LiteralResult literalResult() {
        return verdict.literalResult();
    }

    /** {@return whether the data carry what is stated} */
    public boolean isConfirmed() {
        return literalResult() != LiteralResult.NOT_EVALUATED
                && verdict.reasons().isEmpty();
    }

    /** {@return why it is not sure, empty where it is} */
    public List<String> reasons() {
        return verdict.reasons();
    }

    /** {@return what must be known beside the decision, that does not put it in doubt} */
    public List<String> notes() {
        return verdict.notes();
    }

    /** {@return the figure compared with the limit, where one figure is: a rate, or the bound of one} */
    public Optional<RateOutcome> comparedRate() {
        return Optional.ofNullable(verdict.comparedRate());
    }

    /** {@return the figure compared with the limit, where one figure is, as a bare rate; of a bound its value} */
    public Optional<InfiltrationRate> rateOrBound() {
        return comparedRate().flatMap(RateOutcome::figure);
    }

    /**
     * {@return the figure compared with the limit for people, a bound said to be one: to three digits, or as many as it takes to
     *     show on which side of the limit it lies; absent where no figure is compared}
     *
     * @param unit the unit
     */
    public Optional<String> comparedRateText(FieldUnit<Speed> unit) {
        return comparedRate().map(outcome -> SummaryWords.text(outcome, rate -> criterion.text(rate, unit)));
    }

    /** {@return how many of the evaluated locations pass by their rate, or by a bound that settles it} */
    public PassingShare passing() {
        return byLocations().surePasses();
    }

    /** {@return the number of evaluated locations that neither pass nor fail: their bound leaves it open} */
    public int undecidedCount() {
        return byLocations().undecided();
    }

    private Judgement byLocations() {
        return new Judgement(criterion, summary, Set.of());
    }

    /** {@return how many locations pass, fail and are undecided, for people: {@code 1 of 3 pass, 1 fails, 1 is undecided}} */
    public String locationsText() {
        PassingShare passing = passing();
        int undecided = undecidedCount();
        int failing = passing.n() - passing.passing() - undecided;
        return passing.count()
                + (failing == 0 ? "" : ", " + failing + (failing == 1 ? " fails" : " fail"))
                + (undecided == 0 ? "" : ", " + undecided + (undecided == 1 ? " is undecided" : " are undecided"));
    }

    /**
     * {@return how many locations surely pass, to tell what share of the area does; absent but for random ones (those of zones,
     *     targeted and fixed spots are no fair count of the area), where none has a figure, or where the criterion is of another
     *     method}
     */
    public Optional<PassingShare> areaShare() {
        PassingShare sure = passing();
        boolean isGiven = literalResult() != LiteralResult.NOT_EVALUATED
                && summary.sample().selection() == Selection.RANDOM
                && sure.n() > 0;
        return isGiven ? Optional.of(sure) : Optional.empty();
    }

    /** {@return how many more locations would decide it, were the scatter what these locations showed} */
    public OptionalInt additionalLocationCount() {
        return more(summary.logMoments().filter(logs -> logs.n() > 1).map(logs -> new ScatterPlan(logs.sd())));
    }

    /** {@return how many more locations would decide it, were the scatter as large as it may well be (80 %)} */
    public OptionalInt additionalLocationCountConservative() {
        return more(summary.logMoments()
                .filter(logs -> logs.n() > 1)
                .map(logs -> ScatterPlan.cautious(logs.sd(), logs.n() - 1.0, CAUTION)));
    }

    private OptionalInt more(Optional<ScatterPlan> scatter) {
        return scatter.isPresent() ? additionalLocationCount(scatter.get()) : OptionalInt.empty();
    }

    /**
     * {@return how many more locations would decide it, were the figure as now; absent where it is decided, where no figure
     *     is compared, where more of them would not settle what is in doubt, or where ten thousand would not}
     *
     * @param scatter the scatter from spot to spot, from a pilot or pooled over surfaces
     */
    public OptionalInt additionalLocationCount(ScatterPlan scatter) {
        Optional<InfiltrationRate> figure = rateOrBound();
        if (isConfirmed() || figure.isEmpty() || !verdict.lacksLocationsOnly()) {
            return OptionalInt.empty();
        }
        double factor = StrictMath.exp(
                Math.abs(StrictMath.log(figure.get().millimetresPerHour() / criterion.limitInMillimetresPerHour())));
        OptionalInt needed = criterion.type() == Criterion.Type.MEAN
                ? scatter.locationsForMean(factor, Interval.LEVEL)
                : scatter.locationsFor(factor, Interval.LEVEL);
        return needed.stream()
                .map(all -> all - summary.measured())
                .filter(more -> more > 0)
                .findFirst();
    }

    /**
     * {@return the decision with a guard band of the expanded uncertainty (JCGM 106:2012, 8.3: w = U)}, by the figure as it
     *     came out: a rounding that the specification states is no part of it
     *
     * @param expandedUncertainty expanded uncertainty of the figure
     */
    public Guarded guarded(InfiltrationRate expandedUncertainty) {
        double inside = inside();
        double band = expandedUncertainty.millimetresPerHour();
        if (Double.isNaN(inside) || Math.abs(inside) < band) {
            return Guarded.BETWEEN;
        }
        return inside >= 0 ? Guarded.ACCEPTED : Guarded.REJECTED;
    }

    /**
     * {@return the probability that the criterion is met by the true figure, its error being normal (JCGM 106:2012, 7.3);
     *     not a number without a measured figure}
     *
     * @param standardUncertainty standard uncertainty of the figure
     */
    public double conformance(InfiltrationRate standardUncertainty) {
        return Double.isNaN(inside())
                ? Double.NaN
                : NormalDistribution.of(0, 1)
                        .cumulativeProbability(inside() / standardUncertainty.millimetresPerHour());
    }

    /** How far the figure lies on the side of the limit on which it passes, in mm/h. */
    private double inside() {
        Optional<InfiltrationRate> rate = comparedRate().flatMap(RateOutcome::rate);
        if (rate.isEmpty()) {
            return Double.NaN;
        }
        double above = rate.get().millimetresPerHour() - criterion.limitInMillimetresPerHour();
        return criterion.relation().isFloor() ? above : -above;
    }

    /** {@return the decision as a small table, what is stated first} */
    @Override
    public String toString() {
        FieldUnit<Speed> unit = criterion.limit().unit();
        TextTable table = TextTable.titled(criterion.toString())
                .with("result", literalResult().word().replace('-', ' '));
        if (comparedRateText(unit).isPresent()) {
            table = table.with("compared rate", comparedRateText(unit).get());
        }
        table = table.with("confirmed", isConfirmed() ? "yes" : "no").with("locations", locationsText());
        if (areaShare().isPresent()) {
            table = table.with("area", areaShare().get().area());
        }
        for (String reason : reasons()) {
            table = table.with("not confirmed because", reason);
        }
        for (String text : notes()) {
            table = table.with("note", text);
        }
        return additionalLocationCount().isPresent()
                ? table.with("additional locations", planned()).toString()
                : table.toString();
    }

    private String planned() {
        String cautious = additionalLocationCountConservative().isPresent()
                ? " (" + additionalLocationCountConservative().getAsInt()
                        + " if the scatter is at its upper 80 % limit)"
                : "";
        return "about " + additionalLocationCount().getAsInt() + cautious;
    }
}
