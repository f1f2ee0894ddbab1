// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.check.VisitAt;
import dev.infiltration.field.ClockTime;
import dev.infiltration.field.Maintenance;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.review.BeforeAfter;
import dev.infiltration.review.Review;
import dev.infiltration.review.SurfaceHistory;
import dev.infiltration.review.SurfaceHistory.Figure;
import dev.infiltration.summary.Interval;
import dev.infiltration.summary.LocationRate;
import dev.infiltration.summary.SurfaceRate;
import dev.infiltration.trend.LineFit;
import dev.infiltration.trend.Stretch;
import dev.infiltration.units.InfiltrationRate;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What can be drawn of a surface over the years: its mean by visit, and each location before and after a maintenance. */
final class HistoryPlots {

    private static final double DAYS_A_YEAR = 365.25;
    private static final int STEPS = 24;

    private final Review review;
    private final SurfaceHistory history;
    private final VisitAt last;
    private final RateWords words;

    HistoryPlots(Review review, SurfaceHistory history) {
        this.review = review;
        this.history = history;
        this.last = history.visits().get(history.visits().size() - 1).visit();
        this.words = RateWords.of(last);
    }

    List<Plot> all() {
        List<Plot> all = new ArrayList<>();
        if (history.visits().size() > 1) {
            all.add(new HistoryPlot(
                    name() + ", mean rate by visit",
                    words.own(),
                    history.visits().stream().map(HistoryPlots::point).toList(),
                    cleanings(),
                    history.trend(Figure.MEAN).stretches().stream()
                            .flatMap(stretch -> fit(stretch).stream())
                            .toList(),
                    VisitPlots.limits(review, last)));
        }
        history.beforeAfter().forEach(each -> pairs(each).ifPresent(all::add));
        return all;
    }

    private String name() {
        return Printable.of(String.valueOf(history.surface().surface().id()));
    }

    private static HistoryPlot.Point point(SurfaceRate row) {
        LocalDate date = Objects.requireNonNull(row.visit().visit().date());
        return new HistoryPlot.Point(date, RateMark.of(Printable.of(row.visit().subject()), row.mean()));
    }

    private List<LocalDate> cleanings() {
        return history.beforeAfter().stream()
                .flatMap(each -> each.maintenance().stream())
                .flatMap(entry -> day(entry).stream())
                .distinct()
                .sorted()
                .toList();
    }

    /** {@return the day on which a maintenance was done, where the book has one} */
    static Optional<LocalDate> day(Maintenance entry) {
        ClockTime done = entry.end() == null ? entry.start() : entry.end();
        return Optional.ofNullable(done).map(time -> time.dateTime().toLocalDate());
    }

    private static Optional<HistoryPlot.Fit> fit(Stretch stretch) {
        return stretch.trend().line().map(line -> {
            boolean hasBand = line.nextAt(0, Interval.LEVEL).isPresent();
            return new HistoryPlot.Fit(hasBand ? Interval.LEVEL : Double.NaN, steps(stretch, line));
        });
    }

    private static List<HistoryPlot.Step> steps(Stretch stretch, LineFit line) {
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
                        band.map(Interval::low).map(HistoryPlots::rate).orElse(null),
                        band.map(Interval::high).map(HistoryPlots::rate).orElse(null)));
    }

    private static @Nullable InfiltrationRate rate(double millimetresPerHour) {
        return Double.isFinite(millimetresPerHour) ? new InfiltrationRate(millimetresPerHour) : null;
    }

    private Optional<Plot> pairs(BeforeAfter change) {
        List<PairPlot.Pair> pairs = Stream.concat(
                        change.locations().stream(),
                        locations(change.before())
                                .filter(name -> !change.locations().contains(name)))
                .flatMap(name -> pair(change, name).stream())
                .toList();
        return pairs.isEmpty()
                ? Optional.empty()
                : Optional.of(new PairPlot(
                        name() + ", before and after maintenance",
                        words.own(),
                        when(change.before()),
                        when(change.after()),
                        pairs,
                        VisitPlots.limits(review, last)));
    }

    private Stream<String> locations(VisitAt visit) {
        return review.locations(visit).stream().map(LocationRate::location);
    }

    private Optional<PairPlot.Pair> pair(BeforeAfter change, String name) {
        Optional<RateMark> before = mark(change.before(), name);
        Optional<RateMark> after = mark(change.after(), name);
        return before.isEmpty() || after.isEmpty()
                ? Optional.empty()
                : Optional.of(new PairPlot.Pair(before.get(), after.get()));
    }

    private Optional<RateMark> mark(VisitAt visit, String name) {
        return review.locations(visit).stream()
                .filter(row -> row.location().equals(name) && !(row.outcome() instanceof RateOutcome.Withheld))
                .findFirst()
                .map(row -> RateMark.of(Printable.of(name), row.outcome()));
    }

    private static String when(VisitAt visit) {
        return Printable.of(visit.subject()) + ", " + visit.visit().date();
    }
}
