// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.ClockTime;
import dev.infiltration.field.CrewMember;
import dev.infiltration.field.Event;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Photo;
import dev.infiltration.field.PreWet;
import dev.infiltration.field.ReadBook;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.Visit;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Several values in a cell come back as they were, whatever is in them. */
class ListCellTest {

    private static final ClockTime NINE = ClockTime.parse("2026-06-03T09:13:00");

    /** Texts of what a cell is taken apart at, and of what starts a formula. */
    @Provide
    Arbitrary<String> texts() {
        return Arbitraries.strings()
                .withChars(";,\"\\'()[] \t\n\r=+-@\u00A0a\u00E91:")
                .ofMinLength(1)
                .ofMaxLength(12);
    }

    @Property(tries = 400, seed = "20260603")
    void textsInCellsReadBackEqual(@ForAll("texts") String one, @ForAll("texts") String other) throws IOException {
        assertReadsBack(RunsCsv.withDefaults(), book(one, other));
        assertReadsBack(RunsCsv.withDefaults().withDecimalComma(), book(other, one));
    }

    private static FieldBook book(String one, String other) {
        List<Event> events = List.of(event(one).withAt(NINE), event(other));
        TestRun run = TestRun.of(null, null, null, null).withEvents(events);
        LocationTest test = LocationTest.of("T", null, null)
                .withPhotos(List.of(Photo.of(one), Photo.of(other)))
                .withPreWet(PreWet.of(null, null, null, null).withEvents(events))
                .withRuns(List.of(run));
        List<CrewMember> crew =
                List.of(CrewMember.of(one, other), CrewMember.of(null, one), CrewMember.of(other, null));
        Visit visit = Visit.of("V", null, null)
                .withCrew(crew)
                .withInstruments(List.of(other, one))
                .withTests(List.of(test));
        return FieldBook.of().withVisits(List.of(visit));
    }

    private static Event event(String note) {
        return Event.of(Event.Kind.SEAL_REPAIRED).withNote(note);
    }

    private static void assertReadsBack(RunsCsv csv, FieldBook book) throws IOException {
        String table = new String(RunsCsvRoundTripTest.written(csv, book), StandardCharsets.UTF_8);
        ReadBook read = Csv.read(table);
        assertEquals(List.of(), read.problems(), table);
        assertEquals(Optional.of(book.visits()), read.book().map(FieldBook::visits), table);
        assertEquals(List.of(), csv.notHeld(book), table);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            putty pressed        | seal-repaired (putty pressed)
            putty; pressed       | "seal-repaired (putty; pressed)"
            the "slip"           | seal-repaired (the "slip")
            "a"; (b)             | "seal-repaired (""a""; (b))"
            """)
    void valueWithASemicolonStandsInQuotes(String note, String cell) {
        assertEquals(cell, Cells.of(Paths.type(TestRun.class, "events")).text(List.of(event(note))));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            a.jpg; b.jpg                | [a.jpg, b.jpg]
            "a;b.jpg";c.jpg;            | [a;b.jpg, c.jpg]
            "a ""1"".jpg" ; " c.jpg"    | [a "1".jpg,  c.jpg]
            "a" b; "c                   | ["a" b, "c]
            C:\\photos\\1.jpg; ; x      | [C:\\photos\\1.jpg, x]
            """)
    void photosAreReadAsPeopleWriteThem(String cell, String photos) {
        String table = "location;photos\nA1;\"" + cell.replace("\"", "\"\"") + "\"\n";
        assertEquals(photos, Csv.tests(Csv.read(table)).get(0).photos().toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"M(V)", "\"MV\"", " MV", "(MV)", ""})
    void initialsThatCouldBeTakenForMoreStandInQuotes(String initials) {
        CrewMember member = CrewMember.of(initials, "technician");
        String text = Entries.text(member);
        assertTrue(text.startsWith("\"") && text.endsWith("\" (technician)"), text);
        assertEquals(member, Entries.crew(text, null));
    }

    @Test
    void longCellsAreReadInTimeThatGoesWithTheirLength() {
        String blanks = "rain" + " ".repeat(200_000) + "(";
        String quotes = "\"".repeat(200_001) + "a";
        assertTimeoutPreemptively(Duration.ofSeconds(5), () -> {
            Csv.read("location,run,events,photos\nA1,1," + blanks + ",x\n");
            Csv.read("location,run,events,photos\nA1,1,,\"" + quotes.replace("\"", "\"\"") + ";b;"
                    + quotes.replace("\"", "\"\"") + "\"\n");
        });
    }
}
