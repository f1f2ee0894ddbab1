// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.statistics.Conclusion;
import dev.infiltration.statistics.RankSum;
import dev.infiltration.units.InfiltrationRate;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class GroupComparisonTest {

    private static final double[] LOW = {100, 120, 90, 150};
    private static final double[] HIGH = {1000, 1300, 800, 1600};

    @Test
    void fourAgainstFourApartShowADifference() {
        GroupComparison two = GroupComparison.of(LOW, HIGH);
        assertEquals(Conclusion.HIGHER, two.conclusion());
        assertEquals(2 / 70.0, two.pValue().orElseThrow(), 1e-15);
        assertTrue(two.welchPValue().isPresent());
        assertTrue(two.conclusionText().startsWith("the second group is significantly higher than the first"));
    }

    @Test
    void threeAgainstThreeHaveNoProbability() {
        GroupComparison two = GroupComparison.of(Arrays.copyOf(LOW, 3), Arrays.copyOf(HIGH, 3));
        assertEquals(Conclusion.INSUFFICIENT_DATA, two.conclusion());
        assertTrue(two.pValue().isEmpty());
        assertTrue(two.welchPValue().isEmpty());
        assertTrue(two.ratio(0.95).orElseThrow().interval().isPresent());
        assertTrue(two.hodgesLehmannRatio(0.95).orElseThrow().interval().isEmpty());
    }

    @Test
    void ratioIsThatOfTheGeometricMeans() {
        Ratio ratio = GroupComparison.of(new double[] {10, 40}, new double[] {100, 400})
                .ratio(0.95)
                .orElseThrow();
        assertEquals(10, ratio.value(), 1e-13);
        // equal scatter ln 4 / sqrt 2 each, n 2: se ln(4)/sqrt 2, df 2, t 4.302653 (derived)
        double factor = Math.exp(4.302652729749462 * Math.log(4) / Math.sqrt(2));
        assertEquals(10 * factor, ratio.interval().orElseThrow().high(), 1e-9 * factor);
    }

    @Test
    void zerosCountByRankButGiveNoRatio() {
        GroupComparison two = GroupComparison.of(new double[] {0, 0, 5, 6}, HIGH);
        assertEquals(Conclusion.HIGHER, two.conclusion());
        assertTrue(two.ratio(0.95).isEmpty());
        assertTrue(two.hodgesLehmannRatio(0.95).isEmpty());
        assertTrue(two.welchPValue().isEmpty());
        assertTrue(two.toString().contains("not given"));
    }

    @Test
    void takesListsOfRatesAndRefusesWhatIsNone() {
        List<InfiltrationRate> one = List.of(new InfiltrationRate(5));
        assertEquals(1, GroupComparison.of(one, one).ratio(0.95).orElseThrow().value());
        assertThrows(IllegalArgumentException.class, () -> GroupComparison.of(LOW, new double[] {-3}));
        assertTrue(GroupComparison.of(new double[0], HIGH).ratio(0.95).isEmpty());
    }

    @Property(tries = 1000)
    void aGroupWithItselfShowsNothing(
            @ForAll @Size(min = 1, max = 12) List<@DoubleRange(min = 0.1, max = 50_000) Double> rates) {
        double[] group = rates.stream().mapToDouble(Double::doubleValue).toArray();
        GroupComparison same = GroupComparison.of(group, group);
        assertEquals(1, same.ratio(0.95).orElseThrow().value());
        assertEquals(1, same.rankSum().pValue());
        assertTrue(same.conclusion() != Conclusion.HIGHER && same.conclusion() != Conclusion.LOWER);
    }

    @Property(tries = 1000)
    void swappingInvertsRatiosExactly(
            @ForAll @Size(min = 4, max = 12) List<@DoubleRange(min = 0.1, max = 50_000) Double> first,
            @ForAll @Size(min = 4, max = 12) List<@DoubleRange(min = 0.1, max = 50_000) Double> second) {
        double[] one = first.stream().mapToDouble(Double::doubleValue).toArray();
        double[] other = second.stream().mapToDouble(Double::doubleValue).toArray();
        GroupComparison there = GroupComparison.of(one, other);
        GroupComparison back = GroupComparison.of(other, one);
        PairedComparisonTest.assertInverse(
                there.ratio(0.95).orElseThrow(), back.ratio(0.95).orElseThrow());
        PairedComparisonTest.assertInverse(
                there.hodgesLehmannRatio(0.95).orElseThrow(),
                back.hodgesLehmannRatio(0.95).orElseThrow());
        assertEquals(there.rankSum().exact(), back.rankSum().exact());
    }

    @Property(tries = 1000)
    void unitsChangeNoProbability(
            @ForAll @Size(min = 4, max = 12) List<@DoubleRange(min = 0, max = 50) Double> first,
            @ForAll @Size(min = 4, max = 12) List<@DoubleRange(min = 0, max = 50) Double> second) {
        double[] one = first.stream().mapToDouble(Math::rint).toArray();
        double[] other = second.stream().mapToDouble(Math::rint).toArray();
        RankSum metric = GroupComparison.of(one, other).rankSum();
        RankSum inches = GroupComparison.of(inInches(one), inInches(other)).rankSum();
        assertEquals(metric.exact(), inches.exact());
    }

    private static double[] inInches(double[] rates) {
        return Arrays.stream(rates).map(rate -> rate / 25.4).toArray();
    }
}
