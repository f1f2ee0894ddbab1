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
 * A surface over the years: what it came to at each visit, what maintenance did, how its rate went between.
 *
 * <p>Visits without a date or without any figure are left out, and so are training visits. Figures start anew at each maintenance of the surface or of
 * part of it, and at a visit that was made after a maintenance of which the book has no entry. A visit on the very day of a
 * maintenance counts as made after it unless its first test was begun before the maintenance was finished.
 */
public final class SurfaceHistory {

    /** Said where locations were chosen otherwise than at random or by zones of known area. */
    static final String SPOTS_ALONE = "the locations do not stand for the surface: said of these spots alone";

    private final Review review;
    private final SurfaceAt surface;
    private final Timeline timeline;

    private SurfaceHistory(Review review, SurfaceAt surface, Timeline timeline) {
        this.review = review;
        this.surface = surface;
        this.timeline = timeline;
    }

    /** The figure of a surface that is followed. */
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
         * {@return the figure that comes to a criterion's limit, empty where the criterion is not about one}
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
                    && row.restOn() > 0
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

    /** {@return the criteria that it is judged by, as those of the review} */
    public Specification specification() {
        return review.specification();
    }

    /** {@return its visits with a date and a figure, earliest first} */
    public List<SurfaceRate> visits() {
        return timeline.visits();
    }

    /** {@return its visits from one maintenance to the next, earliest first} */
    public List<List<SurfaceRate>> stretches() {
        return timeline.stretches();
    }

    /**
     * {@return how a figure of the surface went, from one maintenance to the next}
     *
     * @param figure the figure
     */
    public Trend trend(Figure figure) {
        List<String> notes = standsThroughout() ? List.of() : List.of(SPOTS_ALONE);
        Trend plain = trend(row -> Stream.of(dated(row, figure.of(row), locations(row))));
        return new Trend(
                plain.stretches().stream().map(each -> each.knowing(notes)).toList());
    }

    private boolean standsThroughout() {
        return visits().stream().allMatch(row -> stands(review, row.visit()));
    }

    static boolean stands(Review review, VisitAt visit) {
        return review.summary(visit).sample().isRepresentative();
    }

    /** {@return ids of the entries of maintenance of which no day is recorded}, which may lie anywhere between the visits */
    List<String> undated() {
        return timeline.undated();
    }

    /**
     * {@return how the rate of one location went, from one maintenance of the surface to the next}
     *
     * @param location id of the location
     */
    public Trend trend(String location) {
        return trend(row -> review.locations(row.visit()).stream()
                .filter(each -> each.location().equals(location))
                .map(each -> dated(row, each.outcome(), location)));
    }

    private Trend trend(Function<SurfaceRate, Stream<DatedRate>> points) {
        return new Trend(stretches().stream()
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

    /** The locations that a figure rests on, named in one way. */
    private String locations(SurfaceRate row) {
        return review.locations(row.visit()).stream()
                .filter(location -> location.outcome().figure().isPresent())
                .map(LocationRate::location)
                .sorted()
                .collect(Collectors.joining("\n"));
    }

    /** {@return what each maintenance did: the last visit before it against the first after it} */
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
     * {@return when the surface comes to the limit of a criterion, or why there is no date}
     *
     * @param criterion the criterion
     */
    public LimitReached reached(Criterion criterion) {
        return LimitReached.of(this, criterion, review.specification().nextTestRisk());
    }
}
