// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PairwiseSlopesTest {

    private static double[] all(double[] x, double[] y) {
        return IntStream.range(0, x.length)
                .boxed()
                .flatMapToDouble(i -> IntStream.range(0, x.length)
                        .filter(j -> x[i] < x[j])
                        .mapToDouble(j -> (y[j] - y[i]) / (x[j] - x[i])))
                .sorted()
                .toArray();
    }

    @ParameterizedTest(name = "{0} points, steps of {1}, {2}")
    @CsvSource({
        "20, 0, 1",
        "299, 0, 2",
        "301, 0, 3",
        "700, 0, 4",
        "700, 1, 5",
        "700, 5, 6",
        "900, 0.25, 7",
        "1200, 0, 8",
        "1200, 50, 9",
        "1500, 0.5, 10"
    })
    void agreeWithMakingThemAll(int n, double step, long seed) {
        Random random = new Random(seed);
        DoubleUnaryOperator rounded = value -> step == 0 ? value : step * Math.rint(value / step);
        double[] x = IntStream.range(0, n)
                .mapToDouble(i -> step > 1 ? Math.floorDiv(i, 3) : i + random.nextDouble())
                .toArray();
        double[] y = IntStream.range(0, n)
                .mapToDouble(i -> rounded.applyAsDouble(7 - 0.01 * i + 3 * random.nextGaussian()))
                .toArray();
        double[] brute = all(x, y);
        PairwiseSlopes slopes = new PairwiseSlopes(x, y);
        assertEquals(brute.length, slopes.count());
        for (double share : new double[] {0.3, 0.45, 0.49, 0.5, 0.51, 0.6}) {
            int place = (int) (share * brute.length);
            assertEquals(brute[place], slopes.at(place + 1L), 1e-9, () -> "share " + share);
        }
        assertEquals((brute[(brute.length - 1) / 2] + brute[brute.length / 2]) / 2, slopes.median(), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void findTheOutermostToo(int edge) {
        Random random = new Random(5);
        double[] x = IntStream.range(0, 600).asDoubleStream().toArray();
        double[] y =
                IntStream.range(0, 600).mapToDouble(i -> random.nextGaussian()).toArray();
        double[] brute = all(x, y);
        PairwiseSlopes slopes = new PairwiseSlopes(x, y);
        assertEquals(brute[edge - 1], slopes.at(edge), 1e-9);
        assertEquals(brute[brute.length - edge], slopes.at(brute.length + 1L - edge), 1e-9);
    }

    @Test
    void valuesAllAlikeHaveSlopeZero() {
        double[] x = IntStream.range(0, 1000).asDoubleStream().toArray();
        double[] y = new double[1000];
        Arrays.fill(y, 5.1);
        assertEquals(0, new PairwiseSlopes(x, y).median());
    }

    @Test
    void pointsAtOnePlaceHaveNone() {
        double[] same = new double[500];
        assertEquals(0, new PairwiseSlopes(same, same).count());
        assertTrue(Double.isNaN(new PairwiseSlopes(same, same).median()));
    }

    @Test
    @Tag("slow")
    void aHundredThousandPointsTakeLessThanASecond() {
        Random random = new Random(1);
        double[] x = IntStream.range(0, 100_000).asDoubleStream().toArray();
        double[] y =
                Arrays.stream(x).map(i -> 8 - 2e-5 * i + random.nextGaussian()).toArray();
        double best = Double.POSITIVE_INFINITY;
        for (int attempt = 0; attempt < 5 && best >= 1; attempt++) {
            long before = cpu();
            TheilSen line = TheilSen.of(x, y);
            assertTrue(line.interval(0.95).orElseThrow().contains(line.slope()));
            assertEquals(-2e-5, line.slope(), 5e-7);
            best = Math.min(best, (cpu() - before) / 1e9);
        }
        double seconds = best;
        assertTrue(best < 1, () -> "slope and interval took " + seconds + " s of processor time");
    }

    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    /** All points but one at one x: each slope is from that one (derived), and none is looked for among the rest. */
    @Test
    void pointsAtOneTimeCostNothing() {
        int n = 20_000;
        double[] x = new double[n];
        double[] y = IntStream.range(0, n).asDoubleStream().toArray();
        x[0] = -1;
        y[0] = 0;
        assertTimeoutPreemptively(
                java.time.Duration.ofSeconds(20), () -> assertEquals(n / 2.0, new PairwiseSlopes(x, y).median(), 1e-6));
    }
}
