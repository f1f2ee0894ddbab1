// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import static dev.infiltration.exchange.Samples.JSON;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.ClockTime;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Pouring;
import dev.infiltration.field.Ring;
import dev.infiltration.field.Site;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.Visit;
import dev.infiltration.field.WaterReading;
import dev.infiltration.field.Weather;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.StringWriter;
import java.io.Writer;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written, and what cannot be. */
class WritingTest {

    private static Visit visit(String id) {
        return Visit.of(id, null, null);
    }

    private static String written(FieldBook book) {
        StringWriter text = new StringWriter();
        try {
            JSON.write(book, text);
        } catch (IOException never) {
            throw new AssertionError(never);
        }
        return text.toString();
    }

    private static String refusal(FieldBook book) {
        StringWriter document = new StringWriter();
        String message = assertThrows(IllegalArgumentException.class, () -> JSON.write(book, document))
                .getMessage();
        assertEquals("", document.toString(), "nothing is written");
        StringWriter lines = new StringWriter();
        assertEquals(
                message,
                assertThrows(IllegalArgumentException.class, () -> JSON.writeLines(book, lines))
                        .getMessage());
        assertEquals("", lines.toString(), "nothing is written");
        return message;
    }

    @Test
    void membersStandInTheOrderOfTheRecordsAndWhatIsAbsentIsLeftOut() {
        TestRun run = TestRun.of(
                ClockTime.parse("2026-06-03T09:12"),
                WaterReading.weighed(Reading.of("40.00", FieldUnit.POUND).withResolution(new BigDecimal("0.02"))),
                Reading.of("141.70", FieldUnit.SECOND),
                Pouring.End.DRAINED);
        FieldBook book = FieldBook.of()
                .withVisits(List.of(visit("V1")
                        .withSwept(false)
                        .withWeather(Weather.of())
                        .withTests(List.of(LocationTest.of("T1", "A1", "R1").withRuns(List.of(run))))));
        assertEquals("""
                {
                  "format": "infiltration-field-book/1",
                  "visits": [
                    {
                      "id": "V1",
                      "swept": false,
                      "weather": {},
                      "tests": [
                        {
                          "id": "T1",
                          "location": "A1",
                          "ring": "R1",
                          "runs": [
                            {
                              "start": "2026-06-03T09:12",
                              "water": {
                                "value": 40.00,
                                "unit": "[lb_av]",
                                "resolution": 0.02
                              },
                              "elapsed": {
                                "value": 141.70,
                                "unit": "s"
                              },
                              "end": "drained"
                            }
                          ]
                        }
                      ]
                    }
                  ]
                }
                """, written(book));
    }

    @Test
    void linesAreTheBookAndAVisitEach() throws IOException {
        FieldBook book =
                FieldBook.of().withRings(List.of(Ring.of("R1"))).withVisits(List.of(visit("V\n1"), visit("V2")));
        StringWriter lines = new StringWriter();
        JSON.writeLines(book, lines);
        assertEquals("""
                {"format":"infiltration-field-book/1","rings":[{"id":"R1"}]}
                {"id":"V\\n1"}
                {"id":"V2"}
                """, lines.toString());
    }

    @Test
    void emptyBookIsItsFormat() {
        assertEquals("{\n  \"format\": \"infiltration-field-book/1\"\n}\n", written(FieldBook.of()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1E+999999999", "-1E-999999999", "0E+999999999", "1E+2147483647", "40.00", "1E+3", "0E-10"})
    void digitsAreWrittenAsTheyAreAndExtremeOnesAtNoCost(String digits) {
        FieldBook book =
                FieldBook.of().withRings(List.of(Ring.of("R1").withHeight(Reading.of(digits, FieldUnit.METRE))));
        String text = assertTimeout(Duration.ofSeconds(5), () -> written(book));
        assertTrue(text.contains("\"value\": " + new BigDecimal(digits) + ","), text);
    }

    @Test
    void extraIsWrittenAsItStands() {
        Map<String, Object> extra = new LinkedHashMap<>();
        extra.put("z", Arrays.asList(1, 2L, 0.1, new BigDecimal("1E+400"), null, true, List.of(), Map.of()));
        extra.put("a", null);
        assertTrue(written(FieldBook.of().withExtra(extra))
                .replaceAll("\\s", "")
                .endsWith("\"extra\":{\"z\":[1,2,0.1,1E+400,null,true,[],{}],\"a\":null}}"));
    }

    static List<Object> whatExtraCannotHold() {
        return List.of(
                Double.NaN,
                Double.NEGATIVE_INFINITY,
                1.0f,
                'c',
                BigInteger.TEN,
                LocalDate.EPOCH,
                new int[0],
                Ring.of("R1"));
    }

    @ParameterizedTest
    @MethodSource("whatExtraCannotHold")
    void valueThatExtraCannotHoldIsNamed(Object value) {
        Map<String, Object> extra = Map.of("a/b", List.of(0, Map.of("c", value)));
        assertTrue(
                refusal(FieldBook.of().withExtra(extra)).startsWith("/extra/a~1b/1/c: expected a map, list, string, "));
        FieldBook ofVisit =
                FieldBook.of().withVisits(List.of(visit("V1"), visit("V2").withExtra(Map.of("x", List.of(1, value)))));
        assertTrue(refusal(ofVisit).startsWith("/visits/1/extra/x/1: "));
    }

    @Test
    void extraDeeperThanCanBeReadIsNamed() {
        Object deep = "x";
        for (int i = 0; i < 198; i++) {
            deep = List.of(deep);
        }
        FieldBook deepest = FieldBook.of().withExtra(Map.of("a", deep));
        assertEquals(deepest, JSON.read(written(deepest)).book().orElseThrow());
        FieldBook deeper = FieldBook.of().withExtra(Map.of("a", List.of(deep)));
        assertTrue(refusal(deeper).startsWith("/extra/a/0/0/"));
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 10_000, -999_999_999, 999_999_999})
    void yearsBeyondFourDigitsAreNamed(int year) {
        FieldBook ofDate =
                FieldBook.of().withVisits(List.of(visit("V0"), visit("V1").withDate(LocalDate.of(year, 6, 3))));
        assertTrue(refusal(ofDate).startsWith("/visits/1/date: expected a year from 0000 to 9999, got "));
        ClockTime time = new ClockTime(LocalDateTime.of(year, 6, 3, 9, 0), ClockTime.Precision.EXACT, null);
        FieldBook ofTime = FieldBook.of()
                .withVisits(List.of(visit("V1").withWeather(Weather.of().withRainFrom(time))));
        assertTrue(refusal(ofTime).startsWith("/visits/0/weather/rainFrom: expected a year from 0000 to 9999, got "));
    }

    @Test
    void offsetsOfSecondsAreNamed() {
        ClockTime time = new ClockTime(
                LocalDateTime.of(1890, 6, 3, 9, 0),
                ClockTime.Precision.EXACT,
                ZoneOffset.ofHoursMinutesSeconds(-5, -50, -36));
        FieldBook book = FieldBook.of()
                .withVisits(List.of(visit("V1").withWeather(Weather.of().withLastRainEnd(time))));
        assertTrue(
                refusal(book).startsWith("/visits/0/weather/lastRainEnd: expected an offset of whole minutes, got "));
    }

    @Test
    void halfAPairIsWrittenAsAnEscapeInBytesToo() throws IOException {
        String strange = "\uD83D\uDCA7 \uDCA7\uD83D\uD83D\uDCA7\uD83D";
        FieldBook book = FieldBook.of().withSites(List.of(Site.of("HQ").withExternalIds(Map.of(strange, strange))));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        JSON.write(book, bytes);
        String text = bytes.toString(StandardCharsets.UTF_8);
        assertTrue(text.contains("\"\uD83D\uDCA7 \\udca7\\ud83d\uD83D\uDCA7\\ud83d\""), text);
        assertEquals(book, JSON.read(text).readPart().orElseThrow());
    }

    /** A pair that lies across the blocks in which it is written stays one. */
    @Test
    void pairsSurviveWhereverTheyLie() {
        for (int length = 3_990; length < 4_010; length++) {
            FieldBook book = FieldBook.of().withRings(List.of(Ring.of("x".repeat(length) + "\uD83D\uDCA7".repeat(40))));
            assertTrue(written(book).contains("\uD83D\uDCA7\uD83D\uDCA7\""));
        }
    }

    @Test
    void targetStaysOpenAndIsFlushed() throws IOException {
        List<String> calls = new ArrayList<>();
        Writer target = new StringWriter() {
            @Override
            public void flush() {
                calls.add("flush");
            }

            @Override
            public void close() {
                calls.add("close");
            }
        };
        JSON.write(FieldBook.of(), target);
        assertEquals("flush", calls.get(calls.size() - 1));
        assertEquals(0, Collections.frequency(calls, "close"));
    }

    @Test
    void whatCannotBePutDownIsAnIoException() {
        OutputStream full = new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException("the disk is full");
            }
        };
        FieldBook large = FieldBook.of().withRings(Collections.nCopies(10_000, Ring.of("R1")));
        for (FieldBook book : List.of(FieldBook.of(), large)) {
            assertEquals(
                    "the disk is full",
                    assertThrows(IOException.class, () -> JSON.write(book, full))
                            .getMessage());
            assertEquals(
                    "the disk is full",
                    assertThrows(IOException.class, () -> JSON.writeLines(book, full))
                            .getMessage());
        }
    }

    @Test
    void whatCannotBeFetchedIsAnIoException() {
        InputStream broken = new InputStream() {
            @Override
            public int read() throws IOException {
                throw new IOException("the line is dead");
            }

            @Override
            public int read(byte[] bytes, int offset, int length) throws IOException {
                return read();
            }
        };
        assertThrows(IOException.class, () -> JSON.read(broken));
        assertThrows(IOException.class, () -> JSON.readLines(broken));
        assertThrows(IOException.class, () -> JSON.readEither(broken));
    }
}
