// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import dev.infiltration.field.Location.Selection;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.statistics.Interval;
import dev.infiltration.statistics.LogNormalFit;
import dev.infiltration.statistics.SampleStatistics;
import dev.infiltration.statistics.StratifiedSample;
import dev.infiltration.summary.Sample.Spot;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * A surface over its locations: what they came to, and what that says of the surface.
 *
 * <p>Conventions.
 * <ul>
 * <li>Figures of the rates as they stand share one kind of outcome: with an upper bound among them they are upper bounds,
 *     with a lower bound lower bounds, with both they are withheld.
 * <li>Intervals are given for random locations, and for stratified ones with the area of every zone; they are then of the
 *     mean over the area. Targeted and fixed locations are not representative of the surface.
 * <li>The interval of the geometric mean is Student's on the log scale, that of the arithmetic mean Land's exact one (1971)
 *     for log-normal rates. With bounds there is {@link #boundedFit} instead.
 * <li>A rate of zero counts as it stands in mean, median and minimum and makes the geometric mean zero; nothing else on the
 *     log scale is then given. {@link Sample#withSmallestSeen} makes it a bound.
 * <li>What few locations cannot carry is absent: below two all scatter and all intervals, below three the interval of the
 *     arithmetic mean, below eight outliers, the interval by drawing anew and the fit to bounds.
 * </ul>
 */
public final class RateSummary {

    /** Locations that a standard deviation, and with it Student's interval, needs. */
    public static final int FEWEST_FOR_SCATTER = 2;
    /** Locations that the interval of the arithmetic mean needs: two make its upper limit astronomical. */
    public static final int FEWEST_FOR_MEAN = 3;
    /**
     * Locations that drawing anew, the fit to bounds and outliers need: of fewer there are not enough different draws, two
     * parameters take up most of what bounds say, and a median deviation rests on three or four values.
     */
    public static final int FEWEST_FOR_SHAPE = 8;

    private final Sample sample;
    private final List<Spot> given;

    private RateSummary(Sample sample) {
        this.sample = sample;
        this.given = sample.spots().stream()
                .filter(spot -> spot.figure().isPresent())
                .toList();
    }

    /**
     * {@return the summary of some locations}
     *
     * @param sample the locations
     */
    public static RateSummary of(Sample sample) {
        return new RateSummary(sample);
    }

    /** {@return the locations} */
    public Sample sample() {
        return sample;
    }

    /** {@return how many locations were planned} */
    public int planned() {
        return sample.spots().size() + sample.notTested();
    }

    /** {@return how many locations have a rate} */
    public int measured() {
        return rates(RateOutcome.Measured.class).length;
    }

    /** {@return how many locations have a bound} */
    public int bounded() {
        return given.size() - measured();
    }

    /** {@return how many locations were tested without either} */
    public int withheld() {
        return sample.spots().size() - given.size();
    }

    /** {@return how many locations were not tested} */
    public int notTested() {
        return sample.notTested();
    }

    private double[] rates(Class<? extends RateOutcome> kind) {
        return given.stream()
                .filter(spot -> kind.isInstance(spot.outcome()))
                .mapToDouble(spot -> spot.figure().orElseThrow())
                .toArray();
    }

    /** {@return the rates and bounds in mm/h, in order of the locations} */
    public double[] values() {
        return given.stream().mapToDouble(spot -> spot.figure().orElseThrow()).toArray();
    }

    /** {@return the arithmetic mean, which the standards average} */
    public RateOutcome mean() {
        return join(Figures::mean);
    }

    /** {@return the geometric mean, which says what a typical spot does; zero with a zero rate} */
    public RateOutcome geometricMean() {
        return join(Figures::geometricMean);
    }

    /** {@return the median, of an even count the mean of the middle two} */
    public RateOutcome median() {
        return join(SampleStatistics::median);
    }

    /** {@return the minimum, which says where ponding starts} */
    public RateOutcome minimum() {
        return join(Figures::minimum);
    }

    private RateOutcome join(ToDoubleFunction<double[]> figure) {
        return Outcomes.join(sample.spots().stream().map(Spot::outcome).toList(), figure);
    }

    /** {@return the arithmetic mean over the area, absent where a zone has no rate or the zones' areas are not known} */
    public Optional<RateOutcome> areaWeightedMean() {
        Zones zones = new Zones(sample);
        return zones.areKnown() ? Optional.of(join(rates -> zones.weighted(Figures::mean))) : Optional.empty();
    }

    private boolean isPlain() {
        return bounded() == 0 && measured() > 0;
    }

    private boolean hasLogs() {
        return isPlain() && Arrays.stream(values()).allMatch(rate -> rate > 0);
    }

    /** {@return number, mean and standard deviation of the rates, absent without rates or with bounds} */
    public Optional<SampleStatistics> moments() {
        return isPlain() ? Optional.of(SampleStatistics.of(values())) : Optional.empty();
    }

    /** {@return number, mean and standard deviation of the logarithms, absent without rates, with bounds or a zero} */
    public Optional<SampleStatistics> logMoments() {
        return hasLogs() ? Optional.of(SampleStatistics.of(Zones.logs(values()))) : Optional.empty();
    }

    /** {@return standard deviation by mean, of at least two rates without bounds} */
    public OptionalDouble cv() {
        return known(moments().map(of -> of.sd() / of.mean()));
    }

    /** {@return the coefficient of variation of a log-normal population with the scatter of the logarithms} */
    public OptionalDouble geometricCv() {
        return known(logMoments().map(of -> Math.sqrt(StrictMath.expm1(of.sd() * of.sd()))));
    }

    private static OptionalDouble known(Optional<Double> value) {
        return value.filter(Double::isFinite).stream()
                .mapToDouble(Double::doubleValue)
                .findFirst();
    }

    private Optional<StratifiedSample> strata() {
        if (!hasLogs() || !sample.isRepresentative()) {
            return Optional.empty();
        }
        if (sample.selection() == Selection.RANDOM) {
            return Optional.of(StratifiedSample.of(Zones.logs(values())));
        }
        Zones zones = new Zones(sample);
        return zones.areKnown() ? Optional.of(zones.strata()) : Optional.empty();
    }

    /** {@return the geometric mean of the surface: over its area where locations are stratified} */
    public OptionalDouble surfaceGeometricMean() {
        return known(strata().map(strata -> StrictMath.exp(strata.logMean())));
    }

    /**
     * {@return the interval of {@link #surfaceGeometricMean}, Student's on the log scale}
     *
     * @param level how often such an interval is right
     */
    public Optional<Interval> geometricMeanInterval(double level) {
        return strata().flatMap(strata -> strata.logMeanInterval(level)).map(Interval::exp);
    }

    /** {@return the arithmetic mean of the surface if its rates are log-normal, from at least two locations} */
    public OptionalDouble surfaceMean() {
        return known(strata().map(StratifiedSample::logNormalMean));
    }

    /**
     * {@return the interval of {@link #surfaceMean}, exact for log-normal rates (Land 1971); zones put together by variance
     *     estimates recovery (Zou, Huo and Taleban 2009)}
     *
     * @param level how often such an interval is right
     */
    public Optional<Interval> meanInterval(double level) {
        return strata().flatMap(strata -> strata.logNormalMeanInterval(level));
    }

    /**
     * {@return the interval of the geometric mean by drawing anew from the locations (bootstrap-t), which supposes no shape;
     *     for at least eight random ones}
     *
     * @param level how often such an interval is right
     * @param seed  the same seed gives the same interval
     */
    public Optional<Interval> bootstrapInterval(double level, long seed) {
        return hasLogs() && sample.selection() == Selection.RANDOM && given.size() >= FEWEST_FOR_SHAPE
                ? Optional.of(SampleStatistics.bootstrapInterval(Zones.logs(values()), level, seed)
                        .exp())
                : Optional.empty();
    }

    /** {@return the log-normal fit to rates and bounds of at least eight random locations, some of them bounds} */
    public Optional<LogNormalFit> boundedFit() {
        return bounded() > 0 && sample.selection() == Selection.RANDOM && given.size() >= FEWEST_FOR_SHAPE
                ? LogNormalFit.of(
                        rates(RateOutcome.Measured.class),
                        rates(RateOutcome.UpperBound.class),
                        rates(RateOutcome.LowerBound.class))
                : Optional.empty();
    }

    /** {@return the places, among {@link #values}, of outliers on the logarithmic scale; they are marked, never excluded} */
    public int[] outliers() {
        return hasLogs() && given.size() >= FEWEST_FOR_SHAPE
                ? SampleStatistics.outliers(Zones.logs(values()))
                : new int[0];
    }

    /** {@return what a reader must know beside the figures: what is not given, and why} */
    public List<String> notes() {
        return new SummaryWords(this).notes();
    }

    /** {@return the summary as a small table in mm/h, the counts first} */
    @Override
    public String toString() {
        return new SummaryWords(this).table().toString();
    }
}
