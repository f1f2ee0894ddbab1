// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.plots;

import dev.infiltration.report.PairPlot;
import dev.infiltration.report.RateLimit;
import dev.infiltration.report.RateMark;
import java.util.ArrayList;
import java.util.List;

/** Locations before and after, joined by lines, rates up on a log scale. */
final class PairDrawing {

    private static final int LEFT = 62;
    private static final int HEIGHT = 220;

    private final PairPlot plot;
    private final Scale rates;
    private final Drawing drawing;
    private final List<Scale.Tick> names = new ArrayList<>();

    private PairDrawing(PairPlot plot) {
        this.plot = plot;
        this.rates = Scale.log(values());
        this.drawing = new Drawing(LEFT, HEIGHT, Scale.names(List.of(plot.before(), plot.after())), rates);
    }

    static Drawing of(PairPlot plot) {
        PairDrawing pairs = new PairDrawing(plot);
        pairs.drawing.named(
                "Before and after the maintenance", "Rate in " + plot.unit().symbol() + ", log scale");
        plot.limits().forEach(pairs::limit);
        plot.pairs().forEach(pairs::pair);
        pairs.drawing.column(1, pairs.names);
        return pairs.drawing;
    }

    private List<Double> values() {
        List<Double> values = new ArrayList<>();
        plot.pairs().forEach(pair -> {
            pair.before().in(plot.unit()).ifPresent(values::add);
            pair.after().in(plot.unit()).ifPresent(values::add);
        });
        plot.limits().forEach(limit -> values.add(limit.rate().in(plot.unit())));
        return values;
    }

    private void limit(RateLimit limit) {
        double at = limit.rate().in(plot.unit());
        if (at > 0) {
            drawing.line(Ink.INK, Drawing.DASHED, new double[] {-0.5, 1.5}, new double[] {at, at});
            drawing.label(-0.5, at, Ink.INK, limit.label(), Side.ON_LINE, Side.PAST_LINE);
        }
    }

    private void pair(PairPlot.Pair pair) {
        if (pair.before().in(plot.unit()).isEmpty()
                || pair.after().in(plot.unit()).isEmpty()) {
            return;
        }
        double before = rates.held(pair.before().in(plot.unit()).get());
        double after = rates.held(pair.after().in(plot.unit()).get());
        drawing.line(Ink.FAINT, Drawing.PLAIN, new double[] {0, 1}, new double[] {before, after});
        mark(pair.before(), 0, before);
        mark(pair.after(), 1, after);
        names.add(new Scale.Tick(after, pair.after().label()));
    }

    private void mark(RateMark mark, double at, double rate) {
        drawing.mark(Marks.ink(mark), Marks.up(mark), at, rate);
    }
}
