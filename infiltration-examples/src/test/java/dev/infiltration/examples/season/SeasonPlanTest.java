// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.examples.season.SeasonTest.Ran;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code season --plan} as its users see it. */
class SeasonPlanTest {

    private static final String DEMO = "demo/harrow-quay.json";
    private static final String ZONES = "demo/harrow-quay-zones.json";

    /** A book without visits, its surface of pavers. */
    private static final String NEW = """
            {"format": "infiltration-field-book/1",
             "sites": [{"id": "HQ", "timeZone": "America/Chicago",
                "surfaces": [{"id": "HQ-N", "type": "pavers", "area": {"value": 25001, "unit": "[sft_i]"},
                    "joints": {"pattern": "running-bond", "length": {"value": 8, "unit": "[in_i]"},
                               "width": {"value": 4, "unit": "[in_i]"}, "joint": {"value": 0.25, "unit": "[in_i]"}}}]}]}
            """;

    @Test
    void planRestsOnTheLastVisit() {
        Ran ran = Ran.of(DEMO, "--plan", "HQ-A");
        assertEquals(0, ran.status(), ran.err());
        assertTrue(ran.out().startsWith("Plan of a visit to surface HQ-A\n"), ran.out());
        assertTrue(ran.out().contains("  A1: x 2.0 m, y 3.0 m, run-on edge\n"), ran.out());
        assertTrue(ran.out().indexOf("Safety:") < ran.out().indexOf("At each location:"), ran.out());
        assertEquals("", ran.err());
    }

    @Test
    void sameSeedDrawsTheSameLocations() {
        Ran one = Ran.of(DEMO, "--plan", "HQ-A", "--zones", ZONES, "--json");
        assertEquals(0, one.status(), one.err());
        assertTrue(one.out().contains("\"seed\": 1"), one.out());
        assertEquals(
                one.out(),
                Ran.of("--plan", "HQ-A", DEMO, "--seed", "1", "--json", "--zones", ZONES)
                        .out());
        assertFalse(one.out()
                .equals(Ran.of(DEMO, "--plan", "HQ-A", "--zones", ZONES, "--json", "--seed", "2")
                        .out()));
    }

    @Test
    void newSurfaceIsPlannedForTheRateExpected(@TempDir Path folder) throws IOException {
        String book = Files.writeString(folder.resolve("new.json"), NEW).toString();
        Ran ran = Ran.of(book, "--plan", "HQ-N", "--expected", "254,2540,9000", "--set-up", "15");
        assertEquals(0, ran.status(), ran.err());
        assertTrue(ran.out().contains("Locations: 4, "), ran.out());
        assertTrue(
                ran.out().contains("Expected rate: 2540 mm/h (at the lowest rate 254 mm/h, at the highest 9000 mm/h)"));
        assertTrue(ran.out().contains("Moving, sealing and cleaning up: 15 min"), ran.out());
        assertTrue(ran.out().contains("Water: 88.00 lb per location, 352.00 lb in total"), ran.out());
        assertTrue(Ran.of(book, "--plan", "HQ-N", "--expected", "254").out().contains("Expected rate: 254 mm/h\n"));
    }

    @Test
    void folderTakesTextJsonAndDrawing(@TempDir Path folder) throws IOException {
        String book = Files.writeString(folder.resolve("new.json"), NEW).toString();
        Path out = folder.resolve("plan");
        Ran ran = Ran.of(book, "--plan", "HQ-N", "--expected", "2540", "--out", out.toString());
        assertEquals(0, ran.status(), ran.err());
        assertEquals(ran.out(), Files.readString(out.resolve("plan.txt")));
        assertTrue(Files.readString(out.resolve("plan.json")).contains("\"ringPlacement\""));
        assertTrue(Files.readString(out.resolve("ring.svg")).startsWith("<svg xmlns"));
        assertFalse(Files.exists(out.resolve("review.txt")));
        Path plain = folder.resolve("plain");
        assertEquals(
                0, Ran.of(DEMO, "--plan", "HQ-A", "--out", plain.toString()).status());
        assertFalse(Files.exists(plain.resolve("ring.svg")), "no joints on record");
    }

    /** Four spots on record, three counted; the middles of A3 and A4 lie 1.077 m apart (the demo, invented), the ring 11.95 in. */
    @Test
    void spotsBeyondTheNumberAreSpares() {
        Ran ran = Ran.of(DEMO, "--plan", "HQ-A");
        assertTrue(ran.out().contains("; spare, 0.77 m clear of A3 (required: at least 1 m)\n"), ran.out());
        assertTrue(ran.out().contains("Start: no rain record given"), ran.out());
    }

    /** Dry from 08:30 on the first of June by the clock of the site; the plan waits the 24 h of the method (memory: C1701 8.1). */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            'from,to,depth mm;2026-06-01T06:00,2026-06-01T08:30,4.2;2026-06-01T08:30,2026-06-05T18:00,0'
            'to,depth in;2026-06-01 06:00,0;2026-06-01 08:30,0.17;;2026-06-05 18:00,0.00'
            'gauge,From,Depth MM;7,2026-06-01T06:00,4.2;7,2026-06-01T08:30,0;7,2026-06-03T13:15,0'
            'from,to,depth mm;2026-06-01T13:30Z,2026-06-05T23:00Z,0'
            'from,to,depth mm;2026-06-01T06:00,2026-06-01T08:00,0;2026-06-01T08:30,2026-06-05T18:00,0'
            'from,to,depth mm;2026-06-01T06:00,2026-06-01T08:30,;2026-06-01T08:30,2026-06-05T18:00,0'
            """)
    void dryTimeIsFoundInTheRain(String rain, @TempDir Path folder) throws IOException {
        dryTimeIsFound(Files.writeString(folder.resolve("rain.csv"), rain.replace(';', '\n')));
        byte[] marked = ("\uFEFF" + rain.replace(';', '\n')).getBytes(StandardCharsets.UTF_16LE);
        dryTimeIsFound(Files.write(folder.resolve("marked.csv"), marked));
    }

    private static void dryTimeIsFound(Path file) {
        Ran ran = Ran.of(DEMO, "--plan", "HQ-A", "--today", "2026-06-01", "--rain", file.toString());
        assertEquals(0, ran.status(), ran.err());
        assertTrue(ran.out().contains("Start: from 2026-06-02 08:30 to 2026-06-05 "), ran.out());
        assertTrue(ran.out().contains("(America/Chicago)"), ran.out());
        Ran late = Ran.of(DEMO, "--plan", "HQ-A", "--today", "2026-06-09", "--rain", file.toString());
        assertTrue(late.out().contains("Start: no dry time in the rain record from 2026-06-01 "), late.out());
    }

    @Test
    void forecastFollowsTheGauge(@TempDir Path folder) throws IOException {
        Path gauge = Files.writeString(
                folder.resolve("gauge.csv"), "from,to,depth mm\n2026-06-01T00:00,2026-06-02T00:00,0\n");
        Path forecast = Files.writeString(
                folder.resolve("forecast.csv"), "from,depth mm\n2026-06-02T00:00,0\n2026-06-02T12:00,3\n");
        Ran ran = Ran.of((DEMO + " --plan HQ-A --today 2026-06-01 --rain " + gauge + " --rain " + forecast).split(" "));
        assertTrue(ran.out().contains("Start: from 2026-06-02 00:00 to 2026-06-02 "), ran.out());
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            'time,depth mm;2026-06-01T06:00,0'                                   | line 1: expected columns from, to or both
            'from,depth;2026-06-01T06:00,0'                                      | line 1: expected columns from, to or both
            'from,from,depth mm;2026-06-01T06:00,2026-06-01T06:00,0'             | line 1: expected columns from, to or both
            'from,depth mm'                                                      | line 1: expected a row
            'from,depth mm;2026-06-01T06:00'                                     | line 2: expected 2 cells, got 1
            'from,depth mm;yesterday,0'                                          | line 2: cannot read yesterday,0
            'from,depth mm;2026-06-01T06:00,wet'                                 | line 2: cannot read 2026-06-01T06:00,wet
            'from,depth mm;2026-06-01T06:00,-1'                                  | line 2: expected a depth of 0 or more
            'from,depth mm;2026-06-01T06:00,0;2026-06-01T05:00,0'                | line 3: expected times in order
            'from,to,depth mm;2026-06-01T06:00,2026-06-01T05:00,0'               | line 2: expected times in order
            """)
    void rainThatCannotBeReadEndsWithStatus2(String rain, String message, @TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("rain.csv"), rain.replace(';', '\n'));
        Ran ran = Ran.of(DEMO, "--plan", "HQ-A", "--rain", file.toString());
        assertEquals(2, ran.status(), ran.out());
        assertTrue(ran.err().contains(message), ran.err());
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            --plan HQ-Z                               | no surface HQ-Z in the book
            --plan                                    | --plan needs a value
            --plan HQ-A --strict                      | --strict speaks of a review, not of a plan
            --seed 2                                  | --seed goes with --plan
            --zones x.json                            | --zones goes with --plan
            --plan HQ-A --seed two                    | --seed: cannot take two
            --plan HQ-A --set-up -1                   | --set-up: cannot take -1
            --plan HQ-A --expected 0                  | --expected: cannot take 0
            --plan HQ-A --expected 3,2,1              | --expected: cannot take 3,2,1
            --plan HQ-A --expected 1,2                | --expected: cannot take 1,2
            --plan HQ-A --expected fast               | --expected: cannot take fast
            --plan HQ-A --zones missing.json          | no such file: missing.json
            --plan HQ-A --zones demo/harrow-quay.json | /format: found
            --rain x.csv                              | --rain goes with --plan
            --plan HQ-A --rain missing.csv            | no such file: missing.csv
            --plan HQ-A --reference x.json            | --reference goes with
            """)
    void whatCannotBePlannedEndsWithStatus2(String words, String message) {
        Ran ran = Ran.of((DEMO + " " + words).split(" +"));
        assertEquals(2, ran.status(), ran.out());
        assertEquals("", ran.out());
        assertTrue(ran.err().contains(message), ran.err());
    }

    @Test
    void rateNobodyKnowsIsAskedFor(@TempDir Path folder) throws IOException {
        String book = Files.writeString(folder.resolve("new.json"), NEW).toString();
        Ran ran = Ran.of(book, "--plan", "HQ-N");
        assertEquals(2, ran.status());
        assertTrue(ran.err().contains("no rate of HQ-N on record: give --expected"), ran.err());
    }

    @Test
    void areaThatRequiresTooManyLocationsIsRefusedAtOnce(@TempDir Path folder) throws IOException {
        Ran ran = planned(folder, "1000000000", "--expected", "2540");
        assertEquals(2, ran.status(), ran.out());
        assertEquals("", ran.out());
        assertEquals(
                "season: locations: 1000001 for an area of 1000000000 m²; a plan may have 10000:"
                        + " correct the area or the number requested",
                ran.err().strip());
    }

    /** 9000 locations in a square of 100 m, where rings a metre apart have less room than that (own calculation). */
    @Test
    void crowdedZoneIsPlannedWithinASecond(@TempDir Path folder) throws IOException {
        Path zones = Files.writeString(folder.resolve("zones.json"), """
                {"format": "infiltration-zones/1", "unit": "m",
                 "zones": [{"name": "yard", "corners": [[0, 0], [100, 0], [100, 100], [0, 100]]}]}
                """);
        Ran ran = planned(folder, "9000000", "--expected", "2540", "--zones", zones.toString());
        assertEquals(0, ran.status(), ran.err());
        assertTrue(ran.out().contains("Locations: 9001, "), ran.out().substring(0, 400));
        assertTrue(ran.out().contains("no room found for "), ran.out().substring(0, 400));
    }

    /** Plans a surface of an area in m², in less than a second of processor time once the classes are loaded. */
    private static Ran planned(Path folder, String area, String... more) throws IOException {
        String book = Files.writeString(
                        folder.resolve("new.json"), NEW.replace("25001", area).replace("[sft_i]", "m2"))
                .toString();
        String[] words = Stream.concat(Stream.of(book, "--plan", "HQ-N"), Stream.of(more))
                .toArray(String[]::new);
        Ran.of(words);
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        long before = clock.getCurrentThreadCpuTime();
        Ran ran = Ran.of(words);
        double seconds = (clock.getCurrentThreadCpuTime() - before) / 1e9;
        assertTrue(seconds < 1, () -> seconds + " s");
        return ran;
    }

    @Test
    void usageNamesThePlan() {
        assertTrue(Ran.of("--help").out().contains("--plan SURFACE"));
    }
}
