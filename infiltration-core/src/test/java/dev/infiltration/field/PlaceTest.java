// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Places from JSON Pointers, and back. */
class PlaceTest {

    /** The third line has the pointers of RFC 6901, section 5 (published). */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "/visits",
                "/visits/0",
                "/visits/12/tests/3/runs/1/water/mass",
                "/visits/-",
                "/visits/01/tests",
                "/visits/99999999999",
                "/sites/0/surfaces/1/locations/2/position/latitude",
                "/0/1/2",
                "/foo",
                "/foo/0",
                "/",
                "/a~1b",
                "/c%d",
                "/e^f",
                "/g|h",
                "/i\\j",
                "/k\"l",
                "/ ",
                "/m~0n",
                "/~01",
                "//",
                "/a//"
            })
    void aPlaceIsPrintedAsThePointerThatItIsParsedFrom(String pointer) {
        assertEquals(pointer, Place.parse(pointer).toString());
    }

    @Test
    void aParsedPlaceIsTheOneOfItsSteps() {
        Place run = Place.BOOK
                .member("visits")
                .entry(0)
                .member("tests")
                .entry(10)
                .member("runs")
                .entry(2);
        Place parsed = Place.parse("/visits/0/tests/10/runs/2");
        assertEquals(run, parsed);
        assertEquals(run.hashCode(), parsed.hashCode());
        assertTrue(parsed.isEntryOf(TestRun.class));
        assertTrue(parsed.outer().outer().isEntryOf(LocationTest.class));
        assertTrue(Place.parse("/visits/2").compareTo(Place.parse("/visits/10")) < 0, "entries by position");
        assertTrue(
                Place.parse("/visits/0/id").compareTo(Place.parse("/visits/0/date")) < 0, "members as in the record");
    }

    @Test
    void aPointerWithoutASlashIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> Place.parse("visits/0"));
    }
}
