// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.plots;

import dev.infiltration.report.HistoryPlot;
import dev.infiltration.report.MapPlot;
import dev.infiltration.report.PairPlot;
import dev.infiltration.report.Plot;
import dev.infiltration.report.Plots;
import dev.infiltration.report.RatePlot;

/** Plots as SVG, the same bytes for the same plot. */
public final class SvgPlots implements Plots {

    /** Makes a renderer. */
    public SvgPlots() {}

    @Override
    public String svg(Plot plot, String id) {
        return SvgText.of(plot, id, drawing(plot));
    }

    private static Drawing drawing(Plot plot) {
        if (plot instanceof RatePlot rates) {
            return RateDrawing.of(rates);
        }
        if (plot instanceof HistoryPlot history) {
            return HistoryDrawing.of(history);
        }
        return plot instanceof MapPlot map ? MapDrawing.of(map) : PairDrawing.of((PairPlot) plot);
    }
}
