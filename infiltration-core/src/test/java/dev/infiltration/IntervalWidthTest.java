// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.statistics.Interval;
import dev.infiltration.summary.RateSummary;
import dev.infiltration.summary.Sample;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * How wide intervals typically are for few locations, by seeded simulation; the table of {@code docs/statistics.md}.
 *
 * <p>The width is the median over the draws of each limit over its estimate. Populations are invented.
 */
class IntervalWidthTest {

    private static final Path PAGE = Path.of("..", "docs", "statistics.md");
    private static final String START = "<!-- width -->\n";
    private static final String END = "<!-- end of width -->\n";
    private static final int DRAWS = 10_001;
    private static final double MEAN_LOG = 7;

    /** Medians over the draws: the limits over the estimate, and the share of upper limits beyond 100 estimates. */
    private record Width(double low, double high, double open) {

        static Width of(double[][] ratios) {
            return new Width(
                    median(ratios[0]),
                    median(ratios[1]),
                    Arrays.stream(ratios[1]).filter(ratio -> ratio > 100).count() / (double) ratios[1].length);
        }

        private static double median(double[] values) {
            double[] sorted = values.clone();
            Arrays.sort(sorted);
            return sorted[sorted.length / 2];
        }

        String cells() {
            return String.format(Locale.ROOT, "%.2g to %s | %.1f", low, factor(high), 100 * open);
        }

        private static String factor(double value) {
            return value >= 100 ? "over 100" : String.format(Locale.ROOT, value < 10 ? "%.2f" : "%.0f", value);
        }
    }

    private static Width width(double cv, int n, boolean isMean) {
        Random random = new Random(31L * n + (isMean ? 1 : 0));
        double sd = Math.sqrt(StrictMath.log1p(cv * cv));
        double[][] ratios = new double[2][DRAWS];
        for (int draw = 0; draw < DRAWS; draw++) {
            double[] rates = new double[n];
            Arrays.setAll(rates, i -> StrictMath.exp(MEAN_LOG + sd * random.nextGaussian()));
            RateSummary summary = RateSummary.of(Sample.random(rates));
            Interval interval =
                    (isMean ? summary.meanInterval(0.95) : summary.geometricMeanInterval(0.95)).orElseThrow();
            double estimate = (isMean ? summary.surfaceMean() : summary.surfaceGeometricMean()).orElseThrow();
            ratios[0][draw] = interval.low() / estimate;
            ratios[1][draw] = interval.high() / estimate;
        }
        return Width.of(ratios);
    }

    @Test
    @Tag("slow")
    void widthsOfFewLocationsAreThoseOfThePage() throws IOException {
        StringBuilder table = new StringBuilder(
                "| locations | CV | geometric mean, Student: limits / estimate | beyond 100, % | arithmetic mean, Land: limits / estimate"
                        + " | beyond 100, % |\n|---|---|---|---|---|---|\n");
        for (int n : new int[] {3, 4, 5, 8}) {
            for (double cv : new double[] {0.3, 1}) {
                table.append("| ").append(n).append(" | ").append(cv).append(" | ");
                table.append(width(cv, n, false).cells()).append(" | ");
                table.append(width(cv, n, true).cells()).append(" |\n");
            }
        }
        String page = Files.readString(PAGE);
        String expected =
                page.substring(0, page.indexOf(START) + START.length()) + table + page.substring(page.indexOf(END));
        if (Boolean.getBoolean("docs.write")) {
            Files.writeString(PAGE, expected);
        }
        assertEquals(expected, Files.readString(PAGE), "run again with -Ddocs.write=true");
    }

    /** t(2, 0.975) is 4.303 (t table, memory): exp(4.303·s/√3) at the median of s, σ·√(1.386/2): 5.59 (derived). */
    @Test
    void medianWidthAgreesWithTheTable() {
        double sigma = Math.sqrt(Math.log(2));
        double byHand = Math.exp(4.303 * sigma * Math.sqrt(1.386 / 2) / Math.sqrt(3));
        Width width = width(1, 3, false);
        assertEquals(byHand, width.high(), 0.05 * byHand);
        assertEquals(1 / byHand, width.low(), 0.05 / byHand);
        assertTrue(width(1, 8, false).high() < width.high());
    }
}
