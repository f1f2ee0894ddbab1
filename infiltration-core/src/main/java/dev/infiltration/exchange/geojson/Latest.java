// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.geojson;

import dev.infiltration.check.VisitAt;
import dev.infiltration.review.Review;
import dev.infiltration.review.VisitDecision;
import dev.infiltration.summary.LocationRate;
import dev.infiltration.summary.SurfaceRate;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The latest row of every location and surface; a visit without a date is earlier than any with one. */
final class Latest {

    private static final Comparator<VisitAt> BY_DATE = Comparator.comparing(
            visit -> Objects.requireNonNullElse(visit.visit().date(), LocalDate.MIN));

    private final Map<List<@Nullable String>, LocationRate> locations = new HashMap<>();
    private final Map<@Nullable String, SurfaceRate> surfaces = new HashMap<>();
    private final List<VisitDecision> decisions;

    Latest(Review review) {
        decisions = review.decisions();
        review.locations()
                .forEach(row -> locations.merge(
                        key(row.visit().visit().surface(), row.location()), row, later(LocationRate::visit)));
        review.surfaces().forEach(row -> surfaces.merge(row.visit().visit().surface(), row, later(SurfaceRate::visit)));
    }

    private static List<@Nullable String> key(@Nullable String surface, @Nullable String location) {
        return Arrays.asList(surface, location);
    }

    private static <T> BinaryOperator<T> later(Function<T, VisitAt> visit) {
        return (one, other) -> BY_DATE.compare(visit.apply(one), visit.apply(other)) > 0 ? one : other;
    }

    Optional<LocationRate> location(@Nullable String surface, @Nullable String location) {
        return Optional.ofNullable(locations.get(key(surface, location)));
    }

    Optional<SurfaceRate> surface(@Nullable String surface) {
        return Optional.ofNullable(surfaces.get(surface));
    }

    List<VisitDecision> decisions(VisitAt visit) {
        return decisions.stream().filter(each -> each.visit() == visit).toList();
    }
}
