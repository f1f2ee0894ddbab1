// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static dev.infiltration.Amounts.at;
import static dev.infiltration.Amounts.kg;
import static dev.infiltration.Amounts.m;
import static dev.infiltration.Amounts.mm;
import static dev.infiltration.Amounts.time;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.Season;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Location;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Maintenance;
import dev.infiltration.field.Position;
import dev.infiltration.field.Pour;
import dev.infiltration.field.Pouring;
import dev.infiltration.field.Ring;
import dev.infiltration.field.Surface;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.Visit;
import dev.infiltration.field.Weather;
import dev.infiltration.method.Methods;
import dev.infiltration.plan.ExpectedRate;
import dev.infiltration.plan.LocationSample;
import dev.infiltration.plan.SurfaceOutline;
import dev.infiltration.plan.VisitPlan;
import dev.infiltration.rate.Instruments;
import dev.infiltration.rate.RateEquation;
import dev.infiltration.report.VisitReport;
import dev.infiltration.review.Review;
import dev.infiltration.summary.LocationRate;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import java.lang.management.ManagementFactory;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A book of a million tests is checked in seconds, also where all of them are neighbours in space or time. */
class LargeBookTest {

    private static final Season SI = Season.si();
    private static final LocationTest TEST = SI.book().visits().get(0).tests().get(0);
    private static final LocationTest BARE = TEST.withRuns(TEST.runs().subList(0, 1));

    /** Of a processor, so that other work on the machine does not count; about four times what it takes. */
    private static final double MOST_SECONDS_PER_MILLION = 80;

    /** What a hundred tests may take beyond that, to warm up. */
    private static final double START = 5;

    @ParameterizedTest
    @ValueSource(ints = 20_000)
    void checkingIsNotQuadratic(int tests) {
        everyShape(tests);
    }

    @Tag("slow")
    @ParameterizedTest
    @ValueSource(ints = 1_000_000)
    void aMillionTestsAreCheckedInSeconds(int tests) {
        everyShape(tests);
    }

    private static void everyShape(int tests) {
        int side = (int) Math.ceil(Math.sqrt(tests));
        check("x and y", tests, 0, onOneSurface(tests, i -> local(i % side, i / side)));
        check("positions", tests, 0, onOneSurface(tests, i -> placed(i % side, i / side, "0.1")));
        check(
                "coarse positions",
                tests,
                1,
                onOneSurface(tests, i -> placed(i % side, i / side, i == 0 ? "9000" : "3")));
        check("one point", tests, tests - 1, onOneSurface(tests, i -> placed(0, 0, "0.5")));
        check("one location", tests, 3 * tests - 3, atOneLocation(tests));
        check("one test", tests, 2 * tests - 3, oneTest(tests));
        check("many visits", tests, 0, manyVisits(tests));
        check("one campaign, two visits a day", tests, 0, oneCampaign(tests));
        check("one day of much maintenance", tests, 3 * tests - 3, manyMaintenances(tests));
    }

    private static void check(String shape, int tests, int findings, FieldBook book) {
        var clock = ManagementFactory.getThreadMXBean();
        long before = clock.getCurrentThreadCpuTime();
        List<Finding> found =
                Checker.withDefaults().withToday(Season.TODAY).check(book).findings();
        double seconds = (clock.getCurrentThreadCpuTime() - before) / 1e9;
        assertEquals(findings, found.size(), shape);
        assertTrue(seconds < START + MOST_SECONDS_PER_MILLION * tests / 1e6, shape + " took " + seconds + " s");
    }

    /** Two metres and more from each other. */
    private static Location local(int column, int row) {
        return Location.of(null).withX(m(Integer.toString(2 * column))).withY(m(Integer.toString(2 * row)));
    }

    /** Two metres and more from each other in Harrow Quay: 0.00002 degrees to the north, 0.00003 to the east. */
    private static Location placed(int column, int row, String accuracy) {
        BigDecimal latitude = new BigDecimal("44.9").add(BigDecimal.valueOf(2L * column, 5));
        BigDecimal longitude = new BigDecimal("-87.2").add(BigDecimal.valueOf(3L * row, 5));
        return Location.of(null).withPosition(Position.of(latitude, longitude).withAccuracy(m(accuracy)));
    }

    private static FieldBook onOneSurface(int tests, IntFunction<Location> location) {
        return onOneSurface(tests, location, BARE);
    }

    private static FieldBook onOneSurface(int tests, IntFunction<Location> location, LocationTest test) {
        return SI.surface(s -> s.withLocations(IntStream.range(0, tests)
                        .mapToObj(i -> location.apply(i).withId("L" + i))
                        .toList()))
                .maintenance(entry -> entry.withLocations(List.of()))
                .visit(v -> v.withTests(IntStream.range(0, tests)
                        .mapToObj(i -> test.withId("T" + i).withLocation("L" + i))
                        .toList()))
                .book();
    }

    private static FieldBook atOneLocation(int tests) {
        return SI.visit(v -> v.withTests(IntStream.range(0, tests)
                        .mapToObj(i -> BARE.withId("T" + i))
                        .toList()))
                .book();
    }

    private static FieldBook oneTest(int runs) {
        return SI.test(
                        0,
                        t -> t.withRuns(IntStream.range(0, runs)
                                .mapToObj(i -> TEST.runs().get(0))
                                .toList()))
                .book();
    }

    /** A thousand visits to each surface, each on another day, with three tests each. */
    private static FieldBook manyVisits(int tests) {
        LocationTest untimed = BARE.withPreWet(BARE.preWet().withStart(null))
                .withRuns(List.of(BARE.runs().get(0).withStart(null)));
        Visit visit = SI.book()
                .visits()
                .get(0)
                .withWeather(Weather.of()
                        .withDescription("last rain unknown")
                        .withNoRainSince(TEST.preWet().start()));
        Surface surface = SI.book().sites().get(0).surfaces().get(0);
        return SI.site(site -> site.withSurfaces(IntStream.rangeClosed(0, tests / 3000)
                        .mapToObj(i -> surface.withId("S" + i))
                        .toList()))
                .book(b -> b.withMaintenance(List.of())
                        .withVisits(IntStream.range(0, tests / 3)
                                .mapToObj(i -> visit.withId("V" + i)
                                        .withSurface("S" + i / 1000)
                                        .withDate(Season.TODAY.minusDays(i % 1000))
                                        .withTests(threeTests(untimed, i)))
                                .toList()))
                .book();
    }

    private static List<LocationTest> threeTests(LocationTest test, int visit) {
        return IntStream.range(0, 3)
                .mapToObj(i -> test.withId("T" + visit + "-" + i).withLocation("A" + (i + 1)))
                .toList();
    }

    /** A campaign of two visits a day, a location in turn, for centuries. */
    private static FieldBook oneCampaign(int tests) {
        Visit visit = SI.book().visits().get(0).withCampaign("all").withRequestedLocations(3);
        return SI.surface(s -> s.withPlacedOn(LocalDate.EPOCH.minusYears(4000)))
                .book(b -> b.withMaintenance(List.of())
                        .withVisits(IntStream.range(0, tests)
                                .mapToObj(i -> onDay(visit, i))
                                .toList()))
                .book();
    }

    private static Visit onDay(Visit visit, int i) {
        LocalDate date = LocalDate.parse(Season.DATE).minusDays(i / 2);
        LocationTest test = BARE.withId("T" + i)
                .withLocation("A" + (1 + i % 3))
                .withPreWet(BARE.preWet().withStart(time(date + "T09:10:00")))
                .withRuns(List.of(BARE.runs().get(0).withStart(time(date + "T09:11:30"))));
        return visit.withId("V" + i)
                .withDate(date)
                .withTests(List.of(test))
                .withWeather(visit.weather().withLastRainEnd(time(date.minusDays(2) + "T07:00")));
    }

    /** As many entries of maintenance as tests, all on the evening of the day. */
    private static FieldBook manyMaintenances(int tests) {
        Maintenance entry = SI.book()
                .maintenance()
                .get(0)
                .withLocations(List.of())
                .withStart(at("19:00"))
                .withEnd(at("20:00"));
        return atOneLocation(tests)
                .withMaintenance(IntStream.range(0, tests)
                        .mapToObj(i -> entry.withId("M" + i))
                        .toList());
    }

    /** What grows linearly with its size: each row gives what is measured and the sizes of the fast test. */
    private enum Path {
        POURS("uncertainty of a run of many pours", LargeBookTest::pours, 4000, 16_000),
        DIAMETERS("uncertainty of a ring of many diameters", LargeBookTest::diameters, 4000, 16_000),
        ONE_DAY("series of a location and day", LargeBookTest::oneDay, 2000, 8000),
        VOID_DAY("series of a location and day, all runs void", LargeBookTest::voidDay, 500, 2000),
        FINDINGS("findings of each run", LargeBookTest::findingsOfRuns, 500, 2000),
        PAGE("page of a visit", LargeBookTest::page, 1000, 4000),
        SAMPLE("sample of locations", LargeBookTest::sample, 500, 2000),
        ON_RECORD("planned locations on record", LargeBookTest::onRecord, 500, 2000),
        SPARES("spare locations on record", LargeBookTest::spares, 500, 2000);

        private final String what;

        @SuppressWarnings("ImmutableEnumChecker") // a reference to a static method
        private final IntFunction<Runnable> work;

        private final int small;
        private final int large;

        Path(String what, IntFunction<Runnable> work, int small, int large) {
            this.what = what;
            this.work = work;
            this.small = small;
            this.large = large;
        }
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "PAGE")
    void pathsOfAReviewAndAPlanGrowLinearly(Path path) {
        Growth.assertLinear(path.what, path.work, path.small, path.large);
    }

    /** Counts allocated bytes, because timing a page that is large enough takes too long here. */
    @Test
    void pageOfAVisitAllocatesLinearly() {
        Growth.assertAllocatesLinearly("page of a visit", LargeBookTest::page, 300, 1200);
    }

    @Tag("slow")
    @ParameterizedTest
    @EnumSource
    void pathsOfALargeReviewAndPlanGrowLinearly(Path path) {
        Growth.assertLinear(path.what, path.work, path.large, 2 * path.large, 4 * path.large);
    }

    private static Runnable pours(int pours) {
        TestRun run = TEST.runs()
                .get(0)
                .withWater(null)
                .withPours(Collections.nCopies(pours, Pour.of(kg("10.50"), kg("10.49"))));
        return budget(SI.book().rings().get(0), run);
    }

    private static Runnable diameters(int diameters) {
        Ring ring = SI.book()
                .rings()
                .get(0)
                .withInsideDiameter(null)
                .withInsideDiameters(Collections.nCopies(diameters, mm("300")));
        return budget(ring, TEST.runs().get(0));
    }

    private static Runnable budget(Ring ring, TestRun run) {
        Instruments instruments = Instruments.of(List.of());
        return () -> assertTrue(instruments
                .budget("run 1", RateEquation.asPublished(), ring, run)
                .isPresent());
    }

    private static Runnable oneDay(int visits) {
        return oneDay(visits, BARE);
    }

    private static Runnable voidDay(int visits) {
        return oneDay(visits, BARE.withRuns(List.of(BARE.runs().get(0).withEnd(Pouring.End.VOID))));
    }

    /** As many visits as tests, all at one location on one day. */
    private static Runnable oneDay(int visits, LocationTest test) {
        Visit visit = SI.book().visits().get(0).withTests(List.of(test));
        FieldBook book = SI.book()
                .withVisits(IntStream.range(0, visits)
                        .mapToObj(i -> visit.withId("V" + i))
                        .toList());
        CheckedBook checked = Checker.withDefaults().withToday(Season.TODAY).check(book);
        return () -> assertEquals(
                visits,
                checked.visits().stream()
                        .mapToInt(each -> LocationRate.of(checked, each).size())
                        .sum());
    }

    private static Runnable findingsOfRuns(int tests) {
        LocationTest late =
                BARE.withRuns(List.of(BARE.runs().get(0).withWater(kg("1.00")).withStart(null)));
        Review review = Review.of(onOneSurface(tests, i -> local(0, i), late));
        return () -> assertTrue(review.runs().stream()
                        .mapToInt(run -> review.findings(run).size())
                        .sum()
                >= tests);
    }

    private static Runnable page(int tests) {
        VisitReport report = VisitReport.all(Review.of(onOneSurface(tests, i -> local(0, i))))
                .get(0);
        return () -> assertTrue(report.html().length() > tests);
    }

    private static Runnable sample(int count) {
        double side = 2 * Math.sqrt(count);
        LocationSample draw = LocationSample.of(List.of(new LocationSample.Zone(
                        "lot", SurfaceOutline.of(FieldUnit.METRE, 0, 0, 2 * side, 0, 2 * side, 2 * side, 0, 2 * side))))
                .withRing(mm("300"))
                .withClearDistance(m("1"));
        return () -> assertEquals(0, draw.draw(count, 1).missing());
    }

    private static Runnable onRecord(int count) {
        return onRecord(count, count);
    }

    private static Runnable spares(int count) {
        return onRecord(count, count / 2);
    }

    private static Runnable onRecord(int count, int planned) {
        int side = (int) Math.ceil(Math.sqrt(count));
        List<Location> locations = IntStream.range(0, count)
                .mapToObj(i -> local(i % side, i / side).withId("L" + i))
                .toList();
        VisitPlan plan = VisitPlan.of(
                        Methods.unitPavement(), Surface.of("S"), ExpectedRate.of(new InfiltrationRate(2540)))
                .withRequestedLocations(planned);
        return () ->
                assertEquals(planned, plan.withLocations(locations).planned().size());
    }
}
