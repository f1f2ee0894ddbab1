// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Place;
import dev.infiltration.field.UnreadableValue;
import java.util.Comparator;
import java.util.List;

/**
 * A field book that was checked: its findings, and its visits, tests and runs in their surroundings.
 *
 * <p>Nothing of it changes; the records are the book's own.
 */
public final class CheckedBook {

    private final Checker checker;
    private final BookIndex index;
    private final List<Finding> findings;

    CheckedBook(Checker checker, BookIndex index, List<Finding> findings) {
        this.checker = checker;
        this.index = index;
        this.findings = findings;
    }

    /** {@return the book} */
    public FieldBook book() {
        return index.book();
    }

    /** {@return what was found, sorted by place; of a book that was read from a document, by its place in the document} */
    public List<Finding> findings() {
        return findings;
    }

    /** {@return the policy it was checked by} */
    public Policy policy() {
        return checker.policy();
    }

    /** {@return what the user wanted otherwise than the catalogue and the published equation have it, a line each} */
    public List<String> changes() {
        return checker.changes();
    }

    /** {@return the values of the document that could not be read, in order of place; none where the book was built in code} */
    public List<UnreadableValue> unreadable() {
        return index.register().unreadable().all();
    }

    /**
     * {@return the values that could not be read inside a record}
     *
     * @param record the record's place in the book
     */
    public List<UnreadableValue> unreadable(Place record) {
        return List.copyOf(index.register().unreadable().within(record));
    }

    /** {@return the visits in their surroundings} */
    public List<VisitAt> visits() {
        return List.copyOf(index.visits());
    }

    /**
     * {@return the series at a test's location and date}
     *
     * @param test the test
     */
    public List<Series> series(TestAt test) {
        return index.series(test).series();
    }

    /**
     * {@return the runs that the rate of a test's location at its visit rests on}: the first that are not void of the visit's last
     * series, up to the visit's last run; where all are void, all of those; none where the visit has no run there
     *
     * @param test a test of this book
     * @param most how many runs the method includes
     */
    public List<PouringAt> runsForRate(TestAt test, int most) {
        return index.series(test).runsOf(test.visit(), most);
    }

    /**
     * {@return why the rate of a test's location at its visit is withheld where all of {@link #runsForRate} are void}: the reasons
     * of each, without repetition, in the order of the catalogue; none where a run is not void
     *
     * @param test a test of this book
     */
    public List<String> reasonsOfVoidRuns(TestAt test) {
        return index.series(test).reasonsOfVoidRuns(test.visit());
    }

    /**
     * {@return the prewettings of a test's location at its visit that are not void, in order}
     *
     * @param test a test of this book
     */
    public List<PouringAt> preWettings(TestAt test) {
        return index.series(test).preWettingsOf(test.visit());
    }

    /** {@return what checks one test of this book while somebody types} */
    public TestEditCheck typing() {
        return new TestEditCheck(checker, index);
    }

    /** {@return the order in which the catalogue lists rules; rules of users come last} */
    public static Comparator<String> catalogueOrder() {
        return Comparator.comparingInt(BuiltInRule::order);
    }
}
