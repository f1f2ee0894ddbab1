// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import static dev.infiltration.Amounts.kg;
import static dev.infiltration.Amounts.m;
import static dev.infiltration.Amounts.s;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.Season;
import dev.infiltration.field.Event;
import dev.infiltration.field.Head;
import dev.infiltration.field.Location;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Pouring.End;
import dev.infiltration.field.TestRun;
import dev.infiltration.rate.RateEquation;
import dev.infiltration.rate.RateOutcome;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** What a surface comes to at a visit. */
class SurfaceRateTest {

    private static final Season SI = Season.si();
    private static final LocationTest TEST = SI.book().visits().get(0).tests().get(0);

    /** A visit with a location for each time, every one with one run of 18.00 kg. */
    private static Season season(String... seconds) {
        List<LocationTest> tests = new ArrayList<>();
        for (String time : seconds) {
            TestRun run = TestRun.of(null, kg("18.00"), s(time), End.DRAINED);
            String location = "A" + (tests.size() + 1);
            tests.add(TEST.withId("V1-" + location)
                    .withLocation(location)
                    .withPreWet(null)
                    .withRuns(List.of(run)));
        }
        return SI.surface(f -> f.withLocations(
                        tests.stream().map(t -> Location.of(t.location())).toList()))
                .visit(v -> v.withTests(tests));
    }

    private static Season stopped(Season season, int test) {
        return season.run(test, 0, r -> r.withEnd(End.STOPPED));
    }

    private static SurfaceRate row(Season season) {
        return season.review().surfaces().get(0);
    }

    private static double rate(double seconds) {
        return RateEquation.millimetresPerHour(18.00, 300, seconds);
    }

    private static void assertFigure(String word, double expected, RateOutcome outcome) {
        assertEquals(word, outcome.word());
        assertEquals(expected, outcome.figure().orElseThrow().millimetresPerHour(), 1e-12 * expected);
    }

    private static List<Integer> counts(SurfaceRate row) {
        return List.of(row.planned(), row.measured(), row.bounded(), row.withheld(), row.notTested());
    }

    @Test
    void anOddNumberOfLocations() {
        SurfaceRate row = row(season("400", "100", "200"));
        assertEquals(List.of(3, 3, 0, 0, 0), counts(row));
        assertFigure("measured", (rate(100) + rate(200) + rate(400)) / 3, row.mean());
        assertFigure("measured", rate(200), row.geometricMean());
        assertFigure("measured", rate(200), row.median());
        assertFigure("measured", rate(400), row.minimum());
    }

    @Test
    void anEvenNumberOfLocationsHasTheMeanOfTheMiddleTwo() {
        SurfaceRate row = row(season("400", "100", "200", "800"));
        assertFigure("measured", (rate(200) + rate(400)) / 2, row.median());
        assertFigure("measured", Math.sqrt(rate(200) * rate(400)), row.geometricMean());
        assertFigure("measured", rate(800), row.minimum());
    }

    @Test
    void oneLocation() {
        SurfaceRate row = row(season("100"));
        for (RateOutcome outcome : List.of(row.mean(), row.geometricMean(), row.median(), row.minimum())) {
            assertFigure("measured", rate(100), outcome);
        }
    }

    @Test
    void allFiguresShareOneOutcome() {
        SurfaceRate upper = row(stopped(season("100", "200", "400"), 0));
        assertEquals(List.of(3, 2, 1, 0, 0), counts(upper));
        for (RateOutcome outcome : List.of(upper.mean(), upper.geometricMean(), upper.median(), upper.minimum())) {
            assertEquals("upper-bound", outcome.word());
        }
        assertFigure("upper-bound", rate(400), upper.minimum());
        SurfaceRate lower =
                row(season("100", "200", "400").run(2, 0, r -> r.withHead(Head.of(Head.State.NEVER_REACHED))));
        assertFigure("lower-bound", (rate(100) + rate(200) + rate(400)) / 3, lower.mean());
    }

    @Test
    void boundsOnBothSidesWithhold() {
        UnaryOperator<TestRun> interrupted = r -> r.withEvents(List.of(Event.of(Event.Kind.POUR_INTERRUPTED)));
        SurfaceRate row = row(stopped(season("100", "200", "400"), 0).run(1, 0, interrupted));
        assertEquals(List.of(3, 1, 2, 0, 0), counts(row));
        for (RateOutcome outcome : List.of(row.mean(), row.geometricMean(), row.median(), row.minimum())) {
            assertEquals("withheld", outcome.word());
        }
    }

    @Test
    void withheldRowsAreLeftOutAndCounted() {
        SurfaceRate row = row(season("100", "200", "400").run(0, 0, r -> r.withElapsed(null)));
        assertEquals(List.of(3, 2, 0, 1, 0), counts(row));
        assertFigure("measured", (rate(200) + rate(400)) / 2, row.mean());
        assertEquals(2, row.usedCount());
    }

    @Test
    void locationsThatWereNotTestedAreCounted() {
        Season season = season("100", "200", "400")
                .test(1, t -> t.withRuns(List.of()).withNotTested(LocationTest.NotTested.PARKED_VEHICLE));
        SurfaceRate row = row(season);
        assertEquals(List.of(3, 2, 0, 0, 1), counts(row));
        assertFigure("measured", (rate(100) + rate(400)) / 2, row.mean());
    }

    @Test
    void aLocationNamedTwiceIsPlannedOnceAndOneWithoutNameNever() {
        Season season = season("100", "200", "400")
                .andTest(t -> TEST.withId("again").withRuns(List.of()))
                .andTest(t -> TEST.withId("nameless").withLocation(null));
        assertEquals(List.of(3, 3, 0, 0, 0), counts(row(season)));
    }

    /** A dead spot: as much is left standing as was poured. */
    @Test
    void aZeroMakesTheGeometricMeanZero() {
        Season season = stopped(season("100", "200", "400"), 1).run(1, 0, r -> r.withDepthAtStop(m("1")));
        SurfaceRate row = row(season);
        assertEquals(0.0, row.geometricMean().figure().orElseThrow().millimetresPerHour());
        assertEquals(0.0, row.minimum().figure().orElseThrow().millimetresPerHour());
        assertFigure("upper-bound", (rate(100) + 0 + rate(400)) / 3, row.mean());
        assertFigure("upper-bound", rate(400), row.median());
    }

    @Test
    void everyVisitHasARow() {
        Season season = SI.andVisit(v -> v.withId("V2").withTests(List.of()))
                .andVisit(v -> v.withId("V3").withSurface(null))
                .andVisit(v -> v);
        List<SurfaceRate> rows = season.review().surfaces();
        assertEquals(4, rows.size());
        assertEquals(List.of(0, 0, 0, 0, 0), counts(rows.get(1)));
        assertEquals("withheld", rows.get(1).mean().word());
        assertEquals(List.of(3, 0, 0, 3, 0), counts(rows.get(2)));
        assertEquals(List.of(3, 0, 0, 3, 0), counts(rows.get(3)), "a doubled visit");
    }

    @Test
    void figuresStayFiniteForTheFastestAndTheSlowest() {
        Season season = season("1e-290", "1e290", "1e-290");
        SurfaceRate row = row(season);
        double[] rates = {rate(1e-290), rate(1e290), rate(1e-290)};
        assertFigure("measured", Math.exp(DoubleStream.of(rates).map(Math::log).sum() / 3), geometric(row), 1e-10);
        assertFigure("measured", rates[0] / 3 + rates[1] / 3 + rates[2] / 3, row.mean());
    }

    private static RateOutcome geometric(SurfaceRate row) {
        return row.geometricMean();
    }

    private static void assertFigure(String word, double expected, RateOutcome outcome, double relative) {
        assertEquals(word, outcome.word());
        assertEquals(expected, outcome.figure().orElseThrow().millimetresPerHour(), relative * expected);
    }
}
