// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static dev.infiltration.Amounts.at;
import static dev.infiltration.Amounts.celsius;
import static dev.infiltration.Amounts.kg;
import static dev.infiltration.Amounts.lb;
import static dev.infiltration.Amounts.litres;
import static dev.infiltration.Amounts.mm;
import static dev.infiltration.Amounts.s;
import static dev.infiltration.Season.and;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.Season;
import dev.infiltration.field.Event;
import dev.infiltration.field.Head;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Pouring.End;
import dev.infiltration.field.Ring;
import dev.infiltration.field.Surface;
import dev.infiltration.field.Weather;
import dev.infiltration.method.Band;
import dev.infiltration.method.Limit;
import dev.infiltration.method.Methods;
import dev.infiltration.method.Range;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which method judges a visit and a ring, and what is said where the method is not known. */
class MethodRulesTest {

    private static final Season SI = Season.si();
    private static final String UNKNOWN = "visit.method-unknown OMISSION NONE /visits/0";
    private static final String RUN = "/visits/0/tests/0/runs/0";

    @ParameterizedTest
    @ValueSource(
            strings = {
                "unit-pavement",
                "C1781",
                "C1781M",
                "C1781/C1781M",
                "ASTM C1781",
                "astm c1781/c1781m-21",
                "Unit-Pavement",
                "ASTM C1781/C1781M-14a"
            })
    void aMethodIsKnownByItsIdAndAliases(String name) {
        assertEquals(List.of(), SI.visit(v -> v.withMethod(name)).findings());
    }

    @Test
    void anotherStandardsNameMeansItsOwnMethod() {
        assertEquals(
                List.of("visit.surface-type CAUTION NONE /visits/0"),
                SI.visit(v -> v.withMethod("C1701")).findings());
    }

    /** Requirements of one method only: its location count, or an item of its report. */
    @ParameterizedTest
    @CsvSource({
        "PERVIOUS_CONCRETE, pervious-concrete",
        "PAVERS, unit-pavement",
        "GRID, unit-pavement",
        "POROUS_ASPHALT, utility-practice",
        "OTHER, utility-practice",
        ", utility-practice"
    })
    void aVisitWithoutMethodIsJudgedByTheKindOfSurface(Surface.Type type, String method) {
        Season bare = SI.visit(v -> v.withCrew(List.of()))
                .surface(f -> f.withType(type)
                        .withDescription(null)
                        .withThickness(null)
                        .withThicknessIs(null));
        List<String> named = bare.visit(v -> v.withMethod(method)).findings();
        List<String> unnamed = bare.visit(v -> v.withMethod(null)).findings();
        assertEquals(List.of("report.missing OMISSION NONE /visits/0"), named);
        assertEquals(
                List.of("visit.method-unrecorded CAUTION NONE /visits/0", "report.missing OMISSION NONE /visits/0"),
                unnamed);
        assertEquals(observed(bare.visit(v -> v.withMethod(method))), observed(bare.visit(v -> v.withMethod(null))));
    }

    private static String observed(Season season) {
        List<Finding> findings = Checker.withDefaults()
                .withToday(Season.TODAY)
                .check(season.book())
                .findings();
        return findings.get(findings.size() - 1).observed();
    }

    @Test
    void anUnknownMethodSilencesEveryMethodRule() {
        Season bad = SI.visit(v -> v.withMethod("bucket")
                        .withSwept(false)
                        .withPotableWater(false)
                        .withStandingWater(true)
                        .withCrew(List.of())
                        .withInstruments(List.of())
                        .withWeather(Weather.of()))
                .surface(f -> f.withArea(null).withDescription(null))
                .ring(r -> r.withInsideDiameter(mm("4.0e2")).withHeight(mm("1")))
                .location(1, l -> l.withX(null))
                .preWet(0, p -> p.withWater(kg("9")).withHead(Head.of(Head.State.BELOW)))
                .run(0, 0, r -> r.withWater(kg("9")).withHead(Head.of(Head.State.ABOVE)))
                .run(0, 1, r -> r.withDelay(s("9999")))
                .test(1, t -> t.withPreWet(null).withSurfaceTemperature(celsius("50")));
        assertEquals(List.of(UNKNOWN), bad.findings());
    }

    @Test
    void otherRulesSpeakWithoutAMethod() {
        Season bad = SI.visit(
                        v -> v.withMethod("bucket").withWeather(v.weather().withAir(celsius("-1"))))
                .run(0, 0, r -> r.withWater(litres("18")).withElapsed(s("13")))
                .run(0, 1, r -> r.withWater(lb("40")).withEnd(null))
                .run(1, 0, r -> r.withEvents(List.of(Event.of(Event.Kind.LEAK))))
                .run(1, 1, r -> r.withEnd(End.STOPPED))
                .preWet(2, p -> p.withEnd(End.STOPPED))
                .test(2, t -> t.withSurfaceTemperature(celsius("0")));
        assertEquals(
                List.of(
                        UNKNOWN,
                        "visit.freezing CAUTION LOWERS /visits/0",
                        "visit.mixed-units CAUTION NONE /visits/0",
                        "run.water-by-volume DEVIATION EITHER " + RUN,
                        "run.implausible CAUTION EITHER " + RUN,
                        "run.end-unrecorded OMISSION RAISES /visits/0/tests/0/runs/1",
                        "run.event CAUTION RAISES /visits/0/tests/1/runs/0",
                        "run.discontinued CAUTION RAISES /visits/0/tests/1/runs/1",
                        "visit.freezing CAUTION LOWERS /visits/0/tests/2",
                        "prewet.discontinued CAUTION NONE /visits/0/tests/2/preWet",
                        "prewet.standing DEVIATION LOWERS /visits/0/tests/2/runs/0"),
                bad.findings());
    }

    @Test
    void aRingIsJudgedByTheMethodOfEachVisitThatUsesIt() {
        Season season = SI.ring(r -> r.withHeight(mm("55")))
                .andVisit(v -> v.withId("V2")
                        .withDate(v.date().minusDays(2))
                        .withMethod("tall")
                        .withTests(List.of(v.tests()
                                .get(0)
                                .withId("V2-A1")
                                .withPreWet(null)
                                .withRuns(List.of())
                                .withNotTested(LocationTest.NotTested.OTHER)))
                        .withRequestedLocations(0));
        var tall = Methods.unitPavement().withId("tall").withAliases(List.of());
        var height = tall.limit(Limit.RING_HEIGHT);
        var sixty = new Band<>(Range.atLeast(mm("60")), height.inchPound(), height.basis());
        Checker checker =
                Checker.withDefaults().withMethods(Methods.builtIn().with(tall.with(Limit.RING_HEIGHT, sixty)));
        assertEquals(
                List.of("ring.height DEVIATION NONE /rings/0", "test.not-tested CAUTION NONE /visits/1/tests/0"),
                season.findings(checker));
        Season low = season.ring(r -> r.withHeight(mm("45")));
        Finding finding =
                checker.withToday(Season.TODAY).check(low.book()).findings().get(0);
        assertEquals("ring.height", finding.rule());
        assertTrue(finding.allowed().contains("50 mm") && finding.allowed().contains("60 mm"), finding.allowed());
    }

    @Test
    void aRingThatNoVisitUsesIsJudgedForBeingUsableAndSingleAlone() {
        var spare = Ring.of("R2").withHeight(mm("1")).withInsideDiameter(mm("4.0e2"));
        assertEquals(List.of(), SI.book(b -> b.withRings(and(b.rings(), spare))).findings());
        assertEquals(
                List.of("ring.unusable NO_RATE NONE /rings/1"),
                SI.book(b -> b.withRings(and(b.rings(), spare.withInsideDiameter(null))))
                        .findings());
    }

    @Test
    void aRingsSpreadIsThatOfItsPositiveDiametersWhereAVisitUsesIt() {
        Checker checker = Row.limits(UserLimits.none().withOutOfRound(mm("2")));
        var oval = SI.book().rings().get(0).withInsideDiameters(List.of(mm("300"), mm("303")));
        String found = "ring.out-of-round CAUTION EITHER /rings/0";
        assertEquals(List.of(found), SI.ring(r -> oval).findings(checker));
        assertEquals(
                List.of(UNKNOWN, found),
                SI.ring(r -> oval).visit(v -> v.withMethod("bucket")).findings(checker).stream()
                        .sorted(Comparator.reverseOrder())
                        .toList(),
                "without a method too");
        assertEquals(
                List.of(),
                SI.book(b -> b.withRings(and(b.rings(), oval.withId("R2")))).findings(checker));
        assertEquals(
                List.of(),
                SI.ring(r -> oval.withInsideDiameters(List.of(mm("300"), mm("0"), mm("301"))))
                        .findings(checker));
    }

    @Test
    void ofManyTestsInTheRainFiveAreNamed() {
        Season season = SI.weather(weather -> weather.withRainFrom(at("06:00")));
        for (int i = 0; i < 4; i++) {
            String id = "more-" + i;
            season = season.andTest(test -> test.withId(id));
        }
        String observed = Checker.withDefaults().check(season.book()).findings().stream()
                .filter(finding -> finding.rule().equals("visit.rain-during"))
                .map(Finding::observed)
                .findFirst()
                .orElseThrow();
        assertTrue(observed.endsWith(" and 2 more)"), observed);
    }
}
