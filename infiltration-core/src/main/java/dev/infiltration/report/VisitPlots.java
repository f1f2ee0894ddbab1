// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.check.TestAt;
import dev.infiltration.check.VisitAt;
import dev.infiltration.field.Location;
import dev.infiltration.field.Position;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.review.Review;
import dev.infiltration.summary.Criterion;
import dev.infiltration.summary.LocationRate;
import dev.infiltration.summary.Specification;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.quantity.Length;

/** What can be drawn of a visit: the rates of its locations, and where those lie. */
final class VisitPlots {

    private static final double LEVEL = 0.95;
    private static final double METRES_A_DEGREE = 111_320;

    private final Review review;
    private final VisitAt visit;
    private final RateWords words;
    private final List<RateMark> marks;

    VisitPlots(Review review, VisitAt visit) {
        this.review = review;
        this.visit = visit;
        this.words = RateWords.of(visit, review.specification());
        this.marks = review.locations(visit).stream().map(VisitPlots::mark).toList();
    }

    List<Plot> all() {
        List<Plot> all = new ArrayList<>();
        if (!marks.isEmpty()) {
            all.add(new RatePlot(title(), words.own(), marks, limits(review.specification(), visit)));
        }
        map().ifPresent(all::add);
        return all;
    }

    private String title() {
        String title = visit.subject() + ", " + visit.visit().surface() + ", "
                + visit.visit().date();
        return Printable.of(title);
    }

    private static RateMark mark(LocationRate row) {
        return new RateMark(
                Printable.of(row.location()),
                row.outcome(),
                row.uncertainty()
                        .filter(known -> row.hasEndPoint())
                        .map(known -> known.expanded(LEVEL))
                        .filter(half -> half > 0 && Double.isFinite(half))
                        .map(InfiltrationRate::new)
                        .orElse(null));
    }

    /** {@return the limits that a visit is held to} */
    static List<RateLimit> limits(Specification specification, VisitAt visit) {
        return RateWords.criteria(visit, specification)
                .map(VisitPlots::limit)
                .distinct()
                .toList();
    }

    private static RateLimit limit(Criterion criterion) {
        String words = shortForm(criterion) + " " + criterion.relation().symbol() + " " + criterion.limit();
        return new RateLimit(words, new InfiltrationRate(criterion.limit().in(FieldUnit.MILLIMETRE_PER_HOUR)));
    }

    private static String shortForm(Criterion criterion) {
        return switch (criterion.type()) {
            case MEAN -> "mean";
            case GEOMETRIC_MEAN -> "geo. mean";
            case MEDIAN -> "median";
            case EVERY_LOCATION -> "each";
            case SHARE_OF_LOCATIONS -> "share";
            case CONFIDENCE_BOUND -> "bound";
        };
    }

    private Map<String, Location> places() {
        Map<String, Location> places = new LinkedHashMap<>();
        for (TestAt test : visit.tests()) {
            String name = test.test().location();
            test.location().ifPresent(spot -> places.put(Printable.of(String.valueOf(name)), spot));
        }
        return places;
    }

    /** PlotRegistry where at least two locations have a place: on the surface's own grid, else by latitude and longitude. */
    private Optional<Plot> map() {
        Map<String, Location> places = places();
        Map<String, RateMark> marksByName = new LinkedHashMap<>();
        marks.forEach(mark -> marksByName.putIfAbsent(mark.label(), mark));
        List<MapPlot.Spot> onGrid = new ArrayList<>();
        List<MapPlot.Spot> onEarth = new ArrayList<>();
        FieldUnit<Length> unit = places.values().stream()
                .flatMap(spot -> Stream.ofNullable(spot.x()))
                .<FieldUnit<Length>>map(x -> x.unit())
                .findFirst()
                .orElse(FieldUnit.METRE);
        places.forEach((name, spot) -> {
            RateMark mark = marksByName.getOrDefault(name, RateMark.of(name, new RateOutcome.Withheld(List.of())));
            onGrid(spot, unit, mark).ifPresent(onGrid::add);
            onEarth(spot, places, mark).ifPresent(onEarth::add);
        });
        return onGrid.size() > 1
                ? Optional.of(new MapPlot(title(), words.own(), unit, "Along", "Across", onGrid))
                : onEarth.size() > 1
                        ? Optional.of(new MapPlot(title(), words.own(), FieldUnit.METRE, "East", "North", onEarth))
                        : Optional.empty();
    }

    private Optional<MapPlot.Spot> onGrid(Location spot, FieldUnit<Length> unit, RateMark mark) {
        return spot.x() == null || spot.y() == null
                ? Optional.empty()
                : spot(spot.x().in(unit), spot.y().in(unit), mark);
    }

    private Optional<MapPlot.Spot> spot(double x, double y, RateMark mark) {
        return Double.isFinite(x) && Double.isFinite(y) ? Optional.of(new MapPlot.Spot(x, y, mark)) : Optional.empty();
    }

    /** Metres from the first location: over a surface the earth is flat. */
    private Optional<MapPlot.Spot> onEarth(Location spot, Map<String, Location> places, RateMark mark) {
        Position here = spot.position();
        Position first = places.values().iterator().next().position();
        if (here == null || first == null || !isKnown(here) || !isKnown(first)) {
            return Optional.empty();
        }
        double north = (latitude(here) - latitude(first)) * METRES_A_DEGREE;
        double east = (longitude(here) - longitude(first))
                * METRES_A_DEGREE
                * StrictMath.cos(StrictMath.toRadians(latitude(first)));
        return spot(east, north, mark);
    }

    private static boolean isKnown(Position position) {
        return position.latitude() != null && position.longitude() != null;
    }

    private static double latitude(Position position) {
        return Objects.requireNonNull(position.latitude()).doubleValue();
    }

    private static double longitude(Position position) {
        return Objects.requireNonNull(position.longitude()).doubleValue();
    }
}
