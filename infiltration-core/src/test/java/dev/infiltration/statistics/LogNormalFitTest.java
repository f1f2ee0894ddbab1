// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LogNormalFitTest {

    private static double[] part(String name, String censored) {
        return Published.rows("lognormal.csv").stream()
                .filter(row -> row[0].equals(name) && row[2].equals(censored))
                .mapToDouble(row -> Double.parseDouble(row[1]))
                .toArray();
    }

    static LogNormalFit data(String name) {
        return LogNormalFit.of(part(name, "0"), part(name, "1"), new double[0]).orElseThrow();
    }

    @ParameterizedTest(name = "{0}, {1}: {4}")
    @CsvSource(delimiter = '|', textBlock = """
        # case             | figure             | value             | within | source and mark
        epa-manganese      | mean of logs       | 2.21590466935597  | 1e-13  | EPA 2009 Unified Guidance example 15-1: 2.215905 (seen, EnvStats), more digits recomputed
        epa-manganese      | sd of logs         | 1.35629118442453  | 1e-13  | the same: 1.356291 (seen, EnvStats), more digits recomputed
        epa-manganese      | mean               | 23.0039872093     | 1e-9   | the same: 23.003987 (seen, EnvStats), more digits recomputed
        epa-manganese      | cv                 | 2.30077226281     | 1e-10  | the same: 2.300772 (seen, EnvStats), more digits recomputed
        epa-manganese      | geometric mean     | 9.169700908       | 1e-9   | the same, recomputed
        epa-manganese      | profile 95 % from  | 1.59506150        | 1e-8   | the same: 1.595062 (seen, EnvStats), more digits recomputed
        epa-manganese      | profile 95 % to    | 2.77119706        | 1e-8   | the same: 2.771197 (seen, EnvStats), more digits recomputed
        epa-manganese      | error of the mean  | 0.2825913808      | 1e-10  | the same, recomputed
        epa-manganese      | error of the sd    | 0.2335690292      | 1e-10  | the same, recomputed
        epa-manganese      | covariance         | -0.01032123398    | 1e-11  | the same, recomputed
        helsel-cohn-silver | mean of logs       | -1.04057164759322 | 1e-12  | Helsel & Cohn 1988, 34 of 56 below 12 limits: -1.040572 (seen, EnvStats), more digits recomputed
        helsel-cohn-silver | sd of logs         | 2.35484657004101  | 1e-12  | the same: 2.354847 (seen, EnvStats), more digits recomputed
        helsel-cohn-silver | profile 95 % from  | -2.08846015       | 1e-8   | the same, recomputed
        helsel-cohn-silver | profile 95 % to    | -0.26597676       | 1e-8   | the same, recomputed
        """)
    void agreesWithPublishedCases(String name, String figure, double value, double within, String source) {
        assertEquals(value, figure(data(name), figure), within, source);
    }

    static double figure(LogNormalFit fit, String figure) {
        return switch (figure) {
            case "mean of logs" -> fit.logMean();
            case "sd of logs" -> fit.logSd();
            case "mean" -> fit.mean();
            case "cv" -> fit.cv();
            case "geometric mean" -> fit.geometricMean();
            case "profile 95 % from" -> fit.profile(0.95).low();
            case "profile 95 % to" -> fit.profile(0.95).high();
            case "error of the mean" -> fit.logMeanError();
            case "error of the sd" -> fit.logSdError();
            default -> fit.covariance();
        };
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
        SampleStatistics logs =
                SampleStatistics.of(Arrays.stream(rates).map(StrictMath::log).toArray());
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
