// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.check.Checker;
import dev.infiltration.check.Finding;
import dev.infiltration.check.TestAt;
import dev.infiltration.check.VisitAt;
import dev.infiltration.field.Amendment;
import dev.infiltration.field.ClockTime;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.ReadBook;
import dev.infiltration.field.Visit;
import dev.infiltration.method.ReportItem;
import dev.infiltration.rate.RateEquation;
import dev.infiltration.review.Review;
import dev.infiltration.review.RunRate;
import dev.infiltration.rule.Effect;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** The report of a visit, on the invented demo season. */
class VisitReportTest {

    private static final Review REVIEW = Review.of(Pages.demo());

    private static Document page(String id) {
        return Pages.visit(REVIEW, id);
    }

    private static Review changed(String id, UnaryOperator<Visit> change) {
        return Review.of(Pages.demo(id, change));
    }

    private static VisitAt visit(Review review, String id) {
        return Pages.visitAt(review, id);
    }

    @Test
    void everyVisitOfTheBookHasItsReport() {
        assertEquals(REVIEW.surfaces().size(), VisitReport.all(REVIEW).size());
        VisitReport.all(REVIEW).forEach(report -> Pages.sound(report.html()));
    }

    @Test
    void deviationsStandBesideTheRateTheyPush() {
        int stated = 0;
        for (RunRate run : REVIEW.runs()) {
            TestAt test = run.run().test();
            Element part = location(page(test.visit().subject()), test.test().location());
            for (Finding finding : REVIEW.findings(run)) {
                boolean isDeviation = finding.effect().compareTo(Effect.DEVIATION) <= 0;
                assertTrue(part.text().contains(finding.message()), finding.toString());
                assertTrue(!isDeviation
                        || part.select("li").eachText().stream()
                                .anyMatch(line -> line.contains(finding.message())
                                        && line.contains(FindingWords.bias(finding.bias()))));
                stated += isDeviation ? 1 : 0;
            }
        }
        assertTrue(stated > 10);
    }

    private static Element location(Document page, String location) {
        return page.select("section[id^=location-]").stream()
                .filter(section -> section.selectFirst("h2").text().equals("Location " + location))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void deviationOfOneLocationIsNotStatedWithAnother() {
        String message = "prewetting with a mass outside the method's band";
        Document page = page("V2");
        assertTrue(location(page, "A2").text().contains(message));
        assertFalse(location(page, "A1").text().contains(message));
    }

    @Test
    void boundSaysWhatBoundsIt() {
        String text = location(page("V3"), "A4").text();
        assertTrue(text.contains("at most 6390 mm/h (252 in/h), from 1 run (a bound because of run.event)"), text);
        assertTrue(location(page("V3"), "A3").text().contains("not tested: parked vehicle"));
    }

    @Test
    void readingsStandAsWritten() {
        Element table = location(page("V2"), "A2").selectFirst("table");
        assertEquals(
                List.of("Reading", "Prewetting", "Run 1"),
                table.select("thead th").eachText());
        assertEquals(
                "Water poured 8.30 lb 40.02 lb", table.select("tbody tr").get(1).text());
        assertEquals(
                "Time taken 19.6 s 118.4 s", table.select("tbody tr").get(2).text());
    }

    @Test
    void everyFigureSaysWhereItComesFrom() {
        for (RunRate run : REVIEW.runs()) {
            Element origins = page(run.run().test().visit().subject()).getElementById("origins");
            Element row = origins.select("tr").stream()
                    .filter(each ->
                            each.select("code").text().equals(run.where().toString()))
                    .findFirst()
                    .orElseThrow();
            run.outcome()
                    .figure()
                    .ifPresent(rate -> assertTrue(row.text().contains(rate.millimetresPerHour() + " mm/h")));
            assertTrue(
                    run.constant().isEmpty()
                            || row.text().contains(run.constant().get().toString()),
                    row.text());
            assertTrue(origins.text().contains("I = K\u00B7M/(D\u00B2\u00B7t)"));
            assertTrue(origins.text().contains("not verified against the licensed edition"));
        }
    }

    @Test
    void limitsStandWithTheirSourceAndItsTrust() {
        String limits = page("V1").getElementById("limits").text();
        assertTrue(
                limits.contains("Prewetting water 3.55 to 3.65 kg 7.9 to 8.1 lb ASTM C1701/C1701M, 8.2 (memory)"),
                limits);
        assertTrue(limits.startsWith("Limits of the method Limits not verified against the licensed edition."), limits);
    }

    @Test
    void whatIsMissingIsNamed() {
        Review review = changed("V1", visit -> visit.withWeather(null));
        VisitReport report = VisitReport.of(review, visit(review, "V1"));
        assertEquals(List.of(ReportItem.Item.LAST_RAIN_DEPTH), report.missing());
        assertTrue(report.markdown().contains("Missing: Last rain depth."));
        assertTrue(report.markdown().contains("- **Last rain depth**: *not recorded*"));
    }

    @Test
    void everyItemThatTheMethodAsksForStandsThere() {
        Document page = page("V6");
        assertEquals(
                List.of(
                        "Identification",
                        "Location",
                        "Site description",
                        "Age",
                        "Thickness",
                        "Date",
                        "Start finish",
                        "Crew",
                        "Weather",
                        "Surface temperature",
                        "Photo"),
                page.getElementById("items").select("dt").eachText());
        assertTrue(page.getElementById("items")
                .text()
                .contains("placed on 2020-06-30, 5 years and 1 month before the visit"));
    }

    @Test
    void amendmentsAreToldInFull() {
        Amendment amendment = Amendment.of(
                ClockTime.parse("2023-06-08T08:00"),
                "MV",
                "/visits/0/tests/0/runs/0/elapsed",
                "63.2 s",
                "62.3 s",
                "digits swapped");
        Review review = changed("V1", visit -> visit.withAmendments(List.of(amendment)));
        Document page = Pages.sound(VisitReport.of(review, visit(review, "V1")).html());
        assertEquals(
                "2023-06-08T08:00 MV /visits/0/tests/0/runs/0/elapsed 63.2 s 62.3 s digits swapped",
                page.select("#amendments tbody tr").text());
        assertTrue(page("V2").getElementById("amendments").text().contains("Nothing was amended."));
    }

    @Test
    void cautionsAndWhomToDeferToCloseTheReport() {
        String cautions = page("V1").select("main > section").last().text();
        Cautions.OF_A_REVIEW.forEach(caution -> assertTrue(cautions.contains(caution)));
        assertTrue(cautions.contains("engineer of record"));
    }

    @Test
    void visitOfWhichNothingIsKnownHasAReport() {
        Visit bare = Visit.of(null, null, null);
        Review review = Review.of(FieldBook.empty().withVisits(List.of(bare)));
        String text = Pages.sound(VisitReport.all(review).get(0).html()).text();
        assertTrue(text.contains("Infiltration tests, visit 1"), text);
        assertTrue(text.contains("not recorded"));
    }

    @Test
    void anotherEquationIsNamed() {
        Checker checker =
                Checker.withDefaults().withEquation(RateEquation.asPublished().withWaterDensity(998.2));
        Review review = Review.of(ReadBook.of(Pages.demo()), checker);
        String origins = Pages.sound(VisitReport.all(review).get(0).html())
                .getElementById("origins")
                .text();
        assertTrue(origins.contains("from geometry, water of 998.20 kg/m\u00B3"), origins);
        assertTrue(origins.contains("Changed by the user: "), origins);
    }

    @Test
    void sameBytesEveryTime() {
        VisitReport report = VisitReport.of(REVIEW, visit(REVIEW, "V2"));
        Review again = Review.of(Pages.demo());
        assertEquals(
                report.markdown(), VisitReport.of(again, visit(again, "V2")).markdown());
        assertEquals(report.html(), VisitReport.of(again, visit(again, "V2")).html());
    }
}
