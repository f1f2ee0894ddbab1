// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.units.FieldUnit;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Speed;

/**
 * The same locations before and after a maintenance.
 *
 * @param title  what it shows
 * @param unit   the unit of the scale
 * @param before when the earlier rates are from
 * @param after  when the later rates are from
 * @param pairs  the locations
 * @param limits the limits they are held to
 */
public record PairPlot(
        String title, FieldUnit<Speed> unit, String before, String after, List<Pair> pairs, List<RateLimit> limits)
        implements Plot {

    /**
     * A location before and after.
     *
     * @param before its earlier rate
     * @param after  its later rate
     */
    public record Pair(RateMark before, RateMark after) {}

    /** Copies the lists. */
    public PairPlot {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(after, "after");
        pairs = List.copyOf(pairs);
        limits = List.copyOf(limits);
    }

    @Override
    public String description() {
        return "Each location before and after the maintenance, its rate in " + unit.symbol()
                + " on a log scale, joined by a line." + PlotWords.limits(limits);
    }
}
