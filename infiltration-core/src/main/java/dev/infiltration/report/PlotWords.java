// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.report.Block.Table;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.quantity.Speed;

/** Plots in words and in figures. */
final class PlotWords {

    private PlotWords() {}

    static String limits(List<RateLimit> limits) {
        return limits.isEmpty()
                ? ""
                : limits.stream().map(RateLimit::label).collect(Collectors.joining("; ", " Dashed: ", "."));
    }

    /** {@return what a ± is; empty where there is none} */
    static String plusMinus(List<RateMark> marks) {
        return marks.stream().anyMatch(RateMark::hasInterval) ? RateWords.PLUS_MINUS : "";
    }

    /** {@return the table that says the same as the drawing} */
    static Table table(Plot plot) {
        if (plot instanceof RatePlot rates) {
            return table(
                    caption(plot, rates.marks().stream()),
                    List.of("Location", "Rate"),
                    rates.marks().stream()
                            .map(mark -> row(mark, rates.unit(), rates.limits()))
                            .toList());
        }
        if (plot instanceof HistoryPlot history) {
            return table(
                    caption(plot, history.points().stream().map(HistoryPlot.Point::mark)),
                    List.of("Date", "Rate"),
                    history.points().stream().map(point -> row(point, history)).toList());
        }
        if (plot instanceof MapPlot map) {
            return table(
                    caption(plot, map.spots().stream().map(MapPlot.Spot::mark)),
                    List.of("Location", map.across(), map.up(), "Rate"),
                    map.spots().stream().map(spot -> row(spot, map)).toList());
        }
        PairPlot pairs = (PairPlot) plot;
        return table(
                caption(plot, pairs.pairs().stream().flatMap(pair -> Stream.of(pair.before(), pair.after()))),
                List.of("Location", "Before: " + pairs.before(), "After: " + pairs.after()),
                pairs.pairs().stream().map(pair -> row(pair, pairs)).toList());
    }

    private static Phrase caption(Plot plot, Stream<RateMark> marks) {
        String plusMinus = plusMinus(marks.toList());
        Phrase title = Phrase.written(plot.title());
        return plusMinus.isEmpty() ? title : title.and("; " + plusMinus);
    }

    private static Table table(Phrase caption, List<String> heads, List<List<Phrase>> rows) {
        return new Table(caption, heads.stream().map(Phrase::written).toList(), rows);
    }

    private static List<Phrase> row(RateMark mark, FieldUnit<Speed> unit, List<RateLimit> limits) {
        return List.of(Phrase.written(mark.label()), Phrase.of(mark.text(unit, rates(limits))));
    }

    private static List<InfiltrationRate> rates(List<RateLimit> limits) {
        return limits.stream().map(RateLimit::rate).toList();
    }

    private static List<Phrase> row(HistoryPlot.Point point, HistoryPlot plot) {
        return List.of(
                Phrase.of(point.date().toString()), Phrase.of(point.mark().text(plot.unit(), rates(plot.limits()))));
    }

    private static List<Phrase> row(MapPlot.Spot spot, MapPlot map) {
        return List.of(
                Phrase.written(spot.mark().label()),
                Phrase.of(length(spot.x(), map)),
                Phrase.of(length(spot.y(), map)),
                Phrase.of(spot.mark().text(map.unit(), List.of())));
    }

    private static String length(double value, MapPlot map) {
        return String.format(Locale.ROOT, "%.1f %s", value, map.length().symbol());
    }

    private static List<Phrase> row(PairPlot.Pair pair, PairPlot plot) {
        return List.of(
                Phrase.written(pair.before().label()),
                Phrase.of(pair.before().text(plot.unit(), rates(plot.limits()))),
                Phrase.of(pair.after().text(plot.unit(), rates(plot.limits()))));
    }
}
