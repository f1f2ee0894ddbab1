// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import static dev.infiltration.Amounts.in;
import static dev.infiltration.Amounts.kg;
import static dev.infiltration.Amounts.lb;
import static dev.infiltration.Amounts.s;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import dev.infiltration.exchange.TableMapping;
import dev.infiltration.field.ClockTime;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.ReadBook;
import dev.infiltration.field.TestRun;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables as people have them. */
class RunsCsvTest {

    @Test
    void rowIsARun() {
        FieldBook book = Csv.book(Csv.read("""
                surface,visit,date,location,ring,ring diameter [in],prewet water [lb],prewet time [s],run,water [lb],time [s]
                HQ-A,V1,2026-06-03,A1,R1,11.95,8.02,21.4,1,40.02,62.3
                HQ-A,V1,2026-06-03,A1,R1,11.95,,,2,40.04,64.0
                HQ-A,V1,2026-06-03,A2,R1,11.95,7.98,6.1,1,40.06,41.9
                """));
        assertEquals(List.of("A1", "A2"), locations(book));
        LocationTest first = book.visits().get(0).tests().get(0);
        assertEquals(lb("8.02"), first.preWet().water());
        assertEquals(
                List.of(s("62.3"), s("64.0")),
                first.runs().stream().map(TestRun::elapsed).toList());
        assertEquals(in("11.95"), book.rings().get(0).insideDiameter());
        assertEquals(2, book.visits().get(0).tests().size());
    }

    private static List<String> locations(FieldBook book) {
        return book.sites().get(0).surfaces().get(0).locations().stream()
                .map(location -> location.id())
                .toList();
    }

    @Test
    void testWithoutRunsIsARowToo() {
        FieldBook book = Csv.book(Csv.read("""
                visit,date,location,not tested,prewet water [kg],prewet time [s],prewet end,run,water [kg],time [s]
                V1,2026-06-03,A1,parked vehicle,,,,,,
                V1,2026-06-03,A2,,3.60,1800,stopped,,,
                """));
        List<LocationTest> tests = book.visits().get(0).tests();
        assertEquals(LocationTest.NotTested.PARKED_VEHICLE, tests.get(0).notTested());
        assertEquals(kg("3.60"), tests.get(1).preWet().water());
        assertEquals(List.of(), tests.get(1).runs());
    }

    @Test
    void locationThatWasNeverTestedIsARowToo() {
        FieldBook book =
                Csv.book(Csv.read("surface,location,zone,latitude,longitude\nHQ-A,A1,run-on edge,44.9021,-87.2280\n"));
        assertEquals(List.of(), book.visits());
        assertEquals(
                "-87.2280",
                book.sites()
                        .get(0)
                        .surfaces()
                        .get(0)
                        .locations()
                        .get(0)
                        .position()
                        .longitude()
                        .toString());
    }

    @Test
    void columnsComeInAnyOrder() {
        ReadBook one = Csv.read("visit,date,location,run,water [kg],time [s]\nV1,2026-06-03,A1,1,18.00,60.0\n");
        ReadBook other = Csv.read("time [s],water [kg],run,location,date,visit\n60.0,18.00,1,A1,2026-06-03,V1\n");
        assertEquals(Csv.book(one), Csv.book(other));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "water [lb]",
                "Water (lb)",
                "WATER_MASS [lbs]",
                "Mass of Water [pounds]",
                "weight of water [lb]:",
                "Water-Weight  (lb)",
                "mass [[lb_av]]"
            })
    void headerIsReadAsTheTradeSpellsIt(String header) {
        assertEquals(
                lb("40.02"),
                Csv.run(Csv.read("location,run," + header + "\nA1,1,40.02\n")).water());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            141.7      | 141.7
            2:21.7     | 141.7
            2:21,7     | 141.7
            02:21.70   | 141.70
            1:02:21.7  | 3741.7
            141.7 s    | 141.7
            """)
    void timeIsReadAsAWatchShowsIt(String cell, String seconds) {
        assertEquals(
                s(seconds),
                Csv.run(Csv.read("location;run;time [s]\nA1;1;" + cell + "\n")).elapsed());
    }

    @Test
    void columnOfWatchTimesNeedsNoUnitBesides() {
        assertEquals(
                s("141.7"),
                Csv.run(Csv.read("location,run,time [m:ss]\nA1,1,2:21.7\n")).elapsed());
    }

    @Test
    void unitMayStandBehindTheNumber() {
        assertEquals(
                kg("18.05"),
                Csv.run(Csv.read("location,run,water\nA1,1,18.05 kg\n")).water());
        assertEquals(
                kg("18.05"),
                Csv.run(Csv.read("location,run,water [kg]\nA1,1,18.05kg\n")).water());
    }

    @ParameterizedTest
    @ValueSource(strings = {";", "\t"})
    void decimalCommaIsReadWhereCommasDoNotPartTheCells(String separator) {
        String table = "location;run;water [kg];time [s]\nA1;1;18,05;62,30\n".replace(";", separator);
        assertEquals(kg("18.05"), Csv.run(Csv.read(table)).water());
        assertEquals(s("62.30"), Csv.run(Csv.read(table)).elapsed());
    }

    @Test
    void decimalPointIsReadBesideSemicolons() {
        assertEquals(
                kg("18.05"),
                Csv.run(Csv.read("location;run;water [kg]\nA1;1;18.05\n")).water());
    }

    @Test
    void byteOrderMarksOfSpreadsheetsArePassedOver() {
        String table = "\uFEFFlocation,run,water [kg],note\nA1,1,18.00,spät\n";
        ReadBook utf8 = Csv.read(table);
        assertEquals("spät", Csv.tests(utf8).get(0).note());
        assertEquals(Csv.book(utf8), Csv.book(Csv.read(table, StandardCharsets.UTF_16LE)));
        assertEquals(Csv.book(utf8), Csv.book(Csv.read(table, StandardCharsets.UTF_16BE)));
    }

    @Test
    void blankRowsAreNothingAndCount() {
        ReadBook read = Csv.read("location,run,water [kg]\n\n,,\nA1,1,x\n");
        assertEquals(List.of("4 3 #cell=4,3"), Csv.places(read));
    }

    @Test
    void quotedCellMayHoldSeparatorsQuotesAndLineEnds() {
        ReadBook read = Csv.read("location,note\nA1,\"by the \"\"slip\"\", \r\nleft\"\nA2,right\n");
        assertEquals("by the \"slip\", \r\nleft", notes(read).get(0));
        assertEquals("right", notes(read).get(1));
    }

    @Test
    void everyRemarkIsKeptWithItsRun() {
        String head = "location,run,water [kg],remark\n";
        ReadBook read = Csv.read(head + "A1,1,18.00,seal wet\nA1,2,18.00,windy\nA1,3,18.00,\n");
        assertEquals(List.of(), read.problems());
        assertEquals(List.of("seal wet; run 2: windy"), notes(read));
        assertEquals(
                List.of("run 2: windy"), notes(Csv.read(head + "A1,1,18.00,\nA1,2,18.00,windy\n")), "of run 2 alone");
        assertEquals(List.of("windy"), notes(Csv.read(head + "A1,1,18.00,windy\nA1,2,18.00,windy\n")), "the same once");
    }

    private static List<String> notes(ReadBook read) {
        return Csv.tests(read).stream().map(LocationTest::note).toList();
    }

    @Test
    void timeOfDayIsOfTheRowsDate() {
        ReadBook read = Csv.read("start,date,location,run\n9:10:30,2026-06-03,A1,1\n");
        assertEquals(ClockTime.parse("2026-06-03T09:10:30"), Csv.run(read).start());
        ReadBook blank = Csv.read("start,date,location,run\n2026-06-04 00:10,2026-06-03,A1,1\n");
        assertEquals(ClockTime.parse("2026-06-04T00:10"), Csv.run(blank).start());
    }

    @Test
    void rowsWithoutRunNumbersAreRunsOfOneTestWhileTheyNameOneLocation() {
        ReadBook read = Csv.read("visit,location,water [kg]\nV1,A1,18.00\nV1,A1,18.02\nV1,A2,18.04\n");
        assertEquals(
                List.of(2, 1),
                Csv.tests(read).stream().map(test -> test.runs().size()).toList());
    }

    @Test
    void runNumberThatStartsAgainIsAnotherTest() {
        ReadBook read = Csv.read("visit,location,run,water [kg]\nV1,A1,1,18.00\nV1,A1,2,18.02\nV1,A1,1,18.04\n");
        assertEquals(
                List.of(2, 1),
                Csv.tests(read).stream().map(test -> test.runs().size()).toList());
    }

    @Test
    void visitWithoutAnIdIsItsSurfaceAndDate() {
        FieldBook book = Csv.book(Csv.read("""
                surface,date,location,water [kg]
                HQ-A,2026-06-03,A1,18.00
                HQ-A,2026-06-04,A1,18.00
                HQ-A,2026-06-03,A2,18.00
                """));
        assertEquals(2, book.visits().size());
        assertNull(book.visits().get(0).id());
        assertEquals(2, book.visits().get(0).tests().size());
    }

    @Test
    void siteSaidOnceHoldsForItsSurface() {
        FieldBook book = Csv.book(Csv.read("site,surface,location\nHQ,HQ-A,A1\n,HQ-A,A2\n"));
        assertEquals(1, book.sites().size());
        assertEquals(List.of("A1", "A2"), locations(book));
    }

    @Test
    void mappingReadsAUtilitysOwnTable() {
        TableMapping mapping = TableMapping.none()
                .withHeader("Tag", "location")
                .withHeader("H2O", "water [lb]")
                .withHeader("Secs", "time [s]")
                .withHeader("Boss", "")
                .withConstant("site", "HQ")
                .withConstant("surface type", "pavers")
                .withConstant("method", "unit-pavement")
                .withDates(TableMapping.DateOrder.MONTH_DAY_YEAR);
        FieldBook book =
                Csv.book(Csv.read(mapping, "Tag,surface,date,H2O,Secs,Boss\nA1,HQ-A,6/3/2026,40.02,62.3,MV\n"));
        assertEquals("HQ", book.sites().get(0).id());
        assertEquals(LocalDate.of(2026, 6, 3), book.visits().get(0).date());
        assertEquals("unit-pavement", book.visits().get(0).method());
        assertEquals(
                dev.infiltration.field.Surface.Type.PAVERS,
                book.sites().get(0).surfaces().get(0).type());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            YEAR_MONTH_DAY | 2026-06-03
            YEAR_MONTH_DAY | 2026/6/3
            MONTH_DAY_YEAR | 6/3/2026
            MONTH_DAY_YEAR | 06-03-2026
            DAY_MONTH_YEAR | 3.6.2026
            DAY_MONTH_YEAR | 03/06/2026
            """)
    void dateIsReadInTheOrderOfTheMapping(TableMapping.DateOrder order, String date) {
        TableMapping mapping = TableMapping.none().withDates(order);
        ReadBook read = Csv.read(mapping, "visit,date\nV1," + date + "\n");
        assertEquals(LocalDate.of(2026, 6, 3), Csv.book(read).visits().get(0).date());
    }
}
