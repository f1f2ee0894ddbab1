// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.trend;

import dev.infiltration.compare.Ratio;
import dev.infiltration.statistics.Interval;
import dev.infiltration.statistics.RandomInterceptLine;
import dev.infiltration.statistics.RandomInterceptLine.Slope;
import dev.infiltration.statistics.TextTable;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The trend of rates at fixed locations that are tested again and again.
 *
 * <p>On the logarithmic scale, each location has its own level, and all lose or gain the same share a year. The level of a
 * location is a random intercept (REML, Satterthwaite degrees of freedom); {@link #withinAnnualFactor} compares each location
 * with itself alone. Locations tested once add to the first and nothing to the second. What REML estimates as zero variance
 * between locations is treated as {@link RandomInterceptLine} states.
 *
 * <p>All rates belong to one period: no maintenance lies between them. Bounds and zeros have no logarithm: they are excluded,
 * and {@link #notes} counts them.
 */
public final class LocationTrend {

    private static final double DAYS_A_YEAR = 365.25;

    private final List<DatedRate> points;
    private final int excluded;
    private final Optional<RandomInterceptLine> line;

    private LocationTrend(List<DatedRate> rates) {
        this.points = rates.stream().filter(DatedRate::hasLog).toList();
        this.excluded = (int) rates.stream().filter(DatedRate::hasFigure).count() - points.size();
        this.line = isOneMethod() ? fit() : Optional.empty();
    }

    /**
     * {@return the trend of some rates}
     *
     * @param rates rates of single locations, in any order; {@link DatedRate#where} is the location
     */
    public static LocationTrend of(List<DatedRate> rates) {
        return new LocationTrend(rates);
    }

    private Optional<RandomInterceptLine> fit() {
        LocalDate first =
                points.stream().map(DatedRate::date).min(LocalDate::compareTo).orElse(LocalDate.MIN);
        Map<String, Integer> locations = new LinkedHashMap<>();
        points.forEach(point -> locations.putIfAbsent(point.where(), locations.size()));
        return RandomInterceptLine.of(
                points.stream()
                        .mapToInt(point -> locations.getOrDefault(point.where(), 0))
                        .toArray(),
                points.stream()
                        .mapToDouble(point -> ChronoUnit.DAYS.between(first, point.date()) / DAYS_A_YEAR)
                        .toArray(),
                points.stream()
                        .mapToDouble(point -> StrictMath.log(
                                point.outcome().rate().orElseThrow().millimetresPerHour()))
                        .toArray());
    }

    private boolean isOneMethod() {
        return points.stream().map(DatedRate::method).distinct().count() < 2;
    }

    /** {@return the line of the logarithms over the years since the first test; absent where {@link #notes} states why} */
    public Optional<RandomInterceptLine> line() {
        return line;
    }

    /**
     * {@return the factor by which the rate changes in a year, with its t interval (Satterthwaite); absent without a line}
     *
     * @param level the confidence level
     */
    public Optional<Ratio> annualFactor(double level) {
        return line.map(fit -> factor(fit.slope(), level));
    }

    /**
     * {@return the annual factor from the changes within locations alone, with its t interval; absent without a line}
     *
     * @param level the confidence level
     */
    public Optional<Ratio> withinAnnualFactor(double level) {
        return line.map(fit -> factor(fit.withinSlope(), level));
    }

    private static Ratio factor(Slope slope, double level) {
        return new Ratio(slope.value(), slope.interval(level));
    }

    /** {@return the two-sided p-value of {@link #annualFactor} against no change; absent without a line} */
    public OptionalDouble pValue() {
        return line.stream().mapToDouble(fit -> fit.slope().pValue()).findFirst();
    }

    /**
     * {@return standard deviation of the logarithms between locations, and of a location about its line, as coefficients of
     *     variation of log-normal rates: {@code √(exp s² − 1)}; empty without a line}
     */
    public List<Double> coefficientsOfVariation() {
        return line.stream()
                .flatMap(fit -> List.of(fit.betweenVariance(), fit.residualVariance()).stream())
                .map(variance -> Math.sqrt(StrictMath.expm1(variance)))
                .toList();
    }

    /** {@return what must be known beside the trend, and why there is none} */
    public List<String> notes() {
        List<String> notes = new ArrayList<>();
        if (excluded > 0) {
            notes.add(excluded + (excluded == 1 ? " bound or zero is" : " bounds or zeros are") + " excluded");
        }
        if (!isOneMethod()) {
            notes.add("no trend: the test method changed");
        } else if (line.isEmpty()) {
            notes.add("no trend: at least 2 locations are needed, with more repeated rates than locations");
        } else if (line.orElseThrow().betweenVariance() == 0) {
            notes.add(
                    "no variation between locations beyond that of repeated tests: degrees of freedom within locations");
        }
        return notes;
    }

    /** {@return the trend as a small table} */
    @Override
    public String toString() {
        TextTable table = TextTable.titled("trend at fixed locations");
        if (line.isPresent()) {
            RandomInterceptLine fit = line.orElseThrow();
            table = table.with("rates, locations", fit.n() + ", " + fit.groups())
                    .with("annual factor", annualFactor(Interval.LEVEL).orElseThrow())
                    .with("within locations", withinAnnualFactor(Interval.LEVEL).orElseThrow())
                    .with("p-value, two-sided", TextTable.number(fit.slope().pValue()))
                    .with("degrees of freedom", TextTable.number(fit.slope().degrees()));
        }
        return (notes().isEmpty() ? table : table.with("note", String.join("; ", notes()))).toString();
    }
}
