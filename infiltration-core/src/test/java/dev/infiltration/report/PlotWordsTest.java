// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.review.Review;
import dev.infiltration.summary.SurfaceRate;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** Rates with a ± beside drawings, on the invented demo season: with the error of the end point stated; an uncertainty to two digits (JCGM 100, 7.2.6, memory). */
class PlotWordsTest {

    private static final Review REVIEW = Review.of(Pages.demoWithEndPoints());
    private static final String PLUS_MINUS =
            "± is the expanded uncertainty (95 %) of instruments, end point and the difference of the runs; seal not included";

    private static Map<String, String> rates(Element table) {
        Map<String, String> rates = new TreeMap<>();
        Pages.rows(table).forEach(row -> rates.put(row.get(0), row.get(1)));
        return rates;
    }

    @Test
    void tableOfADrawingSaysTheRatesOfTheReport() {
        int said = 0;
        for (SurfaceRate surface : REVIEW.surfaces()) {
            Document page = Pages.visit(REVIEW, surface.visit().subject());
            Map<String, String> above = rates(Pages.table(page, "Rates of the locations"));
            Map<String, String> drawn = rates(Pages.table(page, surface.visit().subject() + ", "));
            for (Map.Entry<String, String> rate : drawn.entrySet()) {
                String beside = above.get(rate.getKey());
                assertTrue(beside.startsWith(rate.getValue() + " ("), () -> rate.getValue() + " beside " + beside);
                said += rate.getValue().contains("±") ? 1 : 0;
            }
        }
        assertTrue(said > 30, () -> "no ±");
    }

    @Test
    void everyTableWithAPlusMinusSaysWhatItIs() {
        Document season =
                Pages.sound(SeasonPage.of(REVIEW, LocalDate.of(2026, 11, 24)).html());
        List<Element> tables = season.select("table").stream()
                .filter(table -> table.selectFirst("tbody").text().contains("±"))
                .toList();
        assertTrue(tables.size() > 4);
        tables.forEach(table -> assertTrue(
                table.selectFirst("caption").text().endsWith(PLUS_MINUS),
                table.selectFirst("caption").text()));
    }

    @Test
    void descriptionOfADrawingWithIntervalsSaysWhatTheyAre() {
        int described = 0;
        for (VisitReport report : VisitReport.all(REVIEW)) {
            for (Plot plot : report.plots().values()) {
                if (plot instanceof RatePlot rates && rates.marks().stream().anyMatch(mark -> mark.half() != null)) {
                    assertTrue(plot.description().contains(PLUS_MINUS), plot.description());
                    described++;
                }
            }
        }
        assertEquals(14, described);
    }

    @Test
    void whatHasNoIntervalDoesNotSpeakOfOne() {
        for (Plot plot :
                SeasonPage.of(REVIEW, LocalDate.of(2026, 11, 24)).plots().values()) {
            assertTrue(plot instanceof RatePlot || !plot.description().contains("±"));
        }
    }
}
