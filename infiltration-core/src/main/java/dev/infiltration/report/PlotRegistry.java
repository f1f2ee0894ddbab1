// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.report.Block.Picture;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The pictures of a page: each has a name of its own, which its ids and its file go by. */
final class PlotRegistry {

    private final Plots plots;
    private final String page;
    private final Map<String, Plot> byName = new LinkedHashMap<>();

    PlotRegistry(Plots plots, String page) {
        this.plots = plots;
        this.page = page;
    }

    /** {@return the pictures of some plots} */
    List<Block> of(List<? extends Plot> drawn) {
        List<Block> pictures = new ArrayList<>();
        drawn.forEach(plot -> pictures.add(of(plot)));
        return pictures;
    }

    private Block of(Plot plot) {
        String name = page + "-" + kind(plot) + "-" + (byName.size() + 1);
        byName.put(name, plot);
        return new Picture(plot, plots.svg(plot, name));
    }

    private static String kind(Plot plot) {
        if (plot instanceof RatePlot) {
            return "rates";
        }
        return plot instanceof HistoryPlot ? "history" : plot instanceof MapPlot ? "map" : "pairs";
    }

    Map<String, Plot> byName() {
        return byName;
    }
}
