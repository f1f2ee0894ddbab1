// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.Amounts;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.Visit;
import java.io.IOException;
import java.io.InputStream;
import java.io.Writer;
import java.lang.ref.WeakReference;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A table of 100 000 rows is written and read in seconds, a visit at a time. */
class RunsCsvSizeTest {

    private static final int VISITS = 10_000;
    private static final int RUNS = 10;

    /** {@return a book of one visit with ten runs at ten locations} */
    private static FieldBook part(int number) {
        List<LocationTest> tests = IntStream.range(0, RUNS)
                .mapToObj(at -> LocationTest.of(null, "A" + at, null)
                        .withRuns(List.of(TestRun.of(
                                null, Amounts.kg("18.0" + at), Amounts.s("6" + at + "." + number % 10), null))))
                .toList();
        Visit visit = Visit.of("V" + number, "HQ-A", LocalDate.of(2026, 6, 3)).withTests(tests);
        return FieldBook.of().withVisits(List.of(visit));
    }

    /** Parts that are created on request. */
    private static final class Parts implements Iterable<FieldBook> {

        @Override
        public Iterator<FieldBook> iterator() {
            return IntStream.range(0, VISITS).mapToObj(RunsCsvSizeTest::part).iterator();
        }
    }

    @Tag("slow")
    @Test
    void hundredThousandRowsTakeSeconds(@TempDir Path folder) throws IOException {
        Path table = folder.resolve("runs.csv");
        assertTimeoutPreemptively(Duration.ofSeconds(60), () -> {
            try (Writer out = Files.newBufferedWriter(table)) {
                RunsCsv.withDefaults().writeParts(new Parts(), out);
            }
            AtomicInteger runs = new AtomicInteger();
            try (InputStream in = Files.newInputStream(table)) {
                RunsCsv.withDefaults().readVisits(in, part -> {
                    assertEquals(List.of(), part.problems());
                    part.book()
                            .orElseThrow()
                            .visits()
                            .get(0)
                            .tests()
                            .forEach(test -> runs.addAndGet(test.runs().size()));
                });
            }
            assertEquals(VISITS * RUNS, runs.get());
            assertEquals(VISITS * RUNS + 1, Files.readAllLines(table).size());
        });
    }

    /** What was handed out can be forgotten: no part is held by the reading. */
    @Tag("slow")
    @Test
    void partsAreNotHeld(@TempDir Path folder) throws IOException {
        Path table = folder.resolve("runs.csv");
        try (Writer out = Files.newBufferedWriter(table)) {
            RunsCsv.withDefaults().writeParts(new Parts(), out);
        }
        List<WeakReference<FieldBook>> handedOut = new ArrayList<>();
        AtomicInteger alive = new AtomicInteger();
        try (InputStream in = Files.newInputStream(table)) {
            RunsCsv.withDefaults().readVisits(in, part -> {
                handedOut.add(new WeakReference<>(part.book().orElseThrow()));
                if (handedOut.size() == VISITS) {
                    System.gc();
                    alive.set((int) handedOut.stream()
                            .filter(reference -> reference.get() != null)
                            .count());
                }
            });
        }
        assertTrue(alive.get() < VISITS / 100, alive + " of " + VISITS + " are held");
    }

    @Test
    void visitIsHandedOutWhenItsRowsEnd() throws IOException {
        String table = "visit,location,run\nV1,A1,1\nV1,A2,1\nV2,A1,1\nV1,A3,1\nV3,A1,1\n";
        List<String> parts = new ArrayList<>();
        RunsCsv.withDefaults()
                .readVisits(
                        new java.io.ByteArrayInputStream(table.getBytes(java.nio.charset.StandardCharsets.UTF_8)),
                        part -> {
                            parts.add(part.book().orElseThrow().visits().stream()
                                            .map(visit -> visit.id() + " "
                                                    + visit.tests().size())
                                            .toList()
                                    + " " + Csv.places(part));
                        });
        assertEquals(List.of("[V1 2] []", "[V2 1] []", "[] [5 1 #row=5]", "[V3 1] []"), parts);
    }
}
