// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.method.Band;
import dev.infiltration.method.Basis;
import dev.infiltration.method.Limit;
import dev.infiltration.method.Methods;
import dev.infiltration.method.Range;
import dev.infiltration.method.ReportItem;
import dev.infiltration.method.TestMethod;
import dev.infiltration.review.Review;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.util.List;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The blank form says what the method's data says, whatever those are. */
class FieldFormTest {

    private static Document page(FieldForm form) {
        return Pages.sound(form.html());
    }

    @Test
    void everyBuiltInMethodHasASoundForm() {
        for (TestMethod method : Methods.builtIn().all()) {
            Document page = page(FieldForm.of(method));
            assertTrue(page.text().contains(method.designation()));
            assertTrue(page.text().contains("Limits not verified against the licensed edition."));
            assertTrue(page.text().contains("engineer of record"));
        }
    }

    @Test
    void eachLocationHasItsOwnPart() {
        assertEquals(
                3,
                page(FieldForm.of(Methods.unitPavement()))
                        .select("section[id^=location-]")
                        .size());
        assertEquals(
                2,
                page(FieldForm.of(Methods.utilityPractice()))
                        .select("section[id^=location-]")
                        .size());
        FieldForm five = FieldForm.of(Methods.unitPavement()).withLocations(5);
        assertEquals(
                "Location 5 of 5",
                page(five).select("section[id^=location-] h2").last().text());
    }

    @Test
    void thereIsAColumnForThePrewettingAndForEachRunOfADay() {
        TestMethod three = Methods.unitPavement().withRunsPerDay(3);
        assertEquals(
                List.of("Reading", "Asked for", "Prewetting", "Run 1", "Run 2", "Run 3"),
                pourings(FieldForm.of(three)).select("thead th").eachText());
    }

    private static Element pourings(FieldForm form) {
        return page(form).select("section[id^=location-] table").get(1);
    }

    @Test
    void limitsAreThoseOfTheMethod() {
        Element table = pourings(FieldForm.of(Methods.unitPavement()));
        assertTrue(table.text().contains("Prewetting 3.55 to 3.65 kg; 7.9 to 8.1 lb"), table.text());
        assertTrue(table.text().contains("prewetting below 30 s: 17.95 to 18.05 kg; 39.90 to 40.10 lb"), table.text());
        TestMethod other = Methods.unitPavement()
                .with(
                        Limit.PREWET_MASS,
                        Band.inBoth(
                                Range.around(Reading.of("5.00", FieldUnit.KILOGRAM), "0.10"), Basis.commonPractice()));
        assertTrue(pourings(FieldForm.of(other)).text().contains("Prewetting 4.90 to 5.10 kg"));
    }

    @Test
    void thereIsRoomForPoursTimesAndEvents() {
        Document page = page(FieldForm.of(Methods.unitPavement()));
        String rows = pourings(FieldForm.of(Methods.unitPavement()))
                .select("tbody th")
                .text();
        assertEquals(
                "Start, h:min:s Water poured Vessel 1, before / after Vessel 2, before / after Time taken, s Ended"
                        + " Void because Depth left standing Head",
                rows);
        Element events = page.select("section[id^=location-] table").get(2);
        assertTrue(events.selectFirst("caption").text().contains("leak"));
        assertEquals(4, events.select("tbody tr").size());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    IDENTIFICATION       | Visit no., date            | Test no., location, zone, place
                    LOCATION             | Test no., location, zone, place |
                    SITE_DESCRIPTION     | Site in words              |
                    PAVEMENT_DESCRIPTION | Unit type, laying pattern, joint filling |
                    AGE                  | Day the surface was placed |
                    THICKNESS            | Thickness                  |
                    DATE                 | Visit no., date            |
                    START_FINISH         | Start, h:min:s             | Time taken, s
                    CREW                 | Crew, initials and roles   |
                    WEATHER              | Weather, air temperature   |
                    LAST_RAIN_DEPTH      | Last rain ended, its depth |
                    SURFACE_TEMPERATURE  | Surface, water temperature |
                    PHOTO                | Photographs                |
                    """)
    void everyItemThatAReportMustStateHasARow(ReportItem.Item item, String row, String other) {
        TestMethod method = Methods.unitPavement().withReportItems(List.of(ReportItem.of(item)));
        List<String> rows = page(FieldForm.of(method)).select("tbody th").eachText();
        assertTrue(rows.contains(row), rows.toString());
        assertTrue(other == null || rows.contains(other), rows.toString());
    }

    @Test
    void surfaceIsDescribedOnlyAsTheMethodAsks() {
        String concrete = page(FieldForm.of(Methods.perviousConcrete())).text();
        assertTrue(concrete.contains("Day the surface was placed"));
        assertFalse(concrete.contains("Unit type"));
        String units = page(FieldForm.of(Methods.unitPavement())).text();
        assertTrue(units.contains("Unit type"));
        assertFalse(units.contains("Day the surface was placed"));
    }

    @Test
    void ringAndSpotHaveRowsOfTheirOwn() {
        Element spot = page(FieldForm.of(Methods.unitPavement()))
                .select("section[id^=location-] table")
                .first();
        List<List<String>> rows = Pages.rows(spot);
        assertTrue(
                rows.contains(List.of(
                        "Ring no., height",
                        Methods.unitPavement().limit(Limit.RING_HEIGHT).toString(),
                        "")),
                rows.toString());
        assertTrue(
                rows.stream()
                        .anyMatch(row -> row.get(0).equals("Ring, inside diameters")
                                && row.get(1).endsWith("; read to 1 mm; 0.05 in")),
                rows.toString());
        assertTrue(spot.select("tbody th").eachText().containsAll(List.of("Slope", "Note")));
    }

    @Test
    void formsOfAReviewAreThoseOfItsMethods() {
        List<String> names = FieldForm.all(Review.of(Pages.demo())).stream()
                .map(FieldForm::name)
                .toList();
        assertEquals(List.of("unit-pavement", "pervious-concrete", "utility-practice"), names);
    }

    @Test
    void wordsOfAMethodStayText() {
        TestMethod method = Methods.unitPavement().withDesignation("<script>alert(1)</script>");
        assertTrue(page(FieldForm.of(method)).selectFirst("h1").text().contains("<script>alert(1)</script>"));
    }

    @Test
    void noFormHasNoLocation() {
        FieldForm form = FieldForm.of(Methods.unitPavement());
        assertThrows(IllegalArgumentException.class, () -> form.withLocations(0));
        assertThrows(IllegalArgumentException.class, () -> form.withLocations(201));
    }
}
