// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.examples.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command hands out a table and a map, and reads tables. */
class TablesAndMapsTest {

    @Test
    void tableOfTheDemoIsReviewedToTheSameRates(@TempDir Path folder) throws IOException {
        SeasonTest.Ran book = SeasonTest.Ran.of("demo/harrow-quay.json", "--json", "--out", folder.toString());
        SeasonTest.Ran table = SeasonTest.Ran.of(folder.resolve("runs.csv").toString(), "--json");
        assertEquals(0, table.status(), table.err());
        assertEquals(runs(book.out()), runs(table.out()));
    }

    /** The outcomes of runs; what a table does not hold, such as an instrument, bears on their uncertainty. */
    private static String runs(String review) {
        String runs = review.substring(review.indexOf("\"runs\":["), review.indexOf("\"locations\":["));
        return runs.replaceAll(",\"uncertainty\":\\{[^}]*\\}", "");
    }

    @Test
    void tableHasItsMetadataAndTheMapItsFeatures(@TempDir Path folder) throws IOException {
        SeasonTest.Ran.of("demo/harrow-quay.json", "--out", folder.toString());
        String metadata = Files.readString(folder.resolve("runs.csv-metadata.json"));
        assertTrue(metadata.contains("\"url\": \"runs.csv\""), metadata);
        String map = Files.readString(folder.resolve("locations.geojson"));
        assertTrue(map.startsWith("{\"type\":\"FeatureCollection\""), map);
    }

    @Test
    void tableWithoutAKnownColumnIsNothingReadable(@TempDir Path folder) throws IOException {
        Path table = Files.writeString(folder.resolve("other.csv"), "a,b\n1,2\n");
        SeasonTest.Ran ran = SeasonTest.Ran.of(table.toString());
        assertEquals(2, ran.status());
        assertEquals("", ran.out());
        assertTrue(ran.err().startsWith("season: nothing readable"), ran.err());
    }

    @Test
    void tableWithAUtilitysOwnHeadersIsReadByItsMapping(@TempDir Path folder) throws IOException {
        Path table = Files.writeString(folder.resolve("OWN.CSV"), block("csv"));
        Path mapping = Files.writeString(folder.resolve("mapping.json"), block("json"));
        SeasonTest.Ran without = SeasonTest.Ran.of(table.toString(), "--json");
        assertFalse(without.out().contains("measured"), without.out());
        SeasonTest.Ran ran = SeasonTest.Ran.of("--mapping", mapping.toString(), table.toString(), "--json");
        assertEquals(0, ran.status(), ran.err());
        assertTrue(ran.out().contains("\"problems\":[]"), ran.out());
        assertEquals(3, runs(ran.out()).split("\"outcome\":\"measured\"", -1).length - 1);
        assertTrue(ran.out().contains("\"surface\":\"HQ-A\""), ran.out());
    }

    /** The mapping and the table on the page. */
    private static String block(String language) throws IOException {
        String page = Files.readString(Path.of("../docs/csv.md"));
        int begin = page.indexOf("```" + language + "\n") + language.length() + 4;
        return page.substring(begin, page.indexOf("```", begin));
    }

    @Test
    void everyFaultOfAMappingIsToldOnStandardErrorAlone(@TempDir Path folder) throws IOException {
        Path table = Files.writeString(folder.resolve("own.csv"), block("csv"));
        Path mapping = Files.writeString(
                folder.resolve("mapping.json"),
                "{\"format\": \"infiltration-table-mapping/1\",\n\"dates\": \"odd\", \"more\": 1}");
        SeasonTest.Ran ran = SeasonTest.Ran.of(table.toString(), "--mapping", mapping.toString());
        assertEquals(2, ran.status());
        assertEquals("", ran.out());
        assertTrue(ran.err().startsWith("season: " + mapping + ": line 2, column "), ran.err());
        assertTrue(ran.err().contains("/dates") && ran.err().contains("/more"), ran.err());
        SeasonTest.Ran none = SeasonTest.Ran.of(table.toString(), "--mapping", "none.json");
        assertEquals(
                "2 season: no such file: none.json",
                none.status() + " " + none.err().strip());
    }

    @Test
    void whatTheTableDoesNotHoldIsToldOnStandardError(@TempDir Path folder) throws IOException {
        SeasonTest.Ran ran = SeasonTest.Ran.of("demo/harrow-quay.json", "--out", folder.toString());
        assertEquals(SeasonTest.Ran.of("demo/harrow-quay.json").out(), ran.out());
        assertEquals(1, ran.err().lines().count(), ran.err());
        assertTrue(ran.err().startsWith("season: runs.csv does not hold all of the book: "), ran.err());
        assertTrue(ran.err().contains("/sites/0/position, /instruments/# ("), ran.err());
        SeasonTest.Ran table = SeasonTest.Ran.of(folder.resolve("runs.csv").toString(), "--out", folder.toString());
        assertEquals("", table.err());
    }
}
