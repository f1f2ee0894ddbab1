// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import static dev.infiltration.Amounts.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.exchange.TableMapping;
import dev.infiltration.field.ClockTime;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.ReadBook;
import dev.infiltration.field.Visit;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the mapping says of every row counts as if it stood in a cell of the row. */
class MappingConstantsTest {

    private static final TableMapping ALL = TableMapping.none()
            .withConstant("site", "HQ")
            .withConstant("surface", "HQ-A")
            .withConstant("surface type", "pavers")
            .withConstant("ring", "R1")
            .withConstant("ring diameter [mm]", "300")
            .withConstant("visit", "V1")
            .withConstant("date", "2026-06-03");

    private static final String CELLS = "site,surface,surface type,ring,ring diameter [mm],visit,date,";
    private static final String ROW = "HQ,HQ-A,pavers,R1,300,V1,2026-06-03,";

    private static Visit visit(FieldBook book) {
        return book.visits().get(0);
    }

    @Test
    void constantsAreAsGoodAsColumns() {
        String rows = "A1,1,9:10:00,18.00,60.0\nA1,2,9:14:00,18.02,61.0\nA2,1,9:30:00,18.01,40.0\n";
        String header = "location,run,start,water [kg],time [s]\n";
        FieldBook constant = Csv.book(Csv.read(ALL, header + rows));
        FieldBook column = Csv.book(Csv.read(CELLS + header + rows.replaceAll("(?m)^(?=A)", ROW)));
        assertEquals(column, constant);
        assertEquals("HQ-A", visit(constant).surface());
        assertEquals(mm("300"), constant.rings().get(0).insideDiameter());
        assertEquals(List.of("R1", "R1"), rings(constant));
    }

    private static List<String> rings(FieldBook book) {
        return visit(book).tests().stream().map(LocationTest::ring).toList();
    }

    @Test
    void constantLocationAndTestHoldForEveryRun() {
        TableMapping one = TableMapping.none().withConstant("location", "A1").withConstant("test", "T1");
        List<LocationTest> tests = Csv.tests(Csv.read(one, "surface,run,water [kg]\nS,1,18.00\nS,2,18.02\n"));
        assertEquals(List.of("A1 T1 2"), described(tests));
    }

    private static List<String> described(List<LocationTest> tests) {
        return tests.stream()
                .map(test ->
                        test.location() + " " + test.id() + " " + test.runs().size())
                .toList();
    }

    @Test
    void cellsOfARowGoBeforeConstants() {
        FieldBook book = Csv.book(Csv.read(ALL, "visit,date,ring,location,run\nV2,2026-06-04,R2,A1,1\n,,,A1,1\n"));
        assertEquals(
                List.of("V2 2026-06-04", "V1 2026-06-03"),
                book.visits().stream()
                        .map(visit -> visit.id() + " " + visit.date())
                        .toList());
        assertEquals("R2", visit(book).tests().get(0).ring());
    }

    @Test
    void timeOfDayIsOfTheConstantDate() {
        LocationTest test =
                Csv.tests(Csv.read(ALL, "location,run,start\nA1,1,9:10:00\n")).get(0);
        assertEquals(ClockTime.parse("2026-06-03T09:10:00"), test.runs().get(0).start());
    }

    @Test
    void constantsMakeNoRecordOfARowThatSpeaksOfNone() {
        FieldBook places = Csv.book(Csv.read(ALL, "location,zone\nA1,edge\n"));
        assertEquals(List.of(), places.visits());
        assertEquals(List.of(), places.rings());
        FieldBook visit = Csv.book(Csv.read(ALL, "swept\nyes\n"));
        assertEquals(List.of(), visit(visit).tests());
        assertEquals(LocalDate.of(2026, 6, 3), visit(visit).date());
        assertEquals("HQ-A", visit(visit).surface());
    }

    @Test
    void siteOfAnEarlierRowGoesBeforeTheConstant() {
        FieldBook book = Csv.book(Csv.read(ALL, "site,surface,location\nOther,X,A1\n,X,A2\n,,A3\n"));
        assertEquals(
                List.of("Other/X/A1", "Other/X/A2", "HQ/HQ-A/A3"),
                book.sites().stream()
                        .flatMap(site -> site.surfaces().stream()
                                .flatMap(surface -> surface.locations().stream()
                                        .map(location -> site.id() + "/" + surface.id() + "/" + location.id())))
                        .toList());
    }

    @Test
    void constantThatNoRecordIsForIsToldOfOnce() {
        TableMapping diameter = TableMapping.none().withConstant("ring diameter [mm]", "300");
        ReadBook read = Csv.read(diameter, "location,run\nA1,1\nA2,1\n");
        assertEquals(List.of("1 1 #row=1"), Csv.places(read));
        assertTrue(read.problems().get(0).message().endsWith("expected the id of its ring too; it is left out"));
    }

    @Test
    void withoutConstantsNothingIsAssumed() {
        Visit visit = visit(Csv.book(Csv.read("location,run\nA1,1\n")));
        assertNull(visit.surface());
        assertEquals(Stream.of((String) null).toList(), rings(FieldBook.of().withVisits(List.of(visit))));
    }
}
