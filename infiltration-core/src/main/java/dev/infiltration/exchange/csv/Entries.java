// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import dev.infiltration.field.ClockTime;
import dev.infiltration.field.CrewMember;
import dev.infiltration.field.Event;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads and writes people and events, several in one cell: {@code MV (technician); JD}, {@code leak 9:13:00 (tape lifted)}. */
final class Entries {

    private static final Cells.Cell KIND = Cells.of(Event.Kind.class);

    private Entries() {}

    /** A text and the note in parentheses at its end. */
    private record Noted(String text, @Nullable String note) {

        static Noted of(String text, int from) {
            int open = text.indexOf('(', from);
            return open < 0 || !text.endsWith(")")
                    ? new Noted(text, null)
                    : new Noted(text.substring(0, open).strip(), text.substring(open + 1, text.length() - 1));
        }
    }

    static Object crew(String text, Cells.At place) {
        int quoted = Quotes.end(text, 0);
        Noted noted = Noted.of(text, quoted);
        boolean isQuoted = quoted > 0 && quoted == noted.text().length();
        String initials = isQuoted ? Quotes.within(noted.text()) : noted.text();
        return new CrewMember(initials.isEmpty() && !isQuoted ? null : initials, noted.note(), Map.of());
    }

    static @Nullable Object event(String text, Cells.At place) {
        Noted noted = Noted.of(text, 0);
        String[] kindAndTime = noted.text().split(" ", 2);
        @Nullable Object kind = KIND.parse(kindAndTime[0], place);
        @Nullable ClockTime at = kindAndTime.length == 1 ? null : DateCells.time(kindAndTime[1].strip(), place);
        boolean isReadable = kind != null && (at != null || kindAndTime.length == 1);
        return isReadable ? new Event(at, (Event.Kind) kind, noted.note(), Map.of()) : null;
    }

    static String text(Object entry) {
        if (entry instanceof CrewMember member) {
            String initials = member.initials() == null ? "" : Quotes.whole(member.initials(), "(");
            String role = orNothing("(", member.role(), ")");
            return initials + (initials.isEmpty() || role.isEmpty() ? "" : " ") + role;
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
