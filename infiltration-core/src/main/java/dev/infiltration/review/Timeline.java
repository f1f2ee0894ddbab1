// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.review;

import dev.infiltration.check.TestAt;
import dev.infiltration.check.VisitAt;
import dev.infiltration.field.ClockTime;
import dev.infiltration.field.Maintenance;
import dev.infiltration.field.Visit;
import dev.infiltration.summary.SurfaceRate;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The visits of a surface in order of time, and its maintenance between them. */
final class Timeline {

    private final List<Maintenance> maintenance;
    private final List<SurfaceRate> visits;

    /**
     * @param maintenance the maintenance of the surface
     * @param visits      dated visits, in the order of the book
     */
    Timeline(List<Maintenance> maintenance, List<SurfaceRate> visits) {
        this.maintenance = maintenance;
        this.visits = visits.stream()
                .sorted(Comparator.comparing((SurfaceRate each) -> dateOf(each.visit()))
                        .thenComparing(each -> firstStart(each.visit()).orElse(LocalDateTime.MIN)))
                .toList();
    }

    List<SurfaceRate> visits() {
        return visits;
    }

    /** The visits from one maintenance to the next. */
    List<List<SurfaceRate>> periods() {
        List<List<SurfaceRate>> periods = new ArrayList<>();
        @Nullable SurfaceRate last = null;
        for (SurfaceRate visit : visits) {
            if (last == null || isNewStart(last.visit(), visit.visit())) {
                periods.add(new ArrayList<>());
            }
            periods.get(periods.size() - 1).add(visit);
            last = visit;
        }
        return periods;
    }

    /** Whether maintenance lies between two visits, or the purpose of the later one states it. */
    boolean isNewStart(VisitAt earlier, VisitAt later) {
        boolean isSaid = later.visit().purpose() == Visit.Purpose.AFTER_MAINTENANCE
                && earlier.visit().purpose() != Visit.Purpose.AFTER_MAINTENANCE;
        return isSaid || !between(earlier, later).isEmpty();
    }

    /** Entries of which no day is recorded. */
    List<String> undated() {
        return maintenance.stream()
                .filter(entry -> entry.start() == null && entry.end() == null)
                .map(entry -> String.valueOf(entry.id()))
                .toList();
    }

    /** The maintenance between two visits. */
    List<Maintenance> between(VisitAt earlier, VisitAt later) {
        return maintenance.stream()
                .filter(entry -> isAfter(later, entry) && !isAfter(earlier, entry))
                .toList();
    }

    /** Whether a visit saw what a maintenance had done; on the same day, unless its first test was begun before. */
    private static boolean isAfter(VisitAt visit, Maintenance entry) {
        ClockTime done = entry.end() == null ? entry.start() : entry.end();
        if (done == null) {
            return false;
        }
        LocalDate day = done.dateTime().toLocalDate();
        LocalDate date = dateOf(visit);
        return date.equals(day)
                ? firstStart(visit)
                        .filter(start -> start.isBefore(done.dateTime()))
                        .isEmpty()
                : date.isAfter(day);
    }

    static LocalDate dateOf(VisitAt visit) {
        @Nullable LocalDate date = visit.visit().date();
        return date == null ? LocalDate.MIN : date;
    }

    private static Optional<LocalDateTime> firstStart(VisitAt visit) {
        return visit.tests().stream()
                .flatMap(Timeline::starts)
                .map(ClockTime::dateTime)
                .min(Comparator.naturalOrder());
    }

    private static Stream<ClockTime> starts(TestAt test) {
        return Stream.concat(test.preWet().stream(), test.runs().stream())
                .flatMap(pouring -> Stream.ofNullable(pouring.pouring().start()));
    }
}
