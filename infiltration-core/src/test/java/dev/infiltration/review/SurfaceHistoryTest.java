// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.review;

import static dev.infiltration.Amounts.time;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Location.Selection;
import dev.infiltration.field.Maintenance;
import dev.infiltration.field.Visit;
import dev.infiltration.review.SurfaceHistory.Figure;
import dev.infiltration.summary.Criterion;
import dev.infiltration.summary.Criterion.Relation;
import dev.infiltration.summary.Specification;
import dev.infiltration.trend.LimitDate;
import dev.infiltration.trend.TrendPeriod;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A surface over the years, in invented books. */
class SurfaceHistoryTest {

    private static final Years FALLING = Years.random(2)
            .visit("V1", "2020-06-01", 8000, 6000)
            .visit("V2", "2021-06-01", 6300, 4500)
            .visit("V3", "2022-06-01", 4700, 3500)
            .visit("V4", "2023-06-01", 3700, 2600);

    private static Criterion atLeast(Criterion.Type type, String limit) {
        return Criterion.of(
                type, Relation.AT_LEAST, Reading.of(limit, FieldUnit.MILLIMETRE_PER_HOUR), "unit-pavement", "invented");
    }

    private static String periods(Years years) {
        return years.history().periods().stream()
                .map(rows -> rows.stream().map(row -> row.visit().subject()).collect(Collectors.joining(" ")))
                .collect(Collectors.joining(" | "));
    }

    @Test
    void visitsAreInOrderOfTimeAndStartAnewAtMaintenance() {
        Years years = Years.random(1)
                .visit("V3", "2022-06-01", 900)
                .visit("V1", "2020-06-01", 900)
                .visit("V2", "2021-06-01", 900);
        assertEquals("V1 V2 V3", periods(years));
        assertEquals("V1 | V2 V3", periods(years.maintenance("M1", "2020-08-01T11:00")));
        assertEquals("V1 V2 V3", periods(years.maintenance("M1", "2023-08-01T11:00")));
    }

    @ParameterizedTest
    @CsvSource({
        "2021-06-01T12:30:00, V1 | V2",
        "2021-06-01T10:59:00, V1 V2",
        "2021-06-01T11:00:00, V1 | V2",
        "2021-06-02T08:00:00, V1 | V2",
        "2021-05-31T23:00:00, V1 V2"
    })
    void maintenanceAndVisitOfOneDayGoByTheClock(String firstRun, String expected) {
        Years years = Years.random(1)
                .visit("V1", "2020-06-01", 900)
                .visit("V2", "2021-06-01", 900)
                .maintenance("M1", "2021-06-01T11:00");
        Years timed = years.last(visit -> visit.withDate(LocalDate.parse(firstRun.substring(0, 10)))
                .withTests(visit.tests().stream()
                        .map(test -> test.withRuns(List.of(test.runs().get(0).withStart(time(firstRun)))))
                        .toList()));
        assertEquals(expected, periods(timed));
    }

    @Test
    void visitThatSaysAfterMaintenanceStartsAnewWithoutAnEntry() {
        Years years = Years.random(1).visit("V1", "2020-06-01", 900).visit("V2", "2021-06-01", 900);
        assertEquals("V1 | V2", periods(years.last(visit -> visit.withPurpose(Visit.Purpose.AFTER_MAINTENANCE))));
    }

    @Test
    void visitWithoutDateOrFigureIsLeftOut() {
        Years years = Years.random(1).visit("V1", "2020-06-01", 900).visit("V2", "2021-06-01");
        assertEquals("V1", periods(years));
        assertTrue(Review.of(FieldBook.of()).histories().isEmpty());
        assertTrue(Years.random(1)
                .visit("V1", "2020-06-01", 900)
                .last(visit -> visit.withDate(null))
                .review()
                .histories()
                .isEmpty());
    }

    @Test
    void eachFigureIsFollowed() {
        SurfaceHistory history = FALLING.history();
        assertEquals(7000, first(history, Figure.MEAN), 0.1);
        assertEquals(Math.sqrt(8000.0 * 6000), first(history, Figure.GEOMETRIC_MEAN), 0.1);
        assertEquals(7000, first(history, Figure.MEDIAN), 0.1);
        assertEquals(6000, first(history, Figure.MINIMUM), 0.1);
        TrendPeriod location = history.trend("A1").periods().get(0);
        assertEquals(
                8000, location.points().get(0).outcome().rate().orElseThrow().millimetresPerHour(), 0.1);
    }

    private static double first(SurfaceHistory history, Figure figure) {
        TrendPeriod stretch = history.trend(figure).periods().get(0);
        return stretch.points().get(0).outcome().rate().orElseThrow().millimetresPerHour();
    }

    @Test
    void limitIsReachedWhereTheFigureOfTheCriterionComesToIt() {
        SurfaceHistory history = FALLING.history();
        LocalDate mean = date(history, Criterion.Type.MEAN);
        LocalDate lowest = date(history, Criterion.Type.EVERY_LOCATION);
        assertTrue(lowest.isBefore(mean), lowest + " " + mean);
        assertTrue(mean.isAfter(LocalDate.of(2026, 1, 1)) && mean.isBefore(LocalDate.of(2028, 1, 1)), mean.toString());
        assertEquals(
                Figure.MINIMUM,
                history.reached(atLeast(Criterion.Type.EVERY_LOCATION, "1000")).figure());
    }

    private static LocalDate date(SurfaceHistory history, Criterion.Type type) {
        return history.reached(atLeast(type, "1000")).crossing().date().orElseThrow();
    }

    @Test
    void nextTestIsNamedByTheRiskGivenAlone() {
        Criterion criterion = atLeast(Criterion.Type.MEAN, "1000");
        LimitReached plain = FALLING.history().reached(criterion);
        assertTrue(plain.nextTest().isEmpty());
        Review review =
                FALLING.review().withSpecification(Specification.of(criterion).withNextTestRisk(0.1));
        LimitReached risked = review.histories().get(0).reached(criterion);
        assertTrue(risked.nextTest()
                .orElseThrow()
                .isBefore(risked.crossing().date().orElseThrow()));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            2020-08-01T11:00 | measured on 3 dates, at least 4 are needed
            2023-01-01T11:00 | measured on 1 date, at least 4 are needed
            """)
    void noDateAcrossMaintenance(String cleaned, String why) {
        SurfaceHistory history = FALLING.maintenance("M1", cleaned).history();
        assertTrue(why(history, atLeast(Criterion.Type.MEAN, "1000")).contains(why));
    }

    @Test
    void noDateAcrossLocationsOrMethods() {
        Years elsewhere = FALLING.visit("V5", "2024-06-01", 3000, Double.NaN);
        assertTrue(why(elsewhere.history(), atLeast(Criterion.Type.MEAN, "1000"))
                .contains("not the same locations at every visit"));
        Years otherwise =
                FALLING.visit("V5", "2024-06-01", 3000, 2000).last(visit -> visit.withMethod("utility-practice"));
        Criterion forAny = atLeast(Criterion.Type.MEAN, "1000").forOtherMethods("a trial");
        assertTrue(why(otherwise.history(), forAny).contains("not the same method at every visit"));
    }

    @Test
    void noDateForALimitOfAnotherKind() {
        SurfaceHistory history = FALLING.history();
        assertEquals(
                List.of("no single figure is compared with the limit"),
                why(history, atLeast(Criterion.Type.SHARE_OF_LOCATIONS, "1000")));
        Criterion other = Criterion.of(
                Criterion.Type.MEAN,
                Relation.AT_LEAST,
                Reading.of("1000", FieldUnit.MILLIMETRE_PER_HOUR),
                "pervious-concrete",
                "invented");
        assertEquals(
                List.of("the limit applies to method pervious-concrete; the last visit used another method"),
                why(history, other));
        assertFalse(history.reached(other.forOtherMethods("a trial")).crossing() instanceof LimitDate.NotGiven);
        Criterion ceiling = Criterion.of(
                Criterion.Type.MEAN,
                Relation.AT_MOST,
                Reading.of("1000", FieldUnit.MILLIMETRE_PER_HOUR),
                "C1781",
                "invented");
        assertEquals(List.of("dates are computed for lower limits only"), why(history, ceiling));
    }

    private static List<String> why(SurfaceHistory history, Criterion criterion) {
        return history.reached(criterion).crossing() instanceof LimitDate.NotGiven none ? none.notes() : List.of();
    }

    @Test
    void targetedSpotsDoNotStandForTheSurfaceAndItIsSaid() {
        Years targeted = Years.of(Selection.TARGETED, 2)
                .visit("V1", "2020-06-01", 8000, 6000)
                .visit("V2", "2021-06-01", 6300, 4500);
        String says = "the locations are not representative of the surface: the result applies to these locations only";
        assertEquals(
                List.of(says),
                targeted.history().trend(Figure.MEAN).periods().get(0).notes());
        assertEquals(
                List.of(), FALLING.history().trend(Figure.MEAN).periods().get(0).notes());
        assertTrue(targeted.maintenance("M1", "2020-08-01T11:00")
                .history()
                .beforeAfter()
                .get(0)
                .notes()
                .contains(says));
    }

    @Test
    void maintenanceWithoutADayLeavesNoDateOfALimit() {
        Criterion limit = atLeast(Criterion.Type.MEAN, "2000");
        assertTrue(FALLING.history().reached(limit).crossing() instanceof LimitDate.Expected);
        Years undated = new Years(FALLING.locations(), FALLING.visits(), List.of(Maintenance.of("M9", "HQ-A")));
        assertEquals(
                List.of("maintenance M9 has no date and may have reset the rate"),
                undated.history().reached(limit).crossing().notes());
    }

    /** Four falling years, then "at most 900" below a limit of 2000: the line through the four says nothing of that. */
    @Test
    void boundBelowTheLimitLeavesNoDateToCome() {
        Years clogged = FALLING.visit("V5", "2024-06-01", -900, -800);
        assertEquals(
                List.of("the upper bound of 2024-06-01 is already below the limit"),
                clogged.history()
                        .reached(atLeast(Criterion.Type.MEAN, "2000"))
                        .crossing()
                        .notes());
    }
}
