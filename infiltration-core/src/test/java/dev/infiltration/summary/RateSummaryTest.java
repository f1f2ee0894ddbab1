// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.Location.Selection;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.rate.RateOutcome.LowerBound;
import dev.infiltration.rate.RateOutcome.Measured;
import dev.infiltration.rate.RateOutcome.UpperBound;
import dev.infiltration.rate.RateOutcome.Withheld;
import dev.infiltration.statistics.Interval;
import dev.infiltration.statistics.LogNormalFit;
import dev.infiltration.statistics.Published;
import dev.infiltration.statistics.SampleStatistics;
import dev.infiltration.units.InfiltrationRate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

public class RateSummaryTest {

    private static RateSummary random(double... rates) {
        return RateSummary.of(Sample.random(rates));
    }

    private static InfiltrationRate rate(double rate) {
        return new InfiltrationRate(rate);
    }

    private static RateSummary of(RateOutcome... outcomes) {
        return RateSummary.of(Sample.of(Selection.RANDOM, List.of(outcomes)));
    }

    private static double value(RateOutcome outcome) {
        return outcome.figure().orElseThrow().millimetresPerHour();
    }

    @ParameterizedTest(name = "{0}: {4}")
    @CsvSource(delimiter = '|', textBlock = """
        # case       | geometric mean    | low               | high              | source and mark
        epa-chromium | 79.7291865924995  | 39.9725348390632  | 159.027772951979  | EPA 1992 data (seen, EnvStats), recomputed
        epa-tccb     | 0.538175161273753 | 0.469086857830188 | 0.617438965465279 | EPA 1994: log interval [-0.7569673, -0.4821751] (seen, EnvStats), recomputed
        aiha-welding | 1.06399322943064  | 0.5635229498131872| 2.008936091510617 | AIHA example: GM 1.06 (seen in an excerpt), recomputed
        niosh-lead   | 76.1619777509566  | 29.0666737404301  | 199.563490020835  | Krishnamoorthy et al. 2006 data (seen, EnvStats), recomputed
        refinery-co  | 58.8064671287437  | 48.9152214766284  | 70.6978415260029  | Zou, Huo & Taleban 2009 data (seen, EnvStats), recomputed
        baaqmd-co    | 19.3623938045648  | 9.15480071935247  | 40.9514423454939  | Zou, Huo & Taleban 2009 data (seen, EnvStats), recomputed
        """)
    void geometricMeanAgreesWithPublishedData(String name, double mean, double low, double high, String source) {
        RateSummary summary = random(Published.column("lognormal.csv", name, 1));
        assertEquals(mean, value(summary.geometricMean()), 1e-12 * mean, source);
        assertEquals(mean, summary.surfaceGeometricMean().orElseThrow(), 1e-12 * mean);
        Interval interval = summary.geometricMeanInterval(0.95).orElseThrow();
        assertEquals(low, interval.low(), 1e-12 * low);
        assertEquals(high, interval.high(), 1e-12 * high);
    }

    @Test
    void meanOfTheSurfaceIsLands() {
        // EPA 1994 TcCB: Land [0.5243787, 0.7016992] (seen, EnvStats)
        RateSummary summary = random(Published.column("lognormal.csv", "epa-tccb", 1));
        Interval interval = summary.meanInterval(0.95).orElseThrow();
        assertEquals(0.5243787, interval.low(), 5e-8);
        assertEquals(0.7016992, interval.high(), 5e-8);
        assertEquals(
                Math.exp(-0.619571193233807 + Math.pow(0.467952960846586, 2) / 2),
                summary.surfaceMean().orElseThrow(),
                1e-12);
    }

    @Test
    void figuresAreThoseOfTheRates() {
        RateSummary summary = random(100, 400, 200, 1600);
        assertEquals(575, value(summary.mean()));
        assertEquals(Math.pow(100.0 * 400 * 200 * 1600, 0.25), value(summary.geometricMean()), 1e-9);
        assertEquals(300, value(summary.median()));
        assertEquals(100, value(summary.minimum()));
        // sd 698.2120, cv 1.214282; logs in halves of ln 2: sd ln 2·√(35/12)... (derived below)
        assertEquals(
                Math.sqrt((475.0 * 475 + 175 * 175 + 375 * 375 + 1025 * 1025) / 3) / 575,
                summary.cv().orElseThrow(),
                1e-12);
        double s = SampleStatistics.of(0, 2, 1, 4).sd() * Math.log(2);
        assertEquals(Math.sqrt(Math.exp(s * s) - 1), summary.geometricCv().orElseThrow(), 1e-12);
    }

    @Test
    void oneLocationCarriesNoMoreThanItsValue() {
        RateSummary one = random(2540);
        assertTrue(one.cv().isEmpty());
        assertTrue(one.geometricCv().isEmpty());
        assertTrue(one.geometricMeanInterval(0.95).isEmpty());
        assertTrue(one.meanInterval(0.95).isEmpty());
        String text = one.toString();
        assertTrue(
                text.contains("values     2540")
                        && text.contains("minimum    2540")
                        && text.contains("fewer than 2 locations"),
                text);
        assertFalse(text.contains("median") || text.contains("variation") || text.contains("geometric"), text);
    }

    @Test
    void twoLocationsCarryStudentsIntervalAlone() {
        RateSummary two = random(100, 400);
        assertTrue(two.geometricMeanInterval(0.95).isPresent());
        assertTrue(two.meanInterval(0.95).isEmpty());
        assertTrue(random(100, 400, 300).meanInterval(0.95).isPresent());
        assertTrue(two.bootstrapInterval(0.95, 1).isEmpty());
    }

    @Test
    void eightLocationsCarryOutliersAndDrawingAnew() {
        double[] seven = {100, 110, 120, 130, 140, 150, 9000};
        assertEquals(0, random(seven).outliers().length);
        assertTrue(random(seven).bootstrapInterval(0.95, 1).isEmpty());
        double[] eight = Arrays.copyOf(seven, 8);
        eight[7] = 125;
        assertArrayEquals(new int[] {6}, random(eight).outliers());
        assertTrue(random(eight).toString().contains("outliers"), random(eight).toString());
        assertTrue(random(eight).bootstrapInterval(0.95, 1).isPresent());
        assertEquals(SampleStatistics.of(eight).mean(), value(random(eight).mean()), 1e-9);
    }

    @Test
    void drawingAnewIsOfTheLogarithms() {
        double[] rates = {100, 150, 220, 310, 400, 520, 700, 1100, 1500};
        Interval drawn = random(rates).bootstrapInterval(0.9, 5).orElseThrow();
        assertEquals(
                SampleStatistics.bootstrapInterval(Zones.logs(rates), 0.9, 5).exp(), drawn);
    }

    @Test
    void targetedSpotsDoNotStandForTheSurface() {
        double[] rates = {100, 150, 220, 310, 400, 520, 700, 1100, 1500};
        RateSummary targeted = RateSummary.of(Sample.of(Selection.TARGETED, rates));
        assertTrue(targeted.geometricMeanInterval(0.95).isEmpty());
        assertTrue(targeted.meanInterval(0.95).isEmpty());
        assertTrue(targeted.bootstrapInterval(0.95, 1).isEmpty());
        assertTrue(targeted.surfaceMean().isEmpty());
        assertTrue(targeted.cv().isPresent());
        assertEquals(
                List.of("the locations are not representative of the surface (targeted): no intervals"),
                targeted.notes());
        assertTrue(RateSummary.of(Sample.of(Selection.STRATIFIED, rates))
                .notes()
                .get(0)
                .contains("areas of the zones unknown"));
        assertTrue(RateSummary.of(new Sample(List.of(), null, Map.of(), 0))
                .notes()
                .get(0)
                .contains("unknown or mixed"));
    }

    @Test
    void zonesWeighByTheirArea() {
        RateSummary summary = RateSummary.of(Sample.stratified(
                Map.of("edge", new double[] {10, 40, 20}, "interior", new double[] {1000, 2000, 4000}),
                Map.of("edge", 100.0, "interior", 300.0)));
        assertEquals(
                0.25 * 70 / 3 + 0.75 * 7000 / 3,
                value(summary.areaWeightedMean().orElseThrow()),
                1e-9);
        assertEquals(
                Math.pow(20, 0.25) * Math.pow(2000, 0.75),
                summary.surfaceGeometricMean().orElseThrow(),
                1e-9);
        assertTrue(summary.geometricMeanInterval(0.95)
                .orElseThrow()
                .contains(summary.surfaceGeometricMean().orElseThrow()));
        assertTrue(summary.meanInterval(0.95)
                .orElseThrow()
                .contains(summary.surfaceMean().orElseThrow()));
        assertTrue(summary.bootstrapInterval(0.95, 1).isEmpty());
        assertTrue(summary.toString().contains("area-weighted mean"));
    }

    @Test
    void aZoneWithoutLocationsLeavesNoWeightedFigure() {
        RateSummary summary = RateSummary.of(
                Sample.stratified(Map.of("edge", new double[] {10, 40}), Map.of("edge", 100.0, "interior", 300.0)));
        assertTrue(summary.areaWeightedMean().isEmpty());
        assertTrue(summary.geometricMeanInterval(0.95).isEmpty());
        assertTrue(random(1, 2).areaWeightedMean().isEmpty());
    }

    @Test
    void aZeroCountsAsItStands() {
        RateSummary summary = random(0, 100, 200);
        assertEquals(100, value(summary.mean()), 1e-12);
        assertEquals(0, value(summary.geometricMean()));
        assertEquals(0, value(summary.minimum()));
        assertTrue(summary.cv().isPresent());
        assertTrue(summary.logMoments().isEmpty());
        assertTrue(summary.geometricMeanInterval(0.95).isEmpty());
        assertTrue(summary.notes().contains("a rate is zero: no interval or other result on the logarithmic scale"));
    }

    @Test
    void boundsMakeTheFiguresBounds() {
        UpperBound upper = new UpperBound(rate(50), List.of("run.discontinued"));
        LowerBound lower = new LowerBound(rate(900), List.of("run.head"));
        RateSummary atMost = of(new Measured(rate(150)), upper);
        assertEquals(new UpperBound(rate(100), List.of("run.discontinued")), atMost.mean());
        assertTrue(atMost.toString().contains("at most 100"));
        assertTrue(of(new Measured(rate(150)), lower).toString().contains("at least 525"));
        assertTrue(of(upper, lower).toString().contains("withheld"));
        assertTrue(atMost.cv().isEmpty());
        assertTrue(atMost.notes().contains("1 of 2 values are bounds"));
    }

    @Test
    void boundsOfEightLocationsAreFitted() {
        List<RateOutcome> outcomes = new ArrayList<>();
        for (double value : new double[] {100, 150, 220, 310, 400, 520}) {
            outcomes.add(new Measured(rate(value)));
        }
        outcomes.add(new UpperBound(rate(80), List.of()));
        assertTrue(RateSummary.of(Sample.of(Selection.RANDOM, outcomes))
                .boundedFit()
                .isEmpty());
        outcomes.add(new LowerBound(rate(900), List.of()));
        RateSummary eight = RateSummary.of(Sample.of(Selection.RANDOM, outcomes));
        LogNormalFit expected = LogNormalFit.of(
                        new double[] {100, 150, 220, 310, 400, 520}, new double[] {80}, new double[] {900})
                .orElseThrow();
        assertEquals(expected.logMean(), eight.boundedFit().orElseThrow().logMean());
        assertTrue(eight.toString().contains("geometric mean of the surface, censored fit"));
        assertTrue(RateSummary.of(Sample.of(Selection.FIXED, outcomes))
                .boundedFit()
                .isEmpty());
        assertTrue(random(1, 2, 3, 4, 5, 6, 7, 8).boundedFit().isEmpty());
    }

    @Test
    void countsLead() {
        RateSummary summary = RateSummary.of(Sample.of(
                        Selection.RANDOM,
                        List.of(
                                new Measured(rate(100)),
                                new UpperBound(rate(50), List.of()),
                                new Withheld(List.of("run.void"))))
                .withNotTested(2));
        assertEquals(
                List.of(5, 1, 1, 1, 2),
                List.of(
                        summary.planned(),
                        summary.measured(),
                        summary.bounded(),
                        summary.withheld(),
                        summary.notTested()));
        assertTrue(summary.toString().contains("planned 5, measured 1, bounded 1, withheld 1, not tested 2"));
        assertTrue(summary.notes().contains("3 of 5 planned locations have no rate and are excluded"));
    }

    @Test
    void nothingTestedSaysSo() {
        RateSummary none = random();
        assertTrue(none.mean() instanceof Withheld);
        assertTrue(none.moments().isEmpty());
        assertTrue(none.toString().contains("withheld"));
    }

    @Property(tries = 300)
    void aFactorOnAllRatesScalesEveryFigure(
            @ForAll @Size(min = 3, max = 12) List<@DoubleRange(min = 1, max = 5000) Double> rates,
            @ForAll @DoubleRange(min = 0.05, max = 20) double factor) {
        double[] plain = rates.stream().mapToDouble(Double::doubleValue).toArray();
        RateSummary one = random(plain);
        RateSummary other =
                random(Arrays.stream(plain).map(value -> value * factor).toArray());
        assertEquals(1, value(other.mean()) / value(one.mean()) / factor, 1e-12);
        assertEquals(one.geometricCv().orElseThrow(), other.geometricCv().orElseThrow(), 1e-6);
        assertArrayEquals(one.outliers(), other.outliers());
        assertEquals(
                1,
                other.geometricMeanInterval(0.95).orElseThrow().high()
                        / one.geometricMeanInterval(0.95).orElseThrow().high()
                        / factor,
                1e-9);
    }
}
