// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.review;

import dev.infiltration.check.VisitAt;
import dev.infiltration.statistics.Interval;
import dev.infiltration.statistics.TextTable;
import dev.infiltration.summary.Criterion;
import dev.infiltration.trend.LimitDate;
import dev.infiltration.trend.TrendPeriod;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Date at which a surface is expected at the limit of a criterion, from the visits since its last maintenance.
 *
 * @param criterion the criterion
 * @param figure    the estimate that is followed; null where the criterion compares none
 * @param crossing  the expected date, or the reasons for none
 * @param nextDay   the day by which to test next at the specification's risk; null where none is named or can be given
 * @param nextTestRisk the risk, above 0 and below 0.5, that a test on that day is below the limit; null without a day
 * @param isTestNow whether that risk was already exceeded at the last test, so that the next test is due now
 */
public record LimitReached(
        Criterion criterion,
        SurfaceHistory.@Nullable Figure figure,
        LimitDate crossing,
        @Nullable LocalDate nextDay,
        @Nullable Double nextTestRisk,
        boolean isTestNow) {

    static LimitReached of(SurfaceHistory history, Criterion criterion, @Nullable Double risk) {
        Optional<SurfaceHistory.Figure> figure = SurfaceHistory.Figure.of(criterion);
        if (figure.isEmpty()) {
            return none(criterion, "no single figure is compared with the limit");
        }
        if (!criterion.relation().isFloor()) {
            return none(criterion, "dates are computed for lower limits only");
        }
        VisitAt last = history.visits().get(history.visits().size() - 1).visit();
        boolean isRefused =
                !last.method().map(method -> method.isNamed(criterion.method())).orElse(false);
        if (isRefused && criterion.otherMethodJustification() == null) {
            return none(
                    criterion,
                    "the limit applies to method " + criterion.method() + "; the last visit used another method");
        }
        return of(history, criterion, figure.get(), risk);
    }

    private static LimitReached none(Criterion criterion, String why) {
        return new LimitReached(criterion, null, new LimitDate.NotGiven(List.of(why)), null, null, false);
    }

    private static LimitReached of(
            SurfaceHistory history, Criterion criterion, SurfaceHistory.Figure figure, @Nullable Double risk) {
        if (!history.undated().isEmpty()) {
            String entries = String.join(", ", history.undated());
            return none(criterion, "maintenance " + entries + " has no date and may have reset the rate");
        }
        List<TrendPeriod> periods = history.trend(figure).periods();
        if (periods.isEmpty()) {
            return none(criterion, "no visit has this estimate");
        }
        TrendPeriod now = periods.get(periods.size() - 1);
        InfiltrationRate limit = new InfiltrationRate(criterion.limit().in(FieldUnit.MILLIMETRE_PER_HOUR));
        LocalDate next = risk == null ? null : now.nextTest(limit, risk).orElse(null);
        LocalDate last = now.points().get(now.points().size() - 1).date();
        return new LimitReached(
                criterion,
                figure,
                now.crossing(limit, Interval.LEVEL),
                next,
                next == null ? null : risk,
                next != null && !next.isAfter(last));
    }

    /** {@return when to test next and the risk accepted, for people; empty where no day is given} */
    public Optional<String> nextTestText() {
        return nextTest()
                .map(day -> isTestNow
                        ? "Test again now: the accepted risk was already exceeded at the last test"
                        : "Test again by " + day + " (accepted risk " + risk() + " of a test below the limit)");
    }

    private String risk() {
        return nextTestRisk == null ? "" : TextTable.number(100 * nextTestRisk) + " %";
    }

    /** {@return the day by which to test next, where one is named} */
    public Optional<LocalDate> nextTest() {
        return Optional.ofNullable(nextDay);
    }
}
