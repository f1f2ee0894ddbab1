// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.Season;
import dev.infiltration.field.IndexMap;
import dev.infiltration.field.Problem;
import dev.infiltration.field.ReadBook;
import dev.infiltration.field.UnreadableValue;
import dev.infiltration.rule.Effect;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnreadableValuesTest {

    private static final String RUN = "/visits/0/tests/0/runs/0";

    private static ReadBook read(String lost) {
        return new ReadBook(
                Season.si().book(),
                List.of(new Problem(1, 1, lost, "found x")),
                IndexMap.none(),
                List.of(new UnreadableValue(lost, lost, "\"x\"")));
    }

    private static CheckedBook check(String lost) {
        return Checker.withDefaults().withToday(Season.TODAY).check(read(lost));
    }

    @ParameterizedTest
    @CsvSource({
        "/visits/0/tests/0/runs/0/water, NO_RATE, true",
        "/visits/0/tests/0/runs/0/pours/1, NO_RATE, true",
        "/visits/0/tests/0/runs/0/pours/1/vessel, OMISSION, false",
        "/visits/0/tests/0/runs/0/events/0/kind, NO_RATE, true",
        "/visits/0/tests/0/runs/0/events/0/note, OMISSION, false",
        "/visits/0/tests/0/runs/0/head/state, NO_RATE, true",
        "/visits/0/tests/0/runs/0/head/lowest, OMISSION, false",
        "/visits/0/tests/0/runs/0/start, OMISSION, false",
        "/visits/0/tests/0/runs/0, NO_RATE, true",
        "/visits/0/tests/0/location, NO_RATE, true",
        "/visits/0/tests/0/preWet/water, OMISSION, false",
        "/visits/0/tests/0/note, OMISSION, false",
        "/visits/0/date, NO_RATE, true",
        "/visits/0/method, OMISSION, false",
        "/rings/0/insideDiameters/1, NO_RATE, true",
        "/rings/0/height, OMISSION, false",
        "/maintenance/0/start, OMISSION, false",
        "/visits/0/tests/1/ring, NO_RATE, false",
    })
    void aValueThatIsPartOfTheRateWithholdsItsRun(String lost, Effect effect, boolean withheld) {
        CheckedBook book = check(lost);
        Finding finding = book.findings().stream()
                .filter(each -> each.rule().equals("data.unreadable"))
                .findFirst()
                .orElseThrow();
        assertEquals(lost + " " + effect, finding.where() + " " + finding.effect());
        PouringAt run = book.visits().get(0).tests().get(0).runs().get(0);
        assertEquals(withheld, run.outcome().reasons().contains("data.unreadable"));
    }

    @Test
    void aRecordGivesTheValuesInsideIt() {
        CheckedBook book = check(RUN + "/start");
        TestAt test = book.visits().get(0).tests().get(0);
        assertEquals(book.unreadable(), test.runs().get(0).unreadable());
        assertEquals(book.unreadable(), test.unreadable());
        assertEquals(List.of(), book.visits().get(0).tests().get(1).unreadable());
        assertTrue(book.unreadable().get(0).decidesWhichRunsAreUsed());
        assertFalse(book.unreadable().get(0).isPartOfRate());
    }

    @Test
    void ofARunThatIsLostOnlyTheLossIsFound() {
        CheckedBook book = check(RUN);
        assertEquals(
                List.of("data.unreadable"),
                book.visits().get(0).tests().get(0).runs().get(0).outcome().reasons());
    }

    @Test
    void aPlainBookOfAnIncompleteDocumentIsRefusedWithItsProblems() {
        ReadBook read = read(RUN);
        String message =
                assertThrows(IllegalStateException.class, read::complete).getMessage();
        assertTrue(message.contains(RUN + ": found x"), message);
        assertTrue(read.readPart().isPresent());
    }
}
