// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.review;

import dev.infiltration.check.SurfaceAt;
import dev.infiltration.check.VisitAt;
import dev.infiltration.field.JsonName;
import dev.infiltration.field.Maintenance;
import dev.infiltration.method.TestMethod;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.summary.Criterion;
import dev.infiltration.summary.LocationRate;
import dev.infiltration.summary.Specification;
import dev.infiltration.summary.SurfaceRate;
import dev.infiltration.trend.DatedRate;
import dev.infiltration.trend.Trend;
import dev.infiltration.trend.TrendPeriod;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * History of a surface: its result at each visit, the effect of maintenance, and the trends between.
 *
 * <p>Visits without a date, visits without any rate or bound, and training visits are excluded. A new period starts at each
 * maintenance of the surface or of part of it, and at a visit after maintenance that has no entry in the book. A visit on the day
 * of a maintenance is after it, unless its first test started before the maintenance was finished.
 */
public final class SurfaceHistory {

    /** Note for locations that were not selected at random or in zones of known area. */
    static final String THESE_LOCATIONS =
            "the locations are not representative of the surface: the result applies to these locations only";

    private final Review review;
    private final SurfaceAt surface;
    private final Timeline timeline;

    private SurfaceHistory(Review review, SurfaceAt surface, Timeline timeline) {
        this.review = review;
        this.surface = surface;
        this.timeline = timeline;
    }

    /** The estimate of a surface that a history follows. */
    public enum Figure implements JsonName {
        /** The arithmetic mean of the locations. */
        MEAN,
        /** The geometric mean of the locations. */
        GEOMETRIC_MEAN,
        /** The median of the locations. */
        MEDIAN,
        /** The lowest of the locations. */
        MINIMUM;

        /**
         * {@return the figure at a visit}
         *
         * @param surface the row of the visit
         */
        public RateOutcome of(SurfaceRate surface) {
            return switch (this) {
                case MEAN -> surface.mean();
                case GEOMETRIC_MEAN -> surface.geometricMean();
                case MEDIAN -> surface.median();
                case MINIMUM -> surface.minimum();
            };
        }

        /**
         * {@return the estimate that a criterion compares with its limit; empty where it compares none}
         *
         * @param criterion the criterion
         */
        public static Optional<Figure> of(Criterion criterion) {
            return switch (criterion.type()) {
                case MEAN -> Optional.of(MEAN);
                case GEOMETRIC_MEAN -> Optional.of(GEOMETRIC_MEAN);
                case MEDIAN -> Optional.of(MEDIAN);
                case EVERY_LOCATION -> Optional.of(MINIMUM);
                case SHARE_OF_LOCATIONS, CONFIDENCE_BOUND -> Optional.empty();
            };
        }
    }

    static List<SurfaceHistory> of(Review review) {
        Map<SurfaceAt, List<SurfaceRate>> visits = new LinkedHashMap<>();
        for (SurfaceRate row : review.surfaces()) {
            if (row.visit().visit().date() != null
                    && row.usedCount() > 0
                    && !row.visit().isTraining()) {
                row.visit()
                        .surface()
                        .ifPresent(surface -> visits.computeIfAbsent(surface, key -> new ArrayList<>())
                                .add(row));
            }
        }
        Map<String, List<Maintenance>> maintenance = review.book().maintenance().stream()
                .filter(entry -> entry.surface() != null)
                .collect(Collectors.groupingBy(entry -> String.valueOf(entry.surface())));
        List<SurfaceHistory> histories = new ArrayList<>();
        visits.forEach((surface, rows) -> {
            String id = String.valueOf(surface.surface().id());
            Timeline timeline = new Timeline(maintenance.getOrDefault(id, List.of()), rows);
            histories.add(new SurfaceHistory(review, surface, timeline));
        });
        return histories;
    }

    /** {@return the surface} */
    public SurfaceAt surface() {
        return surface;
    }

    /** {@return the criteria and actions of the review} */
    public Specification specification() {
        return review.specification();
    }

    /** {@return its visits with a date and a rate or a bound, earliest first} */
    public List<SurfaceRate> visits() {
        return timeline.visits();
    }

    /** {@return its visits from one maintenance to the next, earliest first} */
    public List<List<SurfaceRate>> periods() {
        return timeline.periods();
    }

    /**
     * {@return the trend of an estimate of the surface, one period from each maintenance to the next}
     *
     * @param figure the figure
     */
    public Trend trend(Figure figure) {
        List<String> notes = isRepresentativeThroughout() ? List.of() : List.of(THESE_LOCATIONS);
        Trend plain = trend(row -> Stream.of(dated(row, figure.of(row), locations(row))));
        return new Trend(
                plain.periods().stream().map(each -> each.withNotes(notes)).toList());
    }

    private boolean isRepresentativeThroughout() {
        return visits().stream().allMatch(row -> isRepresentative(review, row.visit()));
    }

    static boolean isRepresentative(Review review, VisitAt visit) {
        return review.summary(visit).sample().isRepresentative();
    }

    /** {@return ids of the entries of maintenance of which no day is recorded}, which may lie anywhere between the visits */
    List<String> undated() {
        return timeline.undated();
    }

    /**
     * {@return the trend of one location, one period from each maintenance of the surface to the next}
     *
     * @param location id of the location
     */
    public Trend trend(String location) {
        return trend(row -> review.locations(row.visit()).stream()
                .filter(each -> each.location().equals(location))
                .map(each -> dated(row, each.outcome(), location)));
    }

    private Trend trend(Function<SurfaceRate, Stream<DatedRate>> points) {
        return new Trend(periods().stream()
                .map(rows -> TrendPeriod.of(rows.stream().flatMap(points).toList()))
                .filter(stretch -> !stretch.points().isEmpty())
                .toList());
    }

    private static DatedRate dated(SurfaceRate row, RateOutcome outcome, String where) {
        VisitAt visit = row.visit();
        return new DatedRate(Timeline.dateOf(visit), outcome, methodOf(visit), where);
    }

    static String methodOf(VisitAt visit) {
        return visit.method()
                .map(TestMethod::id)
                .orElse("unknown method " + visit.visit().method());
    }

    /** The ids of the locations that an estimate uses, sorted. */
    private String locations(SurfaceRate row) {
        return review.locations(row.visit()).stream()
                .filter(location -> location.outcome().figure().isPresent())
                .map(LocationRate::location)
                .sorted()
                .collect(Collectors.joining("\n"));
    }

    /** {@return the comparison of the last visit before each maintenance with the first after it} */
    public List<BeforeAfter> beforeAfter() {
        List<SurfaceRate> all = visits();
        return Stream.iterate(1, i -> i < all.size(), i -> i + 1)
                .filter(i ->
                        timeline.isNewStart(all.get(i - 1).visit(), all.get(i).visit()))
                .map(i -> beforeAfter(all.get(i - 1), all.get(i)))
                .toList();
    }

    private BeforeAfter beforeAfter(SurfaceRate before, SurfaceRate after) {
        VisitAt first = visits().get(0).visit();
        return BeforeAfter.of(
                review,
                timeline.between(before.visit(), after.visit()),
                new BeforeAfter.Visits(before.visit(), after.visit(), first == before.visit() ? null : first));
    }

    /**
     * {@return the date at which the surface is expected at the limit of a criterion, or the reasons for none}
     *
     * @param criterion the criterion
     */
    public LimitReached reached(Criterion criterion) {
        return LimitReached.of(this, criterion, review.specification().nextTestRisk());
    }
}
