// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.check.VisitAt;
import dev.infiltration.review.SurfaceHistory;
import dev.infiltration.review.SurfaceHistory.Figure;
import dev.infiltration.statistics.Interval;
import dev.infiltration.statistics.LineFit;
import dev.infiltration.summary.SurfaceRate;
import dev.infiltration.trend.TrendPeriod;
import dev.infiltration.units.InfiltrationRate;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The mean of a surface by visit, with the days of its maintenance and what is fitted between them. */
final class MeanHistory {

    private static final double DAYS_A_YEAR = 365.25;
    private static final int STEPS = 24;

    private final SurfaceHistory history;

    MeanHistory(SurfaceHistory history) {
        this.history = history;
    }

    HistoryPlot plot() {
        List<SurfaceRate> visits = history.visits();
        VisitAt last = visits.get(visits.size() - 1).visit();
        return new HistoryPlot(
                name(history) + ", mean rate by visit",
                RateWords.of(last).own(),
                visits.stream().map(MeanHistory::point).toList(),
                cleanings(),
                history.trend(Figure.MEAN).periods().stream()
                        .flatMap(stretch -> fit(stretch).stream())
                        .toList(),
                VisitPlots.limits(history.specification(), last));
    }

    static String name(SurfaceHistory history) {
        return Printable.of(String.valueOf(history.surface().surface().id()));
    }

    private static HistoryPlot.Point point(SurfaceRate row) {
        LocalDate date = Objects.requireNonNull(row.visit().visit().date());
        return new HistoryPlot.Point(date, RateMark.of(Printable.of(row.visit().subject()), row.mean()));
    }

    private List<LocalDate> cleanings() {
        return history.beforeAfter().stream()
                .flatMap(each -> each.maintenance().stream())
                .flatMap(entry -> HistoryPlots.day(entry).stream())
                .distinct()
                .sorted()
                .toList();
    }

    private static Optional<HistoryPlot.Fit> fit(TrendPeriod stretch) {
        return stretch.trend().line().map(line -> {
            boolean hasBand = line.nextAt(0, Interval.LEVEL).isPresent();
            return new HistoryPlot.Fit(hasBand ? Interval.LEVEL : Double.NaN, steps(stretch, line));
        });
    }

    private static List<HistoryPlot.Step> steps(TrendPeriod stretch, LineFit line) {
        LocalDate first = stretch.points().get(0).date();
        LocalDate last = stretch.points().get(stretch.points().size() - 1).date();
        long days = ChronoUnit.DAYS.between(first, last);
        long apart = Math.max(1, days / STEPS);
        List<HistoryPlot.Step> steps = new ArrayList<>();
        for (long day = 0; day < days; day += apart) {
            step(first, day, line).ifPresent(steps::add);
        }
        step(first, days, line).ifPresent(steps::add);
        return steps;
    }

    private static Optional<HistoryPlot.Step> step(LocalDate first, long day, LineFit line) {
        double years = day / DAYS_A_YEAR;
        Optional<Interval> band = line.nextAt(years, Interval.LEVEL).map(Interval::exp);
        InfiltrationRate rate = rate(StrictMath.exp(line.at(years)));
        return rate == null
                ? Optional.empty()
                : Optional.of(new HistoryPlot.Step(
                        first.plusDays(day),
                        rate,
                        band.map(Interval::low).map(MeanHistory::rate).orElse(null),
                        band.map(Interval::high).map(MeanHistory::rate).orElse(null)));
    }

    private static @Nullable InfiltrationRate rate(double millimetresPerHour) {
        return Double.isFinite(millimetresPerHour) ? new InfiltrationRate(millimetresPerHour) : null;
    }
}
