// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.plots;

import dev.infiltration.report.RateLimit;
import dev.infiltration.report.RateMark;
import dev.infiltration.report.RatePlot;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Locations line by line, their rates on a log scale across. */
final class RateDrawing {

    private static final int LINE = 26;
    private static final double LETTER = 6.2;

    private final RatePlot plot;
    private final Drawing drawing;
    private final Scale scale;

    private RateDrawing(RatePlot plot) {
        this.plot = plot;
        List<String> names =
                new ArrayList<>(plot.marks().stream().map(RateMark::label).toList());
        Collections.reverse(names);
        int longest = names.stream()
                .map(Label::shortened)
                .mapToInt(name -> name.codePointCount(0, name.length()))
                .max()
                .orElse(0);
        this.scale = Scale.log(values());
        this.drawing =
                new Drawing(24 + (int) (longest * LETTER), LINE * Math.max(1, names.size()), scale, Scale.names(names));
    }

    static Drawing of(RatePlot plot) {
        RateDrawing rates = new RateDrawing(plot);
        rates.drawing.named("Rate in " + plot.unit().symbol() + ", log scale", "Location");
        plot.limits().forEach(rates::limit);
        for (int i = 0; i < plot.marks().size(); i++) {
            rates.mark(plot.marks().get(i), plot.marks().size() - 1.0 - i);
        }
        return rates.drawing;
    }

    private List<Double> values() {
        List<Double> values = new ArrayList<>();
        plot.marks().forEach(mark -> mark.in(plot.unit()).ifPresent(values::add));
        plot.limits().forEach(limit -> values.add(limit.rate().in(plot.unit())));
        return values;
    }

    private void limit(RateLimit limit) {
        double at = limit.rate().in(plot.unit());
        if (at <= 0) {
            return;
        }
        double top = plot.marks().size() - 0.5;
        drawing.line(Ink.INK, Drawing.DASHED, new double[] {at, at}, new double[] {-0.5, Math.max(top, 0.5)});
        drawing.label(at, Math.max(top, 0.5), Ink.INK, limit.label(), Side.PAST_LINE, Side.BEFORE_LINE);
    }

    private void mark(RateMark mark, double line) {
        mark.in(plot.unit()).ifPresent(rate -> {
            double at = scale.held(rate);
            interval(mark, rate, line);
            drawing.mark(Marks.ink(mark), Marks.across(mark), at, line);
        });
    }

    private void interval(RateMark mark, double rate, double line) {
        if (mark.half() != null) {
            double half = mark.half().in(plot.unit());
            double[] ends = {scale.held(rate - half), scale.held(rate + half)};
            drawing.line(Ink.ONE, Drawing.PLAIN, ends, new double[] {line, line});
        }
    }
}
