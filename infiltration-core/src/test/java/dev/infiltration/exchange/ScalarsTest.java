// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import static dev.infiltration.exchange.Samples.book;
import static dev.infiltration.exchange.Samples.message;
import static dev.infiltration.exchange.Samples.places;
import static dev.infiltration.exchange.Samples.read;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.ClockTime;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.ReadBook;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the field book says of values that have no parts. */
class ScalarsTest {

    private static ReadBook test(String member) {
        return read("\"visits\":[{\"tests\":[{" + member + "}]}]");
    }

    private static LocationTest only(ReadBook read) {
        assertEquals(List.of(), read.problems());
        return book(read).visits().get(0).tests().get(0);
    }

    @ParameterizedTest
    @CsvSource({
        "3,3",
        "3.0,3",
        "30e-1,3",
        "1e2,100",
        "-2147483648,-2147483648",
        "2147483647.000,2147483647",
        "0e999999999,0"
    })
    void wholeNumbersAreReadHoweverWritten(String written, int expected) {
        ReadBook read = read("\"visits\":[{\"requestedLocations\":" + written + "}]");
        assertEquals(expected, book(read).visits().get(0).requestedLocations());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"3.5", "2147483648", "1e999999999", "1e-999999999", "1e99999999999", "\"3\"", "true", "[3]"})
    void whatIsNoWholeNumberIsAProblem(String written) {
        ReadBook read = assertTimeoutPreemptively(
                Duration.ofSeconds(5), () -> read("\"visits\":[{\"requestedLocations\":" + written + "}]"));
        assertEquals(List.of("/visits/0/requestedLocations"), places(read));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0000-01-01", "9999-12-31", "2024-02-29"})
    void datesAreReadStrictly(String date) {
        ReadBook read = read("\"visits\":[{\"date\":\"" + date + "\"}]");
        assertEquals(java.time.LocalDate.parse(date), book(read).visits().get(0).date());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"2026-06-31\"",
                "\"2023-02-29\"",
                "\"2026-6-3\"",
                "\"03.06.2026\"",
                "\"+12026-06-03\"",
                "\"-0001-06-03\"",
                "\"2026-06-03T09:00\"",
                "\" 2026-06-03\"",
                "\"\\u0662026-06-03\"",
                "\"\"",
                "20260603"
            })
    void whatIsNoDateIsAProblem(String date) {
        assertEquals(List.of("/visits/0/date"), places(read("\"visits\":[{\"date\":" + date + "}]")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2026-06-03T09:10",
                "2026-06-03T09:10:00",
                "2026-06-03T09:10:00.125",
                "2026-06-03T09:10+05:45",
                "2026-06-03T09:10:30Z",
                "2026-06-03T09:10:30.5-05:00"
            })
    void clockTimesAreReadAsWritten(String time) {
        ReadBook read = test("\"runs\":[{\"start\":\"" + time + "\"}]");
        assertEquals(ClockTime.parse(time), only(read).runs().get(0).start());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"09:10\"",
                "\"2026-06-03 09:10\"",
                "\"2026-06-03T24:00\"",
                "\"2026-06-03T9:10\"",
                "\"2026-06-31T09:10\"",
                "\"2026-06-03T09:10+25:00\"",
                "\"2026-06-03T09:10:60\"",
                "\"2026-06-03T09:10:00,5\"",
                "910"
            })
    void whatIsNoClockTimeIsAProblem(String time) {
        assertEquals(List.of("/visits/0/tests/0/runs/0/start"), places(test("\"runs\":[{\"start\":" + time + "}]")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"America/Chicago", "UTC", "+05:45", "Z"})
    void timeZonesAreReadById(String zone) {
        assertEquals(
                ZoneId.of(zone),
                book(read("\"sites\":[{\"timeZone\":\"" + zone + "\"}]"))
                        .sites()
                        .get(0)
                        .timeZone());
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"america/chicago\"", "\"Harrow/Quay\"", "\"\"", "5", "\"+25:00\""})
    void whatIsNoTimeZoneIsAProblem(String zone) {
        assertEquals(List.of("/sites/0/timeZone"), places(read("\"sites\":[{\"timeZone\":" + zone + "}]")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"44.9021", "-87.2280", "0", "1e-20", "4.49021E1", "44.90210000000000000000000000000000000000001"
            })
    void degreesAreAnyNumber(String degrees) {
        ReadBook read = read("\"sites\":[{\"position\":{\"latitude\":" + degrees + "}}]");
        assertEquals(
                new BigDecimal(degrees), book(read).sites().get(0).position().latitude());
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"44.9021\"", "1e99999999999", "[]"})
    void whatIsNoNumberIsAProblem(String degrees) {
        assertEquals(
                List.of("/sites/0/position/latitude"),
                places(read("\"sites\":[{\"position\":{\"latitude\":" + degrees + "}}]")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"true\"", "1", "[]"})
    void whatIsNeitherTrueNorFalseIsAProblem(String value) {
        assertEquals(List.of("/visits/0/swept"), places(read("\"visits\":[{\"swept\":" + value + "}]")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"Drained\"", "\"DRAINED\"", "\"\"", "\"drained \"", "0"})
    void wordsAreReadExactly(String word) {
        ReadBook read = test("\"runs\":[{\"end\":" + word + "}]");
        assertEquals(List.of("/visits/0/tests/0/runs/0/end"), places(read));
        assertTrue(message(read).contains("expected one of drained, stopped, void; "), message(read));
    }
}
