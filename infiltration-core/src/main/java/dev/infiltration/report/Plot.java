// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

/** Something to be drawn, in figures; each kind is a record that a renderer can read. */
public sealed interface Plot permits RatePlot, HistoryPlot, MapPlot, PairPlot {

    /** {@return what it shows, in a line} */
    String title();

    /** {@return what there is to see, for whoever cannot see it} */
    String description();
}
