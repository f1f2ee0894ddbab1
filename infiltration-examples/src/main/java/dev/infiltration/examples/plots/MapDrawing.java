// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.plots;

import dev.infiltration.report.MapPlot;

/** Locations where they lie, each with its name and its rate, at one scale both ways where that fits a page. */
final class MapDrawing {

    private static final int LEFT = 58;
    private static final int LOWEST = 130;
    private static final int HIGHEST = 340;
    private static final int ACROSS = Drawing.WIDTH - LEFT - 16;

    private static final Side[] AROUND = {
        Side.RIGHT,
        Side.LEFT,
        Side.BELOW,
        Side.ABOVE,
        Side.LEFT_BELOW,
        Side.RIGHT_BELOW,
        Side.LEFT_ABOVE,
        Side.RIGHT_ABOVE
    };

    private MapDrawing() {}

    static Drawing of(MapPlot plot) {
        Scale x = Scale.even(plot.spots().stream().map(MapPlot.Spot::x).toList());
        Scale y = Scale.even(plot.spots().stream().map(MapPlot.Spot::y).toList());
        Drawing drawing = new Drawing(LEFT, height(x, y), x, y);
        drawing.named(
                plot.across() + " in " + plot.length().symbol(),
                plot.up() + " in " + plot.length().symbol());
        plot.spots().forEach(spot -> mark(drawing, plot, spot));
        return drawing;
    }

    private static int height(Scale x, Scale y) {
        double same = ACROSS * (y.high() - y.low()) / (x.high() - x.low());
        return (int) Math.min(HIGHEST, Math.max(LOWEST, same));
    }

    private static void mark(Drawing drawing, MapPlot plot, MapPlot.Spot spot) {
        drawing.mark(Marks.ink(spot.mark()), Marks.up(spot.mark()), spot.x(), spot.y());
        String words = Label.shortened(spot.mark().label()) + ": " + rate(plot, spot);
        drawing.label(spot.x(), spot.y(), Ink.INK, words, AROUND);
    }

    private static String rate(MapPlot plot, MapPlot.Spot spot) {
        return spot.mark()
                .outcome()
                .match(
                        measured -> measured.value().text(plot.unit()),
                        upper -> "\u2264 " + upper.bound().text(plot.unit()),
                        lower -> "\u2265 " + lower.bound().text(plot.unit()),
                        none -> "no rate");
    }
}
