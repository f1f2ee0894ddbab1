// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.trend;

import dev.infiltration.compare.Ratio;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.statistics.CensoredLine;
import dev.infiltration.statistics.CensoredLine.Kind;
import dev.infiltration.statistics.CensoredLine.Point;
import dev.infiltration.statistics.Fieller;
import dev.infiltration.statistics.Interval;
import dev.infiltration.statistics.TextTable;
import dev.infiltration.units.InfiltrationRate;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * The trend of a rate with bounds among the results: a log-normal censored fit (Tobit), in which "at most" and "at least" are
 * used as bounds instead of being excluded.
 *
 * <p>Rates of one location, or one value of a surface at each date, by one method and without maintenance between them.
 * Intervals are those of {@link CensoredLine}: approximate for few rates or many bounds.
 */
public final class CensoredTrend {

    private static final double DAYS_A_YEAR = 365.25;
    private static final int HORIZON_YEARS = 100;

    private final List<DatedRate> points;
    private final Optional<CensoredLine> line;

    private CensoredTrend(List<DatedRate> rates) {
        this.points = rates.stream().filter(CensoredTrend::hasLog).toList();
        this.line = isOne() ? CensoredLine.of(points.stream().map(this::point).toList()) : Optional.empty();
    }

    /**
     * {@return the trend of some rates}
     *
     * @param rates rates and bounds in any order; what is withheld or 0 is excluded
     */
    public static CensoredTrend of(List<DatedRate> rates) {
        return new CensoredTrend(rates);
    }

    private static boolean hasLog(DatedRate rate) {
        return rate.outcome()
                .figure()
                .filter(value -> value.millimetresPerHour() > 0)
                .isPresent();
    }

    private boolean isOne() {
        return points.stream()
                        .map(point -> List.of(point.method(), point.where()))
                        .distinct()
                        .count()
                < 2;
    }

    private LocalDate first() {
        return points.stream().map(DatedRate::date).min(LocalDate::compareTo).orElseThrow();
    }

    private Point point(DatedRate rate) {
        Kind kind = rate.outcome() instanceof RateOutcome.UpperBound
                ? Kind.UPPER_BOUND
                : rate.outcome() instanceof RateOutcome.LowerBound ? Kind.LOWER_BOUND : Kind.VALUE;
        double value = rate.outcome().figure().orElseThrow().millimetresPerHour();
        return new Point(ChronoUnit.DAYS.between(first(), rate.date()) / DAYS_A_YEAR, StrictMath.log(value), kind);
    }

    /** {@return the line of the logarithms over the years since the first test; absent where {@link #notes} states why} */
    public Optional<CensoredLine> line() {
        return line;
    }

    /**
     * {@return the factor by which the rate changes in a year, with its interval; absent without a line}
     *
     * @param level the confidence level
     */
    public Optional<Ratio> annualFactor(double level) {
        return line.map(fit -> new Ratio(fit.slope(), fit.slopeInterval(level)));
    }

    /**
     * {@return the date on which the fitted line reaches a lower limit, with the prediction limits of a single test, or the
     *     reasons why there is none}
     *
     * @param limit the limit, above 0
     * @param level the prediction level
     */
    public LimitDate limitDate(InfiltrationRate limit, double level) {
        if (line.isEmpty()) {
            return new LimitDate.NotGiven(notes());
        }
        CensoredLine fit = line.orElseThrow();
        if (!(limit.millimetresPerHour() > 0) || !(fit.slope() < 0)) {
            return new LimitDate.NotGiven(List.of("the fitted line does not fall to the limit"));
        }
        return expected(fit.crossing(StrictMath.log(limit.millimetresPerHour()), level));
    }

    private LimitDate expected(Fieller limits) {
        boolean isBounded = limits.shape() == Fieller.Shape.WITHIN;
        Optional<LocalDate> expected = day(limits.ratio(), Math::rint);
        if (expected.isEmpty()) {
            return new LimitDate.NotGiven(
                    List.of("the fitted line does not reach the limit within " + HORIZON_YEARS + " years"));
        }
        return new LimitDate.Expected(
                expected.orElseThrow(),
                isBounded ? day(limits.low(), Math::floor).orElse(null) : null,
                isBounded ? day(limits.high(), Math::ceil).orElse(null) : null,
                limits.level(),
                dateNotes(expected.orElseThrow(), isBounded));
    }

    private List<String> dateNotes(LocalDate expected, boolean isBounded) {
        LocalDate last =
                points.stream().map(DatedRate::date).max(LocalDate::compareTo).orElseThrow();
        List<String> notes = new ArrayList<>(notes());
        if (expected.isAfter(last)) {
            notes.add("extrapolated beyond the last test (" + last + ")");
        }
        if (!isBounded) {
            notes.add("a fall is not confirmed: the dates have no limits");
        }
        return notes;
    }

    private Optional<LocalDate> day(double years, DoubleUnaryOperator rounding) {
        return Math.abs(years) <= HORIZON_YEARS
                ? Optional.of(first().plusDays((long) rounding.applyAsDouble(years * DAYS_A_YEAR)))
                : Optional.empty();
    }

    /** {@return what must be known beside the trend, and why there is none} */
    public List<String> notes() {
        List<String> notes = new ArrayList<>();
        long bounds = points.stream()
                .filter(point -> point.outcome().rate().isEmpty())
                .count();
        if (!isOne()) {
            notes.add("no trend: the locations or the test method changed");
        } else if (line.isEmpty()) {
            notes.add("no trend: at least 3 measured rates on 2 dates, not all on one line, are needed");
        } else if (bounds > 0) {
            notes.add(bounds + " of " + points.size() + " results are bounds, used as bounds");
        }
        return notes;
    }

    /** {@return the trend as a small table} */
    @Override
    public String toString() {
        TextTable table = TextTable.titled("trend with bounds").with("results", points.size());
        if (line.isPresent()) {
            table = table.with("annual factor", annualFactor(Interval.LEVEL).orElseThrow());
        }
        return (notes().isEmpty() ? table : table.with("note", String.join("; ", notes()))).toString();
    }
}
