// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.statistics.Conclusion;
import dev.infiltration.statistics.ExactProbability;
import dev.infiltration.statistics.Interval;
import dev.infiltration.statistics.McNemar;
import dev.infiltration.statistics.SignTest;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class PairedComparisonTest {

    private static final double[] BEFORE = {5.1, 7.7, 3.0, 9.4, 6.2, 4.4};
    private static final double[] AFTER = {106, 88, 97, 140, 51, 120};

    @Test
    void sixRisesShowARise() {
        PairedComparison cleaning = PairedComparison.of(BEFORE, AFTER);
        assertEquals(Conclusion.HIGHER, cleaning.conclusion());
        assertEquals(1 / 32.0, cleaning.pValue().orElseThrow());
        assertEquals("after is significantly higher than before (p = 0.03125, two-sided)", cleaning.conclusionText());
    }

    @Test
    void fiveRisesCannotTell() {
        PairedComparison cleaning = PairedComparison.of(Arrays.copyOf(BEFORE, 5), Arrays.copyOf(AFTER, 5));
        assertEquals(Conclusion.INSUFFICIENT_DATA, cleaning.conclusion());
        assertTrue(cleaning.pValue().isEmpty());
        assertTrue(cleaning.ratio(0.95).orElseThrow().interval().isPresent());
        assertTrue(cleaning.hodgesLehmannRatio(0.95).orElseThrow().interval().isEmpty());
        assertTrue(cleaning.conclusionText().startsWith("insufficient data"));
    }

    @Test
    void ratioIsThatOfTheGeometricMeans() {
        // 2, 8: geometric mean 4; log-ratios ln 2, ln 8: mean ln 4, sd ln(4)/sqrt 2, t(1) 12.7062 (derived)
        Ratio ratio = PairedComparison.of(new double[] {10, 10}, new double[] {20, 80})
                .ratio(0.95)
                .orElseThrow();
        assertEquals(4, ratio.value(), 1e-14);
        Interval interval = ratio.interval().orElseThrow();
        assertEquals(4 * Math.exp(12.706204736174705 * Math.log(4) / 2), interval.high(), 1e-6);
        assertEquals(4 / Math.exp(12.706204736174705 * Math.log(4) / 2), interval.low(), 1e-12);
    }

    @Test
    void zeroRatesCountByRankAndSignButGiveNoRatio() {
        PairedComparison cleaning =
                PairedComparison.of(new double[] {0, 0, 5, 5, 5, 5, 0}, new double[] {3, 4, 6, 7, 8, 9, 0});
        assertEquals(3, cleaning.pairsWithZero());
        assertEquals(6, cleaning.signedRank().n());
        assertEquals(new SignTest(6, 0), cleaning.signTest());
        assertEquals(Conclusion.HIGHER, cleaning.conclusion());
        assertTrue(cleaning.ratio(0.95).isEmpty());
        assertTrue(cleaning.hodgesLehmannRatio(0.95).isEmpty());
        assertTrue(cleaning.toString().contains("not given"));
    }

    @Test
    void passingCountsChangesAlone() {
        McNemar change = PairedComparison.of(new double[] {90, 90, 110, 110}, new double[] {120, 95, 130, 50})
                .passing(rate -> rate >= 100);
        assertEquals(new McNemar(1, 1), change);
    }

    @Test
    void equalRatiosAreTiedWhateverTheirRounding() {
        assertEquals(
                1.5,
                PairedComparison.of(new double[] {10, 33}, new double[] {11, 30})
                        .signedRank()
                        .statistic());
        assertEquals(
                1.5,
                PairedComparison.of(new double[] {0.7, 2.31}, new double[] {0.77, 2.1})
                        .signedRank()
                        .statistic());
    }

    @Test
    void runsAreNamedAsSuch() {
        PairedComparison runs = PairedComparison.ofRuns(new double[] {100, 200, 300}, new double[] {90, 170, 280});
        assertTrue(runs.toString().startsWith("run 2 / run 1"));
        assertTrue(runs.test().contains("3 pairs with a change"));
        assertEquals(
                Math.cbrt(0.9 * 0.85 * 280 / 300), runs.ratio(0.9).orElseThrow().value(), 1e-14);
    }

    @Test
    void takesListsOfRates() {
        List<InfiltrationRate> before = List.of(new InfiltrationRate(254));
        List<InfiltrationRate> after = List.of(InfiltrationRate.of(20, FieldUnit.INCH_PER_HOUR));
        assertEquals(
                2, PairedComparison.of(before, after).ratio(0.95).orElseThrow().value(), 1e-14);
    }

    @Test
    void noPairsShowNothing() {
        PairedComparison none = PairedComparison.of(new double[0], new double[0]);
        assertEquals(Conclusion.INSUFFICIENT_DATA, none.conclusion());
        assertTrue(none.ratio(0.95).isEmpty());
        assertTrue(none.toString().contains("pairs"));
    }

    @Test
    void refusesWhatIsNoRateOrNoPair() {
        assertThrows(IllegalArgumentException.class, () -> PairedComparison.of(BEFORE, new double[] {1}));
        assertThrows(IllegalArgumentException.class, () -> PairedComparison.of(new double[] {-1}, new double[] {1}));
        assertThrows(
                IllegalArgumentException.class, () -> PairedComparison.of(new double[] {1}, new double[] {Double.NaN}));
    }

    @Property(tries = 1000)
    void aGroupWithItselfShowsNothing(
            @ForAll @Size(min = 1, max = 20) List<@DoubleRange(min = 0.1, max = 50_000) Double> rates) {
        double[] group = rates.stream().mapToDouble(Double::doubleValue).toArray();
        PairedComparison same = PairedComparison.of(group, group);
        assertEquals(1, same.ratio(0.95).orElseThrow().value());
        assertEquals(1, same.signedRank().pValue());
        assertEquals(ExactProbability.of(1, 1), same.signTest().exact());
        assertEquals(Conclusion.INSUFFICIENT_DATA, same.conclusion());
    }

    @Property(tries = 1000)
    void swappingInvertsRatiosExactly(
            @ForAll @Size(min = 7, max = 20) List<@DoubleRange(min = 0.1, max = 50_000) Double> rates) {
        double[] before = rates.stream().mapToDouble(Double::doubleValue).toArray();
        double[] after = IntStream.range(0, before.length)
                .mapToDouble(i -> before[(i + 1) % before.length] * 1.5)
                .toArray();
        PairedComparison there = PairedComparison.of(before, after);
        PairedComparison back = PairedComparison.of(after, before);
        assertInverse(there.ratio(0.95).orElseThrow(), back.ratio(0.95).orElseThrow());
        assertInverse(
                there.hodgesLehmannRatio(0.95).orElseThrow(),
                back.hodgesLehmannRatio(0.95).orElseThrow());
        assertEquals(there.signedRank().exact(), back.signedRank().exact());
    }

    static void assertInverse(Ratio there, Ratio back) {
        assertEquals(0, there.log() + back.log());
        Ratio above = there.log() >= 0 ? there : back;
        Ratio below = there.log() >= 0 ? back : there;
        assertEquals(1 / above.value(), below.value());
        if (there.logInterval() != null && back.logInterval() != null) {
            assertEquals(0, there.logInterval().high() + back.logInterval().low());
            assertEquals(0, there.logInterval().low() + back.logInterval().high());
        }
    }

    @Property(tries = 1000)
    void unitsChangeNoProbability(
            @ForAll @Size(min = 6, max = 20) List<@DoubleRange(min = 0, max = 50_000) Double> rates) {
        double[] before = rates.stream().mapToDouble(Math::rint).toArray();
        double[] after = IntStream.range(0, before.length)
                .mapToDouble(i -> before[(i + 1) % before.length])
                .toArray();
        PairedComparison metric = PairedComparison.of(before, after);
        PairedComparison inches = PairedComparison.of(inInches(before), inInches(after));
        assertEquals(metric.signedRank().exact(), inches.signedRank().exact());
        assertEquals(metric.signTest(), inches.signTest());
    }

    private static double[] inInches(double[] rates) {
        return Arrays.stream(rates).map(rate -> rate / 25.4).toArray();
    }
}
