// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.check.PouringAt;
import dev.infiltration.check.TestAt;
import dev.infiltration.field.Event;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The notes of a test and of its events, as written: they are shown, and no rule reads them. */
final class Notes {

    private Notes() {}

    /** {@return a line for each note}, with the test, run or event that it belongs to */
    static List<String> of(TestAt test) {
        List<String> lines = new ArrayList<>();
        add(lines, test.subject(), test.test().note());
        Stream.concat(test.preWet().stream(), test.runs().stream()).forEach(pouring -> add(lines, pouring));
        return lines;
    }

    private static void add(List<String> lines, PouringAt pouring) {
        for (Event event : pouring.pouring().events()) {
            String kind = event.kind() == null ? "event" : event.kind().word();
            add(lines, pouring.subject() + ", " + kind, event.note());
        }
    }

    private static void add(List<String> lines, String subject, @Nullable String note) {
        if (note != null && !note.isBlank()) {
            lines.add("Note, " + subject + ": " + note);
        }
    }
}
