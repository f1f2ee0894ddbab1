// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.Visit;
import dev.infiltration.statistics.Conclusion;
import dev.infiltration.statistics.McNemar;
import dev.infiltration.summary.Criterion;
import dev.infiltration.summary.Criterion.Relation;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What maintenance did, in invented books. */
class BeforeAfterTest {

    private static final Years CLEANED = Years.random(6)
            .visit("V1", "2019-06-01", 9000, 9000, 9000, 9000, 9000, 9000)
            .visit("V2", "2021-06-01", 1000, 1100, 1200, 1300, 1400, 1500)
            .maintenance("M1", "2021-07-01T11:00")
            .visit("V3", "2021-07-05", 5000, 5500, 6000, 6500, 7000, 7500)
            .visit("V4", "2022-07-05", 4000, 4500, 5000, 5500, 6000, 6500);

    private static BeforeAfter only(Years years) {
        List<BeforeAfter> all = years.history().beforeAfter();
        assertEquals(1, all.size());
        return all.get(0);
    }

    @Test
    void lastVisitBeforeIsComparedWithTheFirstAfter() {
        BeforeAfter cleaning = only(CLEANED);
        assertEquals("V2", cleaning.before().subject());
        assertEquals("V3", cleaning.after().subject());
        assertEquals("M1", cleaning.maintenance().get(0).id());
        assertEquals(List.of("A1", "A2", "A3", "A4", "A5", "A6"), cleaning.locations());
        assertEquals(5, cleaning.comparison().ratio(0.95).orElseThrow().value(), 1e-4);
        assertEquals(Conclusion.HIGHER, cleaning.comparison().conclusion());
        assertEquals(1.0 / 32, cleaning.comparison().pValue().orElseThrow());
    }

    @Test
    void recoveryIsTowardsTheFirstVisit() {
        BeforeAfter cleaning = only(CLEANED);
        assertEquals("V1", cleaning.referenceVisit().orElseThrow().subject());
        // (6250 - 1250) / (9000 - 1250)
        assertEquals(5000.0 / 7750, cleaning.recovery().orElseThrow().share(), 1e-4);
        assertEquals(
                List.of("the rates of the first visit (V1, 2019-06-01) are taken as those of the new surface"),
                cleaning.notes());
    }

    @Test
    void noRecoveryWithoutAValueOfTheNewSurface() {
        BeforeAfter first = only(Years.random(1)
                .visit("V1", "2021-06-01", 1000)
                .maintenance("M1", "2021-07-01T11:00")
                .visit("V2", "2021-07-05", 5000));
        assertTrue(first.recovery().isEmpty());
        assertTrue(first.referenceVisit().isEmpty());
    }

    @Test
    void boundsAndPlacesTestedOnceAreLeftOut() {
        Years years = Years.random(4)
                .visit("V1", "2021-06-01", 1000, -20, 1000, Double.NaN)
                .maintenance("M1", "2021-07-01T11:00")
                .visit("V2", "2021-07-05", 5000, 5000, Double.NaN, 5000);
        assertEquals(List.of("A1"), only(years).locations());
        assertEquals(
                List.of("excluded, because of a bound or no rate: A2"),
                only(years).notes());
    }

    @Test
    void onlyLocationsWorkedOnAreCompared() {
        Years years = Years.random(3)
                .visit("V1", "2021-06-01", 1000, 1000, 1000)
                .maintenance("M1", "2021-07-01T11:00", "A1")
                .visit("V2", "2021-07-05", 5000, 1000, 1000);
        assertEquals(List.of("A1"), only(years).locations());
        assertEquals(
                List.of("A1", "A3"),
                only(years.maintenance("M2", "2021-07-02T11:00", "A3")).locations());
        assertEquals(
                List.of("A1", "A2", "A3"),
                only(years.maintenance("M2", "2021-07-02T11:00")).locations());
    }

    @Test
    void visitsOfTwoMethodsAreNotCompared() {
        Years years = Years.random(1)
                .visit("V1", "2021-06-01", 1000)
                .maintenance("M1", "2021-07-01T11:00")
                .visit("V2", "2021-07-05", 5000)
                .last(visit -> visit.withMethod("utility-practice"));
        assertEquals(0, only(years).comparison().pairs());
        assertEquals(
                List.of("not compared: tested by unit-pavement and by utility-practice"),
                only(years).notes());
    }

    @Test
    void maintenanceWithoutAnEntryIsSaid() {
        Years years = Years.random(1)
                .visit("V1", "2021-06-01", 1000)
                .visit("V2", "2021-07-05", 5000)
                .last(visit -> visit.withPurpose(Visit.Purpose.AFTER_MAINTENANCE));
        assertEquals(
                List.of("the book has no entry of the maintenance"), only(years).notes());
        assertEquals(1, only(years).comparison().pairs());
    }

    @Test
    void locationsThatComeToPassAreCounted() {
        Criterion criterion = Criterion.of(
                Criterion.Type.EVERY_LOCATION,
                Relation.AT_LEAST,
                Reading.of("5200", FieldUnit.MILLIMETRE_PER_HOUR),
                "unit-pavement",
                "invented");
        assertEquals(new McNemar(5, 0), only(CLEANED).passing(criterion));
    }
}
