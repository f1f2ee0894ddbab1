// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import dev.infiltration.field.Instrument;
import dev.infiltration.field.Location;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Maintenance;
import dev.infiltration.field.Ring;
import dev.infiltration.field.Site;
import dev.infiltration.field.Surface;
import dev.infiltration.field.Visit;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The records that are left out as a whole where JSON breaks off inside them; a document also for a value that cannot be read. */
enum RecordKind {
    SITE("site"),
    SURFACE("surface"),
    LOCATION("location"),
    RING("ring"),
    INSTRUMENT("instrument"),
    VISIT("visit"),
    TEST("test"),
    MAINTENANCE("maintenance entry"),
    /** A document that is one record: all of it can be read, or none. */
    DOCUMENT("document");

    private static final Map<Class<?>, RecordKind> OF_BOOK = Map.of(
            Site.class, SITE,
            Surface.class, SURFACE,
            Location.class, LOCATION,
            Ring.class, RING,
            Instrument.class, INSTRUMENT,
            Visit.class, VISIT,
            LocationTest.class, TEST,
            Maintenance.class, MAINTENANCE);

    private final String word;

    RecordKind(String word) {
        this.word = word;
    }

    /** {@return what kind of entry {@code type} is, or null when it is a part of one} */
    static @Nullable RecordKind of(Class<?> type) {
        return OF_BOOK.get(type);
    }

    String word() {
        return word;
    }

    /** {@return whether a value that cannot be read takes this entry with it} */
    boolean goesWithItsParts() {
        return this == DOCUMENT;
    }
}
