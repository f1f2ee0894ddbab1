// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class LogNormalFitTest {

    private static double[] part(String name, String censored) {
        return Published.rows("lognormal.csv").stream()
                .filter(row -> row[0].equals(name) && row[2].equals(censored))
                .mapToDouble(row -> Double.parseDouble(row[1]))
                .toArray();
    }

    private static LogNormalFit data(String name) {
        return LogNormalFit.of(part(name, "0"), part(name, "1"), new double[0]).orElseThrow();
    }

    @Test
    void agreesWithManganese() {
        // EPA 2009 Unified Guidance example 15-1 by EnvStats: 2.215905, 1.356291, profile [1.595062, 2.771197],
        // mean 23.003987, cv 2.300772 (seen); more digits recomputed at 30 digits
        LogNormalFit fit = data("epa-manganese");
        assertEquals(2.21590466935597, fit.logMean(), 1e-13);
        assertEquals(1.35629118442453, fit.logSd(), 1e-13);
        assertEquals(23.0039872093, fit.mean(), 1e-9);
        assertEquals(2.30077226281, fit.cv(), 1e-10);
        assertEquals(9.169700908, fit.geometricMean(), 1e-9);
        Interval profile = fit.profile(0.95);
        assertEquals(1.59506150, profile.low(), 1e-8);
        assertEquals(2.77119706, profile.high(), 1e-8);
        assertEquals(0.2825913808, fit.logMeanError(), 1e-10);
        assertEquals(0.2335690292, fit.logSdError(), 1e-10);
        assertEquals(-0.01032123398, fit.covariance(), 1e-11);
    }

    @Test
    void agreesWithSilverOfManyLimits() {
        // Helsel & Cohn 1988, 34 of 56 below 12 limits, by EnvStats: -1.040572, 2.354847 (seen); more digits recomputed
        LogNormalFit fit = data("helsel-cohn-silver");
        assertEquals(-1.04057164759322, fit.logMean(), 1e-12);
        assertEquals(2.35484657004101, fit.logSd(), 1e-12);
        Interval profile = fit.profile(0.95);
        assertEquals(-2.08846015, profile.low(), 1e-8);
        assertEquals(-0.26597676, profile.high(), 1e-8);
    }

    @Test
    void lowerBoundsAreTheMirrorOfUpperOnes() {
        double[] rates = part("epa-manganese", "0");
        double[] atMost = part("epa-manganese", "1");
        LogNormalFit mirror =
                LogNormalFit.of(inverse(rates), new double[0], inverse(atMost)).orElseThrow();
        LogNormalFit fit = data("epa-manganese");
        assertEquals(-fit.logMean(), mirror.logMean(), 1e-12);
        assertEquals(fit.logSd(), mirror.logSd(), 1e-12);
        assertEquals(-fit.profile(0.9).high(), mirror.profile(0.9).low(), 1e-10);
    }

    private static double[] inverse(double[] values) {
        return Arrays.stream(values).map(value -> 1 / value).toArray();
    }

    @Test
    void whatIsNoFitIsAbsent() {
        double[] none = {};
        assertTrue(LogNormalFit.of(new double[] {5}, new double[] {3}, none).isEmpty());
        assertTrue(LogNormalFit.of(new double[] {5, 5}, new double[] {3}, none).isEmpty());
        assertTrue(LogNormalFit.of(new double[] {5, 6}, new double[] {0}, none).isEmpty());
        assertTrue(LogNormalFit.of(new double[] {0, 6}, none, none).isEmpty());
        assertTrue(LogNormalFit.of(new double[] {5, 6}, none, new double[] {Double.POSITIVE_INFINITY})
                .isEmpty());
    }

    @Test
    void boundsFarAwayFromTheRatesAreBorne() {
        LogNormalFit fit = LogNormalFit.of(new double[] {1000, 1010, 1020}, new double[] {1e-3}, new double[] {1e9})
                .orElseThrow();
        assertTrue(fit.logSd() > 3 && Double.isFinite(fit.logSd()));
        assertTrue(fit.interval(0.95).contains(fit.geometricMean()));
        assertTrue(fit.toString().startsWith("log-normal population"));
    }

    @Property(tries = 500)
    void withoutBoundsItIsStudents(
            @ForAll @Size(min = 3, max = 15) List<@DoubleRange(min = 1, max = 5000) Double> values) {
        double[] rates = values.stream().mapToDouble(Double::doubleValue).toArray();
        Moments logs = Moments.of(Zones.logs(rates));
        if (logs.sd() < 1e-3) {
            return;
        }
        LogNormalFit fit = LogNormalFit.of(rates, new double[0], new double[0]).orElseThrow();
        assertEquals(logs.mean(), fit.logMean(), 1e-10);
        assertEquals(logs.sd() * Math.sqrt((logs.n() - 1.0) / logs.n()), fit.logSd(), 1e-9);
        Interval student = logs.interval(0.95).map(Interval::exp).orElseThrow();
        assertEquals(1, fit.interval(0.95).low() / student.low(), 1e-7);
        assertEquals(1, fit.interval(0.95).high() / student.high(), 1e-7);
    }

    @Property(tries = 300)
    void aFactorOnAllMovesTheMeanAlone(
            @ForAll @Size(min = 3, max = 8) List<@DoubleRange(min = 1, max = 500) Double> values,
            @ForAll @DoubleRange(min = 0.01, max = 100) double factor) {
        double[] rates = values.stream().mapToDouble(Double::doubleValue).toArray();
        double[] atMost = {rates[0] / 2, rates[1]};
        double[] atLeast = {rates[2] * 2};
        LogNormalFit.of(rates, atMost, atLeast).ifPresent(fit -> {
            LogNormalFit other = LogNormalFit.of(times(rates, factor), times(atMost, factor), times(atLeast, factor))
                    .orElseThrow();
            assertEquals(fit.logMean() + Math.log(factor), other.logMean(), 1e-7);
            assertEquals(fit.logSd(), other.logSd(), 1e-7);
        });
    }

    private static double[] times(double[] values, double factor) {
        return Arrays.stream(values).map(value -> value * factor).toArray();
    }
}
