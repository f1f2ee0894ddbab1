// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import dev.infiltration.field.ClockTime;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Place;
import dev.infiltration.field.WaterReading;
import dev.infiltration.units.Reading;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The places where a book differs from another. */
final class Differences {

    private final List<Place> places = new ArrayList<>();

    private Differences() {}

    /** {@return the places in {@code book} whose values differ from {@code other}, the innermost that both contain} */
    static List<Place> between(FieldBook book, FieldBook other) {
        Differences differences = new Differences();
        differences.compare(book, other, Place.BOOK);
        return differences.places;
    }

    private void compare(@Nullable Object mine, @Nullable Object theirs, Place place) {
        if (Objects.equals(mine, theirs)) {
            return;
        }
        if (mine instanceof List<?> list && theirs instanceof List<?> others) {
            compareEntries(list, others, place);
        } else if (mine != null && theirs != null && hasMembers(mine)) {
            compareMembers(mine, theirs, place);
        } else {
            places.add(place);
        }
    }

    private static boolean hasMembers(Object value) {
        return value instanceof Record
                && !(value instanceof Reading || value instanceof WaterReading || value instanceof ClockTime);
    }

    private void compareMembers(Object mine, Object theirs, Place place) {
        for (RecordComponent component : Paths.components(mine.getClass()).values()) {
            compare(Paths.value(mine, component), Paths.value(theirs, component), place.member(component.getName()));
        }
    }

    private void compareEntries(List<?> mine, List<?> theirs, Place place) {
        int shared = Math.min(mine.size(), theirs.size());
        for (int index = 0; index < shared; index++) {
            compare(mine.get(index), theirs.get(index), place.entry(index));
        }
        for (int index = shared; index < mine.size(); index++) {
            places.add(place.entry(index));
        }
        if (theirs.size() > mine.size()) {
            places.add(place);
        }
    }
}
