// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.method.Basis;
import dev.infiltration.statistics.Interval;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class UncertaintyTest {

    private static Uncertainty result(double value, Term... terms) {
        return MeasurementModel.of(x -> value + Arrays.stream(x).sum(), terms).propagate();
    }

    private static Term term(String name, double u) {
        return Term.of(name, 0, Distribution.normal(u));
    }

    /** u² = (0.8/1)² for the shared ring and (0.6)²/2 for what is independent (derived). */
    @Test
    void sharedTermsStayAndIndependentOnesAverageDown() {
        Uncertainty one = result(10, term("ring R1", 0.8), term("run 1", 0.6));
        Uncertainty two = result(12, term("ring R1", 0.8), term("run 2", 0.6));
        Uncertainty mean = Uncertainty.mean(List.of(one, two));
        assertEquals(11, mean.value(), 1e-12);
        assertEquals(StrictMath.sqrt(0.64 + 0.18), mean.standardUncertainty(), 1e-12);
    }

    @Property
    void meanOfTheSameRingKeepsTheRing(
            @ForAll @DoubleRange(max = 5) double ring,
            @ForAll @DoubleRange(max = 5) double run,
            @ForAll @IntRange(min = 1, max = 9) int runs) {
        List<Uncertainty> results = IntStream.range(0, runs)
                .mapToObj(i -> result(10, term("ring R1", ring), term("run " + i, run)))
                .toList();
        double expected = StrictMath.sqrt(ring * ring + run * run / runs);
        assertEquals(expected, Uncertainty.mean(results).standardUncertainty(), 1e-12 * (1 + expected));
        assertTrue(Uncertainty.mean(results).standardUncertainty() >= ring * (1 - 1e-12));
    }

    @Test
    void differenceOfResultsWithTheSameRingIsRidOfIt() {
        Uncertainty one = result(10, term("ring R1", 0.8), term("run 1", 0.6));
        Uncertainty two = result(12, term("ring R1", 0.8), term("run 2", 0.6));
        Uncertainty difference = Uncertainty.sum(List.of(two, one), 1, -1);
        assertEquals(2, difference.value(), 1e-12);
        assertEquals(StrictMath.sqrt(0.72), difference.standardUncertainty(), 1e-12);
        assertEquals(0.64, one.covariance(two), 1e-12);
        assertEquals(0.64, one.correlation(two), 1e-12);
    }

    @Test
    void correlationsOfSeveralResultsComeTogether() {
        Uncertainty one = tied("a", "b", 0.5);
        Uncertainty two = tied("b", "c", 0.5);
        // (a + 2b + c)/2 with r(a,b) = r(b,c) = 0.5: (1 + 4 + 1 + 2·(2·0.5) + 2·(2·0.5))/4 (derived)
        assertEquals(StrictMath.sqrt(2.5), Uncertainty.mean(List.of(one, two)).standardUncertainty(), 1e-12);
        // a + b against b + c: 0.5 (a,b) + 0 (a,c) + 1 (b,b) + 0.5 (b,c) (derived)
        assertEquals(2, one.covariance(two), 1e-12);
    }

    @Test
    void coefficientsThatDifferAreRefused() {
        List<Uncertainty> results = List.of(tied("a", "b", 0.5), tied("a", "b", 0.4));
        Throwable refusal = assertThrows(IllegalArgumentException.class, () -> Uncertainty.mean(results));
        assertEquals("correlation: expected one coefficient of a and b", refusal.getMessage());
    }

    private static Uncertainty tied(String one, String other, double r) {
        return MeasurementModel.of(x -> x[0] + x[1], term(one, 1), term(other, 1))
                .withCorrelation(new double[][] {{1, r}, {r, 1}})
                .propagate();
    }

    @Test
    void nameThatStandsForTwoSpreadsIsRefused() {
        List<Uncertainty> results = List.of(result(1, term("ring R1", 0.5)), result(1, term("ring R1", 0.6)));
        Throwable refusal = assertThrows(IllegalArgumentException.class, () -> Uncertainty.mean(results));
        assertEquals(
                "results: ring R1 has two distributions, normal u = 0.50 and normal u = 0.60", refusal.getMessage());
    }

    @Test
    void meanOfNothingIsRefused() {
        Throwable refusal = assertThrows(IllegalArgumentException.class, () -> Uncertainty.mean(List.of()));
        assertEquals("results: expected some and a weight for each, found 0 and 0", refusal.getMessage());
        assertThrows(IllegalArgumentException.class, () -> Uncertainty.sum(List.of(result(1)), 1, 2));
    }

    @Test
    void meanOfSecondOrderResultsIsRefused() {
        Uncertainty square = MeasurementModel.of(x -> x[0] * x[0], term("x", 1))
                .withSecondOrderTerms()
                .propagate();
        Throwable refusal = assertThrows(IllegalArgumentException.class, () -> Uncertainty.mean(List.of(square)));
        assertEquals("results: expected first-order terms alone, found second-order ones", refusal.getMessage());
    }

    @Test
    void resultWithoutTermsIsExact() {
        Uncertainty exact = result(5);
        assertEquals(0, exact.standardUncertainty());
        assertEquals(Double.POSITIVE_INFINITY, exact.degreesOfFreedom());
        assertEquals(new Interval(5, 5, 0.95), exact.interval(0.95));
    }

    @Test
    void degreesOfFreedomBelowOneAreLeftAsTheyAre() {
        Uncertainty poor = result(5, Term.of("x", 0, Distribution.student(1, 0.5)));
        assertEquals(Uncertainty.coverageFactor(0.95, 0.5), poor.coverageFactor(0.95));
    }

    @Test
    void degreesOfFreedomAreCutToAWholeNumber() {
        Uncertainty poor = result(5, Term.of("x", 0, Distribution.student(1, 1.5)));
        assertEquals(Uncertainty.coverageFactor(0.95, 1), poor.coverageFactor(0.95));
        assertEquals(new Interval(5 - poor.expanded(0.95), 5 + poor.expanded(0.95), 0.95), poor.interval(0.95));
    }

    @Test
    void correlatedTermsCountAsOneWithTheFewestDegreesOfFreedom() {
        Term few = Term.of("few", 0, Distribution.student(1, 3));
        Term many = Term.of("many", 0, Distribution.student(1, 30));
        Term alone = Term.of("alone", 0, Distribution.normal(2));
        Uncertainty result = MeasurementModel.of(x -> x[0] + x[1] + x[2], few, alone, many)
                .withCorrelation(new double[][] {{1, 0, 0.5}, {0, 1, 0}, {0.5, 0, 1}})
                .propagate();
        // (3 + 4)² / (3²/3) (derived)
        assertEquals(49.0 / 3, result.degreesOfFreedom(), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -0.5, 95, Double.NaN})
    void levelOutsideItsRangeIsRefused(double level) {
        Throwable refusal =
                assertThrows(IllegalArgumentException.class, () -> result(1).expanded(level));
        assertEquals("level: allowed between 0 and 1, found " + level, refusal.getMessage());
    }

    @Test
    void textRoundsForPeople() {
        Uncertainty result = result(15_278.87, term("x", 234.5));
        assertEquals("15280 ± 460 mm/h (95 %, k = 1.96)", result.text(0.95, "mm/h"));
        assertEquals("15280 ± 230 (standard uncertainty)", result.toString());
        assertEquals("15280 ± 630 mm/h (99.3 %, k = 2.70)", result.text(0.993, "mm/h"));
    }

    @Test
    void tableHasALineForEachTerm() {
        Basis basis = Basis.clause("JCGM 100:2008", "H.1", Basis.Trust.SECONDARY);
        Uncertainty result = result(10, new Term("ring R1", 0, Distribution.normal(8), basis), term("run 1", 6));
        String table = result.table().replaceAll(" +", " ");
        assertEquals("""
                ring R1 normal u = 8.0 8.0 64.0 % JCGM 100:2008, H.1 (secondary)
                run 1 normal u = 6.0 6.0 36.0 % stated by the user (user)
                """, table.replace(System.lineSeparator(), "\n"));
    }
}
