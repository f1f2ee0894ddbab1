// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.field.Books;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** One test in its surroundings gets the findings that the whole book gives it. */
class TestEditCheckTest {

    private static final Checker CHECKER = Checker.withDefaults().withToday(LocalDate.of(2026, 11, 24));

    @Provide
    Arbitrary<FieldBook> books() {
        return Books.any();
    }

    @Provide
    Arbitrary<LocationTest> tests() {
        return Books.any(LocationTest.class);
    }

    /** What a document can hold: amounts and times that mean more often something together. */
    @Provide
    Arbitrary<FieldBook> readable() {
        return Books.readable();
    }

    @Property(tries = 300)
    void everyTestOfABookThatWasRead(@ForAll("readable") FieldBook book) {
        everyTestAsItStands(book);
    }

    @Property(tries = 300)
    void everyTestAsItStands(@ForAll("books") FieldBook book) {
        CheckedBook checked = CHECKER.check(book);
        TestEditCheck typing = checked.typing();
        for (VisitAt visit : checked.visits()) {
            for (TestAt test : visit.tests()) {
                assertEquals(within(checked, test), typing.findings(test, test.test()));
            }
        }
    }

    @Property(tries = 300)
    void everyTestWrittenOtherwise(@ForAll("books") FieldBook book, @ForAll("tests") LocationTest typed) {
        CheckedBook checked = CHECKER.check(book);
        TestEditCheck typing = checked.typing();
        for (VisitAt visit : checked.visits()) {
            for (TestAt test : visit.tests()) {
                CheckedBook whole = CHECKER.check(with(book, test, typed));
                TestAt written = whole.visits().get(visit.index()).tests().get(test.index());
                assertEquals(within(whole, written), typing.findings(test, typed));
            }
        }
    }

    private static List<Finding> within(CheckedBook checked, TestAt test) {
        return checked.findings().stream()
                .filter(finding -> finding.where().isWithin(test.place()))
                .toList();
    }

    private static FieldBook with(FieldBook book, TestAt test, LocationTest typed) {
        List<Visit> visits = new ArrayList<>(book.visits());
        Visit visit = visits.get(test.visit().index());
        List<LocationTest> tests = new ArrayList<>(visit.tests());
        tests.set(test.index(), typed);
        visits.set(test.visit().index(), visit.withTests(tests));
        return book.withVisits(visits);
    }
}
