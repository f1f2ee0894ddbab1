// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.exchange;

import dev.infiltration.check.VisitAt;
import dev.infiltration.review.Review;
import dev.infiltration.review.UnresolvedLocation;
import dev.infiltration.review.VisitAction;
import dev.infiltration.review.VisitDecision;
import dev.infiltration.statistics.Interval;
import dev.infiltration.summary.Criterion;
import dev.infiltration.summary.Decision;
import dev.infiltration.summary.LocationRate;
import dev.infiltration.summary.RateSummary;
import dev.infiltration.summary.Sample;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Writes the statistics of a surface and the decisions by the user's criteria. */
final class DecisionJson {

    /** Any number is suitable; a constant gives the same bytes for the same review. */
    private static final long SEED = 1;

    private final Review review;
    private final JsonFields members;

    DecisionJson(Review review, JsonFields members) {
        this.review = review;
        this.members = members;
    }

    /** The member {@code summary} of a surface's row, where it has an estimate. */
    void summary(VisitAt visit) {
        RateSummary summary = review.summary(visit);
        if (summary.values().length > 0) {
            members.object("summary", () -> summary(summary, visit));
        }
    }

    private void summary(RateSummary summary, VisitAt visit) {
        Sample sample = summary.sample();
        members.text(
                "selection",
                sample.selection() == null ? null : sample.selection().word());
        members.flag("representative", sample.isRepresentative());
        summary.areaWeightedMean().ifPresent(mean -> members.outcome("areaWeightedMean", mean));
        members.number("coefficientOfVariation", summary.cv());
        members.number("geometricCoefficientOfVariation", summary.geometricCv());
        members.rate(
                "surfaceGeometricMean", summary.surfaceGeometricMean(), summary.geometricMeanInterval(Interval.LEVEL));
        members.rate("surfaceMean", summary.surfaceMean(), summary.meanInterval(Interval.LEVEL));
        members.rate(
                "surfaceGeometricMeanBootstrap",
                OptionalDouble.empty(),
                summary.bootstrapInterval(Interval.LEVEL, SEED));
        summary.boundedFit()
                .ifPresent(fit -> members.rate(
                        "surfaceGeometricMeanCensored",
                        OptionalDouble.of(fit.geometricMean()),
                        Optional.of(fit.interval(Interval.LEVEL))));
        members.texts("outliers", outliers(summary, visit));
        members.texts("notes", summary.notes());
    }

    private List<String> outliers(RateSummary summary, VisitAt visit) {
        List<String> given = review.locations(visit).stream()
                .filter(location -> location.outcome().figure().isPresent())
                .map(LocationRate::location)
                .toList();
        return Arrays.stream(summary.outliers()).mapToObj(given::get).toList();
    }

    /** The keys {@code decisions} and {@code actions}, if there is a criterion. */
    void decisions() {
        members.list("decisions", review.decisions(), this::decision);
        members.list("actions", review.actions(), this::action);
    }

    private void visit(VisitAt visit) {
        members.text("visit", visit.visit().id());
        members.text("surface", visit.visit().surface());
        members.date("date", visit.visit().date());
    }

    private void decision(VisitDecision each) {
        visit(each.visit());
        Decision decision = each.decision();
        criterion(decision.criterion());
        members.text("literalResult", decision.literalResult().word());
        members.flag("confirmed", decision.isConfirmed());
        if (decision.isOpen()) {
            members.flag("open", true);
        }
        decision.comparedRate().ifPresent(outcome -> members.outcome("comparedRate", outcome));
        if (decision.literalResult() != Decision.LiteralResult.NOT_EVALUATED) {
            members.count("passingCount", decision.passing().passing());
            members.count("evaluatedCount", decision.passing().n());
            decision.areaShare()
                    .ifPresent(share -> members.number("passingAreaShareLowerBound", share.lowerBound(Interval.LEVEL)));
            members.count("undecidedCount", decision.undecidedCount());
        }
        members.texts("reasons", decision.reasons());
        members.texts("notes", decision.notes());
        members.count("additionalLocationCount", decision.additionalLocationCount());
        members.count("additionalLocationCountConservative", decision.additionalLocationCountConservative());
    }

    private void criterion(Criterion criterion) {
        members.object("criterion", () -> {
            members.text("text", criterion.toString());
            members.text("type", criterion.type().word());
            members.text("relation", criterion.relation().word());
            members.rate("limit", new InfiltrationRate(criterion.limit().in(FieldUnit.MILLIMETRE_PER_HOUR)));
            members.text("purpose", criterion.purpose().word());
            members.text("method", criterion.method());
            members.text("source", criterion.source());
            members.amount("roundingIncrement", criterion.roundingIncrement());
            members.number("requiredShare", criterion.requiredShare());
            members.number("level", criterion.level());
            members.text("otherMethodJustification", criterion.otherMethodJustification());
        });
    }

    private void action(VisitAction each) {
        visit(each.visit());
        each.choice()
                .ifPresentOrElse(
                        choice -> {
                            members.text("action", choice.action());
                            members.date("dueDate", choice.due());
                        },
                        () -> members.flag("open", true));
        members.flag("confirmed", each.isConfirmed());
        members.texts("conditions", each.conditions());
        members.list("unresolved", each.unresolved(), this::unresolved);
    }

    private void unresolved(UnresolvedLocation each) {
        members.text("location", each.location());
        members.texts("reasons", each.reasons());
    }
}
