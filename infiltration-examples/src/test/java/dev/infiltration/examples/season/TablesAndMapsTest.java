// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.examples.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
}
