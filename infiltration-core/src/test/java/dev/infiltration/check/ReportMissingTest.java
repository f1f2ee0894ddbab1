// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.Season;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Surface;
import dev.infiltration.field.Visit;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What each method's report must state; C1701 10.1 and utility practice (memory, common practice). */
class ReportMissingTest {

    private static final Season SI = Season.si();
    private static final Season UTILITY = SI.visit(v -> v.withMethod("utility-practice"));
    private static final String FOUND = "report.missing OMISSION NONE /visits/0";

    /** {@return the items missing, as the finding lists them; empty where nothing was found} */
    private static String missing(Season season) {
        return Checker.withDefaults().withToday(Season.TODAY).check(season.book()).findings().stream()
                .filter(f -> f.rule().equals("report.missing"))
                .map(Finding::observed)
                .collect(Collectors.joining("; "));
    }

    private static Season bare(String method, Surface.Type type) {
        Season season = SI.visit(v -> Visit.of(null, v.surface(), null)
                .withMethod(method)
                .withTests(v.tests().stream()
                        .map(t -> LocationTest.of(null, null, t.ring())
                                .withPreWet(t.preWet().withStart(null)))
                        .toList()));
        return season.surface(s -> Surface.of(s.id()).withType(type).withLocations(s.locations()))
                .site(site -> site.withDescription(""));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            pervious-concrete | PERVIOUS_CONCRETE | identification location age thickness date last-rain-depth
            pervious-concrete | PAVERS | identification location age thickness date last-rain-depth
            unit-pavement | PAVERS | identification location pavement-description date last-rain-depth
            unit-pavement | | identification location pavement-description date last-rain-depth
            utility-practice | PAVERS | identification location site-description pavement-description date start-finish crew weather surface-temperature photo
            utility-practice | GRID | identification location site-description pavement-description date start-finish crew weather surface-temperature photo
            utility-practice | OTHER | identification location site-description pavement-description date start-finish crew weather surface-temperature photo
            utility-practice | POROUS_ASPHALT | identification location site-description age thickness date start-finish crew weather surface-temperature photo
            utility-practice | PERVIOUS_CONCRETE | identification location site-description age thickness date start-finish crew weather surface-temperature photo
            utility-practice | | identification location site-description date start-finish crew weather surface-temperature photo
            """)
    void everyItemOfTheMethodIsAskedFor(String method, Surface.Type type, String items) {
        assertEquals(items, missing(bare(method, type)));
    }

    @Test
    void oneItemAloneIsNamed() {
        assertEquals("identification", missing(SI.visit(v -> v.withId(null))));
        assertEquals("identification", missing(SI.test(1, t -> t.withId(""))));
        assertEquals("location", missing(SI.test(1, t -> t.withLocation(null))));
        assertEquals("site-description", missing(UTILITY.site(s -> s.withDescription(""))));
        assertEquals("pavement-description", missing(SI.surface(s -> s.withDescription(""))));
        assertEquals("date", missing(SI.visit(v -> v.withDate(null))));
        assertEquals("crew", missing(UTILITY.visit(v -> v.withCrew(List.of()))));
        assertEquals("weather", missing(UTILITY.weather(w -> w.withDescription(""))));
        assertEquals("weather", missing(UTILITY.visit(v -> v.withWeather(null))));
        assertEquals("last-rain-depth", missing(SI.weather(w -> w.withLastRainDepth(null))));
        assertEquals("surface-temperature", missing(UTILITY.test(2, t -> t.withSurfaceTemperature(null))));
        assertEquals("photo", missing(UTILITY.test(2, t -> t.withPhotos(List.of()))));
    }

    @Test
    void ageAndThicknessAreAskedForConcrete() {
        Season concrete = SI.visit(v -> v.withMethod("pervious-concrete"))
                .surface(s -> s.withType(Surface.Type.PERVIOUS_CONCRETE).withDescription(null));
        assertEquals("", missing(concrete));
        assertEquals("age", missing(concrete.surface(s -> s.withPlacedOn(null))));
        assertEquals("thickness", missing(concrete.surface(s -> s.withThickness(null))));
        assertEquals("thickness", missing(concrete.surface(s -> s.withThicknessIs(null))), "estimated or actual");
    }

    @Test
    void aRainDepthMayBeUnknownInWords() {
        Season season = SI.weather(w -> w.withLastRainDepth(null).withDescription("clear, last rain unknown"));
        assertEquals("", missing(season));
        assertEquals("", missing(season.weather(w -> w.withDescription("Unknown before Monday"))));
        assertEquals("last-rain-depth", missing(season.weather(w -> w.withDescription("an unknownish sky"))), "a word");
        assertEquals("last-rain-depth", missing(season.weather(w -> w.withDescription("clear"))));
    }

    @Test
    void startAndFinishAreTheFirstStartAndTheLastTime() {
        assertEquals("start-finish", missing(UTILITY.run(1, 1, r -> r.withElapsed(null))));
        assertEquals("", missing(UTILITY.run(1, 0, r -> r.withElapsed(null))), "the last one's time alone");
        assertEquals("", missing(UTILITY.run(1, 1, r -> r.withStart(null))));
        assertEquals("", missing(UTILITY.test(1, t -> t.withRuns(List.of()))), "a prewetting has both");
    }

    @Test
    void onlyTestsThatWereMadeAreAskedForWhatIsKeptOnTests() {
        Season season = UTILITY.andTest(t -> LocationTest.of("V1-B", "A1", null));
        assertEquals("", missing(season));
        assertEquals("", missing(season.test(3, t -> t.withId(null).withLocation(null))));
    }

    @Test
    void itIsToldOnceAVisitForEveryVisit() {
        Season season = UTILITY.visit(v -> v.withCrew(List.of()))
                .andVisit(v -> v.withId("V2")
                        .withTests(List.of())
                        .withRequestedLocations(0)
                        .withMethod("C1781"))
                .surface(s -> s.withDescription(null));
        assertEquals(List.of(FOUND, "report.missing OMISSION NONE /visits/1"), season.findings());
        assertEquals("pavement-description crew; pavement-description", missing(season));
    }
}
