// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static dev.infiltration.Amounts.celsius;
import static dev.infiltration.Amounts.kg;
import static dev.infiltration.Amounts.m;
import static dev.infiltration.Amounts.mm;
import static dev.infiltration.Amounts.s;
import static dev.infiltration.Amounts.time;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.Season;
import dev.infiltration.method.Band;
import dev.infiltration.method.Basis;
import dev.infiltration.method.Limit;
import dev.infiltration.method.MassStep;
import dev.infiltration.method.Methods;
import dev.infiltration.method.Range;
import dev.infiltration.method.TestMethod;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.measure.Quantity;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each limit of the method altered (invented figures): what was kept is broken, for no number of a method stands in a rule. */
class AlteredLimitsTest {

    private static final Season SI = Season.si();
    private static final TestMethod METHOD = Methods.unitPavement();
    private static final Basis BASIS = Basis.commonPractice();

    /** A limit altered, a season that keeps the method as it is, and what is found in it by the altered one. */
    private record Altered(String limit, TestMethod method, Season season, String rule) {
        @Override
        public String toString() {
            return limit;
        }
    }

    private static <Q extends Quantity<Q>> Band<Q> atMost(Reading<Q> highest) {
        return Band.inBoth(Range.atMost(highest), BASIS);
    }

    private static <Q extends Quantity<Q>> Band<Q> atLeast(Reading<Q> lowest) {
        return Band.inBoth(Range.atLeast(lowest), BASIS);
    }

    private static <Q extends Quantity<Q>> Band<Q> between(Reading<Q> lowest, Reading<Q> highest) {
        return Band.inBoth(new Range<>(lowest, highest), BASIS);
    }

    private static Altered altered(String limit, Function<TestMethod, TestMethod> change, Season season, String rule) {
        return new Altered(limit, change.apply(METHOD), season, rule);
    }

    static Stream<Altered> altered() {
        Season nearby = SI.location(1, location -> location.withX(m("1.4")));
        return Stream.of(
                altered(
                        "insideDiameter",
                        x -> x.with(Limit.INSIDE_DIAMETER, between(mm("301"), mm("310"))),
                        SI,
                        "ring.inside-diameter"),
                altered("ringHeight", x -> x.with(Limit.RING_HEIGHT, atLeast(mm("101"))), SI, "ring.height"),
                altered(
                        "diameterResolution",
                        x -> x.with(Limit.DIAMETER_RESOLUTION, atMost(mm("0.5"))),
                        SI,
                        "ring.resolution"),
                altered("head", x -> x.with(Limit.HEAD, between(mm("12"), mm("13"))), SI, "prewet.head"),
                altered("head, run", x -> x.with(Limit.HEAD, between(mm("12"), mm("13"))), SI, "run.head"),
                altered(
                        "preWetMass",
                        x -> x.with(Limit.PREWET_MASS, atLeast(kg("3.61").mass())),
                        SI,
                        "prewet.mass"),
                altered(
                        "massSteps",
                        x -> x.withMassSteps(
                                List.of(new MassStep(null, atLeast(kg("18.01").mass())))),
                        SI,
                        "run.mass"),
                altered(
                        "massSteps, time",
                        x -> x.withMassSteps(List.of(
                                new MassStep(s("20"), METHOD.massSteps().get(0).mass()),
                                METHOD.massSteps().get(1))),
                        SI,
                        "run.mass"),
                altered(
                        "massResolution",
                        x -> x.with(Limit.MASS_RESOLUTION, atMost(kg("0.005").mass())),
                        SI,
                        "visit.resolution"),
                altered(
                        "timeResolution",
                        x -> x.with(Limit.TIME_RESOLUTION, atMost(s("0.05"))),
                        SI,
                        "visit.resolution"),
                altered("startDelay", x -> x.with(Limit.START_DELAY, atMost(s("60"))), SI, "run.start-delay"),
                altered("repeatDelay", x -> x.with(Limit.REPEAT_DELAY, atMost(s("60"))), SI, "run.repeat-delay"),
                altered("runsPerDay", x -> x.withRunsPerDay(1), SI, "run.too-many"),
                altered(
                        "dryTime",
                        x -> x.with(Limit.DRY_TIME, atLeast(Reading.of("48", FieldUnit.HOUR))),
                        SI,
                        "visit.rain"),
                altered("clearSpacing", x -> x.with(Limit.CLEAR_SPACING, atLeast(m("1.2"))), nearby, "visit.spacing"),
                altered(
                        "surfaceTemperature",
                        x -> x.with(Limit.SURFACE_TEMPERATURE, atMost(celsius("30"))),
                        SI,
                        "visit.hot-surface"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("altered")
    void ruleGoesByTheMethodsOwnLimit(Altered altered) {
        String rule = altered.rule();
        assertEquals(
                0,
                altered.season().findings().stream()
                        .filter(f -> f.startsWith(rule + " "))
                        .count());
        Checker checker = Checker.withDefaults().withMethods(Methods.builtIn().with(altered.method()));
        List<String> found = altered.season().findings(checker);
        assertEquals(
                List.of(rule),
                found.stream()
                        .map(f -> f.substring(0, f.indexOf(' ')))
                        .filter(rule::equals)
                        .distinct()
                        .toList());
    }

    /** Two adjacent tests two days apart: met if the method requires one day, broken if it requires three. */
    @org.junit.jupiter.api.Test
    void spacingTimeIsTheMethodsOwn() {
        Season days = SI.location(1, location -> location.withX(m("0.5")))
                .visit(visit -> visit.withTests(visit.tests().subList(0, 1)))
                .andVisit(visit -> visit.withId("V2")
                        .withDate(visit.date().plusDays(2))
                        .withTests(List.of(visit.tests()
                                .get(0)
                                .withId("V2-A2")
                                .withLocation("A2")
                                .withPreWet(visit.tests().get(0).preWet().withStart(time("2026-06-05T07:10:00")))
                                .withRuns(List.of()))));
        assertEquals(0, spacing(days, METHOD));
        assertEquals(1, spacing(days, METHOD.with(Limit.SPACING_TIME, atLeast(Reading.of("72", FieldUnit.HOUR)))));
    }

    private static long spacing(Season season, TestMethod method) {
        Checker checker = Checker.withDefaults().withMethods(Methods.builtIn().with(method));
        return season.findings(checker).stream()
                .filter(f -> f.startsWith("visit.spacing "))
                .count();
    }
}
