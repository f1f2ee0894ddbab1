// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.trend;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * How the rate of a location or a surface went, from one maintenance to the next.
 *
 * <p>A trend starts anew at each maintenance. A rate of the very day of a maintenance counts as found after it; where it was
 * found before, divide the rates yourself and use {@link TrendPeriod#of} each part.
 *
 * @param periods the periods that hold a rate, earliest first
 */
public record Trend(List<TrendPeriod> periods) {

    /** Copies the periods. */
    public Trend {
        periods = List.copyOf(periods);
    }

    /**
     * {@return the trend of some rates}
     *
     * @param points      the rates in any order
     * @param maintenance the days on which the surface was cleaned or restored, in any order
     */
    public static Trend of(List<DatedRate> points, List<LocalDate> maintenance) {
        List<LocalDate> days = new ArrayList<>(maintenance);
        days.add(LocalDate.MIN);
        return new Trend(days.stream()
                .distinct()
                .sorted()
                .map(day -> TrendPeriod.of(points.stream()
                        .filter(point -> day.equals(latest(days, point.date())))
                        .toList()))
                .filter(stretch -> !stretch.points().isEmpty())
                .toList());
    }

    private static LocalDate latest(List<LocalDate> days, LocalDate date) {
        return days.stream()
                .filter(day -> !day.isAfter(date))
                .max(LocalDate::compareTo)
                .orElse(LocalDate.MIN);
    }

    /** {@return the trend, stretch by stretch} */
    @Override
    public String toString() {
        return periods.stream().map(TrendPeriod::toString).collect(Collectors.joining("\n"));
    }
}
