// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.plots;

import dev.infiltration.report.RateLimit;
import dev.infiltration.report.RateMark;
import dev.infiltration.report.RatePlot;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** Locations line by line, their rates on a log scale across. */
final class RateDrawing {

    private static final int LINE = 26;
    private static final double LETTER = 6.2;

    /** Room for the words of a limit, in lines of marks. */
    private static final double LIMIT = 0.6;

    private final RatePlot plot;
    private final Drawing drawing;
    private final Scale scale;
    private final double top;

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
        double above = LIMIT * plot.limits().size();
        this.top = names.size() - 0.5;
        this.drawing = new Drawing(
                24 + (int) (longest * LETTER),
                (int) (LINE * (Math.max(1, names.size()) + above)),
                scale,
                Scale.names(names).withRoomAbove(above));
    }

    static Drawing of(RatePlot plot) {
        RateDrawing rates = new RateDrawing(plot);
        rates.drawing.named("Rate in " + plot.unit().symbol() + ", log scale", "Location");
        rates.limits();
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

    /** Limits have their words above the marks, each in a line of its own, the lowest limit uppermost. */
    private void limits() {
        List<RateLimit> upwards = plot.limits().stream()
                .filter(limit -> limit.rate().millimetresPerHour() > 0)
                .sorted(Comparator.comparing(RateLimit::rate).reversed())
                .toList();
        for (int i = 0; i < upwards.size(); i++) {
            limit(upwards.get(i), top + LIMIT * (i + 0.5));
        }
    }

    private void limit(RateLimit limit, double line) {
        double at = limit.rate().in(plot.unit());
        drawing.line(Ink.INK, Drawing.DASHED, new double[] {at, at}, new double[] {-0.5, line});
        drawing.label(at, line, Ink.INK, limit.label(), Side.PAST_END, Side.BEFORE_END);
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
