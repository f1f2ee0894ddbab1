// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import static dev.infiltration.Amounts.at;
import static dev.infiltration.Amounts.g;
import static dev.infiltration.Amounts.gallons;
import static dev.infiltration.Amounts.in;
import static dev.infiltration.Amounts.kg;
import static dev.infiltration.Amounts.lb;
import static dev.infiltration.Amounts.litres;
import static dev.infiltration.Amounts.m;
import static dev.infiltration.Amounts.min;
import static dev.infiltration.Amounts.mm;
import static dev.infiltration.Amounts.s;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.Pour;
import dev.infiltration.field.Pouring.End;
import dev.infiltration.field.PreWet;
import dev.infiltration.field.Ring;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.WaterReading;
import dev.infiltration.units.Reading;
import java.util.List;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The equation against first principles and values worked by hand, to the last digits of a double. */
class RateEquationTest {

    private static final double LAST_DIGITS = 1e-12;
    private static final RateEquation EQUATION = RateEquation.asPublished();
    private static final Ring METRIC = Ring.of("R1").withInsideDiameter(mm("300"));
    private static final Ring INCHES = Ring.of("R2").withInsideDiameter(in("12.00"));

    private static double rate(Ring ring, TestRun run) {
        RateOutcome outcome = EQUATION.rate(ring, run);
        return outcome.figure()
                .orElseThrow(() -> new AssertionError(outcome.toString()))
                .millimetresPerHour();
    }

    private static TestRun run(WaterReading water, String seconds) {
        return TestRun.of(at("07:10"), water, s(seconds), End.DRAINED);
    }

    /**
     * A depth of M/(ρ·A) each t: K = 3600·4/(π·ρ), with water of 1000 kg/m³ (derived). The published constants
     * (ASTM C1701/C1701M 9.1, from memory) are rounded from it.
     */
    @Test
    void theConstantsAreThoseOfTheGeometryOfTheRing() {
        double metres = 1e-3;
        double si = 3600 * 4 / (Math.PI * 1000) / metres / metres / metres;
        assertEquals(0.79e-6, RateEquation.SI_CONSTANT / si - 1, 0.005e-6);
        double inch = 0.0254;
        double inchPound = 3600 * 4 / (Math.PI * 1000) * 0.45359237 / inch / inch / inch;
        assertEquals(-42.1e-6, RateEquation.INCH_POUND_CONSTANT / inchPound - 1, 0.05e-6);
    }

    /** I = K·M/(D²·t), worked with 40 decimal digits; the rounded ones stand in the method's worked values. */
    @ParameterizedTest(name = "{0}: {1} kg, {2} mm, {3} s")
    @CsvSource(delimiter = '|', textBlock = """
            # source                     | kg    | mm  | s     | mm/h                 | rounded
            derived, constant by memory  | 3.60  | 300 | 30.0  | 6111.554666666666667 | 6111.55
            derived, constant by memory  | 18.00 | 300 | 150.0 | 6111.554666666666667 | 6111.55
            derived, constant by memory  | 18.00 | 300 | 60.0  | 15278.88666666666667 | 15278.89
            derived, constant by memory  | 3.60  | 290 | 30.0  | 6540.308204518430440 | 6540.31
            derived, constant by memory  | 3.60  | 310 | 30.0  | 5723.620395421436004 | 5723.62
            derived, constant by memory  | 18.00 | 300 | 141.7 | 6469.535638673253352 | 6469.54
            derived, constant by memory  | 3.60  | 300 | 720.0 | 254.6481111111111111 | 254.65
            """)
    void siValuesWorkedByHand(String source, String kg, String mm, String s, double expected, double rounded) {
        double rate = rate(Ring.of("R").withInsideDiameter(mm(mm)), run(kg(kg), s));
        assertEquals(expected, rate, LAST_DIGITS * expected);
        assertEquals(rounded, rate, 0.005);
        assertEquals(
                expected,
                RateEquation.millimetresPerHour(Double.parseDouble(kg), Double.parseDouble(mm), Double.parseDouble(s)),
                LAST_DIGITS * expected);
    }

    /** The same in inch-pound units, turned into mm/h at 25.4 mm an inch. */
    @ParameterizedTest(name = "{0}: {1} lb, {2} in, {3} s")
    @CsvSource(delimiter = '|', textBlock = """
            # source                     | lb    | in    | s     | mm/h
            derived, constant by memory  | 8.0   | 12.0  | 30.0  | 5967.588888888888889
            derived, constant by memory  | 40.00 | 12.0  | 60.0  | 14918.97222222222222
            derived, constant by memory  | 40.00 | 11.95 | 141.7 | 6370.110808739318089
            derived, constant by memory  | 8.00  | 12.00 | 21.4  | 8365.778816199376947
            """)
    void inchPoundValuesWorkedByHand(String source, String lb, String in, String s, double expected) {
        assertEquals(expected, rate(Ring.of("R").withInsideDiameter(in(in)), run(lb(lb), s)), LAST_DIGITS * expected);
    }

    /** Derived: 3.60 kg and 18.00 kg through 300 mm, by the constant of the other system. */
    @ParameterizedTest
    @CsvSource({"3.60, 30, 6111.292714734156573", "18.00, 60, 15278.23178683539143"})
    void theSameTestWorkedInInchesAndPounds(double kg, double s, double expected) {
        double rate = RateEquation.inchesPerHour(kg / 0.45359237, 300 / 25.4, s) * 25.4;
        assertEquals(expected, rate, LAST_DIGITS * expected);
        assertEquals(1.000043, RateEquation.millimetresPerHour(kg, 300, s) / rate, 5e-7);
    }

    @Test
    void theConstantFollowsDiameterAndWaterTogether() {
        assertEquals(6267.375184715083, rate(INCHES, run(kg("18.00"), "141.7")), 6e-9, "SI: inches and kilograms");
        assertEquals(6521.182229211699, rate(METRIC, run(lb("40.00"), "141.7")), 6e-9, "SI: millimetres, pounds");
        assertEquals(6273.568669220936, rate(INCHES, run(gallons("4.76"), "141.7")), 6e-9, "inches and gallons");
        Ring both = Ring.of("R").withInsideDiameters(List.of(in("12.00"), mm("304.8")));
        assertEquals(
                RateEquation.millimetresPerHour(40 * 0.45359237, 304.8, 141.7),
                rate(both, run(lb("40.00"), "141.7")),
                6e-9,
                "one diameter in millimetres");
    }

    @Test
    void unitsWithinASystemDoNotMatter() {
        double rate = rate(METRIC, run(kg("18.00"), "141.7"));
        assertEquals(rate, rate(METRIC, run(g("18000"), "141.7")), LAST_DIGITS * rate);
        assertEquals(rate, rate(METRIC, run(litres("18.00"), "141.7")), LAST_DIGITS * rate, "1000 kg/m3");
        assertEquals(rate, rate(METRIC.withInsideDiameter(m("0.300")), run(kg("18.00"), "141.7")), LAST_DIGITS * rate);
        TestRun minutes = run(kg("18.00"), "0").withElapsed(min("2.5"));
        assertEquals(rate(METRIC, run(kg("18.00"), "150")), rate(METRIC, minutes), LAST_DIGITS * rate);
    }

    @Test
    void ofSeveralDiametersTheMeanCounts() {
        List<Reading<Length>> three = List.of(mm("300"), mm("302"), mm("301"));
        Ring ring = Ring.of("R").withInsideDiameters(three);
        assertEquals(6426.620097797958, rate(ring, run(kg("18.00"), "141.7")), 6e-9);
        assertEquals(
                6469.535638673254,
                rate(ring.withInsideDiameter(mm("300")), run(kg("18.00"), "141.7")),
                6e-9,
                "the one to use wins");
    }

    @Test
    void poursSumToTheWaterWhereItIsAbsent() {
        List<Pour> pours = List.of(Pour.of(kg("10.50"), kg("1.49")), Pour.of(kg("10.00"), kg("1.00")));
        TestRun poured = run(null, "141.7").withPours(pours);
        assertEquals(6473.129825139183, rate(METRIC, poured), 6e-9, "18.01 kg");
        assertEquals(6469.535638673254, rate(METRIC, poured.withWater(kg("18.00"))), 6e-9, "water wins");
        TestRun half = run(null, "141.7").withPours(List.of(Pour.of(kg("10.50"), null)));
        assertEquals(List.of("run.unusable"), EQUATION.rate(METRIC, half).reasons());
    }

    /** 3.60 kg less 20 mm over π/4·0.3² m² at 1000 kg/m³ is 2.186 kg (derived). */
    @Test
    void aStoppedRunCountsWhatWentIn() {
        TestRun stopped = run(kg("3.60"), "900.0").withEnd(End.STOPPED);
        RateOutcome plain = EQUATION.rate(METRIC, stopped);
        assertTrue(plain instanceof RateOutcome.UpperBound);
        assertEquals(List.of("run.discontinued"), plain.reasons());
        assertEquals(203.71848888888888, rate(METRIC, stopped), 2e-10);
        assertEquals(123.71842537707049, rate(METRIC, stopped.withDepthAtStop(mm("20"))), 2e-10);
        assertEquals(203.71848888888888, rate(METRIC, stopped.withDepthAtStop(mm("0"))), 2e-10, "0 is absent");
        assertEquals(203.71848888888888, rate(METRIC, stopped.withDepthAtStop(mm("-20"))), 2e-10, "absent");
        TestRun pounds = run(lb("8.00"), "600").withEnd(End.STOPPED).withDepthAtStop(in("0.5"));
        assertEquals(222.18265001752889, rate(INCHES, pounds), 2e-10);
    }

    /** On a sealed surface 3.60 kg are 51 mm deep (derived): no more water can be left than was poured. */
    @Test
    void whatWentInIsNeverLessThanNothing() {
        TestRun dead = run(kg("3.60"), "900.0").withEnd(End.STOPPED).withDepthAtStop(mm("51"));
        RateOutcome outcome = EQUATION.rate(METRIC, dead);
        assertTrue(outcome instanceof RateOutcome.UpperBound);
        assertEquals(0.0, outcome.figure().orElseThrow().millimetresPerHour());
        assertEquals(0.0, rate(METRIC, dead.withDepthAtStop(m("9"))));
    }

    @Test
    void aDepthLeftAtADrainedRunSubtractsNothing() {
        TestRun drained = run(kg("18.00"), "141.7").withDepthAtStop(mm("20"));
        assertEquals(6469.535638673254, rate(METRIC, drained), 6e-9);
    }

    @Test
    void aPrewettingIsWorkedLikeARun() {
        PreWet preWet = PreWet.of(at("07:10"), kg("3.60"), s("30.0"), End.DRAINED);
        assertEquals(
                6111.554666666667,
                EQUATION.rate(METRIC, preWet).figure().orElseThrow().millimetresPerHour(),
                6e-9);
    }

    @Test
    void aRateThatIsNotFiniteIsWithheld() {
        for (String digits : List.of("1e400", "9e999999999")) {
            RateOutcome outcome = EQUATION.rate(METRIC, run(kg(digits), "141.7"));
            assertEquals(new RateOutcome.Withheld(List.of("run.implausible")), outcome, digits);
        }
        RateOutcome fast = EQUATION.rate(METRIC, run(kg("18.00"), "1e-400"));
        assertEquals(new RateOutcome.Withheld(List.of("run.implausible")), fast);
    }
}
