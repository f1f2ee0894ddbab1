// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.statistics.CensoredLine.Kind;
import dev.infiltration.statistics.CensoredLine.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CensoredLineTest {

    /** Own Newton iteration with 34 digits; second way survreg of survival 3.5-3 (recomputed). Invented data. */
    static Stream<Panel.Value> values() {
        return Panel.values("censored.csv").filter(value -> !value.quantity().contains("wald_p"));
    }

    @ParameterizedTest
    @MethodSource("values")
    void agreesWithReferenceValues(Panel.Value value) {
        double expected = value.number();
        assertEquals(expected, actual(value), 1e-8 * Math.abs(expected));
    }

    private static double actual(Panel.Value value) {
        double unit = value.name().endsWith("log10") ? StrictMath.log(10) : 1;
        List<Point> points = points(unit);
        CensoredLine fit = CensoredLine.of(points).orElseThrow();
        double wald = Quantile.normal(0.975) * fit.slopeError();
        return switch (value.quantity()) {
            case "(Intercept)" -> fit.at(0);
            case "se_(Intercept)" -> fit.errorAt(0);
            case "x" -> fit.slope();
            case "se_x" -> fit.slopeError();
            case "scale" -> fit.sd();
            case "log_scale" -> StrictMath.log(fit.sd());
            case "se_log_scale" -> fit.logSdError();
            case "wald_ci_lo_x" -> fit.slope() - wald;
            case "wald_ci_hi_x" -> fit.slope() + wald;
            case "loglik" -> fit.logLikelihood() - (value.name().endsWith("lognormal") ? sumOfLogs(points) : 0);
            default -> throw new IllegalArgumentException(value.quantity());
        };
    }

    /** The log-likelihood of the rates themselves is less by the sum of the logarithms of those measured. */
    private static double sumOfLogs(List<Point> points) {
        return points.stream()
                .filter(point -> point.kind() == Kind.VALUE)
                .mapToDouble(Point::y)
                .sum();
    }

    private static List<Point> points(double unit) {
        return Panel.lines("invented_censored_left.csv", ",").stream()
                .map(row -> new Point(
                        Double.parseDouble(row[1]),
                        StrictMath.log(Double.parseDouble(row[2])) / unit,
                        row[3].equals("exact") ? Kind.VALUE : Kind.UPPER_BOUND))
                .toList();
    }

    /** Upper bounds of y are lower bounds of -y. */
    @Test
    void lowerBoundsMirrorUpperBounds() {
        CensoredLine fit = CensoredLine.of(points(1)).orElseThrow();
        CensoredLine mirrored = CensoredLine.of(points(1).stream()
                        .map(point -> new Point(
                                point.x(), -point.y(), point.kind() == Kind.VALUE ? Kind.VALUE : Kind.LOWER_BOUND))
                        .toList())
                .orElseThrow();
        assertEquals(-fit.slope(), mirrored.slope(), 1e-10);
        assertEquals(fit.slopeError(), mirrored.slopeError(), 1e-10);
        assertEquals(-fit.at(1), mirrored.at(1), 1e-10);
    }

    @Test
    void withoutBoundsIsTheLineOfLeastSquares() {
        double[] x = {0, 1, 2.2, 3, 4.1};
        double[] y = {7.9, 7.7, 7.5, 7.1, 7.0};
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            points.add(new Point(x[i], y[i], Kind.VALUE));
        }
        CensoredLine fit = CensoredLine.of(points).orElseThrow();
        LineFit line = LineFit.of(x, y);
        Interval expected = line.slopeInterval(0.9).orElseThrow();
        assertEquals(line.slope(), fit.slope(), 1e-11);
        assertEquals(expected.low(), fit.slopeInterval(0.9).low(), 1e-9);
        assertEquals(expected.high(), fit.slopeInterval(0.9).high(), 1e-9);
        Fieller where = line.where(6, 1, 0.9).orElseThrow();
        assertEquals(where.ratio(), fit.crossing(6, 0.9).ratio(), 1e-9);
        assertEquals(where.low(), fit.crossing(6, 0.9).low(), 1e-9);
        assertEquals(where.high(), fit.crossing(6, 0.9).high(), 1e-8);
    }

    @Test
    void needsThreeValuesOffALine() {
        Point bound = new Point(3, 0, Kind.UPPER_BOUND);
        assertTrue(CensoredLine.of(List.of(bound, new Point(1, 1, Kind.VALUE), new Point(2, 2, Kind.VALUE)))
                .isEmpty());
        assertTrue(CensoredLine.of(List.of(
                        bound, new Point(1, 1, Kind.VALUE), new Point(2, 2, Kind.VALUE), new Point(3, 3, Kind.VALUE)))
                .isEmpty());
        assertThrows(
                IllegalArgumentException.class, () -> CensoredLine.of(List.of(new Point(Double.NaN, 1, Kind.VALUE))));
    }

    /** Twelve values, about a quarter of them bounds: 95 % intervals are near their level (derived). */
    @Test
    void slopeIntervalsAreNearTheirLevel() {
        assertEquals(0.95, coverage(1_000), 0.025);
    }

    @Test
    @Tag("slow")
    void slopeIntervalsAreNearTheirLevelInManySamples() {
        assertEquals(0.95, coverage(20_000), 0.012);
    }

    private static double coverage(int samples) {
        Random random = new Random(20261201);
        int covered = 0;
        int fitted = 0;
        for (int i = 0; i < samples; i++) {
            List<Point> points = new ArrayList<>();
            for (int j = 0; j < 12; j++) {
                double y = -0.2 * j / 2 + 0.4 * random.nextGaussian();
                points.add(y < -1 ? new Point(j / 2.0, -1, Kind.UPPER_BOUND) : new Point(j / 2.0, y, Kind.VALUE));
            }
            fitted++;
            covered += CensoredLine.of(points).orElseThrow().slopeInterval(0.95).contains(-0.2) ? 1 : 0;
        }
        return (double) covered / fitted;
    }
}
