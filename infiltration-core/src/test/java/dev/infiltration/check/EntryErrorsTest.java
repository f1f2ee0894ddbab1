// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static dev.infiltration.Amounts.g;
import static dev.infiltration.Amounts.gallons;
import static dev.infiltration.Amounts.kg;
import static dev.infiltration.Amounts.lb;
import static dev.infiltration.Amounts.litres;
import static dev.infiltration.Amounts.s;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.Season;
import dev.infiltration.field.Pour;
import dev.infiltration.field.WaterReading;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The remedy names a likely entry error as something to check; readings and rates stay as they are (contract of the rules). */
class EntryErrorsTest {

    private static final Season SI = Season.si();
    private static final String CHECK = "likely entry error to check: ";

    private static String remedy(String rule, Season season, Checker checker) {
        return checker.withToday(Season.TODAY).check(season.book()).findings().stream()
                .filter(finding -> finding.rule().equals(rule))
                .map(Finding::remedy)
                .findFirst()
                .orElseThrow();
    }

    private static String error(String rule, Season season) {
        return error(rule, season, Checker.withDefaults());
    }

    private static String error(String rule, Season season, Checker checker) {
        String remedy = remedy(rule, season, checker);
        int at = remedy.indexOf(CHECK);
        return at < 0 ? "" : remedy.substring(at + CHECK.length());
    }

    /** 8.0 lb are allowed, 8.00 kg are not; the bands are those of C1701 (method facts, memory). */
    static Stream<Arguments> preWetWaters() {
        return Stream.of(
                Arguments.of(kg("8.00"), "8.00 kg written for 8.00 lb"),
                Arguments.of(lb("3.60"), "3.60 lb written for 3.60 kg"),
                Arguments.of(g("3.60"), "3.60 g written for 3.60 kg"),
                Arguments.of(kg("3600"), "3600 kg written for 3600 g"),
                Arguments.of(gallons("3.60"), "3.60 gal written for 3.60 L"),
                Arguments.of(litres("8.00"), "8.00 L written for 8.00 lb"),
                Arguments.of(kg("5.00"), ""),
                Arguments.of(kg("-8.00"), ""),
                Arguments.of(kg("0"), ""));
    }

    @ParameterizedTest
    @MethodSource("preWetWaters")
    void anotherUnitForTheSameNumberIsNamed(WaterReading water, String error) {
        assertEquals(error, error("prewet.mass", SI.preWet(0, p -> p.withWater(water))));
    }

    @Test
    void theBandOfARunIsThatOfItsPrewetting() {
        assertEquals("40.00 kg written for 40.00 lb", error("run.mass", SI.run(0, 0, r -> r.withWater(kg("40.00")))));
        assertEquals("", error("run.mass", SI.run(0, 0, r -> r.withWater(kg("8.00")))));
    }

    @Test
    void aSumOfPoursIsOneNumberInOneUnitAlone() {
        Season pounds = SI.run(0, 0, r -> r.withWater(null).withPours(List.of(Pour.of(kg("41.00"), kg("1.00")))));
        assertEquals("40.00 kg written for 40.00 lb", error("run.mass", pounds));
        Season mixed = SI.run(0, 0, r -> r.withWater(null).withPours(List.of(Pour.of(kg("40.50"), g("500")))));
        assertEquals("", error("run.mass", mixed));
    }

    /** 18.00 kg through 300 mm in 2:21 is about 6 500 mm/h; in 2.21 s it is beyond every published rate. */
    @ParameterizedTest
    @CsvSource({
        "2.21, elapsed 2.21 s written for 2:21",
        "2.217, elapsed 2.217 s written for 2:21.7",
        "12.05, elapsed 12.05 s written for 12:05",
        "1.00, elapsed 1.00 s written for 1:00",
        "2.61, ''",
        "2.5, ''",
        "0.21, ''",
        "9, ''"
    })
    void minutesAndSecondsWrittenAsADecimalAreNamed(String seconds, String error) {
        assertEquals(error, error("run.implausible", SI.run(0, 0, r -> r.withElapsed(s(seconds)))));
    }

    @Test
    void aRateThatStaysImplausibleIsNoEntryErrorOfTheTime() {
        Season season = SI.run(0, 0, r -> r.withWater(kg("18000")).withElapsed(s("2.21")));
        assertEquals("", error("run.implausible", season));
    }

    @Test
    void aTimeOfTheRunOrThePrewettingIsNamedWhereTheRatesThenAgree() {
        Checker two = Row.limits(UserLimits.none().withPreWetRatio(2.0));
        Season season = SI.preWet(0, p -> p.withElapsed(s("141.0")))
                .run(0, 0, r -> r.withWater(kg("3.60")).withElapsed(s("141.0")));
        String rule = "run.prewet-ratio";
        assertEquals(
                "elapsed 2.21 s written for 2:21", error(rule, season.run(0, 0, r -> r.withElapsed(s("2.21"))), two));
        assertEquals(
                "prewetting elapsed 2.21 s written for 2:21",
                error(rule, season.preWet(0, p -> p.withElapsed(s("2.21"))), two));
        assertEquals("", error(rule, season.run(0, 0, r -> r.withElapsed(s("9.59"))), two));
        Season threeDigits = SI.preWet(0, p -> p.withElapsed(s("60.0")))
                .run(0, 0, r -> r.withWater(kg("3.60")).withElapsed(s("130")));
        assertEquals("elapsed 130 s written for 1:30", error(rule, threeDigits, two));
        assertEquals("", error(rule, season.run(0, 0, r -> r.withElapsed(Reading.of("3.30", FieldUnit.HOUR))), two));
    }

    @Test
    void numbersOfAnySizeAreTaken() {
        for (String huge : List.of("1e999999999", "1e-999999999", "123456789012.34")) {
            assertEquals("", error("prewet.mass", SI.preWet(0, p -> p.withWater(kg(huge)))));
        }
        assertEquals("", error("run.implausible", SI.run(0, 0, r -> r.withElapsed(s("1e-999999999")))));
    }
}
