// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.check.VisitAt;
import dev.infiltration.compare.PairedComparison;
import dev.infiltration.compare.Ratio;
import dev.infiltration.field.ClockTime;
import dev.infiltration.field.Maintenance;
import dev.infiltration.review.BeforeAfter;
import dev.infiltration.review.LimitReached;
import dev.infiltration.review.Review;
import dev.infiltration.review.SurfaceHistory;
import dev.infiltration.review.SurfaceHistory.Figure;
import dev.infiltration.statistics.Interval;
import dev.infiltration.trend.LimitDate;
import dev.infiltration.trend.TrendPeriod;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The history of a surface in lines of text: rates before and after maintenance, and trends between. */
final class HistoryText {

    private static final String BESIDE = "    ";

    private final Review review;

    HistoryText(Review review) {
        this.review = review;
    }

    /** {@return the lines of a surface; none where it was visited once} */
    List<String> lines(SurfaceHistory history) {
        List<String> lines = new ArrayList<>();
        history.beforeAfter().forEach(each -> lines.addAll(lines(each)));
        List<TrendPeriod> periods = history.trend(Figure.GEOMETRIC_MEAN).periods().stream()
                .filter(HistoryText::hasTwoDates)
                .toList();
        periods.forEach(period -> lines.addAll(lines(period)));
        if (!periods.isEmpty()) {
            review.specification().criteria().forEach(criterion -> lines.addAll(lines(history.reached(criterion))));
        }
        return lines;
    }

    private static boolean hasTwoDates(TrendPeriod period) {
        return period.trend().line().isPresent();
    }

    private static List<String> lines(BeforeAfter each) {
        List<String> lines = new ArrayList<>();
        lines.add("Before and after" + maintenance(each.maintenance()) + ": " + visit(each.before()) + " and "
                + visit(each.after()));
        if (!each.locations().isEmpty()) {
            lines.addAll(lines(each.comparison()));
        }
        each.recovery()
                .ifPresent(recovery ->
                        lines.add(BESIDE + "Recovery of the lost rate: " + HistoryWords.recovery(recovery)));
        each.notes().forEach(note -> lines.add(BESIDE + "Note: " + note));
        return lines;
    }

    private static List<String> lines(PairedComparison comparison) {
        return List.of(
                BESIDE + "Ratio of geometric means over " + comparison.pairs()
                        + (comparison.pairs() == 1 ? " location: " : " locations: ")
                        + ratio(comparison.ratio(Interval.LEVEL)),
                BESIDE + "Test: " + comparison.test(),
                BESIDE + "Conclusion: " + comparison.conclusionText());
    }

    private static String ratio(Optional<Ratio> ratio) {
        return ratio.map(value -> value + (value.interval().isPresent() ? "" : ", too few for an interval"))
                .orElse("not given, a rate is zero");
    }

    private static String maintenance(List<Maintenance> entries) {
        return entries.isEmpty()
                ? " maintenance"
                : entries.stream().map(HistoryText::maintenance).collect(Collectors.joining(" and ", " ", ""));
    }

    private static String maintenance(Maintenance entry) {
        ClockTime done = entry.end() == null ? entry.start() : entry.end();
        String what = entry.technique() == null ? "maintenance" : entry.technique();
        String which = entry.id() == null ? "" : entry.id() + ", ";
        return which + what + (done == null ? "" : ", " + done.dateTime().toLocalDate());
    }

    private static String visit(VisitAt visit) {
        return visit.subject() + " of " + visit.visit().date();
    }

    private static List<String> lines(TrendPeriod period) {
        String dates = period.points().get(0).date() + " to "
                + period.points().get(period.points().size() - 1).date();
        List<String> lines = new ArrayList<>();
        lines.add("Trend of the geometric mean, " + dates + ", "
                + period.points().size() + " visits: annual factor "
                + ratio(period.trend().annualFactor(Interval.LEVEL)));
        lines.add(BESIDE + "Mann–Kendall test: " + period.trend().mannKendall().conclusion());
        period.notes().forEach(note -> lines.add(BESIDE + "Note: " + note));
        return lines;
    }

    private static List<String> lines(LimitReached each) {
        String limit = each.criterion() + ": ";
        if (each.crossing() instanceof LimitDate.Expected given) {
            List<String> lines = new ArrayList<>();
            lines.add("Expected date at the limit, " + limit + HistoryWords.date(given));
            given.notes().forEach(note -> lines.add(BESIDE + "Note: " + note));
            each.nextTestText().ifPresent(words -> lines.add(BESIDE + words));
            return lines;
        }
        return each.crossing() instanceof LimitDate.NotGiven none
                ? List.of("No date for " + limit + String.join("; ", none.notes()))
                : List.of();
    }
}
