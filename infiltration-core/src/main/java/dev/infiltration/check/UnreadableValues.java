// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.field.IndexMap;
import dev.infiltration.field.Place;
import dev.infiltration.field.ReadBook;
import dev.infiltration.field.UnreadableValue;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The values of a document that could not be read, by the records they are in. */
final class UnreadableValues {

    private static final UnreadableValues NONE = new UnreadableValues(List.of(), IndexMap.none());

    private final List<UnreadableValue> all;
    private final IndexMap gaps;
    private final Map<String, List<UnreadableValue>> within = new HashMap<>();

    private UnreadableValues(List<UnreadableValue> all, IndexMap gaps) {
        this.all = all;
        this.gaps = gaps;
        for (UnreadableValue value : all) {
            String pointer = value.lost();
            for (int end = pointer.length(); end >= 0; end = pointer.lastIndexOf('/', end - 1)) {
                within.computeIfAbsent(pointer.substring(0, end), key -> new ArrayList<>())
                        .add(value);
            }
        }
    }

    static UnreadableValues none() {
        return NONE;
    }

    static UnreadableValues of(ReadBook read) {
        return new UnreadableValues(read.unreadable(), read.gaps());
    }

    List<UnreadableValue> all() {
        return all;
    }

    IndexMap gaps() {
        return gaps;
    }

    /** {@return the values inside the record at a place of the book, or the record itself} */
    List<UnreadableValue> within(Place record) {
        return all.isEmpty() ? List.of() : within.getOrDefault(record.in(gaps).toString(), List.of());
    }

    /** {@return whether the record at a place of the book could not be read at all} */
    boolean isLost(Place record) {
        return within(record).stream()
                .anyMatch(value -> value.lost().equals(record.in(gaps).toString()));
    }

    /** {@return whether a value withholds the rate of a prewetting or run}: its own, its test's, its visit's or its ring's */
    boolean withholds(PouringAt pouring) {
        if (all.isEmpty()) {
            return false;
        }
        TestAt test = pouring.test();
        Place ring = test.visit().book().register().ringPlace(test.test().ring());
        return within(test.visit().place()).stream().anyMatch(value -> value.isPartOfRate() && isOf(pouring, value))
                || (ring != null && within(ring).stream().anyMatch(UnreadableValue::isPartOfRate));
    }

    /** A value of another test, or of another prewetting or run of this test, is no reason. */
    private boolean isOf(PouringAt pouring, UnreadableValue value) {
        TestAt test = pouring.test();
        Place ownTest = test.place().in(gaps);
        if (!value.isWithin(ownTest)) {
            return !value.isWithin(test.visit().place().member("tests").in(gaps));
        }
        boolean isOfRun = value.isWithin(ownTest.member("runs"));
        boolean isOfPreWet = value.isWithin(ownTest.member("preWet"));
        return value.isWithin(pouring.place().in(gaps))
                || (!isOfRun && !isOfPreWet)
                || value.lost().equals(ownTest.member("runs").toString());
    }
}
