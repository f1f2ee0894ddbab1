// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.Season;
import dev.infiltration.check.Checker;
import dev.infiltration.check.VisitAt;
import dev.infiltration.field.Location;
import dev.infiltration.field.Location.Selection;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.SurfaceZone;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class SampleTest {

    @Test
    void randomStandsForTheSurfaceAndTargetedDoesNot() {
        assertTrue(Sample.random(1, 2, 3).isRepresentative());
        assertFalse(Sample.of(Selection.TARGETED, 1, 2, 3).isRepresentative());
        assertFalse(Sample.of(Selection.FIXED, 1, 2, 3).isRepresentative());
        assertFalse(new Sample(List.of(), null, Map.of(), 0).isRepresentative());
    }

    @Test
    void stratifiedNeedsTheAreaOfEveryZone() {
        Map<String, double[]> rates = Map.of("edge", new double[] {1, 2}, "interior", new double[] {3});
        assertTrue(Sample.stratified(rates, Map.of("edge", 100.0, "interior", 300.0))
                .isRepresentative());
        assertFalse(Sample.stratified(rates, Map.of("edge", 100.0)).isRepresentative());
        assertFalse(Sample.stratified(rates, Map.of()).isRepresentative());
        assertFalse(Sample.of(Selection.STRATIFIED, 1, 2)
                .withZoneShares(Map.of("edge", 1.0))
                .isRepresentative());
    }

    @Test
    void takesZoneAreasFromTheBookOnlyWhereEachIsKnownOnce() {
        SurfaceZone edge = SurfaceZone.of("edge", Reading.of("1000", FieldUnit.SQUARE_FOOT));
        SurfaceZone interior = SurfaceZone.of("interior", Reading.of("900", FieldUnit.SQUARE_METRE));
        assertEquals(
                Map.of("edge", 92.90304, "interior", 900.0),
                ofZones(edge, interior).zoneShares());
        assertEquals(
                Map.of("edge", 2.0),
                ofZones(edge, interior).withZoneShares(Map.of("edge", 2.0)).zoneShares());
        assertEquals(Map.of(), ofZones(edge, interior, edge).zoneShares());
        assertEquals(Map.of(), ofZones(edge, SurfaceZone.of("interior", null)).zoneShares());
        assertEquals(
                Map.of(), ofZones(edge, SurfaceZone.of(null, interior.area())).zoneShares());
    }

    private static Sample ofZones(SurfaceZone... zones) {
        var book = Season.si()
                .surface(surface -> surface.withZones(List.of(zones)))
                .book();
        return Sample.of(Checker.withDefaults().check(book).visits().get(0), List.of());
    }

    @Test
    void zerosBecomeBoundsWhereTheSmallestSeenIsKnown() {
        Sample sample = Sample.random(0, 50).withSmallestSeen(new InfiltrationRate(2));
        assertEquals(
                List.of("upper-bound", "measured"),
                sample.spots().stream().map(spot -> spot.outcome().word()).toList());
        assertEquals(2, sample.spots().get(0).figure().orElseThrow());
    }

    @Test
    void refusesWhatIsNoSample() {
        assertThrows(IllegalArgumentException.class, () -> Sample.random(-1));
        assertThrows(IllegalArgumentException.class, () -> Sample.random(1).withNotTested(-1));
        assertThrows(IllegalArgumentException.class, () -> Sample.random(1).withZoneShares(Map.of("edge", 0.0)));
    }

    @Test
    void takesOutcomes() {
        Sample sample = Sample.of(
                Selection.RANDOM,
                List.of(
                        new RateOutcome.LowerBound(new InfiltrationRate(9), List.of("run.event")),
                        new RateOutcome.Withheld(List.of("run.void"))));
        assertEquals(2, sample.spots().size());
        assertTrue(sample.spots().get(1).figure().isEmpty());
    }

    private static Sample ofVisit(Location... locations) {
        Season season = Season.si();
        LocationTest test = season.book().visits().get(0).tests().get(0);
        List<LocationTest> tests = List.of(
                test.withId("T1").withLocation("B1"),
                test.withId("T2").withLocation("B2").withRuns(List.of()).withPreWet(null));
        var book = season.surface(surface -> surface.withLocations(List.of(locations)))
                .visit(visit -> visit.withTests(tests))
                .book();
        var checked = Checker.withDefaults().check(book);
        VisitAt visit = checked.visits().get(0);
        return Sample.of(visit, LocationRate.of(checked, visit));
    }

    @Test
    void ofAVisitTakesZoneAndSelectionFromTheBook() {
        Sample sample = ofVisit(
                Location.of("B1").withZone("edge").withSelection(Selection.RANDOM),
                Location.of("B2").withSelection(Selection.TARGETED));
        assertEquals(1, sample.spots().size());
        assertEquals("edge", sample.spots().get(0).zone());
        assertEquals(Selection.RANDOM, sample.selection());
        assertEquals(1, sample.notTested());
    }

    @Test
    void ofAVisitWithoutLocationsKnowsNoSelection() {
        Sample sample = ofVisit();
        assertNull(sample.selection());
        assertNull(sample.spots().get(0).zone());
    }
}
