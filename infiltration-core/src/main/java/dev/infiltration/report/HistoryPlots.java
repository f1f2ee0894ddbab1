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
import dev.infiltration.summary.LocationRate;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What can be drawn of a surface over the years: its mean by visit, and each location before and after a maintenance. */
final class HistoryPlots {

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
            all.add(HistoryPlot.of(history));
        }
        history.beforeAfter().forEach(each -> pairs(each).ifPresent(all::add));
        return all;
    }

    /** {@return the day on which a maintenance was done, where the book has one} */
    static Optional<LocalDate> day(Maintenance entry) {
        ClockTime done = entry.end() == null ? entry.start() : entry.end();
        return Optional.ofNullable(done).map(time -> time.dateTime().toLocalDate());
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
                        MeanHistory.name(history) + ", before and after maintenance",
                        words.own(),
                        when(change.before()),
                        when(change.after()),
                        pairs,
                        VisitPlots.limits(review.specification(), last)));
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
