// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.review;

import dev.infiltration.check.VisitAt;
import dev.infiltration.statistics.Interval;
import dev.infiltration.summary.Criterion;
import dev.infiltration.trend.Crossing;
import dev.infiltration.trend.Stretch;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * When a surface comes to the limit of a criterion, judged by the visits since its last maintenance.
 *
 * @param criterion the criterion
 * @param figure    the figure that is followed; null where the criterion is not about one
 * @param crossing  the day, or why there is none
 * @param nextDay   the day by which to test next at the specification's risk; null where none is named or can be given
 */
public record LimitReached(
        Criterion criterion,
        SurfaceHistory.@Nullable Figure figure,
        Crossing crossing,
        @Nullable LocalDate nextDay) {

    static LimitReached of(SurfaceHistory history, Criterion criterion, @Nullable Double risk) {
        Optional<SurfaceHistory.Figure> figure = SurfaceHistory.Figure.of(criterion);
        if (figure.isEmpty()) {
            return none(criterion, "no single figure is compared with the limit");
        }
        if (!criterion.relation().isFloor()) {
            return none(criterion, "the limit is one from above");
        }
        VisitAt last = history.visits().get(history.visits().size() - 1).visit();
        boolean isRefused =
                !last.method().map(method -> method.isNamed(criterion.method())).orElse(false);
        if (isRefused && criterion.how() == null) {
            return none(criterion, "refused: the limit belongs to " + criterion.method());
        }
        return of(history, criterion, figure.get(), risk);
    }

    private static LimitReached none(Criterion criterion, String why) {
        return new LimitReached(criterion, null, new Crossing.NotGiven(List.of(why)), null);
    }

    private static LimitReached of(
            SurfaceHistory history, Criterion criterion, SurfaceHistory.Figure figure, @Nullable Double risk) {
        if (!history.undated().isEmpty()) {
            String entries = String.join(", ", history.undated());
            return none(
                    criterion, "no day is recorded of the maintenance " + entries + ": the rate may have started anew");
        }
        List<Stretch> stretches = history.trend(figure).stretches();
        if (stretches.isEmpty()) {
            return none(criterion, "no visit has the figure");
        }
        Stretch now = stretches.get(stretches.size() - 1);
        InfiltrationRate limit = new InfiltrationRate(criterion.limit().in(FieldUnit.MILLIMETRE_PER_HOUR));
        LocalDate next = risk == null ? null : now.nextTest(limit, risk).orElse(null);
        return new LimitReached(criterion, figure, now.crossing(limit, Interval.LEVEL), next);
    }

    /** {@return the day by which to test next, where one is named} */
    public Optional<LocalDate> nextTest() {
        return Optional.ofNullable(nextDay);
    }
}
