// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class FileNamesTest {

    @Test
    void safeIdKeepsItsNameAndAnyOtherGetsItsNumber() {
        List<String> ids = Arrays.asList("V1", "../up", null, "a b", "CON", "v1", "visit-2", "");
        assertEquals(
                List.of("V1", "visit-2", "visit-3", "visit-4", "visit-5", "visit-6", "visit-7", "visit-8"),
                FileNames.of("visit", ids));
    }

    @Test
    void numberThatIsTakenGetsAnother() {
        assertEquals(List.of("visit-2", "visit-2-2"), FileNames.of("visit", List.of("visit-2", "/")));
    }

    @Property(tries = 300, seed = "20260603")
    void namesAreSafeAndNoTwoAlike(@ForAll List<String> ids) {
        Set<String> met = new HashSet<>();
        for (String name : FileNames.of("visit", ids)) {
            assertTrue(name.matches("[A-Za-z0-9][A-Za-z0-9_-]*"), name);
            assertTrue(met.add(name.toLowerCase(Locale.ROOT)), name);
        }
        assertEquals(ids.size(), met.size());
    }
}
