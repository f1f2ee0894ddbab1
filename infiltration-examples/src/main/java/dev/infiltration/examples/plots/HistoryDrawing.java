// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.plots;

import dev.infiltration.report.HistoryPlot;
import dev.infiltration.report.RateLimit;
import dev.infiltration.report.RateMark;
import dev.infiltration.units.InfiltrationRate;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** A surface over the years: rates up on a log scale, dates across. */
final class HistoryDrawing {

    private static final int LEFT = 62;
    private static final int HEIGHT = 220;

    private final HistoryPlot plot;
    private final Scale rates;
    private final Scale dates;
    private final Drawing drawing;

    private HistoryDrawing(HistoryPlot plot) {
        this.plot = plot;
        this.rates = Scale.log(values());
        this.dates = DateScale.of(days());
        this.drawing = new Drawing(LEFT, HEIGHT, dates, rates);
    }

    static Drawing of(HistoryPlot plot) {
        HistoryDrawing history = new HistoryDrawing(plot);
        history.drawing.named("Date of visit", "Rate in " + plot.unit().symbol() + ", log scale");
        plot.fits().forEach(history::band);
        plot.cleanings().forEach(history::cleaning);
        plot.limits().forEach(history::limit);
        plot.fits().forEach(history::line);
        plot.points().forEach(history::point);
        return history.drawing;
    }

    private List<LocalDate> days() {
        Stream<LocalDate> visits = plot.points().stream().map(HistoryPlot.Point::date);
        Stream<LocalDate> fitted =
                plot.fits().stream().flatMap(fit -> fit.steps().stream()).map(HistoryPlot.Step::date);
        return Stream.concat(Stream.concat(visits, plot.cleanings().stream()), fitted)
                .toList();
    }

    /** A band of few visits can reach over many powers of ten: the points and the limits set the scale. */
    private List<Double> values() {
        List<Double> values = new ArrayList<>();
        plot.points().forEach(point -> point.mark().in(plot.unit()).ifPresent(values::add));
        plot.limits().forEach(limit -> values.add(limit.rate().in(plot.unit())));
        return values;
    }

    private double[] days(HistoryPlot.Fit fit) {
        return fit.steps().stream()
                .mapToDouble(step -> step.date().toEpochDay())
                .toArray();
    }

    private double[] values(HistoryPlot.Fit fit, Function<HistoryPlot.Step, InfiltrationRate> part) {
        return fit.steps().stream()
                .mapToDouble(step -> rates.held(part.apply(step).in(plot.unit())))
                .toArray();
    }

    private void band(HistoryPlot.Fit fit) {
        if (fit.steps().stream().anyMatch(step -> step.low() == null || step.high() == null)) {
            return;
        }
        double[] days = days(fit);
        double[] there = values(fit, HistoryPlot.Step::low);
        double[] back = reversed(values(fit, HistoryPlot.Step::high));
        drawing.area(Ink.BAND, joined(days, reversed(days)), joined(there, back));
    }

    private static double[] reversed(double[] values) {
        double[] reversed = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            reversed[i] = values[values.length - 1 - i];
        }
        return reversed;
    }

    private static double[] joined(double[] first, double[] second) {
        return DoubleStream.concat(DoubleStream.of(first), DoubleStream.of(second))
                .toArray();
    }

    private void line(HistoryPlot.Fit fit) {
        drawing.line(Ink.ONE, Drawing.PLAIN, days(fit), values(fit, HistoryPlot.Step::rate));
    }

    private void cleaning(LocalDate day) {
        double at = day.toEpochDay();
        drawing.line(Ink.THREE, Drawing.DASH_DOTTED, new double[] {at, at}, new double[] {rates.low(), rates.high()});
        drawing.label(at, rates.high(), Ink.THREE, "cleaned", Side.PAST_LINE, Side.BEFORE_LINE);
    }

    private void limit(RateLimit limit) {
        double at = limit.rate().in(plot.unit());
        if (at > 0) {
            drawing.line(Ink.INK, Drawing.DASHED, new double[] {dates.low(), dates.high()}, new double[] {at, at});
            drawing.label(dates.low(), at, Ink.INK, limit.label(), Side.ON_LINE, Side.PAST_LINE);
        }
    }

    private void point(HistoryPlot.Point point) {
        RateMark mark = point.mark();
        mark.in(plot.unit())
                .ifPresent(rate -> drawing.mark(
                        Marks.ink(mark), Marks.up(mark), (double) point.date().toEpochDay(), rates.held(rate)));
    }
}
