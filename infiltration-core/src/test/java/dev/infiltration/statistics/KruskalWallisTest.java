// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KruskalWallisTest {

    @ParameterizedTest(name = "{0}: {3}")
    @CsvSource(delimiter = '|', textBlock = """
        # figure      | value             | within | source and mark
        H             | 0.771428571428571 | 1e-14  | Hollander & Wolfe 1973 p. 116, mucociliary efficiency: 0.771 (memory; data seen, R 4.2.2), 27/35 (derived)
        approximate p | 0.679964773578894 | 1e-14  | the same by chi-squared, recomputed
        exact p       | 0.71077335363049  | 1e-14  | the same: 89647/126126 of all ways to deal 14 ranks (derived)
        """)
    void agreesWithThePublishedCase(String figure, double value, double within, String source) {
        assertEquals(value, figure(mucociliary(), figure), within, source);
    }

    static KruskalWallis mucociliary() {
        return KruskalWallis.of(
                Published.group("hw-mucociliary", "normal"),
                Published.group("hw-mucociliary", "obstructive"),
                Published.group("hw-mucociliary", "asbestosis"));
    }

    static double figure(KruskalWallis test, String figure) {
        return switch (figure) {
            case "H" -> test.statistic();
            case "approximate p" -> test.approximate();
            default -> test.exact().orElseThrow().value();
        };
    }

    @Test
    void thePublishedCaseIsCountedOut() {
        assertEquals(Fractions.of("89647/126126"), mucociliary().exact().orElseThrow());
        assertEquals(Conclusion.NOT_SIGNIFICANT, mucociliary().conclusion());
        assertEquals(14, mucociliary().n());
    }

    @Test
    void groupsFarApartDiffer() {
        KruskalWallis test =
                KruskalWallis.of(new double[] {1, 2, 3}, new double[] {11, 12, 13}, new double[] {21, 22, 23});
        // 3! of 9!/(3!)^3 deals are as clear (derived)
        assertEquals(Fractions.of("1/280"), test.exact().orElseThrow());
        assertEquals(Conclusion.DIFFERENT, test.conclusion());
    }

    @Test
    void threePairsCannotTell() {
        KruskalWallis test = KruskalWallis.of(new double[] {1, 2}, new double[] {3, 4});
        // 2 of 6 deals (derived)
        assertEquals(1 / 3.0, test.smallestPValue(), 1e-15);
        assertEquals(Conclusion.INSUFFICIENT_DATA, test.conclusion());
    }

    @Test
    void allTiedShowsNothing() {
        KruskalWallis test = KruskalWallis.of(new double[] {5, 5, 5}, new double[] {5, 5, 5});
        assertEquals(0, test.statistic());
        assertEquals(1, test.pValue());
    }

    @Test
    void manyValuesGoByChiSquared() {
        double[] low = IntStream.range(0, 20).asDoubleStream().toArray();
        double[] high = IntStream.range(10, 30).mapToDouble(i -> i + 0.5).toArray();
        KruskalWallis test = KruskalWallis.of(low, high);
        assertTrue(test.exact().isEmpty());
        assertEquals(test.approximate(), test.pValue());
        assertEquals(0, test.smallestPValue());
        assertEquals(Conclusion.DIFFERENT, test.conclusion());
    }

    @Test
    void refusesEmptyGroups() {
        assertThrows(IllegalArgumentException.class, () -> KruskalWallis.of(new double[] {1}));
        assertThrows(IllegalArgumentException.class, () -> KruskalWallis.of(new double[] {1}, new double[0]));
    }

    @Property(tries = 1000)
    void twoGroupsGiveWhatTheRankSumGives(
            @ForAll @Size(min = 1, max = 7) List<@IntRange(min = 0, max = 12) Integer> first,
            @ForAll @Size(min = 1, max = 7) List<@IntRange(min = 0, max = 12) Integer> second) {
        double[] one = first.stream().mapToDouble(Integer::doubleValue).toArray();
        double[] other = second.stream().mapToDouble(Integer::doubleValue).toArray();
        KruskalWallis several = KruskalWallis.of(one, other);
        RankSum two = RankSum.of(one, other);
        assertEquals(two.exact(), several.exact());
        assertEquals(two.smallestPValue(), several.smallestPValue(), 1e-15);
        if (two.variance() > 0) {
            assertEquals(Math.pow(two.z(Continuity.UNCORRECTED), 2), several.statistic(), 1e-9);
        }
    }
}
