// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import dev.infiltration.field.Location;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Ring;
import dev.infiltration.field.Site;
import dev.infiltration.field.Surface;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.Visit;

/** Which record of its row a cell speaks of. */
enum RowRecord {
    SITE(Site.class, "site"),
    SURFACE(Surface.class, "surface"),
    LOCATION(Location.class, "location"),
    RING(Ring.class, "ring"),
    VISIT(Visit.class, "visit"),
    TEST(LocationTest.class, "test"),
    RUN(TestRun.class, "test");

    private final Class<?> type;
    private final String entry;

    RowRecord(Class<?> type, String entry) {
        this.type = type;
        this.entry = entry;
    }

    Class<?> type() {
        return type;
    }

    /** {@return the record that goes with a cell that cannot be read}: of a run its test, so that no figure rests on half of it */
    RowRecord leavesOut() {
        return this == RUN ? TEST : this;
    }

    /** {@return what is excluded then, in words} */
    String entry() {
        return entry;
    }
}
