// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static dev.infiltration.Amounts.at;
import static dev.infiltration.Amounts.gallons;
import static dev.infiltration.Amounts.in;
import static dev.infiltration.Amounts.kg;
import static dev.infiltration.Amounts.lb;
import static dev.infiltration.Amounts.litres;
import static dev.infiltration.Amounts.m;
import static dev.infiltration.Amounts.m2;
import static dev.infiltration.Amounts.mm;
import static dev.infiltration.Amounts.percent;
import static dev.infiltration.Amounts.s;
import static dev.infiltration.Amounts.time;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.Season;
import dev.infiltration.field.Pour;
import dev.infiltration.field.WaterReading;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.util.List;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How rules read amounts: by the system they were written in, exactly, and what is not positive. */
class ReadingOfAmountsTest {

    private static final Season SI = Season.si();
    private static final Season WITHOUT_INSTRUMENTS = SI.visit(v -> v.withInstruments(List.of()));
    private static final String RUN = "/visits/0/tests/0/runs/0";
    private static final String UNUSABLE = "run.unusable NO_RATE NONE " + RUN;

    /** ASTM C1701/C1701M 8.3 (memory): 18.00 ± 0.05 kg or 40.00 ± 0.1 lb, which are not conversions of each other. */
    @ParameterizedTest
    @CsvSource({
        "18.144, kg, false", "40.00, [lb_av], true", "39.68, [lb_av], false", "18050, g, true", "18051, g, false",
        "640.0, [oz_av], true", "641.6, [oz_av], true", "641.7, [oz_av], false", "17.95, kg, true",
                "40.1, [lb_av], true"
    })
    void aMassIsJudgedByTheSystemItWasWrittenIn(String digits, String unit, boolean isKept) {
        var mass = Reading.of(digits, FieldUnit.parse(unit, Mass.class).orElseThrow());
        Season season = SI.tests(t -> t.withRuns(t.runs().stream()
                .map(r -> r.withWater(WaterReading.weighed(mass)))
                .toList()));
        long found = season.findings().stream()
                .filter(f -> f.startsWith("run.mass "))
                .count();
        assertEquals(isKept ? 0 : 6, found);
    }

    @Test
    void aVolumeIsJudgedAsTheMassItCountsForInItsOwnSystem() {
        Season gallons = Season.inchPound().preWet(0, p -> p.withWater(gallons("0.96")));
        assertEquals(List.of(), gallons.findings(), "0.96 gal is 8.01 lb");
        assertEquals(
                List.of("prewet.mass DEVIATION EITHER /visits/0/tests/0/preWet/water"),
                gallons.preWet(0, p -> p.withWater(gallons("0.98"))).findings(),
                "0.98 gal is 8.18 lb");
        assertEquals(List.of(), SI.preWet(0, p -> p.withWater(litres("3.65"))).findings());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-18", "0.00", "-0"})
    void runWaterThatIsNotPositiveIsUnusableAndNothingElse(String digits) {
        for (WaterReading water : List.of(kg(digits), lb(digits), litres(digits))) {
            Season season = WITHOUT_INSTRUMENTS.run(
                    0, 0, r -> r.withWater(water).withPours(List.of(Pour.of(kg("19.00"), kg("1.00")))));
            assertEquals(List.of(UNUSABLE), season.findings(), water.toString());
        }
    }

    @Test
    void poursThatSumToNothingAreUnusable() {
        Season season = SI.run(0, 0, r -> r.withWater(null).withPours(List.of(Pour.of(kg("1.00"), kg("1.00")))));
        assertEquals(List.of(UNUSABLE), season.findings());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-142"})
    void runTimeThatIsNotPositiveIsUnusableAndEndsNothing(String digits) {
        Season season = WITHOUT_INSTRUMENTS.run(0, 0, r -> r.withElapsed(s(digits)));
        assertEquals(List.of(UNUSABLE), season.findings());
        Season rightAfter = season.run(0, 1, r -> r.withStart(at("07:11:31")));
        assertEquals(List.of(UNUSABLE), rightAfter.findings());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-300"})
    void aDiameterThatIsNotPositiveIsUnusableAndNothingElse(String digits) {
        assertEquals(
                List.of("ring.unusable NO_RATE NONE /rings/0"),
                WITHOUT_INSTRUMENTS.ring(r -> r.withInsideDiameter(in(digits))).findings());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-4"})
    void preWetWaterThatIsNotPositiveIsJudgedByItsMassAlone(String digits) {
        assertEquals(
                List.of("prewet.mass DEVIATION EITHER /visits/0/tests/0/preWet/water"),
                WITHOUT_INSTRUMENTS.preWet(0, p -> p.withWater(kg(digits))).findings());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-21"})
    void timeOfAPrewettingThatIsNotPositiveIsAbsent(String digits) {
        Season season = WITHOUT_INSTRUMENTS.preWet(0, p -> p.withElapsed(s(digits)));
        assertEquals(List.of(), season.run(0, 0, r -> r.withWater(kg("9.00"))).findings(), "selects no mass");
        assertEquals(
                List.of(), season.run(0, 0, r -> r.withStart(at("07:13:05"))).findings(), "ends nothing");
    }

    @Test
    void aNegativeDelaySettlesNothingAndContradictsTheClock() {
        Season season = SI.run(0, 0, r -> r.withStart(at("07:12")).withDelay(s("-1")));
        assertEquals(
                List.of("data.clock DEVIATION EITHER " + RUN, "run.start-delay-unshown CAUTION RAISES " + RUN),
                season.findings());
        assertEquals(List.of(), season.run(0, 0, r -> r.withDelay(s("0"))).findings(), "0 settles the pair");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-3"})
    void aTapedDistanceThatIsNotPositiveIsAbsent(String digits) {
        Season far = SI.test(1, t -> t.withClearSpacing(m(digits)));
        assertEquals(List.of(), far.findings());
        assertEquals(
                List.of("visit.spacing-unknown CAUTION LOWERS /visits/0"),
                far.location(1, l -> l.withX(null)).findings());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-0.01"})
    void aResolutionThatIsNotPositiveIsAbsent(String digits) {
        Season balance = SI.instrument(0, i -> i.withResolution(Reading.of(digits, FieldUnit.KILOGRAM)));
        assertEquals(List.of(), balance.findings(), "digits are enough");
        assertEquals(
                List.of("visit.resolution-unshown CAUTION EITHER /visits/0"),
                balance.run(0, 0, r -> r.withWater(kg("18"))).findings());
        WaterReading stated =
                WaterReading.weighed(Reading.of("18", FieldUnit.KILOGRAM).withResolution(new BigDecimal(digits)));
        assertEquals(List.of(), SI.run(0, 0, r -> r.withWater(stated)).findings(), "the balance is enough");
    }

    @Test
    void otherAmountsStandAsTheyAre() {
        Season season = SI.location(0, l -> l.withX(m("-30")).withSlope(percent("-40")))
                .surface(f -> f.withThickness(mm("-80")))
                .weather(w -> w.withLastRainDepth(mm("-1")));
        assertEquals(List.of(), season.findings());
    }

    @Test
    void aDeviationStandsAloneWhereItsUnshownMeetsIt() {
        Season watch = SI.visit(v -> v.withInstruments(List.of("W1")))
                .instrument(1, i -> i.withResolution(s("1")))
                .run(0, 0, r -> r.withWater(kg("18")));
        assertEquals(List.of("visit.resolution DEVIATION EITHER /visits/0"), watch.findings());
        Season rain = SI.weather(w -> w.withLastRainEnd(time("2026-06-02T07:10")))
                .preWet(1, p -> p.withStart(at("07:09:59")));
        assertEquals(
                List.of("visit.rain DEVIATION LOWERS /visits/0/weather"),
                rain.findings().stream().filter(f -> f.startsWith("visit.rain")).toList());
    }

    @Test
    void extremeAmountsAreJudgedWithoutHarm() {
        for (String digits : List.of("1e999999999", "1e-999999999", "1e15", "1e-15")) {
            Season season = SI.run(0, 0, r -> r.withWater(kg(digits)).withElapsed(s(digits)))
                    .ring(r -> r.withHeight(mm(digits)).withInsideDiameter(mm(digits)))
                    .surface(f -> f.withArea(m2(digits)));
            assertEquals(season.findings(), season.findings());
        }
    }
}
