// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static dev.infiltration.Amounts.celsius;
import static dev.infiltration.Amounts.fahrenheit;
import static dev.infiltration.check.Row.absent;
import static dev.infiltration.check.Row.bound;
import static dev.infiltration.check.Row.broken;

import dev.infiltration.Season;
import dev.infiltration.field.LocationTest;
import java.util.stream.Stream;

/** Rows of the rules on water temperature, which count for a checker that rates by it alone. */
final class WaterRows {

    private static final Season SI = Season.si();
    private static final Season INCH_POUND = Season.inchPound();
    private static final Checker BY_WATER = Checker.withDefaults().withRecordedWater();
    private static final String TEST = " /visits/0/tests/0";

    private WaterRows() {}

    static Stream<Row> all() {
        return Stream.concat(unrecorded(), range());
    }

    private static Season without() {
        return SI.test(0, t -> t.withWaterTemperature(null));
    }

    private static Stream<Row> unrecorded() {
        String rule = "rate.water-temperature-unrecorded";
        return Stream.of(
                broken(rule, "none", without(), "OMISSION LOWERS" + TEST).by(BY_WATER),
                bound(rule, "recorded", SI).by(BY_WATER),
                bound(rule, "recorded in °F", INCH_POUND).by(BY_WATER),
                absent(rule, "none, the published constant", without()),
                absent(
                                rule,
                                "no test made",
                                SI.andTest(t -> LocationTest.of("V1-B", "A1", "R1")
                                        .withNotTested(LocationTest.NotTested.PARKED_VEHICLE)),
                                "test.not-tested CAUTION NONE /visits/0/tests/3")
                        .by(BY_WATER));
    }

    private static Stream<Row> range() {
        String rule = "rate.water-temperature-range";
        return Stream.of(
                broken(
                                rule,
                                "-0.1 °C",
                                SI.test(0, t -> t.withWaterTemperature(celsius("-0.1"))),
                                "CAUTION LOWERS" + TEST)
                        .by(BY_WATER),
                broken(rule, "66 °C", SI.test(0, t -> t.withWaterTemperature(celsius("66"))), "CAUTION LOWERS" + TEST)
                        .by(BY_WATER),
                broken(
                                rule,
                                "140.1 °F",
                                INCH_POUND.test(0, t -> t.withWaterTemperature(fahrenheit("140.1"))),
                                "CAUTION LOWERS" + TEST)
                        .by(BY_WATER),
                broken(
                                rule,
                                "1e999 °C",
                                SI.test(0, t -> t.withWaterTemperature(celsius("1e999"))),
                                "CAUTION LOWERS" + TEST)
                        .by(BY_WATER),
                bound(rule, "0 °C", SI.test(0, t -> t.withWaterTemperature(celsius("0"))))
                        .by(BY_WATER),
                bound(rule, "140 °F", INCH_POUND.test(0, t -> t.withWaterTemperature(fahrenheit("140"))))
                        .by(BY_WATER),
                absent(rule, "66 °C, the published constant", SI.test(0, t -> t.withWaterTemperature(celsius("66")))));
    }
}
