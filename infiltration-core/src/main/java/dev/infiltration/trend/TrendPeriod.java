// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.trend;

import dev.infiltration.rate.RateOutcome;
import dev.infiltration.statistics.Fieller;
import dev.infiltration.statistics.LineFit;
import dev.infiltration.statistics.Quantile;
import dev.infiltration.statistics.TextTable;
import dev.infiltration.units.InfiltrationRate;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.LongPredicate;

/**
 * A stretch of time in which nothing was done to a surface, and how its rate went.
 *
 * <p>Lines are fitted to measured rates above zero; bounds and zeros are counted and said. A date on which a limit is
 * reached is given only where it means something: at least four dates, the same locations and method throughout, most
 * outcomes not bounds or zeros, a fitted line that falls to the limit within a hundred years.
 */
public final class TrendPeriod {

    /** Fewer dates fit any line: with three, one degree of freedom is left for the scatter. */
    private static final int FEWEST_DATES = 4;
    /** No pavement is planned for longer. */
    private static final int HORIZON_YEARS = 100;

    private static final String NOT_SAME_PLACES = "not the same locations at every visit";
    private static final String METHOD_CHANGED = "not the same method at every visit";

    private static final double DAYS_A_YEAR = 365.25;

    private final List<DatedRate> points;
    private final LogTrend trend;
    private final List<String> known;

    private TrendPeriod(List<DatedRate> points, List<String> known) {
        this.known = List.copyOf(known);
        this.points = points.stream()
                .filter(DatedRate::hasFigure)
                .sorted(Comparator.comparing(DatedRate::date))
                .toList();
        List<DatedRate> measured = this.points.stream()
                .filter(point -> point.outcome().rate().isPresent())
                .toList();
        this.trend = LogTrend.of(
                measured.stream().mapToDouble(point -> years(point.date())).toArray(),
                measured.stream()
                        .mapToDouble(
                                point -> point.outcome().rate().orElseThrow().millimetresPerHour())
                        .toArray());
    }

    /**
     * {@return the stretch over some rates}
     *
     * @param points the rates in any order; what is withheld is left out
     */
    public static TrendPeriod of(List<DatedRate> points) {
        return new TrendPeriod(points, List.of());
    }

    /**
     * {@return this stretch with what else must be known beside its lines and dates}
     *
     * @param notes a line each
     */
    public TrendPeriod withNotes(List<String> notes) {
        return new TrendPeriod(points, notes);
    }

    /** {@return the rates and bounds, earliest first} */
    public List<DatedRate> points() {
        return points;
    }

    /** {@return the measured rates in mm/h over years since the stretch's first day} */
    public LogTrend trend() {
        return trend;
    }

    private double years(LocalDate date) {
        return ChronoUnit.DAYS.between(first(), date) / DAYS_A_YEAR;
    }

    private LocalDate first() {
        return points.get(0).date();
    }

    private LocalDate last() {
        return points.get(points.size() - 1).date();
    }

    /**
     * {@return when the rate comes to a limit, or why there is no date}
     *
     * @param limit the limit
     * @param level how often the earliest and latest dates are right
     */
    public LimitDate crossing(InfiltrationRate limit, double level) {
        List<String> reasons = obstacles();
        boundBelow(limit).ifPresent(date -> reasons.add("the upper bound of " + date + " is already below the limit"));
        if (reasons.isEmpty() && !falls()) {
            reasons.add("the fitted line does not fall");
        }
        Optional<Fieller> limits =
                reasons.isEmpty() ? trend.crossing(limit.millimetresPerHour(), level) : Optional.empty();
        return limits.flatMap(found -> expected(found, limit)).orElseGet(() -> notGiven(reasons));
    }

    /** The first day on which a bound says that the limit was passed: a line through the rest would say otherwise. */
    private Optional<LocalDate> boundBelow(InfiltrationRate limit) {
        return points.stream()
                .filter(point -> point.outcome() instanceof RateOutcome.UpperBound upper
                        && upper.bound().compareTo(limit) < 0)
                .map(DatedRate::date)
                .findFirst();
    }

    private static LimitDate notGiven(List<String> reasons) {
        return new LimitDate.NotGiven(
                reasons.isEmpty()
                        ? List.of("the fitted line does not reach the limit within " + HORIZON_YEARS + " years")
                        : reasons);
    }

    private boolean falls() {
        return trend.line().filter(line -> line.slope() < 0).isPresent();
    }

    private Optional<LimitDate> expected(Fieller limits, InfiltrationRate limit) {
        LocalDate earliest = limits.shape() == Fieller.Shape.WITHIN
                ? day(limits.low(), Math::floor).orElse(null)
                : null;
        LocalDate latest = limits.shape() == Fieller.Shape.WITHIN
                ? day(limits.high(), Math::ceil).orElse(null)
                : null;
        return day(limits.ratio(), Math::rint)
                .map(day -> new LimitDate.Expected(day, earliest, latest, limits.level(), notes(day, limits, limit)));
    }

    private Optional<LocalDate> day(double years, DoubleUnaryOperator rounding) {
        return Math.abs(years) <= HORIZON_YEARS
                ? Optional.of(first().plusDays((long) rounding.applyAsDouble(years * DAYS_A_YEAR)))
                : Optional.empty();
    }

    /** {@return what must be known beside the lines: several places or methods, outcomes left out, a curve that fits better} */
    public List<String> notes() {
        List<String> notes = new ArrayList<>(known);
        add(notes, several(DatedRate::where), NOT_SAME_PLACES);
        add(notes, several(DatedRate::method), METHOD_CHANGED);
        addLeftOut(notes);
        trend.alternativeModel().ifPresent(model -> notes.add("another model fits better: the rate " + model));
        return notes;
    }

    private void addLeftOut(List<String> notes) {
        long left = points.stream().filter(point -> !point.hasLog()).count();
        add(notes, left > 0, left + (left == 1 ? " bound or zero" : " bounds or zeros") + " excluded from the line");
    }

    /** {@return why no date can be given, to add to} */
    private List<String> obstacles() {
        List<String> reasons = new ArrayList<>();
        long dates = points.stream()
                .filter(DatedRate::hasLog)
                .map(DatedRate::date)
                .distinct()
                .count();
        long without = points.stream().filter(point -> !point.hasLog()).count();
        add(
                reasons,
                dates < FEWEST_DATES,
                "measured on " + dates + (dates == 1 ? " date" : " dates") + ", at least " + FEWEST_DATES
                        + " are needed");
        add(reasons, several(DatedRate::where), NOT_SAME_PLACES);
        add(reasons, several(DatedRate::method), METHOD_CHANGED);
        add(reasons, 2 * without > points.size(), "most outcomes are bounds or zero");
        return reasons;
    }

    private boolean several(Function<DatedRate, String> part) {
        return points.stream().map(part).distinct().count() > 1;
    }

    private List<String> notes(LocalDate expected, Fieller limits, InfiltrationRate limit) {
        List<String> notes = new ArrayList<>(known);
        add(notes, expected.isAfter(last()), "extrapolated beyond the last test (" + last() + ")");
        add(notes, !expected.isAfter(last()), "the fitted line is at or below the limit already");
        add(
                notes,
                limits.shape() != Fieller.Shape.WITHIN,
                "the decrease is not significant: the prediction limits of the date are unbounded");
        trend.alternativeModel().ifPresent(model -> notes.add(alternative(model, limit)));
        addLeftOut(notes);
        return notes;
    }

    private String alternative(TrendModel model, InfiltrationRate limit) {
        String when = trend.crossing(model, limit.millimetresPerHour()).stream()
                .mapToObj(years -> day(years, Math::rint)
                        .map(date -> "on " + date)
                        .orElse("not within " + HORIZON_YEARS + " years"))
                .findFirst()
                .orElse("never");
        return "another model fits better (the rate " + model + "); it reaches the limit " + when;
    }

    private static void add(List<String> list, boolean holds, String text) {
        if (holds) {
            list.add(text);
        }
    }

    /**
     * {@return the first day from the last test on at which one further test would read below a limit with a probability of
     *     {@code risk}; absent where no date can be given or the risk is not reached within a hundred years}
     *
     * @param limit the limit, above zero
     * @param risk  the chance one is ready to take of testing too late, above 0 and below 0.5
     */
    public Optional<LocalDate> nextTest(InfiltrationRate limit, double risk) {
        if (!(risk > 0 && risk < 0.5)) {
            throw new IllegalArgumentException("risk: expected between 0 and 0.5, got " + risk);
        }
        boolean isSaid = obstacles().isEmpty() && limit.millimetresPerHour() > 0;
        return isSaid
                ? trend.line()
                        .flatMap(line -> firstDay(day -> isRisked(
                                line, day, Quantile.student(1 - risk, line.n() - 2.0), limit.millimetresPerHour())))
                : Optional.empty();
    }

    /** The lower prediction bound is a hill over time: once it falls below the limit it stays there. */
    private Optional<LocalDate> firstDay(LongPredicate isRisked) {
        long today = ChronoUnit.DAYS.between(first(), last());
        long horizon = today + (long) (HORIZON_YEARS * DAYS_A_YEAR);
        if (isRisked.test(today)) {
            return Optional.of(last());
        }
        return isRisked.test(horizon)
                ? Optional.of(first().plusDays(firstOf(isRisked, today, horizon)))
                : Optional.empty();
    }

    private static long firstOf(LongPredicate isRisked, long before, long after) {
        while (after - before > 1) {
            long middle = (before + after) / 2;
            if (isRisked.test(middle)) {
                after = middle;
            } else {
                before = middle;
            }
        }
        return after;
    }

    private static boolean isRisked(LineFit line, long day, double quantile, double limit) {
        double years = day / DAYS_A_YEAR;
        return line.at(years) - quantile * line.predictionError(years) <= StrictMath.log(limit);
    }

    /** {@return the stretch as a small table} */
    @Override
    public String toString() {
        return points.isEmpty()
                ? "no rates\n"
                : TextTable.titled(first() + " to " + last()).with("outcomes", points.size()) + trend.toString();
    }
}
