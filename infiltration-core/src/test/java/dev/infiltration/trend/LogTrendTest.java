// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.trend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.compare.Ratio;
import dev.infiltration.statistics.Conclusion;
import dev.infiltration.statistics.Fieller;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class LogTrendTest {

    private static final double[] YEARS = {0, 1, 2, 3, 4, 5, 6};

    private static LogTrend along(DoubleUnaryOperator rate) {
        return LogTrend.of(YEARS, Arrays.stream(YEARS).map(rate).toArray());
    }

    @Test
    void aLossOfATenthAYearIsReadOff() {
        LogTrend trend = along(year -> 2540 * Math.pow(0.9, year) * (1 + 0.001 * Math.cos(9 * year)));
        Ratio factor = trend.annualFactor(0.95).orElseThrow();
        assertEquals(0.9, factor.value(), 1e-3);
        assertTrue(factor.interval().orElseThrow().contains(0.9));
        assertEquals(0.9, trend.theilSenAnnualFactor(0.95).orElseThrow().value(), 1e-3);
        assertEquals(Conclusion.LOWER, trend.mannKendall().conclusion());
        Fieller crossing = trend.crossing(254, 0.95).orElseThrow();
        assertEquals(Math.log(10) / -Math.log(0.9), crossing.ratio(), 0.1);
        assertEquals(Fieller.Shape.WITHIN, crossing.shape());
    }

    @Test
    void publishedLossIsReadAsAYearlyRate() {
        // about 18 % of new left after about 10 years (Borgwardt 2006, secondary): k = 0.171 a year, 13.4 years
        // (derived)
        LogTrend trend = LogTrend.of(new double[] {0, 10}, new double[] {2540, 0.18 * 2540});
        assertEquals(-0.171, trend.annualFactor(0.95).orElseThrow().log(), 5e-4);
        assertTrue(trend.annualFactor(0.95).orElseThrow().interval().isEmpty());
        assertEquals(13.4, trend.crossing(TrendModel.STEADY, 254).orElseThrow(), 0.05);
        assertTrue(trend.crossing(254, 0.95).isEmpty());
    }

    @Test
    void zerosAreLeftOutOfLinesAndCountAsTheLowest() {
        LogTrend trend = LogTrend.of(new double[] {0, 1, 2, 3, 4}, new double[] {800, 400, 200, 0, 0});
        assertEquals(2, trend.zeros());
        assertEquals(5, trend.n());
        assertEquals(0.5, trend.annualFactor(0.95).orElseThrow().value(), 1e-12);
        assertEquals(-9, trend.mannKendall().statistic());
        assertTrue(trend.toString().contains("5, 2 of them zero"));
    }

    @Test
    void aCurveThatFitsBetterIsFound() {
        DoubleUnaryOperator scatter = year -> Math.exp(0.01 * Math.sin(7 * year));
        assertEquals(
                Optional.of(TrendModel.LEVELLING_OFF),
                along(year -> 900 * Math.exp(-Math.sqrt(year)) * scatter.applyAsDouble(year))
                        .alternativeModel());
        assertEquals(
                Optional.of(TrendModel.ACCELERATING),
                along(year -> 900 * Math.exp(-0.1 * year * year) * scatter.applyAsDouble(year))
                        .alternativeModel());
        assertEquals(
                Optional.empty(),
                along(year -> 900 * Math.exp(-0.4 * year) * scatter.applyAsDouble(year))
                        .alternativeModel());
    }

    @Test
    void rivalsReachALimitWhereTheirCurveDoes() {
        LogTrend levelling = along(year -> 900 * Math.exp(-Math.sqrt(year)));
        assertEquals(
                9,
                levelling.crossing(TrendModel.LEVELLING_OFF, 900 * Math.exp(-3)).orElseThrow(),
                1e-9);
        LogTrend late = LogTrend.of(
                new double[] {2010, 2011, 2012}, new double[] {900, 900 * Math.exp(-1), 900 * Math.exp(-4)});
        assertEquals(
                2013, late.crossing(TrendModel.ACCELERATING, 900 * Math.exp(-9)).orElseThrow(), 1e-9);
        assertTrue(late.crossing(TrendModel.ACCELERATING, 5000).isEmpty());
    }

    @Test
    void fewPointsGiveNoLine() {
        LogTrend one = LogTrend.of(new double[] {3}, new double[] {100});
        assertTrue(one.line().isEmpty());
        assertTrue(one.theilSenLine().isEmpty());
        assertTrue(one.annualFactor(0.95).isEmpty());
        assertTrue(one.crossing(10, 0.95).isEmpty());
        assertTrue(one.alternativeModel().isEmpty());
        assertTrue(one.toString().contains("not given"));
        assertTrue(LogTrend.of(new double[0], new double[0]).line().isEmpty());
    }

    @Test
    void aLimitOfZeroIsNeverReached() {
        assertTrue(along(year -> 100 - 5 * year).crossing(0, 0.95).isEmpty());
    }

    @Test
    void refusesWhatIsNoRate() {
        assertThrows(IllegalArgumentException.class, () -> LogTrend.of(YEARS, new double[] {1}));
        assertThrows(IllegalArgumentException.class, () -> LogTrend.of(new double[] {0}, new double[] {-1}));
        assertThrows(IllegalArgumentException.class, () -> LogTrend.of(new double[] {0}, new double[] {Double.NaN}));
        assertThrows(
                IllegalArgumentException.class,
                () -> LogTrend.of(new double[] {Double.POSITIVE_INFINITY}, new double[] {1}));
    }

    @Property(tries = 1000)
    void aConstantFactorChangesNoSlope(
            @ForAll @Size(min = 4, max = 12) List<@DoubleRange(min = 1, max = 9000) Double> rates,
            @ForAll @DoubleRange(min = 0.01, max = 100) double factor) {
        double[] plain = rates.stream().mapToDouble(Double::doubleValue).toArray();
        double[] years =
                IntStream.range(0, plain.length).mapToDouble(i -> i * 0.7).toArray();
        LogTrend one = LogTrend.of(years, plain);
        LogTrend other = LogTrend.of(
                years, Arrays.stream(plain).map(rate -> rate * factor).toArray());
        assertEquals(
                one.annualFactor(0.95).orElseThrow().log(),
                other.annualFactor(0.95).orElseThrow().log(),
                1e-12);
        assertEquals(
                one.theilSenAnnualFactor(0.95).orElseThrow().log(),
                other.theilSenAnnualFactor(0.95).orElseThrow().log(),
                1e-12);
        assertEquals(one.mannKendall().exact(), other.mannKendall().exact());
        assertFalse(one.n() != other.n());
    }
}
