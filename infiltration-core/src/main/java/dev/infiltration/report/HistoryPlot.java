// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.review.SurfaceHistory;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Speed;
import org.jspecify.annotations.Nullable;

/**
 * The rate of a surface over the years, with its cleanings.
 *
 * @param title     what it shows
 * @param unit      the unit of the scale
 * @param points    the rates, earliest first
 * @param cleanings the days of maintenance, earliest first
 * @param fits      fitted lines, one between two cleanings
 * @param limits    the limits it is held to
 */
public record HistoryPlot(
        String title,
        FieldUnit<Speed> unit,
        List<Point> points,
        List<LocalDate> cleanings,
        List<Fit> fits,
        List<RateLimit> limits)
        implements Plot {

    /**
     * A rate on a day.
     *
     * @param date the day
     * @param mark the rate
     */
    public record Point(LocalDate date, RateMark mark) {}

    /**
     * A fitted line.
     *
     * @param level how often a further visit would lie in the band; NaN where there is no band
     * @param steps the line, day by day
     */
    public record Fit(double level, List<Step> steps) {

        /** Copies the steps. */
        public Fit {
            steps = List.copyOf(steps);
        }
    }

    /**
     * A fitted line on a day.
     *
     * @param date the day
     * @param rate the line
     * @param low  the band's lower end; null where there is no band
     * @param high the band's upper end; null where there is no band
     */
    public record Step(
            LocalDate date,
            InfiltrationRate rate,
            @Nullable InfiltrationRate low,
            @Nullable InfiltrationRate high) {}

    /**
     * {@return the mean of a surface by visit}: its measured means and bounds, the days of its maintenance, the lines fitted
     * between them with the band for a further visit, and the limits that its last visit is held to, in the unit of that visit
     *
     * @param history the surface over the years
     */
    public static HistoryPlot of(SurfaceHistory history) {
        return new MeanHistory(Objects.requireNonNull(history, "history")).plot();
    }

    /** Copies the lists. */
    public HistoryPlot {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(unit, "unit");
        points = List.copyOf(points);
        cleanings = List.copyOf(cleanings);
        fits = List.copyOf(fits);
        limits = List.copyOf(limits);
    }

    @Override
    public String description() {
        String cleaned = cleanings.isEmpty() ? "" : " Dash-dotted uprights are cleanings.";
        String fitted = fits.isEmpty() ? "" : " Lines are fitted to the logarithms between two cleanings";
        boolean hasBand = fits.stream().anyMatch(fit -> !Double.isNaN(fit.level()));
        String band = hasBand ? "; a further visit is expected in the shaded band" : "";
        return "Rate of the surface in " + unit.symbol() + " on a log scale, by date of visit." + cleaned + fitted
                + band + (fits.isEmpty() ? "" : ".") + PlotWords.limits(limits);
    }
}
