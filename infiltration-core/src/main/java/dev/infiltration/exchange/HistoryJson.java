// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.exchange;

import dev.infiltration.check.VisitAt;
import dev.infiltration.compare.PairedComparison;
import dev.infiltration.field.Maintenance;
import dev.infiltration.review.BeforeAfter;
import dev.infiltration.review.LimitReached;
import dev.infiltration.review.Review;
import dev.infiltration.review.SurfaceHistory;
import dev.infiltration.review.SurfaceHistory.Figure;
import dev.infiltration.statistics.Conclusion;
import dev.infiltration.statistics.Interval;
import dev.infiltration.statistics.MannKendall;
import dev.infiltration.statistics.McNemar;
import dev.infiltration.summary.Criterion;
import dev.infiltration.trend.DatedRate;
import dev.infiltration.trend.LimitDate;
import dev.infiltration.trend.LogTrend;
import dev.infiltration.trend.TrendModel;
import dev.infiltration.trend.TrendPeriod;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** Writes the effect of maintenance on the surfaces of a review and the trends of their rates. */
final class HistoryJson {

    private final Review review;
    private final JsonFields members;

    HistoryJson(Review review, JsonFields members) {
        this.review = review;
        this.members = members;
    }

    /** The keys {@code comparisons} and {@code trends}, if the field book has data for them. */
    void histories() {
        List<SurfaceHistory> histories = review.histories();
        members.list(
                "comparisons",
                histories.stream()
                        .flatMap(history -> history.beforeAfter().stream())
                        .toList(),
                this::comparison);
        members.list(
                "trends",
                histories.stream()
                        .filter(history -> history.visits().size() > 1)
                        .toList(),
                this::trend);
    }

    private void comparison(BeforeAfter each) {
        members.text("surface", each.before().visit().surface());
        members.texts(
                "maintenanceIds",
                each.maintenance().stream()
                        .map(Maintenance::id)
                        .filter(Objects::nonNull)
                        .toList());
        members.object("before", () -> visit(each.before()));
        members.object("after", () -> visit(each.after()));
        members.texts("locations", each.locations());
        if (!each.locations().isEmpty()) {
            comparison(each.comparison());
            members.list("passingChanges", review.specification().criteria(), criterion -> passing(criterion, each));
        }
        each.recovery()
                .ifPresent(recovery -> members.object("recovery", () -> {
                    members.number("value", recovery.share());
                    members.limits(recovery.interval(Interval.LEVEL));
                    members.text(
                            "referenceVisit",
                            each.referenceVisit().map(VisitAt::subject).orElse(null));
                }));
        members.texts("notes", notes(each));
    }

    /** The notes of the comparison of rates are absent where no location is compared. */
    private static List<String> notes(BeforeAfter each) {
        return each.locations().isEmpty()
                ? each.notes()
                : Stream.concat(each.notes().stream(), each.comparison().notes().stream())
                        .toList();
    }

    private void visit(VisitAt visit) {
        members.text("visit", visit.visit().id());
        members.date("date", visit.visit().date());
    }

    private void comparison(PairedComparison comparison) {
        members.ratio("geometricMeanRatio", comparison.ratio(Interval.LEVEL));
        members.ratio("hodgesLehmannRatio", comparison.hodgesLehmannRatio(Interval.LEVEL));
        members.count("increasedCount", comparison.signTest().rises());
        members.count("decreasedCount", comparison.signTest().falls());
        members.number("pValue", comparison.pValue());
        members.text("test", comparison.test());
        members.text("conclusion", comparison.conclusion().word());
    }

    private void passing(Criterion criterion, BeforeAfter each) {
        McNemar change = each.passing(criterion);
        members.text("criterionText", criterion.toString());
        members.count("gainedCount", change.gained());
        members.count("lostCount", change.lost());
        members.text("conclusion", change.conclusion().word());
    }

    private void trend(SurfaceHistory history) {
        members.text("surface", history.surface().surface().id());
        members.text("statistic", Figure.GEOMETRIC_MEAN.word());
        members.list("periods", history.trend(Figure.GEOMETRIC_MEAN).periods(), this::period);
        members.list("limitDates", review.specification().criteria(), criterion -> limit(history.reached(criterion)));
    }

    private void period(TrendPeriod period) {
        members.list("points", period.points(), this::point);
        LogTrend trend = period.trend();
        members.ratio("annualFactor", trend.annualFactor(Interval.LEVEL));
        members.ratio("theilSenAnnualFactor", trend.theilSenAnnualFactor(Interval.LEVEL));
        MannKendall test = trend.mannKendall();
        members.text("conclusion", test.conclusion().word());
        if (test.conclusion() != Conclusion.INSUFFICIENT_DATA) {
            members.number("pValue", test.pValue());
        }
        members.text(
                "alternativeModel",
                trend.alternativeModel().map(TrendModel::word).orElse(null));
        members.texts("notes", period.notes());
    }

    private void point(DatedRate point) {
        members.date("date", point.date());
        members.outcome("rate", point.outcome());
    }

    private void limit(LimitReached each) {
        members.text("criterionText", each.criterion().toString());
        members.text("statistic", each.figure() == null ? null : each.figure().word());
        if (each.crossing() instanceof LimitDate.Expected given) {
            members.date("expectedDate", given.expected());
            members.date("earliestDate", given.earliest());
            members.date("latestDate", given.latest());
            members.number("level", given.level());
            members.texts("notes", given.notes());
        } else if (each.crossing() instanceof LimitDate.NotGiven none) {
            members.texts("reasons", none.notes());
        }
        members.date("nextTestDate", each.nextDay());
        if (each.nextTestRisk() != null) {
            members.number("nextTestRisk", each.nextTestRisk());
            members.flag("testNow", each.isTestNow());
        }
    }
}
