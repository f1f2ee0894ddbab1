// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.ClockTime;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Maintenance;
import dev.infiltration.field.Surface;
import dev.infiltration.review.Review;
import dev.infiltration.summary.ActionTable;
import dev.infiltration.summary.Criterion;
import dev.infiltration.summary.Decision.LiteralResult;
import dev.infiltration.summary.Specification;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** The page of a season, on the invented demo season; the limits are invented too. */
class SeasonPageTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 24);
    private static final Criterion MEAN = Criterion.of(
                    Criterion.Type.MEAN,
                    Criterion.Relation.AT_LEAST,
                    Reading.of("380", FieldUnit.INCH_PER_HOUR),
                    "unit-pavement",
                    "invented for Harrow Quay")
            .forOtherMethods("the harbour office takes all ring tests alike");
    private static final Specification JUDGED = Specification.of(MEAN)
            .withActions(new ActionTable(List.of(ActionTable.Row.of(
                    "clean the whole surface",
                    Period.ofDays(60),
                    List.of(new ActionTable.Condition(MEAN, LiteralResult.NOT_MET))))));

    private static Document page(SeasonPage page) {
        return Pages.sound(page.html());
    }

    private static Document page(FieldBook book, Specification specification) {
        return page(SeasonPage.of(Review.of(book).withSpecification(specification), DAY));
    }

    private static String counted(Document page, String name) {
        return page.select("#programme tr").stream()
                .filter(row -> row.selectFirst("th").text().equals(name))
                .map(row -> row.select("td").text())
                .findFirst()
                .orElse("no such row");
    }

    @Test
    void programmeIsRolledUp() {
        Document page = page(Pages.demo(), JUDGED);
        assertEquals("5 5010 m\u00B2", counted(page, "On record"));
        assertEquals("5 5010 m\u00B2", counted(page, "Tested"));
        assertEquals(
                "2 2490 m\u00B2", counted(page, "Meeting every criterion")); // HQ-A 391 in/h, LS-P at least 425 in/h
        assertEquals("3 2520 m\u00B2", counted(page, "Due for work")); // HQ-B 294 in/h, HQ-C 126 in/h, LS-G 209 in/h
        assertEquals("3 2520 m\u00B2", counted(page, "Overdue"));
        assertEquals("2 3050 m\u00B2", counted(page, "Cleaned"));
        assertEquals("2 3050 m\u00B2", counted(page, "Tested again after the last cleaning"));
    }

    @Test
    void shareIsWeightedByArea() {
        // 1850 m2 and 640 m2 of 1850 m2, 640 m2, 410 m2, 1200 m2 and 9800 ft2 (910.45 m2): 2490 of 5010.45, 49.7 %
        String text = page(Pages.demo(), JUDGED).getElementById("programme").text();
        assertTrue(
                text.contains(
                        "50 % of the evaluated surfaces meet every criterion (literal result): 2490 m\u00B2 of 5010 m\u00B2"),
                text);
    }

    @Test
    void surfaceNeverVisitedIsOnRecordAndNothingElse() {
        FieldBook demo = Pages.demo();
        var site = demo.sites().get(0);
        List<Surface> more = new ArrayList<>(site.surfaces());
        more.add(Surface.of("HQ-Z"));
        Document page = page(
                demo.withSites(List.of(site.withSurfaces(more), demo.sites().get(1))), JUDGED);
        assertTrue(counted(page, "On record").startsWith("6 "));
        assertTrue(counted(page, "Inspected").startsWith("5 "));
        Element row = page.select("#surfaces tr").stream()
                .filter(each -> each.text().startsWith("HQ-Z"))
                .findFirst()
                .orElseThrow();
        assertTrue(row.text().contains("never none none given"), row.text());
    }

    @Test
    void cleaningSinceTheLastTestTakesASurfaceOffTheWorkListAndAsksForATest() {
        FieldBook demo = Pages.demo();
        List<Maintenance> more = new ArrayList<>(demo.maintenance());
        more.add(Maintenance.of("M-G", "LS-G").withEnd(ClockTime.parse("2026-07-01T15:00")));
        Document page = page(demo.withMaintenance(more), JUDGED);
        assertTrue(counted(page, "Due for work").startsWith("2 "));
        assertFalse(page.getElementById("work").text().contains("LS-G"));
        assertTrue(page.getElementById("overdue").text().contains("LS-G: cleaned and not tested since"));
    }

    @Test
    void workListNamesTheSlowestSpotFirstAndTheDay() {
        Element work = page(Pages.demo(), JUDGED).getElementById("work");
        assertEquals(
                List.of("Surface LS-G", "Surface HQ-C", "Surface HQ-B"),
                work.select("h3").eachText());
        String grid = work.select("section").get(1).text();
        assertTrue(grid.contains("clean the whole surface by 2026-07-19"), grid);
        assertTrue(
                grid.contains(
                        "Slowest first G1, run-on edge, at 1.5 m along and 1.0 m across: 3850 mm/h (152 in/h); G2"),
                grid);
    }

    @Test
    void actionWithoutADayIsNoWork() {
        Specification idle = Specification.of(MEAN)
                .withActions(new ActionTable(List.of(ActionTable.Row.of(
                        "no action", null, List.of(new ActionTable.Condition(MEAN, LiteralResult.MET))))));
        Document page = page(Pages.demo(), idle);
        assertEquals("3 2520 m\u00B2", counted(page, "Due for work"), "those that do not meet the criterion alone");
        assertEquals("0 0 m\u00B2", counted(page, "Overdue"));
        assertFalse(page.getElementById("work").text().contains("no action"));
    }

    @Test
    void whatIsAskedForThoughAllIsMetSaysWhatItWentBy() {
        Specification again = Specification.of(MEAN)
                .withActions(new ActionTable(List.of(ActionTable.Row.of(
                        "test again", Period.ofDays(9), List.of(new ActionTable.Condition(MEAN, LiteralResult.MET))))));
        Element work = page(Pages.demo(), again).getElementById("work");
        Element pavers = work.select("section").stream()
                .filter(each -> each.selectFirst("h3").text().equals("Surface HQ-A"))
                .findFirst()
                .orElseThrow();
        assertTrue(pavers.text().contains("test again by 2026-06-12"), pavers::text);
        assertTrue(pavers.text().contains("(invented for Harrow Quay): met"), pavers::text);
    }

    @Test
    void beforeItsDayNothingIsOverdue() {
        Review review = Review.of(Pages.demo()).withSpecification(JUDGED);
        Document page = page(SeasonPage.of(review, LocalDate.of(2024, 11, 10)));
        assertTrue(counted(page, "Overdue").startsWith("0 "));
        assertTrue(page.text().contains("Nothing is known to be overdue on 2024-11-10."));
    }

    @Test
    void withoutACriterionNothingIsSaidToBeDue() {
        Document page = page(Pages.demo(), Specification.none());
        assertEquals("no such row", counted(page, "Meeting every criterion"));
        assertTrue(page.getElementById("programme").text().contains("No criterion was given"));
        assertTrue(page.getElementById("work").text().contains("No criterion was given"));
    }

    @Test
    void visitsAreLinkedWhereTheirReportsLie() {
        Review review = Review.of(Pages.demo());
        Document linked = page(SeasonPage.of(review, DAY).linkedTo("visits"));
        assertEquals("visits/V1.html", linked.select("#visits a").first().attr("href"));
        assertEquals(review.surfaces().size(), linked.select("#visits a").size());
        assertEquals(0, page(SeasonPage.of(review, DAY)).select("#visits a").size());
    }

    @Test
    void everyFindingOfAVisitIsTold() {
        Review review = Review.of(Pages.demo());
        String visits =
                page(SeasonPage.of(review, DAY)).getElementById("visits").text();
        assertFalse(review.findings().isEmpty());
        review.findings().forEach(finding -> assertTrue(visits.contains(finding.message()), finding.toString()));
    }

    @Test
    void picturesStandBesideTheirFigures() {
        Plots plots = (plot, id) -> "<svg id=\"" + id + "\" role=\"img\"></svg>";
        SeasonPage season = SeasonPage.of(Review.of(Pages.demo()), DAY).withPlots(plots);
        Document page = page(season);
        assertEquals(
                List.copyOf(season.plots().keySet()),
                page.select("figure > svg").eachAttr("id"));
        page.select("figure").forEach(figure -> {
            assertEquals(1, figure.select("figcaption").size());
            assertTrue(
                    figure.nextElementSibling().is("details:has(table)"),
                    figure.nextElementSibling().tagName());
        });
    }

    @Test
    void historyBeforeAndAfterRatesAndPlacesAreDrawn() {
        Map<String, Plot> plots = SeasonPage.of(Review.of(Pages.demo()), DAY).plots();
        HistoryPlot history = (HistoryPlot) plots.get("season-history-1");
        assertEquals(List.of(LocalDate.of(2025, 10, 13)), history.cleanings());
        assertEquals(5, history.points().size());
        assertEquals(2, history.fits().size());
        PairPlot pairs = (PairPlot) plots.get("season-pairs-2");
        assertEquals("V3, 2025-06-04", pairs.before());
        assertEquals("V4, 2025-10-15", pairs.after());
        RatePlot rates = (RatePlot) plots.get("season-rates-3");
        assertEquals(
                List.of("A1", "A2", "A3"),
                rates.marks().stream().map(RateMark::label).toList());
        assertTrue(rates.marks().stream().allMatch(mark -> mark.half() == null), "no end point is stated");
        RatePlot stated = (RatePlot)
                SeasonPage.of(Review.of(Pages.demoWithEndPoints()), DAY).plots().get("season-rates-3");
        assertTrue(stated.marks().stream().allMatch(mark -> mark.half() != null));
        MapPlot map = (MapPlot) plots.get("season-map-4");
        assertEquals(14.5, map.spots().get(1).x());
    }

    @Test
    void emptyBookHasAPage() {
        Document page = page(SeasonPage.of(Review.of(FieldBook.empty()), DAY));
        assertTrue(page.text().contains("0 visits, 0 runs, 0 findings, 0 problems"));
    }

    @Test
    void sameBytesEveryTime() {
        assertEquals(
                SeasonPage.of(Review.of(Pages.demo()), DAY).html(),
                SeasonPage.of(Review.of(Pages.demo()), DAY).html());
    }
}
