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

/** What maintenance did to the surfaces of a review, and how their rates went between. */
final class HistoryJson {

    private final Review review;
    private final JsonFields members;

    HistoryJson(Review review, JsonFields members) {
        this.review = review;
        this.members = members;
    }

    /** The members {@code comparisons} and {@code trends}, where the book has them. */
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
                "maintenance",
                each.maintenance().stream()
                        .map(Maintenance::id)
                        .filter(Objects::nonNull)
                        .toList());
        members.object("before", () -> visit(each.before()));
        members.object("after", () -> visit(each.after()));
        members.texts("locations", each.locations());
        if (!each.locations().isEmpty()) {
            comparison(each.comparison());
            members.list("passing", review.specification().criteria(), criterion -> passing(criterion, each));
        }
        each.recovery()
                .ifPresent(recovery -> members.object("recovery", () -> {
                    members.number("value", recovery.share());
                    members.limits(recovery.interval(Interval.LEVEL));
                    members.text("new", each.fresh().map(VisitAt::subject).orElse(null));
                }));
        members.texts("says", each.says());
    }

    private void visit(VisitAt visit) {
        members.text("visit", visit.visit().id());
        members.date("date", visit.visit().date());
    }

    private void comparison(PairedComparison comparison) {
        members.ratio("ratio", comparison.ratio(Interval.LEVEL));
        members.ratio("typicalRatio", comparison.typicalRatio(Interval.LEVEL));
        members.count("higher", comparison.signTest().rises());
        members.count("lower", comparison.signTest().falls());
        members.number("p", comparison.p());
        members.text("tested", comparison.tested());
        members.text("concluded", comparison.concluded());
    }

    private void passing(Criterion criterion, BeforeAfter each) {
        McNemar change = each.passing(criterion);
        members.text("criterion", criterion.toString());
        members.count("gained", change.gained());
        members.count("lost", change.lost());
        members.text("conclusion", change.conclusion().toString());
    }

    private void trend(SurfaceHistory history) {
        members.text("surface", history.surface().surface().id());
        members.text("figure", Figure.GEOMETRIC_MEAN.word());
        members.list("stretches", history.trend(Figure.GEOMETRIC_MEAN).stretches(), this::stretch);
        members.list("limits", review.specification().criteria(), criterion -> limit(history.reached(criterion)));
    }

    private void stretch(TrendPeriod stretch) {
        members.list("points", stretch.points(), this::point);
        LogTrend trend = stretch.trend();
        members.ratio("factorAYear", trend.factorAYear(Interval.LEVEL));
        members.ratio("typicalFactorAYear", trend.typicalFactorAYear(Interval.LEVEL));
        MannKendall test = trend.mannKendall();
        members.text("conclusion", test.conclusion().toString());
        if (test.conclusion() != Conclusion.CANNOT_TELL) {
            members.number("p", test.p());
        }
        members.text("fitsBetter", trend.rival().map(TrendModel::toString).orElse(null));
        members.texts("says", stretch.says());
    }

    private void point(DatedRate point) {
        members.date("date", point.date());
        members.outcome("rate", point.outcome());
    }

    private void limit(LimitReached each) {
        members.text("criterion", each.criterion().toString());
        members.text("figure", each.figure() == null ? null : each.figure().word());
        if (each.crossing() instanceof LimitDate.Expected given) {
            members.date("expected", given.expected());
            members.date("earliest", given.earliest());
            members.date("latest", given.latest());
            members.number("level", given.level());
            members.texts("says", given.says());
        } else if (each.crossing() instanceof LimitDate.NotGiven none) {
            members.texts("says", none.says());
        }
        members.date("nextTest", each.nextDay());
        if (each.nextTestRisk() != null) {
            members.number("nextTestRisk", each.nextTestRisk());
            members.flag("testNow", each.isTestNow());
        }
    }
}
