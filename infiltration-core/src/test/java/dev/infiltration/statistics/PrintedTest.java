// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Tests and lines print as small tables, without a probability where so few values could show nothing. */
class PrintedTest {

    private static final double[] FEW = {1, 2, 3};
    private static final double[] MORE = {4, 5, 7, 9, 12, 13};

    static Stream<Object> few() {
        return Stream.of(
                SignedRank.of(FEW),
                RankSum.of(FEW, new double[] {4, 5, 6}),
                KruskalWallis.of(FEW, new double[] {4}),
                SignTest.of(FEW),
                new McNemar(3, 0),
                MannKendall.of(FEW));
    }

    @ParameterizedTest
    @MethodSource("few")
    void fewValuesHaveNoProbability(Object test) {
        assertTrue(test.toString().matches("(?s).*two-sided probability +none\n.*"), test::toString);
        assertTrue(test.toString().endsWith("insufficient data\n"), test::toString);
    }

    static Stream<Object> more() {
        return Stream.of(
                SignedRank.of(MORE),
                RankSum.of(MORE, FEW),
                KruskalWallis.of(MORE, FEW),
                SignTest.of(MORE),
                new McNemar(6, 0),
                MannKendall.of(MORE));
    }

    @ParameterizedTest
    @MethodSource("more")
    void moreHaveOneAndAConclusion(Object test) {
        assertTrue(test.toString().matches("(?s).*two-sided probability +0\\.0[0-9]+\n.*"), test::toString);
        assertTrue(test.toString().matches("(?s).*conclusion +(higher|different)\n"), test::toString);
    }

    @Test
    void twoMeansAndLinesPrintTheirIntervals() {
        assertTrue(MeanDifference.of(MORE, FEW).toString().contains("degrees of freedom"));
        assertEquals("""
                line of least squares
                  points            2
                  slope             2
                  its interval      not given
                  height at 0       1
                  scatter about it  not known
                """, LineFit.of(new double[] {0, 1}, new double[] {1, 3}).toString());
        assertEquals(
                """
                line by the median slope
                  slope         2
                  its interval  not given
                  height at 0   1
                """, TheilSen.of(new double[] {0, 1, 2}, new double[] {1, 3, 5}).toString());
    }

    @Test
    void ratiosThatFitArePrintedByTheirShape() {
        Fieller.Estimates sure = new Fieller.Estimates(4, 2, 0, 0, 0);
        assertEquals("2, 2 to 2 (95 %)", sure.limits(2, 0.95).toString());
        Fieller.Estimates unsure = new Fieller.Estimates(4, 0.5, 0.25, 0, 1);
        assertTrue(unsure.limits(2, 0.95).toString().startsWith("8, all but "), unsure.limits(2, 0.95)::toString);
        Fieller.Estimates nothing = new Fieller.Estimates(0.1, 0.1, 1, 0, 1);
        assertEquals("1, any (95 %)", nothing.limits(2, 0.95).toString());
    }
}
