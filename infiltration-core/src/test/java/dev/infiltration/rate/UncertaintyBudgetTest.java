// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UncertaintyBudgetTest {

    /** 18.00 kg through 300 mm in 60.0 s by the constant of ASTM C1701/C1701M (from memory). */
    private static final InfiltrationRate RATE = new InfiltrationRate(15_278.886667);

    private static final UncertaintyBudget BARE = UncertaintyBudget.of(RATE, 18.00, 300, 60.0);

    private static final UncertaintyBudget READ = BARE.withMass(
                    "run 1, poured", Reading.of("18.00", FieldUnit.KILOGRAM))
            .withDiameters("ring R1", millimetres("300"))
            .withElapsed("run 1, watch", Reading.of("60.0", FieldUnit.SECOND));

    private static List<Reading<Length>> millimetres(String... digits) {
        return Stream.of(digits)
                .map(each -> Reading.of(each, FieldUnit.MILLIMETRE))
                .toList();
    }

    private static Term term(String name, Distribution spread) {
        return Term.of(name, 0, spread);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            # one unit of width each: u(I)/I = |sensitivity|·u/amount (derived: logarithmic derivative of K·M/(D²·t))
            # kind           | sensitivity | unit | relative
            MASS_READING     | 1           | kg   | 0.0555555555555556
            MASS_ERROR       | 1           | kg   | 0.0555555555555556
            DIAMETER_READING | -2          | mm   | 0.00666666666666667
            DIAMETER_ERROR   | -2          | mm   | 0.00666666666666667
            ROUNDNESS        | -2          | mm   | 0.00666666666666667
            WATCH_READING    | -1          | s    | 0.0166666666666667
            WATCH_ERROR      | -1          | s    | 0.0166666666666667
            REACTION         | -1          | s    | 0.0166666666666667
            END_POINT        | -1          | s    | 0.0166666666666667
            WATER_DENSITY    | 1           | ''   | 1
            """)
    void eachKindMovesTheRateByItsPower(RingTerm kind, int sensitivity, String unit, double relative) {
        UncertaintyBudget budget = BARE.with(kind, term("x", Distribution.normal(1)));
        assertEquals(sensitivity, kind.sensitivity());
        assertEquals(unit, kind.unit());
        assertEquals(relative, budget.relativeStandardUncertainty(), 1e-15);
        Uncertainty linear = budget.uncertainty();
        assertEquals(relative, linear.standardUncertainty() / linear.value(), 1e-15);
        assertEquals(
                Math.signum(sensitivity),
                Math.signum(linear.contributions().get(0).amount()));
    }

    /** Half a step to either side: 5 g, 0.5 mm, 0.05 s, each over √3 (JCGM 100, F.2.2.1; derived). */
    @Test
    void readingsGiveTheUncertaintyOfTheirLastDigit() {
        double expected = StrictMath.sqrt((square(0.005 / 18) + 4 * square(0.5 / 300) + square(0.05 / 60)) / 3);
        assertEquals(expected, READ.relativeStandardUncertainty(), 1e-15);
        assertEquals(Double.POSITIVE_INFINITY, READ.uncertainty().degreesOfFreedom());
    }

    private static double square(double x) {
        return x * x;
    }

    @Test
    void statedResolutionGoesBeforeTheLastDigit() {
        Reading<Mass> stated = Reading.of("40", FieldUnit.POUND).withResolution(new BigDecimal("0.02"));
        UncertaintyBudget budget = BARE.withMass("poured", stated);
        double found = budget.relativeStandardUncertainty();
        assertTrue(budget.table().contains("resolution stated with the reading (user)"), budget.table());
        assertEquals(0.01 * 0.45359237 / StrictMath.sqrt(3) / 18, found, 1e-15);
    }

    @Test
    void timeReadToTheMinuteIsHalfAMinuteOff() {
        double found =
                BARE.withElapsed("watch", Reading.of("1", FieldUnit.MINUTE)).relativeStandardUncertainty();
        assertEquals(0.5 / StrictMath.sqrt(3), found, 1e-15);
    }

    /** Four diameters 298, 301, 299, 302 mm: s² = 10/3, u(mean) = √(10/12), ν = 3 (JCGM 100, 4.2.3; derived). */
    @Test
    void diametersThatDifferAddTheirScatter() {
        UncertaintyBudget budget = BARE.withDiameters("ring R1", millimetres("298", "301", "299", "302"));
        double reading = 4 * square(0.5 / 4) / 3;
        double found = budget.relativeStandardUncertainty();
        assertEquals(2 * StrictMath.sqrt(10.0 / 12 + reading) / 300, found, 1e-15);
        double share = 10.0 / 12 / (10.0 / 12 + reading);
        assertEquals(3 / square(share), budget.uncertainty().degreesOfFreedom(), 1e-9);
        assertEquals(
                List.of(
                        "ring R1, diameter 1",
                        "ring R1, diameter 2",
                        "ring R1, diameter 3",
                        "ring R1, diameter 4",
                        "ring R1, roundness"),
                budget.measurement().terms().stream().map(Term::name).toList());
    }

    @ParameterizedTest(name = "{0} to {1} degrees")
    @CsvSource(delimiter = '|', textBlock = """
            # CIPM table, Tanaka et al. 2001 (seen): half the range of density, over 1000
            # colder | warmer | relative half-width
            10       | 20     | 7.48e-4
            20       | 20     | 0
            0        | 8      | 6.605e-5
            0        | 2      | 5.005e-5
            5        | 8      | 5.775e-5
            """)
    void waterOfAnUncertainTemperatureAddsHalfItsRangeOfDensity(double colder, double warmer, double halfWidth) {
        double found =
                BARE.withWater("water", Water.at(colder), Water.at(warmer)).relativeStandardUncertainty();
        assertEquals(halfWidth / StrictMath.sqrt(3), found, 5e-7);
    }

    @Test
    void warmerWaterFirstIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> BARE.withWater("water", Water.at(20), Water.at(19.9)));
    }

    @Test
    void whatNobodyStatedIsListed() {
        assertEquals(
                List.of(
                        "mass reading",
                        "mass error",
                        "diameter reading",
                        "diameter error",
                        "roundness",
                        "watch reading",
                        "watch error",
                        "reaction",
                        "end point",
                        "water density",
                        "seal"),
                BARE.leftOut());
        assertEquals(
                List.of(
                        "mass error",
                        "diameter error",
                        "roundness",
                        "watch error",
                        "reaction",
                        "end point",
                        "water density",
                        "seal"),
                READ.leftOut());
        assertEquals(7, READ.withSeal(new LeakBias(0)).leftOut().size());
    }

    @Test
    void labelSaysWhatThePlusMinusRestsOn() {
        assertEquals("no term stated", BARE.label());
        assertEquals("instruments only; seal and end point not included", READ.label());
        UncertaintyBudget ends = READ.with(RingTerm.END_POINT, term("end", Distribution.rectangular(1)));
        assertEquals("instruments and end point; seal not included", ends.label());
        assertEquals(
                "instruments and end point; seal shown apart",
                ends.withSeal(new LeakBias(0.1)).label());
        assertEquals(
                "instruments only; end point not included; seal shown apart",
                READ.withSeal(new LeakBias(0.1)).label());
        assertEquals(
                "end point only; seal not included",
                BARE.with(RingTerm.END_POINT, term("end", Distribution.rectangular(1)))
                        .label());
        assertEquals(
                "instruments, reaction and end point; seal not included",
                ends.with(RingTerm.REACTION, term("start", Distribution.normal(1)))
                        .label());
    }

    @Test
    void sealIsABiasToOneSideAndNeverInThePlusMinus() {
        UncertaintyBudget leaking = READ.withSeal(new LeakBias(0.03));
        assertEquals(READ.relativeStandardUncertainty(), leaking.relativeStandardUncertainty());
        assertEquals(READ.uncertainty().value(), leaking.uncertainty().value());
        double least = leaking.rateIfSealLeaks().orElseThrow().millimetresPerHour();
        assertEquals(0.97 * RATE.millimetresPerHour(), least, 1e-9);
        assertEquals(Optional.empty(), READ.rateIfSealLeaks());
        assertTrue(
                leaking.toString()
                        .endsWith("; the seal may leak up to 3.0 % of the water: the rate may be as low as 14820 mm/h"),
                leaking.toString());
    }

    /** 15278.887 · 0.999 is 15263.608 (derived): rounded down, never above the least that the rate may be. */
    @Test
    void leastRateHasTheDigitsOfThePlusMinusAndIsRoundedDown() {
        String text = READ.withSeal(new LeakBias(0.001)).toString();
        assertTrue(text.endsWith("the rate may be as low as 15263 mm/h"), text);
    }

    /** With the time alone uncertain an end is off by 1.96·u(t)/t of the expanded uncertainty: 5 % at u(t)/t of 0.0255 (derived). */
    @ParameterizedTest(name = "{0} s: {1}")
    @CsvSource({"10, true", "22.5, true", "22.7, false", "60, false"})
    void shortTimeForItsUncertaintyIsLopsidedAndSaysSo(double seconds, boolean isLopsided) {
        UncertaintyBudget budget = timed(seconds, 1);
        assertEquals(isLopsided, budget.isLopsided());
        assertEquals(
                isLopsided, budget.toString().endsWith("; for so short a time the interval is lopsided: use trials"));
        assertFalse(READ.isLopsided());
        assertFalse(BARE.isLopsided());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void amountThatIsNoneIsRefused(double amount) {
        Throwable refusal =
                assertThrows(IllegalArgumentException.class, () -> UncertaintyBudget.of(RATE, amount, 300, 60));
        assertEquals("kilograms: allowed above 0 and finite, found " + amount, refusal.getMessage());
        assertThrows(IllegalArgumentException.class, () -> UncertaintyBudget.of(RATE, 18, amount, 60));
        assertThrows(IllegalArgumentException.class, () -> UncertaintyBudget.of(RATE, 18, 300, amount));
    }

    @Test
    void termThatIsInAlreadyIsRefused() {
        Throwable refusal = assertThrows(
                IllegalArgumentException.class,
                () -> READ.with(RingTerm.REACTION, term("run 1, watch", Distribution.normal(1))));
        assertEquals("term: expected another name, found run 1, watch twice", refusal.getMessage());
    }

    @Test
    void termThatIsNoDeviationIsRefused() {
        Term shifted = Term.of("shifted", 1, Distribution.normal(1));
        assertThrows(IllegalArgumentException.class, () -> READ.with(RingTerm.REACTION, shifted));
    }

    @Test
    void textGivesRateLabelAndUnit() {
        assertEquals(
                "15279 ± 60 mm/h (95 %, k = 1.96); instruments only; seal and end point not included", READ.toString());
        assertEquals(
                "601.5 ± 2.3 in/h (95 %, k = 1.96); instruments only; seal and end point not included",
                READ.text(0.95, FieldUnit.INCH_PER_HOUR));
    }

    /** Half the range of two diameters to either side: ±2 mm (JCGM 100, 4.3.7; derived). */
    @Test
    void twoDiametersAddTheirRange() {
        UncertaintyBudget budget = BARE.withDiameters("ring R1", millimetres("298", "302"));
        double reading = 2 * square(0.5 / 2) / 3;
        assertEquals(2 * StrictMath.sqrt(4.0 / 3 + reading) / 300, budget.relativeStandardUncertainty(), 1e-15);
        assertEquals(Double.POSITIVE_INFINITY, budget.uncertainty().degreesOfFreedom());
    }

    @Test
    void tableShowsEachTermAndWhatIsLeftOut() {
        String table = READ.table().replaceAll(" +", " ").replace(System.lineSeparator(), "\n");
        assertEquals("""
                run 1, poured mass reading rectangular ±0.0050 kg 1 0.016 % last digit written (derived)
                ring R1, diameter 1 diameter reading rectangular ±0.50 mm -2 0.19 % last digit written (derived)
                run 1, watch watch reading rectangular ±0.050 s -1 0.048 % last digit written (derived)
                not included: mass error, diameter error, roundness, watch error, reaction, end point, water density, seal""", table);
    }

    /** The bare equation at amounts that are off: 18.1 kg, 301 mm, 58 s, water 1 % off. */
    @Test
    void modelIsTheEquationAtAmountsThatAreOff() {
        UncertaintyBudget budget = BARE.with(RingTerm.MASS_READING, term("kg", Distribution.normal(1)))
                .with(RingTerm.ROUNDNESS, term("mm", Distribution.normal(1)))
                .with(RingTerm.REACTION, term("start", Distribution.normal(1)))
                .with(RingTerm.END_POINT, term("end", Distribution.normal(1)))
                .with(RingTerm.WATER_DENSITY, term("water", Distribution.normal(0.01)));
        ToDoubleFunction<double[]> model = budget.measurement().model();
        assertEquals(
                1.01 * RateEquation.millimetresPerHour(18.1, 301, 58),
                model.applyAsDouble(new double[] {0.1, 1, 0.5, -2.5, 0.01}),
                1e-4);
        assertEquals(Double.POSITIVE_INFINITY, model.applyAsDouble(new double[] {0, 0, -30, -31, 0}));
        assertEquals(RATE.millimetresPerHour(), budget.measurement().value(), 1e-9);
    }

    @Property
    void closedFormIsTheLawOfPropagation(
            @ForAll @DoubleRange(min = 3, max = 19) double kilograms,
            @ForAll @DoubleRange(min = 280, max = 320) double millimetres,
            @ForAll @DoubleRange(min = 3, max = 5000) double seconds,
            @ForAll @DoubleRange(max = 5) double end) {
        UncertaintyBudget budget = UncertaintyBudget.of(RATE, kilograms, millimetres, seconds)
                .withMass("poured", Reading.of("18.00", FieldUnit.KILOGRAM))
                .withDiameters("ring R1", millimetres("299", "302", "300"))
                .with(RingTerm.END_POINT, term("end", Distribution.triangular(end)))
                .withWater("water", Water.at(5), Water.at(25));
        Uncertainty linear = budget.uncertainty();
        double relative = linear.standardUncertainty() / linear.value();
        assertEquals(relative, budget.relativeStandardUncertainty(), 1e-12 * relative);
        assertEquals(
                BARE.withDiameters("ring R1", millimetres("300")).relativeStandardUncertainty() * 300 / millimetres,
                BARE.withDiameters("ring R1", millimetres("300"))
                        .relativeStandardUncertainty(kilograms, millimetres, seconds),
                1e-15);
    }

    @Property
    void uncertaintyNeverShrinksWhenATermGrowsOrComesIn(
            @ForAll RingTerm kind,
            @ForAll @DoubleRange(max = 5) double width,
            @ForAll @DoubleRange(max = 5) double more) {
        double without = READ.relativeStandardUncertainty();
        double with =
                READ.with(kind, term("x", Distribution.rectangular(width))).relativeStandardUncertainty();
        double wider = READ.with(kind, term("x", Distribution.rectangular(width + more)))
                .relativeStandardUncertainty();
        assertTrue(without <= with && with <= wider);
    }

    @Property
    void relativeUncertaintyDoesNotChangeWhenAllGrowsAlike(@ForAll @DoubleRange(min = 0.1, max = 10) double scale) {
        double once = timed(60, 1).relativeStandardUncertainty();
        assertEquals(once, timed(60 * scale, scale).relativeStandardUncertainty(), 1e-12);
    }

    private static UncertaintyBudget timed(double seconds, double width) {
        return UncertaintyBudget.of(RATE, 18, 300, seconds)
                .with(RingTerm.END_POINT, term("end", Distribution.rectangular(width)));
    }

    /** The mean of n runs alike: ring 2·u(D)/D undiminished, watch u(t)/t over √n (derived). */
    @Property
    void meanOfRunsWithOneRingKeepsTheRing(@ForAll @IntRange(min = 1, max = 8) int runs) {
        List<Uncertainty> results = IntStream.range(0, runs)
                .mapToObj(run -> BARE.withDiameters("ring R1", millimetres("300"))
                        .withElapsed("run " + run + ", watch", Reading.of("60", FieldUnit.SECOND))
                        .uncertainty())
                .toList();
        Uncertainty mean = Uncertainty.mean(results);
        double expected = StrictMath.sqrt((4 * square(0.5 / 300) + square(0.5 / 60) / runs) / 3);
        assertEquals(expected, mean.standardUncertainty() / mean.value(), 1e-12);
        assertEquals(RATE.millimetresPerHour(), mean.value(), 1e-9);
    }
}
