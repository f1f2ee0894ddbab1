// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import static dev.infiltration.Amounts.kg;
import static dev.infiltration.Amounts.mm;
import static dev.infiltration.Amounts.s;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.exchange.ReferenceJson;
import dev.infiltration.field.Pouring.End;
import dev.infiltration.field.Ring;
import dev.infiltration.field.TestRun;
import dev.infiltration.method.Basis;
import dev.infiltration.rate.ReferenceCase.Outcome;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The shipped cases hold this library and tell a wrong implementation by how much it is wrong. */
class ReferenceCasesTest {

    private static final ReferenceCases SHIPPED = ReferenceJson.shipped();

    /** 50 digits (memory), as many tables print them. */
    private static final BigDecimal PI = new BigDecimal("3.1415926535897932384626433832795028841971693993751");

    private static final MathContext DIGITS = new MathContext(60);

    private static ReferenceCase hundred(Outcome outcome, String tolerance) {
        return new ReferenceCase(
                "hundred",
                Ring.of("R").withInsideDiameter(mm("300")),
                TestRun.of(null, kg("18.00"), s("60.0"), End.DRAINED),
                outcome,
                outcome == Outcome.WITHHELD ? null : Reading.of("100", FieldUnit.MILLIMETRE_PER_HOUR),
                new BigDecimal(tolerance),
                Basis.commonPractice());
    }

    private static Stream<ReferenceCheck> library() {
        return SHIPPED.check(RateEquation.asPublished()::rate).stream();
    }

    private static String failed(List<ReferenceCheck> checks) {
        return checks.stream()
                .filter(check -> !check.isPassed())
                .map(check -> check.reference().id())
                .collect(Collectors.joining("; "));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("library")
    void libraryPassesEveryShippedCase(ReferenceCheck check) {
        assertTrue(check.isPassed());
        assertTrue(check.toString().startsWith("passed "));
    }

    @Test
    void bareEquationsPassTheirShippedCases() {
        List<ReferenceCheck> metric = SHIPPED.checkMetric(RateEquation::millimetresPerHour);
        assertEquals(21, metric.size());
        assertEquals("", failed(metric));
        List<ReferenceCheck> inchPound = SHIPPED.checkInchPound(RateEquation::inchesPerHour);
        assertEquals(11, inchPound.size());
        assertEquals("", failed(inchPound));
    }

    /** 4·M/(π·ρ·D²·t) by decimals alone: the numbers of the file are what their source says. */
    @Test
    void casesByFirstPrinciplesAreWorkedRight() {
        long worked = SHIPPED.cases().stream()
                .filter(each -> each.basis().source().startsWith("first principles: "))
                .peek(each ->
                        assertEquals(0, principles(each).compareTo(each.rate().value()), each.id()))
                .count();
        assertEquals(22, worked);
    }

    private static BigDecimal principles(ReferenceCase each) {
        List<Reading<Length>> diameters = each.ring().diametersInUse();
        BigDecimal metres = diameters.stream()
                .map(diameter -> diameter.exactIn(FieldUnit.METRE))
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .divide(BigDecimal.valueOf(diameters.size()), DIGITS);
        BigDecimal kilograms = each.run().pouredWater().orElseThrow().mass().exactIn(FieldUnit.KILOGRAM);
        BigDecimal area = PI.multiply(metres.pow(2)).divide(new BigDecimal(4));
        BigDecimal millimetres = kilograms.divide(area, DIGITS); // a kilogram on a square metre stands 1 mm deep
        BigDecimal hours = each.run().elapsed().exactIn(FieldUnit.SECOND).divide(new BigDecimal(3600), DIGITS);
        return Reading.of(millimetres.divide(hours, DIGITS), FieldUnit.MILLIMETRE_PER_HOUR)
                .exactIn(each.rate().unit())
                .round(new MathContext(30));
    }

    @Test
    void aConstantOneInTenThousandHighFailsByThatMuch() {
        List<ReferenceCheck> checks =
                SHIPPED.checkMetric((kg, mm, seconds) -> 1.0001 * RateEquation.millimetresPerHour(kg, mm, seconds));
        assertTrue(checks.stream().noneMatch(ReferenceCheck::isPassed));
        ReferenceCheck first = checks.get(0);
        assertEquals(1.0079e-4, first.relativeDifference().orElseThrow().doubleValue(), 1e-8);
        assertEquals(0.61600, first.difference().orElseThrow().doubleValue(), 1e-4);
        assertTrue(first.toString().contains("off by 0.0001, allowed 0.00005"), first.toString());
    }

    @Test
    void nominalForMeasuredDiameterFailsWhereTheyDiffer() {
        List<ReferenceCheck> checks =
                SHIPPED.checkMetric((kg, mm, seconds) -> RateEquation.millimetresPerHour(kg, 300, seconds));
        assertEquals(
                "3.60 kg, 290 mm, 30 s; 3.60 kg, 310 mm, 30 s; 18.00 kg, 12.00 in, 60 s;"
                        + " SI constant, 3.60 kg, 290 mm, 30 s; SI constant, 3.60 kg, 310 mm, 30 s",
                failed(checks));
        assertEquals(-0.0656, checks.get(3).relativeDifference().orElseThrow().doubleValue(), 1e-4);
    }

    @Test
    void oneConstantConvertedIntoTheOtherSystemFailsThePublishedOneAlone() {
        List<ReferenceCheck> checks = SHIPPED.checkInchPound(
                (lb, in, seconds) -> RateEquation.millimetresPerHour(lb * 0.45359237, in * 25.4, seconds) / 25.4);
        assertTrue(checks.stream()
                .allMatch(check -> check.isPassed() == !check.reference().id().startsWith("inch-pound constant")));
        ReferenceCheck last = checks.get(checks.size() - 1);
        assertEquals(4.29e-5, last.relativeDifference().orElseThrow().doubleValue(), 1e-7);
    }

    @Test
    void aRateWhereABoundIsRightFails() {
        List<ReferenceCheck> checks = SHIPPED.check((ring, run) -> RateEquation.asPublished()
                .rate(ring, run)
                .figure()
                .<RateOutcome>map(RateOutcome.Measured::new)
                .orElse(new RateOutcome.Withheld(List.of())));
        assertEquals(
                "stopped; stopped at 20 mm; stopped at 51 mm, all of the water; stopped at 0.5 in;"
                        + " a leak; the timer late; the head lost; the head never reached",
                failed(checks));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -1, 1e308})
    void anAnswerThatIsNoRateFails(double answer) {
        assertTrue(SHIPPED.checkInchPound((lb, in, seconds) -> answer).stream().noneMatch(ReferenceCheck::isPassed));
        ReferenceCheck none =
                SHIPPED.checkMetric((kg, mm, seconds) -> Double.NaN).get(0);
        assertTrue(none.relativeDifference().isEmpty());
        assertTrue(none.toString().contains("got withheld; "), none.toString());
    }

    @ParameterizedTest(name = "{0} of 100 within {1}: {2}")
    @CsvSource({"101, 0.01, true", "99, 0.01, true", "101.0000001, 0.01, false", "100, 0, true", "100.1, 0, false"})
    void toleranceIsInclusive(double got, String tolerance, boolean passed) {
        ReferenceCheck check = new ReferenceCheck(
                hundred(Outcome.MEASURED, tolerance), new RateOutcome.Measured(new InfiltrationRate(got)));
        assertEquals(passed, check.isPassed());
    }

    @Test
    void whereZeroIsExpectedNothingElsePasses() {
        List<ReferenceCheck> checks =
                SHIPPED.check((ring, run) -> new RateOutcome.UpperBound(new InfiltrationRate(1e-9), List.of()));
        ReferenceCheck zero = checks.stream()
                .filter(check -> check.reference().id().startsWith("stopped at 51 mm"))
                .findFirst()
                .orElseThrow();
        assertFalse(zero.isPassed());
        assertEquals(1e-9, zero.difference().orElseThrow().doubleValue());
        assertTrue(zero.relativeDifference().isEmpty());
    }

    @Test
    void withheldIsRightOnlyWhereNoRateCanBeGiven() {
        ReferenceCheck given =
                new ReferenceCheck(hundred(Outcome.WITHHELD, "0"), new RateOutcome.Measured(new InfiltrationRate(100)));
        assertFalse(given.isPassed());
        assertTrue(given.toString().startsWith("FAILED hundred: expected withheld, got measured 100.0 mm/h"));
        assertTrue(new ReferenceCheck(hundred(Outcome.WITHHELD, "0"), new RateOutcome.Withheld(List.of())).isPassed());
    }

    @Test
    void refusesCasesThatContradictThemselves() {
        ReferenceCase hundred = hundred(Outcome.MEASURED, "0.1");
        assertThrows(IllegalArgumentException.class, () -> hundred(Outcome.MEASURED, "-0.1"));
        assertThrows(
                IllegalArgumentException.class,
                () -> new ReferenceCase(
                        "x",
                        hundred.ring(),
                        hundred.run(),
                        Outcome.WITHHELD,
                        hundred.rate(),
                        BigDecimal.ZERO,
                        hundred.basis()));
        assertThrows(IllegalArgumentException.class, () -> new ReferenceCases(List.of(hundred, hundred)));
    }
}
