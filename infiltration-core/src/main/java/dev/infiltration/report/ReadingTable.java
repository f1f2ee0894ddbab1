// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.check.PouringAt;
import dev.infiltration.check.TestAt;
import dev.infiltration.field.Event;
import dev.infiltration.field.Head;
import dev.infiltration.field.Pour;
import dev.infiltration.field.Pouring;
import dev.infiltration.field.PreWet;
import dev.infiltration.field.TestRun;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The readings of a test as they were written: a row a reading, a column for the prewetting and for each run. */
final class ReadingTable {

    private final List<PouringAt> pourings;
    private final List<List<Phrase>> rows = new ArrayList<>();

    private ReadingTable(TestAt test) {
        this.pourings =
                Stream.concat(test.preWet().stream(), test.runs().stream()).toList();
    }

    static Block.Table of(TestAt test) {
        ReadingTable table = new ReadingTable(test);
        table.always("Start", Pouring::start);
        table.where("Delay", Pouring::delay);
        table.always("Water poured", ReadingTable::water);
        table.where("Pours", ReadingTable::pours);
        table.always("Time taken", Pouring::elapsed);
        table.always(
                "Ended", pouring -> pouring.end() == null ? null : pouring.end().word());
        table.where("Depth left standing", Pouring::depthAtStop);
        table.where("Void because", ReadingTable::voidReason);
        table.always("Head", pouring -> head(pouring.head()));
        table.where("Events", ReadingTable::events);
        return new Block.Table(
                Phrase.of("Readings of test ")
                        .and(Phrase.written(test.test().id()))
                        .and(", as written"),
                table.heads(),
                table.rows);
    }

    private List<Phrase> heads() {
        List<Phrase> heads = new ArrayList<>(List.of(Phrase.of("Reading")));
        int run = 0;
        for (PouringAt pouring : pourings) {
            heads.add(Phrase.of(pouring.isRun() ? "Run " + ++run : "Prewetting"));
        }
        return heads;
    }

    private void always(String name, Function<Pouring, @Nullable Object> reading) {
        List<Phrase> row = new ArrayList<>(List.of(Phrase.of(name)));
        pourings.forEach(pouring -> row.add(Phrase.written(reading.apply(pouring.pouring()))));
        rows.add(row);
    }

    /** Where none of the pourings has it, the reading is not mentioned. */
    private void where(String name, Function<Pouring, @Nullable Object> reading) {
        if (pourings.stream().anyMatch(pouring -> reading.apply(pouring.pouring()) != null)) {
            always(name, reading);
        }
    }

    private static @Nullable Object water(Pouring pouring) {
        if (pouring.water() != null) {
            return pouring.water();
        }
        return pouring.pouredWater().map(sum -> sum + ", from the pours").orElse(null);
    }

    private static @Nullable String pours(Pouring pouring) {
        return pouring.pours().isEmpty()
                ? null
                : pouring.pours().stream().map(ReadingTable::pour).collect(Collectors.joining("; "));
    }

    private static String pour(Pour pour) {
        String vessel = pour.vessel() == null ? "" : pour.vessel() + ": ";
        return vessel + orUnknown(pour.before()) + " to " + orUnknown(pour.after());
    }

    private static String orUnknown(@Nullable Object reading) {
        return reading == null ? "not recorded" : reading.toString();
    }

    private static @Nullable String voidReason(Pouring pouring) {
        return pouring instanceof TestRun run ? run.voidReason() : ((PreWet) pouring).voidReason();
    }

    private static @Nullable String head(@Nullable Head head) {
        if (head == null || (head.state() == null && head.lowest() == null && head.highest() == null)) {
            return null;
        }
        String state = head.state() == null ? "" : head.state().word().replace('-', ' ');
        return head.lowest() == null && head.highest() == null
                ? state
                : (state + " " + orUnknown(head.lowest()) + " to " + orUnknown(head.highest())).strip();
    }

    private static @Nullable String events(Pouring pouring) {
        return pouring.events().isEmpty()
                ? null
                : pouring.events().stream().map(ReadingTable::event).collect(Collectors.joining("; "));
    }

    private static String event(Event event) {
        String kind = event.kind() == null ? "event" : event.kind().word().replace('-', ' ');
        String at = event.at() == null ? "" : " at " + event.at();
        return kind + at + (event.note() == null ? "" : " (" + event.note() + ")");
    }
}
