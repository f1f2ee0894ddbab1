// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.exchange.TableMapping;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Problem;
import dev.infiltration.field.ReadBook;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What cannot be read is a problem with its row and column, and takes with it what it speaks of. */
class RunsCsvProblemsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            water [kg]          | heavy       | an amount in
            water [kg]          | "18,05"     | a number such as 18.05
            water [kg]          | 18.05 lb    | an amount in
            water [kg]          | 18.05 s     | an amount in
            water               | 18.05       | the unit in the header or behind the number
            water [kg]          | "1,018.05"  | an amount in
            water [kg]          | 1e16        | an amount in
            water [kg]          | 1e99999999999 | an amount in
            time [s]            | 2:60        | or such as 2:21.7
            time [m:ss]         | 141.7       | or such as 2:21.7
            end                 | finished    | one of drained, stopped, void
            events              | flood       | events such as
            start               | 9:10        | with a date in its row
            start               | 2026-06-03T25:00 | a time such as
            not tested          | lunch       | one of standing-water
            """)
    void cellThatCannotBeReadTakesItsTestWithIt(String header, String cell, String expected) {
        ReadBook read = Csv.read("visit,location,run," + header + "\nV1,A1,1," + cell + "\nV1,A1,2,\nV1,A2,1,\n");
        assertEquals(List.of("2 4 #cell=2,4"), Csv.places(read));
        String message = read.problems().get(0).message();
        assertTrue(message.contains(expected) && message.endsWith("the test is left out"), message);
        assertEquals(1, tests(read));
    }

    private static int tests(ReadBook read) {
        return read.book().orElseThrow().visits().get(0).tests().size();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            date          | 2026-02-30   | 0 | 1 | 1 | 1
            date          | 6/3/2026     | 0 | 1 | 1 | 1
            swept         | maybe        | 0 | 1 | 1 | 1
            requested locations | 2.5    | 0 | 1 | 1 | 1
            ring diameter [mm] | wide    | 1 | 0 | 1 | 1
            latitude      | north        | 1 | 1 | 0 | 1
            surface type  | gravel       | 1 | 1 | 0 | 0
            """)
    void cellThatCannotBeReadTakesWhatItSpeaksOf(
            String header, String cell, int visits, int rings, int locations, int surfaces) {
        FieldBook book = Csv.read("surface,visit,location,ring," + header + "\nHQ-A,V1,A1,R1," + cell + "\n")
                .book()
                .orElseThrow();
        assertEquals(visits, book.visits().size());
        assertEquals(rings, book.rings().size());
        var left = book.sites().get(0).surfaces();
        assertEquals(surfaces, left.size());
        assertEquals(
                locations,
                left.stream().mapToInt(each -> each.locations().size()).sum());
    }

    @Test
    void tableOfTooManyColumnsIsOneProblemAndNoLossOfMemory() {
        ReadBook read = Csv.read(",".repeat(20_000_000));
        assertEquals(
                "found more than 16384 columns; reading ends here",
                read.problems().get(0).message());
    }

    @Test
    void rowsBeforeACellThatIsTooLongAreRead() {
        String rows = "visit,location,surface,date,note\nV1,A,S,2026-06-03,x\n".concat("V1,B,S,2026-06-03,");
        ReadBook read = Csv.read(rows + "x".repeat(40_000) + "\n");
        assertEquals(
                List.of("found a cell of more than 32767 characters; reading ends here"),
                read.problems().stream().map(Problem::message).toList());
        assertEquals(1, read.book().orElseThrow().visits().get(0).tests().size());
    }

    @Test
    void rowsAboveTheLimitEndReading() {
        ReadBook read = Csv.read("visit,surface\n" + "\n".repeat(1_100_000));
        assertEquals(
                "found more than 1048576 rows; reading ends here",
                read.problems().get(0).message());
    }

    @Test
    void everyBadCellIsToldOf() {
        ReadBook read = Csv.read("visit,location,water [kg],time [s]\nV1,A1,x,y\nV1,A2,18.0,60\nV1,A3,18.0,z\n");
        assertEquals(List.of("2 3 #cell=2,3", "2 4 #cell=2,4", "4 4 #cell=4,4"), Csv.places(read));
        assertEquals(1, tests(read));
    }

    @Test
    void messageHoldsWhatWasFoundWithoutHarm() {
        ReadBook read = Csv.read("visit,location,water [kg]\nV1,A1,\u001B[31mred\n");
        assertTrue(read.problems().get(0).message().startsWith("water [kg]: found \"\\u001B[31mred\", expected "));
    }

    @Test
    void unknownHeaderIsLeftOut() {
        ReadBook read = Csv.read("visit,location,surprise,water [kg]\nV1,A1,7,18.0\n");
        assertEquals(List.of("1 3 #cell=1,3"), Csv.places(read));
        assertEquals(1, tests(read));
    }

    @ParameterizedTest
    @ValueSource(strings = {"water [s]", "water [parsec]", "location [kg]", "pour before [kg]", "water 2 [kg]"})
    void headerThatNamesNoColumnIsLeftOut(String header) {
        assertEquals(List.of("1 2 #cell=1,2"), Csv.places(Csv.read("location," + header + "\nA1,\n")));
    }

    @Test
    void repeatedHeaderIsLeftOut() {
        ReadBook read = Csv.read("location,run,water [kg],Mass (kg)\nA1,1,18.0,19.0\n");
        assertEquals(List.of("1 4 #cell=1,4"), Csv.places(read));
    }

    @Test
    void valueInTwoUnitsIsAProblemWhereTheyBothStand() {
        ReadBook read = Csv.read("location,run,water [kg],water [lb]\nA1,1,18.0,\nA2,1,18.0,39.7\n");
        assertEquals(List.of("3 4 #cell=3,4"), Csv.places(read));
    }

    @Test
    void rowThatContradictsAnEarlierOneIsToldOfAndTheFirstStays() {
        ReadBook read = Csv.read("surface,surface area [m2],location\nHQ-A,1850,A1\nHQ-A,,A2\nHQ-A,1805,A3\n");
        assertEquals(List.of("4 2 #cell=4,2"), Csv.places(read));
        assertTrue(read.problems().get(0).message().contains("1850 m²"));
    }

    @Test
    void locationsMemberWithoutALocationIsToldOf() {
        ReadBook read = Csv.read("surface,location,zone\nHQ-A,,edge\n");
        assertEquals(List.of("2 3 #cell=2,3"), Csv.places(read));
        assertTrue(read.problems().get(0).message().contains("the id of its location beside it"));
    }

    @Test
    void valuesWithoutAHeaderAreToldOfOnceAColumn() {
        ReadBook read = Csv.read("location,,run\nA1,lost,1,more\nA2,lost,1,more\n");
        assertEquals(List.of("2 2 #cell=2,2", "2 4 #cell=2,4"), Csv.places(read));
    }

    @Test
    void decimalMarkIsOneInAFile() {
        ReadBook read = Csv.read("location;run;water [kg];time [s]\nA1;1;18,05;62,3\nA2;1;1.850;60\n");
        assertEquals(List.of("3 3 #cell=3,3"), Csv.places(read));
        assertTrue(read.problems().get(0).message().contains("a number such as 18,05"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n", "a,b\n1,2\n", "{\"format\": \"infiltration-field-book/1\"}"})
    void tableWithoutAKnownColumnIsNoBook(String table) {
        ReadBook read = Csv.read(table);
        assertTrue(read.book().isEmpty());
        assertEquals("#row=1", read.problems().get(0).where());
    }

    @Test
    void quoteThatIsNeverClosedEndsTheReading() {
        ReadBook read = Csv.read("location,run,water [kg]\nA1,1,18.0\nA2,1,\"18.0\n");
        assertEquals(List.of("3 1 #row=3"), Csv.places(read));
        assertEquals(1, tests(read));
    }

    @Test
    void bytesThatAreNoCharactersAreAProblemOfTheirCell() {
        byte[] latin1 = "visit,location,note\nV1,A1,sp\u00E4t\n".getBytes(java.nio.charset.StandardCharsets.ISO_8859_1);
        ReadBook read = Csv.read(
                new String(latin1, java.nio.charset.StandardCharsets.ISO_8859_1),
                java.nio.charset.StandardCharsets.ISO_8859_1);
        assertEquals(List.of("2 3 #cell=2,3"), Csv.places(read));
    }

    @Test
    void constantOfTheMappingThatNamesNoColumnIsAProblemOfTheFirstRow() {
        TableMapping mapping =
                TableMapping.none().withConstant("colour", "blue").withConstant("swept", "maybe");
        ReadBook read = Csv.read(mapping, "location\nA1\n");
        assertEquals(List.of("1 1 #row=1", "1 1 #row=1"), Csv.places(read));
    }

    @Test
    void unreadableDateTakesTheVisitThatHasNoIdWithItAndNoOther() {
        ReadBook read = Csv.read("""
                site,surface,date,location,water [kg]
                S,X,2026-06-31,A,18.00
                S,X,,B,18.00
                S,X,2026-06-30,A,18.00
                S,X,2026-06-31,C,18.00
                """);
        assertEquals(List.of("2 3 #cell=2,3", "5 3 #cell=5,3"), Csv.places(read));
        assertEquals(
                List.of("B", "A"),
                read.book().orElseThrow().visits().stream()
                        .map(visit -> visit.tests().get(0).location())
                        .toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"site", "surface", "visit", "location", "ring", "test"})
    void rowWhoseIdCannotBeReadIsLeftOut(String id) {
        String table = id + ",run,water [kg]\nsp\u00E4t,1,18.00\nA1,1,18.02\n";
        ReadBook read = Csv.read(table, java.nio.charset.StandardCharsets.ISO_8859_1);
        assertEquals(List.of("2 1 #cell=2,1"), Csv.places(read));
        assertTrue(read.problems().get(0).message().endsWith("; the row is left out"));
        assertEquals(1, tests(read));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            HQ-A, V1, T1, A1, R1 | HQ-B, V1, T2, A1, R1 | 1 | V1 | this visit before it: HQ-A
            HQ-A, V1, T1, A1, R1 | HQ-A, V1, T1, A2, R1 | 4 | -- | this test before it: A1
            HQ-A, V1, T1, A1, R1 | HQ-A, V1, T1, A1, R2 | 5 | -- | this test before it: R1
            """)
    void testThatAnotherRowPlacesElsewhereIsLeftOut(
            String one, String other, int column, String left, String expected) {
        ReadBook read = Csv.read("surface,visit,test,location,ring,run\n" + one + ",1\n" + other + ",2\n");
        assertEquals(List.of("3 " + column + " #cell=3," + column), Csv.places(read));
        String message = read.problems().get(0).message();
        assertTrue(message.contains(expected) && message.endsWith("; the test is left out"), message);
        assertEquals(left.equals("--") ? 0 : 1, tests(read));
    }
}
