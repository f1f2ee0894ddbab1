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
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The latest row with a rate or bound of every location and surface, or the latest row where none has one; and the latest
 * visit. A visit without a date is earlier than any with one. Training visits are excluded.
 */
final class Latest {

    private static final Comparator<VisitAt> BY_DATE = Comparator.comparing(
            visit -> Objects.requireNonNullElse(visit.visit().date(), LocalDate.MIN));

    private final Map<List<@Nullable String>, LocationRate> locations = new HashMap<>();
    private final Map<@Nullable String, SurfaceRate> surfaces = new HashMap<>();
    private final Map<List<@Nullable String>, VisitAt> visits = new HashMap<>();
    private final Map<VisitAt, List<VisitDecision>> decisions;

    Latest(Review review) {
        decisions = review.decisions().stream().collect(Collectors.groupingBy(VisitDecision::visit));
        review.locations().stream()
                .filter(row -> !row.visit().isTraining())
                .forEach(row -> locations.merge(
                        key(row.visit().visit().surface(), row.location()),
                        row,
                        later(
                                LocationRate::visit,
                                each -> each.outcome().figure().isPresent())));
        review.surfaces().stream().filter(row -> !row.visit().isTraining()).forEach(this::add);
    }

    private void add(SurfaceRate row) {
        VisitAt visit = row.visit();
        String surface = visit.visit().surface();
        surfaces.merge(surface, row, later(SurfaceRate::visit, each -> each.usedCount() > 0));
        visits.merge(Arrays.asList(surface), visit, later(each -> each, each -> true));
        visit.tests()
                .forEach(test ->
                        visits.merge(key(surface, test.test().location()), visit, later(each -> each, each -> true)));
    }

    private static List<@Nullable String> key(@Nullable String surface, @Nullable String location) {
        return Arrays.asList(surface, location);
    }

    private static <T> BinaryOperator<T> later(Function<T, VisitAt> visit, Predicate<T> hasFigure) {
        Comparator<T> figureFirst = Comparator.comparing(hasFigure::test);
        Comparator<T> order = figureFirst.thenComparing(visit, BY_DATE);
        return (one, other) -> order.compare(one, other) > 0 ? one : other;
    }

    Optional<LocationRate> location(@Nullable String surface, @Nullable String location) {
        return Optional.ofNullable(locations.get(key(surface, location)));
    }

    Optional<SurfaceRate> surface(@Nullable String surface) {
        return Optional.ofNullable(surfaces.get(surface));
    }

    /** {@return the latest visit to a surface} */
    Optional<VisitAt> visit(@Nullable String surface) {
        return Optional.ofNullable(visits.get(Arrays.asList(surface)));
    }

    /** {@return the latest visit that names a location, tested or not} */
    Optional<VisitAt> visit(@Nullable String surface, @Nullable String location) {
        return Optional.ofNullable(visits.get(key(surface, location)));
    }

    List<VisitDecision> decisions(VisitAt visit) {
        return decisions.getOrDefault(visit, List.of());
    }
}
