// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.units.FieldUnit;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Speed;

/**
 * The rates of the locations of a visit, on a log scale.
 *
 * @param title  what it shows
 * @param unit   the unit of the scale
 * @param marks  the locations, in order
 * @param limits the limits they are held to
 */
public record RatePlot(String title, FieldUnit<Speed> unit, List<RateMark> marks, List<RateLimit> limits)
        implements Plot {

    /** Copies the lists. */
    public RatePlot {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(unit, "unit");
        marks = List.copyOf(marks);
        limits = List.copyOf(limits);
    }

    @Override
    public String description() {
        String plusMinus = PlotWords.plusMinus(marks);
        return "Rate of each location in " + unit.symbol() + " on a log scale. A dot is a rate"
                + (plusMinus.isEmpty() ? "" : ", the line through it its \u00B1")
                + "; an arrowhead to the left is at most so much, one to the right at least so much."
                + (plusMinus.isEmpty() ? "" : " " + plusMinus + ".") + PlotWords.limits(limits);
    }
}
