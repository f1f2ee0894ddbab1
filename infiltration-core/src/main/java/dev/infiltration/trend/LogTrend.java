// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.trend;

import dev.infiltration.compare.Ratio;
import dev.infiltration.statistics.Fieller;
import dev.infiltration.statistics.Interval;
import dev.infiltration.statistics.LineFit;
import dev.infiltration.statistics.MannKendall;
import dev.infiltration.statistics.TextTable;
import dev.infiltration.statistics.TheilSen;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Rates over years on the log scale: by what factor they change a year.
 *
 * <p>The line of least squares assumes log-normal variation; the Theil–Sen line and the Mann–Kendall test do not. A rate
 * of zero has no logarithm: it is left out of both lines and counts as the lowest in the test.
 *
 * <p>Rates may be in any unit, the same for all; years count from any day, the curves from the first year given.
 */
public final class LogTrend {

    /** Points from which an alternative model is fitted: fewer fit any model. */
    private static final int ENOUGH_FOR_ALTERNATIVE = 5;
    /** What a rival must be better by, in Akaike's criterion (differences of 2 and more: Burnham and Anderson 2002). */
    private static final double CLEARLY_BETTER = 2;

    private final double[] years;
    private final double[] rates;
    private final double[] times;
    private final double[] logs;
    private final double start;

    private LogTrend(double[] years, double[] rates) {
        this.years = years.clone();
        this.rates = rates.clone();
        int[] positive =
                IntStream.range(0, rates.length).filter(i -> rates[i] > 0).toArray();
        this.times = Arrays.stream(positive).mapToDouble(i -> years[i]).toArray();
        this.logs = Arrays.stream(positive)
                .mapToDouble(i -> StrictMath.log(rates[i]))
                .toArray();
        this.start = Arrays.stream(times).min().orElse(0);
    }

    /**
     * {@return the trend of rates over years}
     *
     * @param years when each was measured
     * @param rates the rates, at least 0
     * @throws IllegalArgumentException if the numbers differ, a rate is negative, or anything is not finite
     */
    public static LogTrend of(double[] years, double[] rates) {
        if (years.length != rates.length) {
            throw new IllegalArgumentException(
                    "years, rates: expected pairs, got " + years.length + " and " + rates.length);
        }
        if (Arrays.stream(rates).anyMatch(rate -> !(rate >= 0) || Double.isInfinite(rate))) {
            throw new IllegalArgumentException("rates: expected finite rates of at least 0");
        }
        if (!Arrays.stream(years).allMatch(Double::isFinite)) {
            throw new IllegalArgumentException("years: expected finite numbers");
        }
        return new LogTrend(years, rates);
    }

    /** {@return how many rates there are} */
    public int n() {
        return rates.length;
    }

    /** {@return how many rates are zero} */
    public int zeros() {
        return rates.length - logs.length;
    }

    /** {@return the line of least squares through the logarithms, absent for rates at fewer than two times} */
    public Optional<LineFit> line() {
        return line(TrendModel.STEADY);
    }

    /** {@return the line of least squares over a curve's scale of the years since the first} */
    Optional<LineFit> line(TrendModel curve) {
        return Arrays.stream(times).distinct().count() < 2 ? Optional.empty() : Optional.of(fit(curve));
    }

    private LineFit fit(TrendModel curve) {
        return LineFit.of(
                Arrays.stream(times)
                        .map(time -> curve == TrendModel.STEADY ? time : curve.scale(time - start))
                        .toArray(),
                logs);
    }

    /**
     * {@return the annual factor of the least-squares line; its interval needs three rates}
     *
     * @param level how often such an interval is right
     */
    public Optional<Ratio> annualFactor(double level) {
        return line().map(line ->
                new Ratio(line.slope(), line.slopeInterval(level).orElse(null)));
    }

    /** {@return the Theil–Sen line through the logarithms, absent for rates at fewer than two times} */
    public Optional<TheilSen> theilSenLine() {
        return Arrays.stream(times).distinct().count() < 2 ? Optional.empty() : Optional.of(TheilSen.of(times, logs));
    }

    /**
     * {@return the annual factor of the Theil–Sen line}
     *
     * @param level how often such an interval is right; the interval says the level reached
     */
    public Optional<Ratio> theilSenAnnualFactor(double level) {
        return theilSenLine()
                .map(line -> new Ratio(line.slope(), line.interval(level).orElse(null)));
    }

    /** {@return the test of a trend, zeros counting as the lowest} */
    public MannKendall mannKendall() {
        return MannKendall.of(years, rates);
    }

    /**
     * {@return the curve that fits clearly better than a steady change, if one does}
     *
     * <p>Better by at least 2 in Akaike's criterion, {@code n·ln} of the squared residual standard deviations. Looked for
     * from five rates up.
     */
    public Optional<TrendModel> alternativeModel() {
        if (logs.length < ENOUGH_FOR_ALTERNATIVE) {
            return Optional.empty();
        }
        return Stream.of(TrendModel.LEVELLING_OFF, TrendModel.ACCELERATING)
                .filter(curve -> better(curve) >= CLEARLY_BETTER)
                .max(Comparator.comparingDouble(this::better));
    }

    private double better(TrendModel curve) {
        double gain = 2 * logs.length * StrictMath.log(residualSd(TrendModel.STEADY) / residualSd(curve));
        return Double.isNaN(gain) ? 0 : gain;
    }

    private double residualSd(TrendModel curve) {
        return line(curve).map(LineFit::residualSd).orElse(Double.NaN);
    }

    /**
     * {@return when the rate measured at one further test will come to a limit: Fieller's limits about the year at which the
     *     line does; absent for fewer than three rates or a limit that is not positive}
     *
     * @param limit the limit, in the unit of the rates
     * @param level how often such limits are right
     */
    public Optional<Fieller> crossing(double limit, double level) {
        return limit > 0 ? line().flatMap(line -> line.where(StrictMath.log(limit), 1, level)) : Optional.empty();
    }

    /**
     * {@return the year at which a curve comes to a limit, absent where it does not}
     *
     * @param curve the curve
     * @param limit the limit, in the unit of the rates
     */
    public OptionalDouble crossing(TrendModel curve, double limit) {
        double year = line(curve)
                .map(line -> (StrictMath.log(limit) - line.intercept()) / line.slope())
                .map(scaled -> curve == TrendModel.STEADY ? scaled : start + curve.unscale(scaled))
                .orElse(Double.NaN);
        return Double.isFinite(year) ? OptionalDouble.of(year) : OptionalDouble.empty();
    }

    /** {@return the trend as a small table} */
    @Override
    public String toString() {
        return TextTable.titled("rates over years")
                .with("rates", n() + (zeros() == 0 ? "" : ", " + zeros() + " of them zero"))
                .with(
                        "annual factor",
                        annualFactor(Interval.LEVEL).map(Ratio::toString).orElse("not given"))
                .with(
                        "Theil–Sen annual factor",
                        theilSenAnnualFactor(Interval.LEVEL)
                                .map(Ratio::toString)
                                .orElse("not given"))
                .with("Mann–Kendall test", trend())
                .with(
                        "alternative model",
                        alternativeModel().map(TrendModel::toString).orElse("none"))
                .toString();
    }

    private String trend() {
        MannKendall test = mannKendall();
        return switch (test.conclusion()) {
            case HIGHER -> "increases significantly (p = " + TextTable.number(test.pValue()) + ")";
            case LOWER -> "decreases significantly (p = " + TextTable.number(test.pValue()) + ")";
            case NOT_SIGNIFICANT, DIFFERENT -> "no significant trend (p = " + TextTable.number(test.pValue()) + ")";
            case INSUFFICIENT_DATA -> "insufficient data (at least 5 dates are needed)";
        };
    }
}
