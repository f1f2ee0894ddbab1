// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import dev.infiltration.field.ClockTime;
import dev.infiltration.field.CrewMember;
import dev.infiltration.field.Event;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** People and events, several of which share a cell: {@code MV (technician); JD}, {@code leak 9:13:00 (tape lifted)}. */
final class Entries {

    private static final Pattern NOTED = Pattern.compile("([^()]*?)\\s*(?:\\((.*)\\))?");

    private static final Cells.Cell KIND = Cells.of(Event.Kind.class);

    private Entries() {}

    static Object crew(String text, Cells.At place) {
        Matcher parts = NOTED.matcher(text);
        return parts.matches()
                ? new CrewMember(parts.group(1).isEmpty() ? null : parts.group(1), parts.group(2), Map.of())
                : new CrewMember(text, null, Map.of());
    }

    static @Nullable Object event(String text, Cells.At place) {
        Matcher parts = NOTED.matcher(text);
        if (!parts.matches()) {
            return null;
        }
        String[] kindAndTime = parts.group(1).split(" ", 2);
        @Nullable Object kind = KIND.parse(kindAndTime[0], place);
        @Nullable ClockTime at = kindAndTime.length == 1 ? null : Moments.time(kindAndTime[1].strip(), place);
        boolean isReadable = kind != null && (at != null || kindAndTime.length == 1);
        return isReadable ? new Event(at, (Event.Kind) kind, parts.group(2), Map.of()) : null;
    }

    static String text(Object entry) {
        if (entry instanceof CrewMember member) {
            return (orNothing("", member.initials(), "") + orNothing(" (", member.role(), ")")).strip();
        }
        Event event = (Event) entry;
        return event.kind() == null
                ? ""
                : event.kind().word() + orNothing(" ", event.at(), "") + orNothing(" (", event.note(), ")");
    }

    private static String orNothing(String before, @Nullable Object value, String after) {
        return value == null ? "" : before + value + after;
    }
}
