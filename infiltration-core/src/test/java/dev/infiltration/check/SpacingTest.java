// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static dev.infiltration.Amounts.at;
import static dev.infiltration.Amounts.ft;
import static dev.infiltration.Amounts.m;
import static dev.infiltration.Amounts.mm;
import static dev.infiltration.Amounts.time;
import static dev.infiltration.Season.and;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.Season;
import dev.infiltration.field.Location;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Pouring;
import dev.infiltration.field.PreWet;
import dev.infiltration.field.Ring;
import dev.infiltration.field.Surface;
import dev.infiltration.field.TestRun;
import dev.infiltration.units.Reading;
import java.time.LocalDate;
import java.util.List;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Clear distances between locations: taped, by local x and y; which tests are near enough in time to matter. */
class SpacingTest {

    private static final Season SI = Season.si();
    private static final LocationTest TEST = SI.book().visits().get(0).tests().get(0);
    private static final String NEAR = "visit.spacing DEVIATION LOWERS ";
    private static final String UNKNOWN = "visit.spacing-unknown CAUTION LOWERS ";

    /** The second location lies so far from the first, centre to centre. */
    private static Season centres(String metres) {
        return SI.location(1, l -> l.withX(m(metres)));
    }

    private static Season taped(Season season, int test, Reading<Length> distance) {
        return season.test(test, t -> t.withClearSpacing(distance));
    }

    @Test
    void theDistanceIsClearOfBothRings() {
        Ring wide = Ring.of("R2").withHeight(mm("100")).withInsideDiameter(mm("310"));
        Season season = SI.book(b -> b.withRings(and(b.rings(), wide))).test(1, t -> t.withRing("R2"));
        assertEquals(List.of(), season.location(1, l -> l.withX(m("1.305"))).findings());
        assertEquals(
                List.of(NEAR + "/visits/0/tests/1"),
                season.location(1, l -> l.withX(m("1.304"))).findings());
    }

    @Test
    void theDistanceIsTheStraightLine() {
        Season season = SI.location(1, l -> l.withX(m("0.5")).withY(m("1.2")));
        assertEquals(List.of(), season.findings(), "0.5, 1.2, 1.3");
        assertEquals(
                List.of(NEAR + "/visits/0/tests/1"),
                season.location(1, l -> l.withY(mm("1199"))).findings());
        assertEquals(
                List.of(),
                season.location(1, l -> l.withX(m("-0.5")).withY(m("-1.2"))).findings());
    }

    @ParameterizedTest
    @CsvSource({"1.305, true", "1.304, false"})
    void anUnknownOrUnusableRingCountsWithTheLargestDiameterAllowed(String metres, boolean isKept) {
        List<String> found = isKept ? List.of() : List.of(NEAR + "/visits/0/tests/1");
        Season unknown = centres(metres).test(1, t -> t.withRing("R9"));
        assertEquals(found, spacing(unknown));
        Season unusable = centres(metres)
                .book(b -> b.withRings(and(b.rings(), Ring.of("R2").withInsideDiameter(mm("0")))))
                .test(1, t -> t.withRing("R2"));
        assertEquals(found, spacing(unusable));
        assertEquals(found, spacing(centres(metres).test(1, t -> t.withRing(null))));
    }

    private static List<String> spacing(Season season) {
        return season.findings().stream()
                .filter(f -> f.startsWith("visit.spacing"))
                .toList();
    }

    @Test
    void aTapeOfAtLeastTheLimitClearsAllPairsOfItsTest() {
        Season near = centres("0.5");
        assertEquals(List.of(), taped(near, 0, m("1")).findings());
        assertEquals(List.of(), taped(near, 1, ft("3")).findings(), "3 ft is enough where it is written in feet");
        assertEquals(List.of(NEAR + "/visits/0/tests/1"), taped(near, 2, m("5")).findings());
        Season without = SI.location(1, l -> l.withX(null));
        assertEquals(List.of(), taped(without, 1, m("1")).findings());
        assertEquals(List.of(UNKNOWN + "/visits/0"), taped(without, 0, m("1")).findings(), "the third still unknown");
        assertEquals(List.of(), taped(taped(without, 0, m("1")), 2, m("1")).findings());
    }

    @Test
    void aShorterTapeBreaksPairsWhoseOtherTestIsNotCleared() {
        Season shorter = taped(SI, 1, m("0.999"));
        assertEquals(List.of(NEAR + "/visits/0/tests/1", NEAR + "/visits/0/tests/2"), shorter.findings());
        assertEquals(
                List.of(NEAR + "/visits/0/tests/2"), taped(shorter, 0, m("1")).findings());
        assertEquals(List.of(), taped(taped(shorter, 0, m("1")), 2, m("1")).findings());
        assertEquals(
                List.of(NEAR + "/visits/0/tests/1", NEAR + "/visits/0/tests/2"),
                taped(shorter, 0, ft("2.999")).findings());
    }

    @Test
    void aTestIsToldOnceHoweverManyAreNear() {
        Season season = SI.location(1, l -> l.withX(m("0.4"))).location(2, l -> l.withX(m("0.8")));
        assertEquals(List.of(NEAR + "/visits/0/tests/1", NEAR + "/visits/0/tests/2"), season.findings());
    }

    @Test
    void theLaterTestIsTold() {
        Season season = centres("0.5")
                .test(
                        1,
                        t -> t.withPreWet(t.preWet().withStart(at("06:10:00")))
                                .withRuns(List.of(t.runs().get(0).withStart(at("06:11:30")))));
        assertEquals(List.of(NEAR + "/visits/0/tests/0"), season.findings(), "the first of the book began later");
        Season together = centres("0.5")
                .test(
                        1,
                        t -> t.withPreWet(t.preWet().withStart(at("07:10:00")))
                                .withRuns(List.of(t.runs().get(0).withStart(at("07:11:30")))));
        assertEquals(List.of(NEAR + "/visits/0/tests/1"), together.findings(), "the later of the book");
    }

    @Test
    void aLocationIsNeverNearItself() {
        Season season = SI.andTest(t -> t.withId("V1-A1b")
                .withPreWet(t.preWet().withStart(at("11:00:00")))
                .withRuns(List.of()));
        assertEquals(List.of(), season.findings());
        assertEquals(
                List.of(),
                SI.test(1, t -> t.withLocation("A1")).visit(v -> v.withRequestedLocations(2)).findings().stream()
                        .filter(f -> f.startsWith("visit.spacing"))
                        .toList());
    }

    /** A fourth location half a metre from the first, tested at another visit. */
    private static Season nextDay(String date, String start) {
        PreWet preWet = TEST.preWet().withStart(start == null ? null : time(start));
        LocationTest test =
                TEST.withId("V2-A4").withLocation("A4").withPreWet(preWet).withRuns(List.of());
        Location fourth = Location.of("A4").withX(m("0.5")).withY(m("0"));
        return SI.surface(s -> s.withLocations(and(s.locations(), fourth)))
                .andVisit(v -> v.withId("V2")
                        .withDate(LocalDate.parse(date))
                        .withWeather(v.weather().withLastRainEnd(time("2026-05-01T10:00")))
                        .withRequestedLocations(0)
                        .withTests(List.of(test)));
    }

    /** The test at the first location begins at 07:10:00; 24 h (ASTM C1701/C1701M 7.2, memory). */
    @ParameterizedTest
    @CsvSource({
        "2026-06-04T07:09:59, later",
        "2026-06-04T07:10:00, none",
        "2026-06-04T07:09, none",
        "2026-06-04T07:08, later",
        "2026-06-02T07:10:01, first",
        "2026-06-02T07:10:00, none"
    })
    void onlyTestsLessThanADayApartAreNear(String start, String told) {
        Season season = nextDay(start.substring(0, 10), start);
        List<String> found = switch (told) {
            case "later" -> List.of(NEAR + "/visits/1/tests/0");
            case "first" -> List.of(NEAR + "/visits/0/tests/0");
            default -> List.of();
        };
        assertEquals(found, spacing(season));
    }

    @Test
    void withoutStartsTestsOfOneDateAreNear() {
        assertEquals(List.of(NEAR + "/visits/1/tests/0"), spacing(nextDay(Season.DATE, null)));
        assertEquals(List.of(), spacing(nextDay("2026-06-04", null)));
    }

    @Test
    void theStartOfAVoidRunCounts() {
        Season season = nextDay("2026-06-04", "2026-06-04T07:10:00");
        TestRun early = TestRun.of(time("2026-06-04T07:09:00"), null, null, Pouring.End.VOID);
        assertEquals(
                List.of(NEAR + "/visits/1/tests/0"),
                spacing(season.visit(
                        1, v -> v.withTests(List.of(v.tests().get(0).withRuns(List.of(early)))))));
    }

    @Test
    void onlyLocationsThatWereTestedAreNear() {
        Season season = centres("0.5")
                .test(1, t -> t.withPreWet(null).withRuns(List.of()).withNotTested(LocationTest.NotTested.SNOW));
        assertEquals(List.of(), spacing(season));
    }

    @Test
    void anotherSurfaceIsAnotherPlace() {
        Surface other =
                SI.book().sites().get(0).surfaces().get(0).withId("HQ-B").withArea(null);
        Season season = SI.site(site -> site.withSurfaces(and(site.surfaces(), other)))
                .andVisit(v -> v.withId("V2")
                        .withSurface("HQ-B")
                        .withRequestedLocations(3)
                        .withTests(v.tests().stream()
                                .map(t -> t.withId("V2-" + t.id())
                                        .withLocation(
                                                t.location().equals("A1")
                                                        ? "A2"
                                                        : t.location().equals("A2") ? "A1" : "A3"))
                                .toList()));
        assertEquals(List.of(), season.findings());
    }

    @Test
    void anUnknownDistanceIsToldOnceAVisit() {
        Season season = SI.surface(s ->
                s.withLocations(s.locations().stream().map(l -> l.withY(null)).toList()));
        assertEquals(List.of(UNKNOWN + "/visits/0"), season.findings());
    }

    /** The first was tested at 07:10:45; a day later one at 07:10, perhaps at 07:11:00, and one at 07:10:30. */
    @Test
    void aTimeToTheMinuteHidesNoneFromTheNextTest() {
        Season first = nextDay("2026-06-04", "2026-06-04T07:10").preWet(0, p -> p.withStart(at("07:10:45")));
        Season season = first.surface(s -> s.withLocations(
                        and(s.locations(), Location.of("A5").withX(m("-0.9")).withY(m("0")))))
                .visit(
                        1,
                        v -> v.withTests(and(
                                v.tests(),
                                v.tests()
                                        .get(0)
                                        .withId("V2-A5")
                                        .withLocation("A5")
                                        .withPreWet(TEST.preWet().withStart(time("2026-06-04T07:10:30"))))));
        assertEquals(List.of(NEAR + "/visits/1/tests/1"), spacing(season));
        assertEquals(List.of(), spacing(first), "a whole day between, read kindly");
    }
}
