// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import static dev.infiltration.Amounts.at;
import static dev.infiltration.Amounts.celsius;
import static dev.infiltration.Amounts.fahrenheit;
import static dev.infiltration.Amounts.g;
import static dev.infiltration.Amounts.in;
import static dev.infiltration.Amounts.kg;
import static dev.infiltration.Amounts.lb;
import static dev.infiltration.Amounts.litres;
import static dev.infiltration.Amounts.mm;
import static dev.infiltration.Amounts.s;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.Instrument;
import dev.infiltration.field.Instrument.Kind;
import dev.infiltration.field.Pour;
import dev.infiltration.field.Pouring.End;
import dev.infiltration.field.Ring;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.WaterReading;
import dev.infiltration.method.Methods;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The step, tolerance and requirement behind each term of a budget. Half-widths are derived from the readings. */
class InstrumentsTest {

    private static final Ring RING = Ring.of("R1").withInsideDiameter(mm("300"));
    private static final TestRun RUN = run(kg("18.00"));
    private static final Instruments NONE = Instruments.of(List.of());

    private static TestRun run(WaterReading water) {
        return TestRun.of(at("07:10"), water, s("60.0"), End.DRAINED);
    }

    private static Instrument named(String id, Kind kind, Reading<?> resolution, Reading<?> tolerance) {
        return Instrument.of(id).withKind(kind).withResolution(resolution).withTolerance(tolerance);
    }

    private static Instruments with(Kind kind, Reading<?> resolution, Reading<?> tolerance) {
        return Instruments.of(List.of(named("X", kind, resolution, tolerance)));
    }

    private static UncertaintyBudget budget(Instruments instruments, Ring ring, TestRun run) {
        return instruments
                .budget("run 1", RateEquation.asPublished(), ring, run)
                .orElseThrow();
    }

    /** Each term in words: name, spread, basis. */
    private static List<String> terms(UncertaintyBudget budget) {
        return budget.measurement().terms().stream()
                .map(term -> term.name() + " " + term.spread() + " " + term.basis())
                .toList();
    }

    @Test
    void withoutInstrumentsTheDigitsWrittenCount() {
        assertEquals(
                List.of(
                        "run 1, water rectangular ±0.0050 last digit written (derived)",
                        "ring R1, diameter 1 rectangular ±0.50 last digit written (derived)",
                        "run 1, watch rectangular ±0.050 last digit written (derived)"),
                terms(budget(NONE, RING, RUN)));
    }

    @Test
    void methodAsksForAnAccurateBalance() {
        assertEquals(
                "balance not named rectangular ±0.010 ASTM C1701/C1701M, 6.2, 8.3 (memory)",
                terms(budget(NONE.withMethod(Methods.unitPavement()), RING, RUN))
                        .get(1));
        assertEquals(
                "balance not named rectangular ±0.010 ASTM C1701/C1701M, 6.2, 8.3 (memory)",
                terms(budget(NONE.withMethod(Methods.unitPavement()), RING, run(lb("40.00"))))
                        .get(1));
        Instruments named = with(Kind.BALANCE, null, null).withMethod(Methods.unitPavement());
        assertTrue(terms(budget(named, RING, RUN)).get(1).startsWith("balance X rect"), "it is that balance's error");
    }

    @Test
    void instrumentsNamedGoBeforeDigitsAndMethod() {
        Instruments instruments = Instruments.of(List.of(
                        named("B1", Kind.BALANCE, g("20").mass(), g("30").mass()),
                        named("L1", Kind.TAPE, mm("2"), mm("1.5")),
                        named("W1", Kind.WATCH, s("0.2"), s("0.4"))))
                .withMethod(Methods.unitPavement());
        assertEquals(
                List.of(
                        "run 1, water rectangular ±0.010 resolution of balance B1 (user)",
                        "tolerance of balance B1 rectangular ±0.030 tolerance of balance B1 (user)",
                        "ring R1, diameter 1 rectangular ±1.0 resolution of tape L1 (user)",
                        "tolerance of tape L1 rectangular ±1.5 tolerance of tape L1 (user)",
                        "run 1, watch rectangular ±0.10 resolution of watch W1 (user)",
                        "tolerance of watch W1 rectangular ±0.40 tolerance of watch W1 (user)"),
                terms(budget(instruments, RING, RUN)));
    }

    @Test
    void resolutionStatedWithAReadingGoesBeforeTheInstrument() {
        Reading<Length> diameter = mm("300").withResolution(new BigDecimal("0.5"));
        Ring ring = Ring.of("R1").withInsideDiameter(diameter);
        assertEquals(
                "ring R1, diameter 1 rectangular ±0.25 resolution stated with the reading (user)",
                terms(budget(with(Kind.TAPE, mm("2"), null), ring, RUN)).get(1));
    }

    @Test
    void ofSeveralInstrumentsTheCoarsestCounts() {
        Instruments two = Instruments.of(List.of(
                named("W1", Kind.WATCH, s("0.1"), s("0.5")),
                named("W2", Kind.WATCH, s("1"), s("0.2")),
                named("W3", Kind.WATCH, s("-5"), s("0"))));
        List<String> terms = terms(budget(two, RING, RUN));
        assertEquals("run 1, watch rectangular ±0.50 resolution of watch W2 (user)", terms.get(2));
        assertEquals("tolerance of watch W1 rectangular ±0.50 tolerance of watch W1 (user)", terms.get(3));
    }

    @Test
    void readingWrittenCoarserThanItsInstrumentCountsAsWritten() {
        Instruments fine = Instruments.of(List.of(
                named("B1", Kind.BALANCE, g("1").mass(), null),
                named("W1", Kind.WATCH, s("0.01"), null),
                named("L1", Kind.TAPE, mm("0.5"), null)));
        List<String> terms = terms(budget(fine, RING, run(kg("3.6")).withElapsed(s("12"))));
        assertEquals(
                List.of(
                        "run 1, water rectangular ±0.050 last digit written (derived)",
                        "ring R1, diameter 1 rectangular ±0.50 last digit written (derived)",
                        "run 1, watch rectangular ±0.50 last digit written (derived)"),
                terms);
        UncertaintyBudget read = budget(NONE, RING, RUN);
        Instruments thermometer = with(Kind.THERMOMETER, celsius("0.1"), null);
        assertEquals(
                density(NONE.withWater(read, "water", celsius("20"))),
                density(thermometer.withWater(read, "water", celsius("20"))));
    }

    @Test
    void balanceIsOneInWhicheverUnitItWasRead() {
        Instruments named = with(Kind.BALANCE, null, null).withMethod(Methods.unitPavement());
        Uncertainty kilograms = budget(named, RING, RUN).uncertainty();
        Uncertainty pounds = named.budget("run 2", RateEquation.asPublished(), RING, run(lb("40.00")))
                .orElseThrow()
                .uncertainty();
        double both = part(Uncertainty.mean(List.of(kilograms, pounds)), "balance X");
        assertEquals((part(kilograms, "balance X") + part(pounds, "balance X")) / 2, both, 1e-9);
    }

    private static double part(Uncertainty result, String name) {
        return result.contributions().stream()
                .filter(each -> each.term().name().equals(name))
                .mapToDouble(each -> each.amount())
                .sum();
    }

    @Test
    void balanceWithoutAToleranceIsAsAccurateAsTheMethodAsks() {
        Instruments two = Instruments.of(
                        List.of(named("B1", Kind.BALANCE, null, null), named("B2", Kind.BALANCE, null, g("1").mass())))
                .withMethod(Methods.unitPavement());
        assertTrue(terms(budget(two, RING, RUN)).get(1).startsWith("balance B1 rectangular ±0.010 "), "the wider");
        Instruments coarse = Instruments.of(
                        List.of(named("B1", Kind.BALANCE, null, null), named("B2", Kind.BALANCE, null, g("50").mass())))
                .withMethod(Methods.unitPavement());
        assertTrue(terms(budget(coarse, RING, RUN)).get(1).startsWith("tolerance of balance B2 rectangular ±0.050 "));
    }

    @Test
    void resolutionOfAnotherQuantityTellsNothing() {
        assertEquals(terms(budget(NONE, RING, RUN)), terms(budget(with(Kind.BALANCE, mm("5"), s("3")), RING, RUN)));
    }

    @Test
    void eachVesselIsReadTwiceAndTheBalanceIsOne() {
        TestRun poured = RUN.withWater(null)
                .withPours(List.of(Pour.of(kg("10.50"), kg("1.5")), Pour.of(kg("10.50"), kg("1.5"))));
        UncertaintyBudget budget = budget(with(Kind.BALANCE, null, g("10").mass()), RING, poured);
        assertEquals(
                List.of(
                        "run 1, pour 1 before rectangular ±0.0050 last digit written (derived)",
                        "tolerance of balance X rectangular ±0.010 tolerance of balance X (user)",
                        "run 1, pour 1 after rectangular ±0.050 last digit written (derived)",
                        "run 1, pour 2 before rectangular ±0.0050 last digit written (derived)",
                        "run 1, pour 2 after rectangular ±0.050 last digit written (derived)"),
                terms(budget).subList(0, 5));
    }

    @Test
    void volumeIsReadAtTheVesselNotTheBalance() {
        Instruments balance = with(Kind.BALANCE, g("1").mass(), g("10").mass()).withMethod(Methods.unitPavement());
        assertEquals(
                List.of(
                        "run 1, water rectangular ±0.050 last digit written (derived)",
                        "ring R1, diameter 1 rectangular ±0.50 last digit written (derived)"),
                terms(budget(balance, RING, run(litres("18.0")))).subList(0, 2));
    }

    /** Four diameters 298, 301, 299, 302 mm: s² = 10/3, u = √(10/12) (JCGM 100, 4.2.3; derived). */
    @Test
    void diametersReadAcrossCountByTheirSpread() {
        List<Reading<Length>> four = Stream.of("298", "301", "299", "302")
                .map(dev.infiltration.Amounts::mm)
                .toList();
        Ring mean = Ring.of("R1").withInsideDiameters(four);
        assertEquals(
                List.of(
                        "ring R1, diameter 4 rectangular ±0.13 last digit written (derived)",
                        "ring R1, roundness student u = 0.91 JCGM 100:2008, 4.2.3 (derived)"),
                terms(budget(NONE, mean, RUN)).subList(4, 6));
        Ring chosen = mean.withInsideDiameter(mm("300"));
        assertEquals(
                List.of(
                        "ring R1, diameter 1 rectangular ±0.50 last digit written (derived)",
                        "ring R1, roundness student u = 0.91 JCGM 100:2008, 4.2.3 (derived)"),
                terms(budget(NONE, chosen, RUN)).subList(1, 3));
        Ring wrong = chosen.withInsideDiameters(List.of(mm("298"), mm("-302")));
        assertEquals(3, terms(budget(NONE, wrong, RUN)).size(), "a diameter that is none tells nothing");
    }

    @Test
    void inchesAndPoundsCountInTheirOwnSteps() {
        Ring ring = Ring.of("R2").withInsideDiameter(in("12.00"));
        UncertaintyBudget budget = budget(with(Kind.TAPE, in("0.05"), null), ring, run(lb("40.00")));
        assertEquals(
                List.of(
                        "run 1, water rectangular ±0.0023 last digit written (derived)",
                        "ring R2, diameter 1 rectangular ±0.64 resolution of tape X (user)"),
                terms(budget).subList(0, 2));
    }

    @Test
    void onlyAMeasuredRateHasABudget() {
        assertEquals(
                Optional.empty(), NONE.budget("run 1", RateEquation.asPublished(), RING, RUN.withEnd(End.STOPPED)));
        assertEquals(Optional.empty(), NONE.budget("run 1", RateEquation.asPublished(), Ring.of("R"), RUN));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "18.00, 1e400, 300, false",
        "1e-400, 60, 300, false",
        "18, 60, 1e170, false",
        "1e200, 60, 300, false",
        "1e80, 60, 300, false",
        "1e60, 60, 300, true",
        "1e-200, 60, 300, true",
        "18, 60e200, 300, true",
        "1e-999999999, 1, 1, false"
    })
    void numbersBeyondAllMeasureGiveNoBudget(String kilograms, String seconds, String millimetres, boolean hasBudget) {
        Reading<Length> diameter = mm(millimetres);
        Ring ring = Ring.of("R1").withInsideDiameters(List.of(diameter, diameter, diameter, mm("299")));
        TestRun run = run(kg(kilograms)).withElapsed(s(seconds));
        Optional<UncertaintyBudget> budget = NONE.budget("run 1", RateEquation.asPublished(), ring, run);
        assertEquals(hasBudget, budget.isPresent());
        budget.ifPresent(some -> assertTrue(Double.isFinite(some.uncertainty().expanded(0.95)), some.toString()));
        Instruments coarse = with(Kind.BALANCE, Reading.of("1e400", FieldUnit.KILOGRAM), null);
        assertEquals(Optional.empty(), coarse.budget("run 1", RateEquation.asPublished(), RING, RUN));
        Ring apart = RING.withInsideDiameters(List.of(mm("1e300"), mm("1"), mm("1"), mm("1")));
        assertEquals(Optional.empty(), NONE.budget("run 1", RateEquation.asPublished(), apart, RUN));
    }

    /** CIPM table (Tanaka et al. 2001, seen): 998.4079 and 998.2067 kg/m³ at 19 and 20 °C: half the range over 1000. */
    @Test
    void thermometerLeavesTheDensityOpen() {
        UncertaintyBudget read = budget(NONE, RING, RUN);
        Instruments half = with(Kind.THERMOMETER, celsius("0.4"), celsius("0.3"));
        assertEquals(1.006e-4, density(half.withWater(read, "water", celsius("19.5"))), 2e-7);
        assertEquals(
                1.006e-4, density(NONE.withWater(read, "water", celsius("19.5").withResolution(BigDecimal.ONE))), 2e-7);
        UncertaintyBudget fahrenheit =
                with(Kind.THERMOMETER, fahrenheit("1.8"), null).withWater(read, "water", fahrenheit("67.1"));
        assertEquals(1.006e-4, density(fahrenheit), 2e-7);
    }

    @Test
    void waterStaysWithinItsRange() {
        UncertaintyBudget read = budget(NONE, RING, RUN);
        Instruments coarse = with(Kind.THERMOMETER, celsius("500"), null);
        double whole = (Water.at(4).density() - Water.at(60).density()) / 2000;
        assertEquals(whole, density(coarse.withWater(read, "water", celsius("20"))), 1e-7);
    }

    @Property
    void uncertaintyNeverShrinksWhereAnInstrumentIsCoarserOrLessTrue(
            @ForAll Kind kind, @ForAll @IntRange(min = 1, max = 500) int step, @ForAll @IntRange(max = 500) int more) {
        double finer = relative(kind, step, step);
        assertTrue(finer <= relative(kind, step + more, step));
        assertTrue(finer <= relative(kind, step, step + more));
    }

    private static double relative(Kind kind, int step, int tolerance) {
        Instruments instruments = with(kind, hundredths(kind, step), hundredths(kind, tolerance));
        UncertaintyBudget read = budget(instruments, RING, RUN);
        return instruments.withWater(read, "water", celsius("20")).relativeStandardUncertainty();
    }

    private static Reading<?> hundredths(Kind kind, int count) {
        BigDecimal value = BigDecimal.valueOf(count, 2);
        return switch (kind) {
            case BALANCE -> Reading.of(value, FieldUnit.KILOGRAM);
            case WATCH -> Reading.of(value, FieldUnit.SECOND);
            case TAPE -> Reading.of(value, FieldUnit.MILLIMETRE);
            case THERMOMETER -> Reading.of(value, FieldUnit.CELSIUS);
        };
    }

    /** Twice the water in twice the time, read half as finely, with one ring: the same share (derived). */
    @Property
    void relativeUncertaintyDoesNotChangeWhenReadingsAndStepsGrowAlike(@ForAll @IntRange(min = 1, max = 50) int scale) {
        TestRun larger = run(WaterReading.weighed(times(Reading.of("18.00", FieldUnit.KILOGRAM), "0.01", scale)))
                .withElapsed(times(s("60.0"), "0.1", scale));
        double once = budget(NONE, RING, RUN).relativeStandardUncertainty();
        assertEquals(once, budget(NONE, RING, larger).relativeStandardUncertainty(), 1e-12 * once);
    }

    private static <Q extends Quantity<Q>> Reading<Q> times(Reading<Q> reading, String step, int scale) {
        BigDecimal factor = BigDecimal.valueOf(scale);
        return Reading.of(reading.value().multiply(factor), reading.unit())
                .withResolution(new BigDecimal(step).multiply(factor));
    }

    /** The same water and ring in grams and centimetres, read to the same steps: the same uncertainty (derived). */
    @Test
    void unitsOfASystemChangeNoUncertainty() {
        Ring centimetres = Ring.of("R1").withInsideDiameter(Reading.of("30.0", FieldUnit.CENTIMETRE));
        TestRun grams =
                run(WaterReading.weighed(Reading.of("18000", FieldUnit.GRAM).withResolution(BigDecimal.TEN)));
        double expected = budget(NONE, RING, RUN).uncertainty().standardUncertainty();
        assertEquals(expected, budget(NONE, centimetres, grams).uncertainty().standardUncertainty(), 1e-9);
    }

    private static double density(UncertaintyBudget budget) {
        List<Term> terms = budget.measurement().terms();
        return terms.get(terms.size() - 1).spread().width();
    }
}
