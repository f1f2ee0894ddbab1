// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import static dev.infiltration.exchange.Samples.book;
import static dev.infiltration.exchange.Samples.message;
import static dev.infiltration.exchange.Samples.places;
import static dev.infiltration.exchange.Samples.read;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.LocationTest;
import dev.infiltration.field.ReadBook;
import dev.infiltration.field.WaterReading;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the field book says of amounts. */
class AmountReaderTest {

    private static ReadBook test(String member) {
        return read("\"visits\":[{\"tests\":[{" + member + "}]}]");
    }

    private static LocationTest only(ReadBook read) {
        assertEquals(List.of(), read.problems());
        return book(read).visits().get(0).tests().get(0);
    }

    private static Reading<?> clearSpacing(String amount) {
        return only(test("\"clearSpacing\":" + amount)).clearSpacing();
    }

    private static Reading<?> elapsed(String amount) {
        return only(test("\"runs\":[{\"elapsed\":" + amount + "}]"))
                .runs()
                .get(0)
                .elapsed();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "40.00",
                "40",
                "4e1",
                "4E+1",
                "-0.0",
                "0",
                "0.0",
                "1e15",
                "-1E15",
                "1e-15",
                "1000000000000000.000",
                "0.001000000000000000000000000000000000",
                "9999999999.999999999999999999999999",
                "0e34",
                "0.0000000000000000000000000000000000"
            })
    void digitsAreKeptAsWritten(String digits) {
        Reading<?> expected = Reading.of(digits, FieldUnit.METRE);
        assertEquals(expected, clearSpacing("{\"value\":" + digits + ",\"unit\":\"m\"}"));
        assertEquals(expected, clearSpacing("{\"unit\":\"m\",\"value\":\"" + digits + "\"}"));
    }

    @Test
    void resolutionIsInTheSameUnit() {
        Reading<?> stated = Reading.of("8.02", FieldUnit.FOOT).withResolution(new BigDecimal("0.020"));
        assertEquals(stated, clearSpacing("{\"resolution\":0.020,\"value\":8.02,\"unit\":\"ft\"}"));
        assertEquals(stated, clearSpacing("{\"value\":8.02,\"unit\":\"ft\",\"resolution\":\"0.020\"}"));
        assertEquals(
                Reading.of("8.02", FieldUnit.FOOT),
                clearSpacing("{\"value\":8.02,\"unit\":\"ft\",\"resolution\":null}"));
    }

    /** The exponent of a zero has no meaning and costs no time: at most 34 places are kept. */
    @ParameterizedTest
    @CsvSource({"0e35, 0E+34", "0e999999999, 0E+34", "0E-99, 0E-34", "-0e-999999999, 0E-34", "0e34, 0E+34", "0.00, 0.00"
    })
    void zeroOfAnyExponentIsZero(String written, String held) {
        ReadBook read = assertTimeoutPreemptively(
                Duration.ofSeconds(5), () -> test("\"clearSpacing\":{\"value\":" + written + ",\"unit\":\"m\"}"));
        assertEquals(List.of(), places(read));
        assertEquals(
                new java.math.BigDecimal(held),
                read.readPart()
                        .orElseThrow()
                        .visits()
                        .get(0)
                        .tests()
                        .get(0)
                        .clearSpacing()
                        .value());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"NaN\"",
                "\"Infinity\"",
                "\"1,5\"",
                "\"+5\"",
                "\".5\"",
                "\"5.\"",
                "\"01\"",
                "\" 5\"",
                "\"5 \"",
                "\"\"",
                "\"0x1p3\"",
                "\"1e\"",
                "\"5f\"",
                "\"\\u0661\\u0662\"",
                "\"1_000\"",
                "\"--1\"",
                "true",
                "[5]",
                "{\"value\":5}",
                "1.000000000000000000000000000000000000",
                "12345678901234567890123456789012345",
                "1.0000000000000001e15",
                "1e16",
                "-1e16",
                "9.9e-16",
                "1e999999999",
                "-1e999999999",
                "1e-999999999",
                "1e99999999999",
                "0e-99999999999"
            })
    void whatIsNoNumberOfAnAmountIsAProblemAtTheValue(String value) {
        ReadBook read = assertTimeoutPreemptively(
                Duration.ofSeconds(5), () -> test("\"clearSpacing\":{\"value\":" + value + ",\"unit\":\"m\"}"));
        assertEquals(List.of("/visits/0/tests/0/clearSpacing/value"), places(read));
        assertTrue(message(read).endsWith("it is left out"), message(read));
        ReadBook resolution = test("\"clearSpacing\":{\"value\":1,\"unit\":\"m\",\"resolution\":" + value + "}");
        assertEquals(List.of("/visits/0/tests/0/clearSpacing/resolution"), places(resolution));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # where  | amount
            /unit    | {"value":1,"unit":"kg"}
            /unit    | {"value":1,"unit":"M"}
            /unit    | {"value":1,"unit":""}
            /unit    | {"value":1,"unit":7}
            /unit    | {"value":1,"unit":"min:s"}
            /unit    | {"value":1,"unit":"mmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmmm"}
            ''       | {"value":1}
            ''       | {"unit":"m"}
            ''       | {"value":null,"unit":"m"}
            ''       | {"value":1,"unit":null}
            ''       | {}
            ''       | 5
            ''       | "5 m"
            ''       | [5,"m"]
            """)
    void amountIsAtFaultWhereItIs(String where, String amount) {
        ReadBook read = test("\"clearSpacing\":" + amount);
        assertEquals(List.of("/visits/0/tests/0/clearSpacing" + where), places(read));
        assertNull(book(read).visits().get(0).tests().get(0).clearSpacing());
    }

    @Test
    void missingMemberAndFaultyMemberAreBothTold() {
        ReadBook read = test("\"clearSpacing\":{\"value\":\"much\"}");
        assertEquals(List.of("/visits/0/tests/0/clearSpacing", "/visits/0/tests/0/clearSpacing/value"), places(read));
    }

    @Test
    void unitExpectedIsNamed() {
        String message = message(test("\"clearSpacing\":{\"value\":1,\"unit\":\"lb\"}"));
        assertTrue(message.startsWith("found \"lb\", expected a unit of length (m, cm, mm, [ft_i], [in_i])"), message);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # seconds   | as a stopwatch shows it
            141.7       | "2:21.7","unit":"min:s"
            141         | "2:21","unit":"min:s"
            5.00        | "0:05.00","unit":"min:s"
            5           | "0:5","unit":"min:s"
            3601        | "60:01","unit":"min:s"
            3741.70     | "1:02:21.70","unit":"h:min:s"
            0.0         | "0:00:00.0","unit":"h:min:s"
            """)
    void elapsedMayBeWhatAStopwatchShows(String seconds, String shown) {
        assertEquals(Reading.of(seconds, FieldUnit.SECOND), elapsed("{\"value\":" + shown + "}"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.1", "\"0.1\"", "\"0:00.1\""})
    void resolutionOfAStopwatchIsInSeconds(String resolution) {
        assertEquals(
                Reading.of("141.7", FieldUnit.SECOND).withResolution(new BigDecimal("0.1")),
                elapsed("{\"value\":\"2:21.7\",\"unit\":\"min:s\",\"resolution\":" + resolution + "}"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"2:60\",\"unit\":\"min:s\"",
                "\"-2:21\",\"unit\":\"min:s\"",
                "\"2:-1\",\"unit\":\"min:s\"",
                "\"2.5:21\",\"unit\":\"min:s\"",
                "\"2:21,7\",\"unit\":\"min:s\"",
                "\"2:21.\",\"unit\":\"min:s\"",
                "\"2:021\",\"unit\":\"min:s\"",
                "\":21\",\"unit\":\"min:s\"",
                "\"2:\",\"unit\":\"min:s\"",
                "\"141.7\",\"unit\":\"min:s\"",
                "2.21,\"unit\":\"min:s\"",
                "\"1:02:21\",\"unit\":\"min:s\"",
                "\"1:60:00\",\"unit\":\"h:min:s\"",
                "\"1:00:60\",\"unit\":\"h:min:s\"",
                "\"2:21.7\",\"unit\":\"h:min:s\"",
                "\"2:21.7\",\"unit\":\"s\"",
                "\"\\u0662:21\",\"unit\":\"min:s\"",
                "\"999999999999999:00\",\"unit\":\"min:s\"",
                "\"9999999999999999999:00\",\"unit\":\"min:s\"",
                "\"0:00.00000000000000000000000000000000001\",\"unit\":\"min:s\""
            })
    void whatNoStopwatchShowsIsAProblemAtTheValue(String shown) {
        ReadBook read = test("\"runs\":[{\"elapsed\":{\"value\":" + shown + "}}]");
        assertEquals(List.of("/visits/0/tests/0/runs/0/elapsed/value"), places(read));
    }

    @Test
    void displayUnderAnUnknownUnitIsOneProblem() {
        ReadBook read = test("\"preWet\":{\"elapsed\":{\"value\":\"2:21.7\",\"unit\":\"minutes\"}}");
        assertEquals(List.of("/visits/0/tests/0/preWet/elapsed/unit"), places(read));
    }

    @Test
    void onlyElapsedMayBeWhatAStopwatchShows() {
        ReadBook read = test("\"runs\":[{\"delay\":{\"value\":\"0:21.7\",\"unit\":\"min:s\"}}]");
        assertEquals(
                List.of("/visits/0/tests/0/runs/0/delay/value", "/visits/0/tests/0/runs/0/delay/unit"), places(read));
    }

    @ParameterizedTest
    @ValueSource(strings = {"m", "cm", "mm", "[ft_i]", "[in_i]", "in", "inch", "inches", "ft", "foot", "feet"})
    void unitsAreReadByCodeAndBySpelling(String unit) {
        assertEquals(
                FieldUnit.parse(unit).orElseThrow(),
                clearSpacing("{\"value\":1,\"unit\":\"" + unit + "\"}").unit());
    }

    @ParameterizedTest
    @CsvSource({"kg,true", "lb,true", "L,true", "mL,true", "gal,true", "mm,false", "s,false"})
    void waterIsAMassOrAVolume(String unit, boolean isRead) {
        ReadBook read = test("\"runs\":[{\"water\":{\"value\":18.00,\"unit\":\"" + unit + "\"}}]");
        assertEquals(isRead ? List.of() : List.of("/visits/0/tests/0/runs/0/water/unit"), places(read));
        if (isRead) {
            WaterReading expected =
                    new WaterReading(reading("18.00", FieldUnit.parse(unit).orElseThrow()));
            assertEquals(expected, only(read).runs().get(0).water());
        }
    }

    private static <Q extends javax.measure.Quantity<Q>> Reading<Q> reading(String digits, FieldUnit<Q> unit) {
        return Reading.of(digits, unit);
    }

    @Test
    void resolutionOfAnInstrumentIsOfAnyKind() {
        for (FieldUnit<?> unit : FieldUnit.all()) {
            ReadBook read = read("\"instruments\":[{\"resolution\":{\"value\":0.1,\"unit\":\"" + unit.code() + "\"}}]");
            assertEquals(reading("0.1", unit), book(read).instruments().get(0).resolution());
        }
        assertEquals(
                List.of("/instruments/0/resolution/unit"),
                places(read("\"instruments\":[{\"resolution\":{\"value\":1,\"unit\":\"furlong\"}}]")));
    }
}
