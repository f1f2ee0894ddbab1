// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.rate.Distribution.Shape;
import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import org.apache.commons.statistics.distribution.TriangularDistribution;
import org.apache.commons.statistics.distribution.UniformContinuousDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class DistributionTest {

    private static final int COUNT = 200_000;

    @ParameterizedTest(name = "{0}, {2}")
    @CsvSource(delimiter = '|', textBlock = """
            # source                          | mark    | shape                 | width | inexactness | u
            JCGM 100:2008, 4.2.3              | memory  | NORMAL                | 2     | 0           | 2
            JCGM 100:2008, 4.2.3              | memory  | STUDENT               | 2     | 0           | 2
            JCGM 100:2008, 4.3.7, a/sqrt 3    | memory  | RECTANGULAR           | 2     | 0           | 1.15470053837925
            JCGM 100:2008, 4.3.9, a/sqrt 6    | memory  | TRIANGULAR            | 2     | 0           | 0.816496580927726
            JCGM 100:2008, H.1.3.4, a/sqrt 2  | seen    | ARCSINE               | 2     | 0           | 1.41421356237310
            JCGM 101:2008, 6.4.3, as rect     | derived | CURVILINEAR_TRAPEZOID | 2     | 0           | 1.15470053837925
            a^2/3 + d^2/9                     | derived | CURVILINEAR_TRAPEZOID | 2     | 1.5         | 1.25830573921179
            """)
    void standardUncertaintyIsThatOfTheDistribution(
            String source, String mark, Shape shape, double width, double inexactness, double u) {
        Distribution spread = new Distribution(shape, width, inexactness, Double.POSITIVE_INFINITY);
        assertEquals(u, spread.standardUncertainty(), 1e-14);
    }

    @Test
    void resolutionIsHalfAStepToEitherSide() {
        assertEquals(Distribution.rectangular(0.005), Distribution.resolution(0.01));
    }

    static Stream<Arguments> distributions() {
        return Stream.of(
                Arguments.of(Distribution.normal(2), distribution(NormalDistribution.of(0, 2), 1)),
                Arguments.of(Distribution.student(2, 4), distribution(TDistribution.of(4), 2)),
                Arguments.of(Distribution.student(0.5, 2.5), distribution(TDistribution.of(2.5), 0.5)),
                Arguments.of(Distribution.rectangular(2), distribution(UniformContinuousDistribution.of(-2, 2), 1)),
                Arguments.of(Distribution.triangular(2), distribution(TriangularDistribution.of(-2, 0, 2), 1)),
                Arguments.of(Distribution.arcsine(2), (DoubleUnaryOperator)
                        x -> 0.5 + StrictMath.asin(x / 2) / StrictMath.PI));
    }

    private static DoubleUnaryOperator distribution(ContinuousDistribution distribution, double scale) {
        return x -> distribution.cumulativeProbability(x / scale);
    }

    /** Kolmogorov-Smirnov distance from a general library's distribution: 1.95/√n is passed by chance once in 1000 times. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("distributions")
    void drawsFollowTheDistribution(Distribution spread, DoubleUnaryOperator cumulative) {
        double[] sorted = draws(spread).sorted().toArray();
        double distance = 0;
        for (int i = 0; i < COUNT; i++) {
            distance = Math.max(distance, Math.abs(cumulative.applyAsDouble(sorted[i]) - (i + 0.5) / COUNT));
        }
        assertTrue(distance < 1.95 / Math.sqrt(COUNT), "distance " + distance);
    }

    /** Moments of (a + d·U1)·U2, derived: second (a² + d²/3)/3, fourth (a⁴ + 2a²d² + d⁴/5)/5; a 2, d 1.5. */
    @Test
    void curvilinearTrapezoidHasItsMomentsAndLimits() {
        double[] drawn = draws(Distribution.curvilinearTrapezoid(2, 1.5)).toArray();
        assertEquals(4.75 / 3, Arrays.stream(drawn).map(x -> x * x).average().orElseThrow(), 0.02);
        assertEquals(
                7.0025, Arrays.stream(drawn).map(x -> x * x * x * x).average().orElseThrow(), 0.2);
        assertTrue(Arrays.stream(drawn).allMatch(x -> Math.abs(x) <= 3.5));
        assertEquals(3.5, Arrays.stream(drawn).max().orElseThrow(), 0.1);
    }

    private static DoubleStream draws(Distribution spread) {
        RandomDeviates draws = new RandomDeviates(20260603);
        return DoubleStream.generate(() -> spread.draw(draws)).limit(COUNT);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1e-9, Double.NaN, Double.POSITIVE_INFINITY})
    void widthThatIsNoneIsRefused(double width) {
        Throwable refusal = assertThrows(IllegalArgumentException.class, () -> Distribution.rectangular(width));
        assertEquals("width: allowed 0 or more and finite, found " + width, refusal.getMessage());
    }

    @Test
    void inexactnessBeyondTheHalfWidthIsRefused() {
        Throwable refusal =
                assertThrows(IllegalArgumentException.class, () -> Distribution.curvilinearTrapezoid(1, 1.5));
        assertEquals("inexactness: allowed up to the half-width 1.0, found 1.5", refusal.getMessage());
        assertEquals(1, Distribution.curvilinearTrapezoid(1, 1).inexactness());
        assertThrows(IllegalArgumentException.class, () -> Distribution.curvilinearTrapezoid(1, -0.5));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN})
    void degreesOfFreedomNotAboveZeroAreRefused(double nu) {
        Throwable refusal = assertThrows(IllegalArgumentException.class, () -> Distribution.student(1, nu));
        assertEquals("degreesOfFreedom: allowed above 0, found " + nu, refusal.getMessage());
    }

    @Test
    void textSaysShapeAndWidth() {
        assertEquals("rectangular ±0.0050", Distribution.resolution(0.01).toString());
        assertEquals("normal u = 25", Distribution.normal(25).toString());
        assertEquals("student u = 1.2", Distribution.student(1.2345, 4).toString());
        assertEquals(
                "curvilinear trapezoid ±2.0, limits ±0.50",
                Distribution.curvilinearTrapezoid(2, 0.5).toString());
    }
}
