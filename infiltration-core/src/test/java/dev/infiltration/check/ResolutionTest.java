// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static dev.infiltration.Amounts.gallons;
import static dev.infiltration.Amounts.in;
import static dev.infiltration.Amounts.kg;
import static dev.infiltration.Amounts.lb;
import static dev.infiltration.Amounts.litres;
import static dev.infiltration.Amounts.min;
import static dev.infiltration.Amounts.mm;
import static dev.infiltration.Amounts.s;
import static dev.infiltration.Season.and;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.Season;
import dev.infiltration.field.Instrument;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Pour;
import dev.infiltration.field.Pouring.End;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.WaterReading;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.util.List;
import java.util.function.UnaryOperator;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The resolution of water, time and diameters: as stated, otherwise of the instrument, otherwise from the digits. */
class ResolutionTest {

    private static final Season SI = Season.si();
    private static final Season DIGITS = SI.visit(v -> v.withInstruments(List.of()));
    private static final Season INCH_POUND_DIGITS = Season.inchPound().visit(v -> v.withInstruments(List.of()));
    private static final List<String> BROKEN = List.of("visit.resolution DEVIATION EITHER /visits/0");
    private static final List<String> UNSHOWN = List.of("visit.resolution-unshown CAUTION EITHER /visits/0");
    private static final List<String> RING_BROKEN = List.of("ring.resolution DEVIATION EITHER /rings/0");
    private static final List<String> RING_UNSHOWN = List.of("ring.resolution-unshown CAUTION EITHER /rings/0");

    private static List<String> withRun(Season season, UnaryOperator<TestRun> change) {
        return season.run(0, 0, change).findings();
    }

    private static WaterReading stated(WaterReading water, String resolution) {
        return new WaterReading(water.reading().withResolution(new BigDecimal(resolution)));
    }

    @Test
    void whatAnAmountStatesWins() {
        assertEquals(List.of(), withRun(DIGITS, r -> r.withWater(stated(kg("18"), "0.01"))));
        assertEquals(BROKEN, withRun(SI, r -> r.withWater(stated(kg("18.000"), "0.02"))));
        assertEquals(BROKEN, withRun(SI, r -> r.withElapsed(s("141.70").withResolution(BigDecimal.ONE))));
        assertEquals(List.of(), withRun(DIGITS, r -> r.withElapsed(s("141").withResolution(new BigDecimal("0.1")))));
        Season coarse = SI.instrument(0, i -> i.withResolution(kg("0.05").mass()));
        assertEquals(BROKEN, withRun(coarse, r -> r.withWater(stated(kg("18"), "0.01"))), "the other runs'");
    }

    @Test
    void instrumentsWinOverDigits() {
        assertEquals(List.of(), withRun(SI, r -> r.withWater(kg("18")).withElapsed(s("142"))));
        assertEquals(
                BROKEN,
                SI.instrument(0, i -> i.withResolution(kg("0.011").mass())).findings());
    }

    @Test
    void theFinestInstrumentOfItsKindCounts() {
        Instrument coarse = Instrument.of("B2")
                .withKind(Instrument.Kind.BALANCE)
                .withResolution(Reading.of("0.05", FieldUnit.KILOGRAM));
        Season two = SI.book(b -> b.withInstruments(and(b.instruments(), coarse)))
                .visit(v -> v.withInstruments(List.of("B2", "B1")))
                .run(0, 0, r -> r.withWater(kg("18")));
        assertEquals(List.of(), two.findings());
        assertEquals(BROKEN, two.visit(v -> v.withInstruments(List.of("B2"))).findings());
        assertEquals(UNSHOWN, two.visit(v -> v.withInstruments(List.of("W1"))).findings(), "B1 was not at the visit");
    }

    /** Bounds of ASTM C1701/C1701M 6.2 (memory): 10 g or 0.02 lb, by the system in which the resolution is written. */
    @ParameterizedTest
    @CsvSource({
        "0.02, [lb_av], true",
        "0.32, [oz_av], true",
        "0.33, [oz_av], false",
        "0.021, [lb_av], false",
        "10, g, true",
        "9.99, g, true",
        "10.01, g, false",
        "0.010, kg, true",
        "0.022, [lb_av], false"
    })
    void aResolutionIsJudgedByItsOwnSystem(String digits, String unit, boolean isKept) {
        Reading<?> step = Reading.of(digits, FieldUnit.parse(unit).orElseThrow());
        for (Season season : List.of(SI, Season.inchPound())) {
            assertEquals(
                    isKept ? List.of() : BROKEN,
                    season.instrument(0, i -> i.withResolution(step)).findings());
        }
    }

    @Test
    void aResolutionOfAnotherQuantityIsOfNoUse() {
        Season balance = SI.instrument(0, i -> i.withResolution(mm("500")));
        assertEquals(List.of(), balance.findings());
        assertEquals(UNSHOWN, withRun(balance, r -> r.withWater(kg("18"))));
        Season tape = Season.inchPound()
                .instrument(2, i -> i.withResolution(s("1")))
                .ring(r -> r.withInsideDiameter(in("12.0")));
        assertEquals(RING_UNSHOWN, tape.findings());
    }

    @Test
    void anInstrumentOfNoKindIsOfNoUse() {
        Season season = SI.instrument(0, i -> i.withKind(null)).run(0, 0, r -> r.withWater(kg("18")));
        assertEquals(UNSHOWN, season.findings());
    }

    @ParameterizedTest
    @CsvSource({"18.00, kg, true", "18.0, kg, false", "18, kg, false", "18000, g, true", "1.8e4, g, false"})
    void digitsOfSiWaterCount(String digits, String unit, boolean isKept) {
        var mass = Reading.of(digits, FieldUnit.parse(unit, Mass.class).orElseThrow());
        assertEquals(isKept ? List.of() : UNSHOWN, withRun(DIGITS, r -> r.withWater(WaterReading.weighed(mass))));
    }

    @ParameterizedTest
    @CsvSource({"40.00, true", "40.0, false", "40, false", "40.000, true"})
    void digitsOfInchPoundWaterCount(String digits, boolean isKept) {
        assertEquals(isKept ? List.of() : UNSHOWN, withRun(INCH_POUND_DIGITS, r -> r.withWater(lb(digits))));
    }

    /** 0.01 gal counts for 0.083 lb, 0.001 gal for 0.0083 lb. */
    @Test
    void aVolumeIsReadToTheMassThatItsLastDigitCountsFor() {
        Season si = DIGITS.preWet(0, p -> p.withWater(litres("3.60")));
        assertEquals(List.of(), si.findings());
        assertEquals(UNSHOWN, si.preWet(0, p -> p.withWater(litres("3.6"))).findings());
        Season inchPound = INCH_POUND_DIGITS.preWet(0, p -> p.withWater(gallons("0.960")));
        assertEquals(List.of(), inchPound.findings());
        assertEquals(
                UNSHOWN, inchPound.preWet(0, p -> p.withWater(gallons("0.96"))).findings());
        assertEquals(
                List.of(),
                inchPound
                        .preWet(0, p -> p.withWater(stated(gallons("0.96"), "0.002")))
                        .findings());
        assertEquals(
                BROKEN,
                inchPound
                        .preWet(0, p -> p.withWater(stated(gallons("0.96"), "0.003")))
                        .findings());
    }

    @Test
    void poursAreReadToTheirOwnDigits() {
        Season season = DIGITS.run(0, 0, r -> r.withWater(null).withPours(List.of(Pour.of(kg("19.00"), kg("1.00")))));
        assertEquals(List.of(), season.findings());
        assertEquals(UNSHOWN, withRun(season, r -> r.withPours(List.of(Pour.of(kg("19.00"), kg("1.0"))))));
    }

    @ParameterizedTest
    @CsvSource({"141.7, s, true", "142, s, false", "2.361, min, true", "2.36, min, false"})
    void digitsOfTimesCount(String digits, String unit, boolean isKept) {
        Reading<Time> time = unit.equals("s") ? s(digits) : min(digits);
        assertEquals(isKept ? List.of() : UNSHOWN, withRun(DIGITS, r -> r.withElapsed(time)));
    }

    @Test
    void whatIsVoidIsNotJudged() {
        Season run =
                DIGITS.run(0, 0, r -> r.withWater(kg("18")).withElapsed(s("9")).withEnd(End.VOID));
        assertEquals(List.of("run.void CAUTION NONE /visits/0/tests/0/runs/0"), run.findings());
        Season preWet =
                DIGITS.preWet(0, p -> p.withWater(kg("4")).withElapsed(s("9")).withEnd(End.VOID));
        assertEquals(List.of("prewet.absent DEVIATION RAISES /visits/0/tests/0"), preWet.findings());
    }

    @Test
    void aTapeMayBeNamedByAnyVisitThatUsesTheRing() {
        Season rough =
                SI.visit(v -> v.withInstruments(List.of("B1", "W1"))).ring(r -> r.withInsideDiameter(mm("3.0e2")));
        assertEquals(RING_UNSHOWN, rough.findings());
        Season other = rough.andVisit(v -> v.withId("V2")
                .withDate(v.date().minusDays(1))
                .withInstruments(List.of("L1"))
                .withRequestedLocations(0)
                .withTests(List.of()));
        assertEquals(RING_UNSHOWN, other.findings(), "a visit that does not use the ring");
        Season user = other.visit(
                1,
                v -> v.withTests(
                        List.of(LocationTest.of("V2-A1", "A1", "R1").withNotTested(LocationTest.NotTested.SNOW))));
        assertEquals(
                List.of("test.not-tested CAUTION NONE /visits/1/tests/0"), user.findings(), "a visit that uses it");
    }

    @Test
    void everyDiameterInUseIsJudged() {
        Season two = SI.visit(v -> v.withInstruments(List.of("B1", "W1")))
                .ring(r -> r.withInsideDiameter(null).withInsideDiameters(List.of(mm("300"), mm("3.0e2"))));
        assertEquals(RING_UNSHOWN, two.findings());
        assertEquals(
                RING_BROKEN,
                two.ring(r -> r.withInsideDiameters(List.of(mm("300").withResolution(BigDecimal.TEN), mm("3.0e2"))))
                        .findings());
        assertEquals(
                List.of(), two.ring(r -> r.withInsideDiameter(mm("300"))).findings(), "the one to use is read well");
    }
}
