// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.review.Review;
import dev.infiltration.trend.Trend;
import dev.infiltration.units.InfiltrationRate;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The short names, on the invented demo season. */
class ShorthandTest {

    private static Review season() throws IOException {
        return Shorthand.review("demo/harrow-quay.json");
    }

    @Test
    void ratesAreThoseMeasuredAtTheVisit() throws IOException {
        Review season = season();
        List<InfiltrationRate> expected = season.locations().stream()
                .filter(location -> "V8".equals(location.visit().visit().id()))
                .flatMap(location -> location.outcome().rate().stream())
                .toList();
        assertEquals(3, expected.size());
        assertEquals(expected, Shorthand.rates(season, "V8"));
    }

    @Test
    void whatIsNotThereIsAnsweredWithWhatIs() throws IOException {
        Review season = season();
        Throwable visit = assertThrows(IllegalArgumentException.class, () -> Shorthand.rates(season, "V99"));
        assertTrue(visit.getMessage().startsWith("no V99, there are V1, V2"), visit.getMessage());
        Throwable surface = assertThrows(IllegalArgumentException.class, () -> Shorthand.history(season, "V1"));
        assertTrue(surface.getMessage().startsWith("no V1, there are HQ-A"), surface.getMessage());
        assertThrows(NoSuchFileException.class, () -> Shorthand.review("no-such-file.jsonl"));
    }

    @Test
    void chartIsTheSameEveryTimeAndHasAPointForEachMeasuredMean() throws IOException {
        String chart = Shorthand.chart(Shorthand.history(season(), "HQ-A"));
        assertEquals(chart, Shorthand.chart(Shorthand.history(season(), "HQ-A")));
        assertEquals(4, chart.split("fill:rgb\\(0,114,178\\)", -1).length - 1);
    }

    @Test
    void aTrendOfNothingHasAnEmptyChart() {
        assertTrue(TrendChart.svg("HQ-A", new Trend(List.of())).strip().endsWith("</svg>"));
    }

    @Test
    void savedIsWhatWasGiven(@TempDir Path folder) throws IOException {
        Path file = Shorthand.save(folder.resolve("x.txt").toString(), "30 °C\n");
        assertEquals("30 °C\n", Files.readString(file));
    }
}
