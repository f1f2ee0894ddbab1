// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.Season;
import dev.infiltration.check.Checker;
import dev.infiltration.field.Event;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.ReadBook;
import dev.infiltration.review.Review;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every note of a test, a run or a prewetting is in the text for people, beside what it belongs to, as written. */
class NotesTest {

    private static final Season SI = Season.si();

    private static List<String> notes(Season season) {
        String text = SeasonText.of(
                Review.of(ReadBook.of(season.book()), Checker.withDefaults().withToday(Season.TODAY)));
        return text.lines()
                .map(String::strip)
                .filter(line -> line.startsWith("Note, ") || line.matches("A\\d: .*"))
                .map(line -> line.startsWith("Note") ? line : line.substring(0, 2))
                .toList();
    }

    @Test
    void aNoteStandsBelowTheRateOfItsLocation() {
        Season season = SI.test(1, t -> t.withNote("seal leaked, 8.00 lb?"))
                .run(
                        1,
                        0,
                        r -> r.withEvents(
                                List.of(Event.of(Event.Kind.SEAL_REPAIRED).withNote("putty pressed down"))))
                .preWet(2, p -> p.withEvents(List.of(Event.of(null).withNote("dog in the ring"))));
        assertEquals(
                List.of(
                        "A1",
                        "A2",
                        "Note, V1, A2: seal leaked, 8.00 lb?",
                        "Note, V1, A2, run 1, seal-repaired: putty pressed down",
                        "A3",
                        "Note, V1, A3, prewetting, event: dog in the ring"),
                notes(season));
    }

    @Test
    void aNoteChangesNoFindingAndNoRate() {
        Season noted = SI.test(0, t -> t.withNote("stopped, leak, void, 2:21"));
        assertEquals(SI.findings(), noted.findings());
    }

    @Test
    void aNoteOfALocationWithoutRateIsShownToo() {
        Season season = SI.andTest(t -> LocationTest.of("V1-B", "A9", null)
                .withNotTested(LocationTest.NotTested.PARKED_VEHICLE)
                .withNote("lorry"));
        List<String> notes =
                notes(season.andTest(t -> LocationTest.of(null, null, null).withNote("no tag")));
        assertEquals(List.of("A1", "A2", "A3", "Note, V1, A9: lorry", "Note, V1, test 5: no tag"), notes);
    }
}
