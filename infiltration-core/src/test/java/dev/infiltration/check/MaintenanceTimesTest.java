// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.field.ClockTime;
import java.time.ZoneId;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.jspecify.annotations.Nullable;

/** A maintenance is found between two times exactly where one of those recorded lies there. */
class MaintenanceTimesTest {

    /** A maintenance of some locations, of all where there are none. */
    private record Work(List<String> locations, TimeRange start, TimeRange end) {}

    @Provide
    Arbitrary<TimeRange> spans() {
        Arbitrary<Integer> minutes = Arbitraries.integers().between(0, 9);
        Arbitrary<String> tail = Arbitraries.of("", ":00", ":00-05:00", "-05:00", ":00-04:59", ":30Z");
        return Combinators.combine(minutes, tail, Arbitraries.of(true, false))
                .as((minute, end, hasZone) -> TimeRange.of(
                        ClockTime.parse("2026-11-01T01:0" + minute + end),
                        hasZone ? ZoneId.of("America/Chicago") : null));
    }

    @Provide
    Arbitrary<List<Work>> works() {
        Arbitrary<List<String>> locations = Arbitraries.of(List.of(), List.of("A1"), List.of("A2", "A1"), List.of(""));
        return Combinators.combine(locations, spans(), spans())
                .as(Work::new)
                .list()
                .ofMaxSize(8);
    }

    @Provide
    Arbitrary<String> locations() {
        return Arbitraries.of("A1", "A2", "").injectNull(0.2);
    }

    @Property(tries = 3000)
    void oneIsFoundWhereOneLies(
            @ForAll("works") List<Work> works,
            @ForAll("locations") @Nullable String location,
            @ForAll("spans") TimeRange before,
            @ForAll("spans") TimeRange after) {
        MaintenanceTimes kept = new MaintenanceTimes();
        works.forEach(work -> kept.add(work.locations(), work.start(), work.end()));
        boolean lies = works.stream()
                .filter(work ->
                        work.locations().isEmpty() || work.locations().stream().anyMatch(l -> l.equals(location)))
                .anyMatch(work -> work.start().mostAfter(before).signum() >= 0
                        && after.mostAfter(work.end()).signum() >= 0);
        assertEquals(lies, kept.isAnyBetween(location, before, after));
    }
}
