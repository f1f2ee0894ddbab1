// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.examples.plots.SvgPlots;
import dev.infiltration.report.Plot;
import dev.infiltration.report.SeasonPage;
import dev.infiltration.review.Review;
import dev.infiltration.units.InfiltrationRate;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

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
    void chartIsThatOfTheSeasonsPage() throws IOException {
        Plot drawn = SeasonPage.of(season(), LocalDate.of(2026, 11, 24)).plots().values().stream()
                .filter(plot -> plot.title().equals("HQ-A, mean rate by visit"))
                .findFirst()
                .orElseThrow();
        assertEquals(new SvgPlots().svg(drawn, "history"), Shorthand.chart(Shorthand.history(season(), "HQ-A")));
    }

    @Test
    void surfaceVisitedOnceHasAChart() throws Exception {
        Element svg = svg(Shorthand.chart(Shorthand.history(season(), "LS-P")));
        assertEquals("LS-P, mean rate by visit", words(svg, "title").get(0));
    }

    @Test
    void chartIsNamedDescribedAndHasItsWordsAsText() throws Exception {
        String chart = Shorthand.chart(Shorthand.history(season(), "HQ-A"));
        Element svg = svg(chart);
        assertEquals("HQ-A, mean rate by visit", words(svg, "title").get(0));
        assertTrue(words(svg, "desc").get(0).contains("Dash-dotted uprights are cleanings"));
        assertTrue(words(svg, "text").containsAll(List.of("cleaned", "Date of visit", "Rate in in/h, log scale")));
        assertTrue(chart.length() < 30_000, () -> chart.length() + " characters");
    }

    private static Element svg(String text) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(text)))
                .getDocumentElement();
    }

    private static int count(Element svg, String name) {
        return svg.getElementsByTagName(name).getLength();
    }

    private static List<String> words(Element svg, String name) {
        return IntStream.range(0, count(svg, name))
                .mapToObj(i -> svg.getElementsByTagName(name).item(i).getTextContent())
                .toList();
    }

    @Test
    void savedIsWhatWasGiven(@TempDir Path folder) throws IOException {
        Path file = Shorthand.save(folder.resolve("x.txt").toString(), "30 °C\n");
        assertEquals("30 °C\n", Files.readString(file));
    }
}
