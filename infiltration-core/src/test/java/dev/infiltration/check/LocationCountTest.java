// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static dev.infiltration.Amounts.at;
import static dev.infiltration.Amounts.m;
import static dev.infiltration.Amounts.m2;
import static dev.infiltration.Season.and;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.Season;
import dev.infiltration.field.Location;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Pouring.End;
import dev.infiltration.field.Visit;
import dev.infiltration.method.Methods;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.util.List;
import javax.measure.quantity.Area;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** How many locations a campaign needs, and which count. */
class LocationCountTest {

    private static final Season SI = Season.si();
    private static final String FEW = "visit.location-count DEVIATION NONE ";

    /** C1701 clause 7.1 as told by Brown and Borst, US EPA, 2013, EWRI Congress (secondary). */
    @ParameterizedTest
    @CsvSource({
        "0.1, m2, 3",
        "2323, m2, 3",
        "2500, m2, 3",
        "2500.1, m2, 4",
        "3500, m2, 4",
        "3500.001, m2, 5",
        "12500, m2, 13",
        "25000, [sft_i], 3",
        "25001, [sft_i], 4",
        "35000, [sft_i], 4",
        "35001, [sft_i], 5",
        "125000, [sft_i], 13",
        "0.25, har, 3",
        "0.2501, har, 4",
        "1, har, 11",
        "0.5739, [acr_us], 3",
        "0.574, [acr_us], 4",
        "1, [acr_us], 5"
    })
    void theStandardsStepsAreCountedInTheSystemOfTheArea(String digits, String unit, int count) {
        Reading<Area> area =
                Reading.of(digits, FieldUnit.parse(unit, Area.class).orElseThrow());
        assertEquals(count, Methods.unitPavement().locationCount().of(area).orElseThrow());
        assertEquals(count, Methods.perviousConcrete().locationCount().of(area).orElseThrow());
        Season season = SI.surface(s -> s.withArea(area));
        assertEquals(count > 3 ? List.of(FEW + "/visits/0") : List.of(), season.findings());
        assertEquals(
                List.of(), season.visit(v -> v.withMethod("utility-practice")).findings(), "two a surface");
    }

    private static Season asked(int number) {
        return SI.visit(v -> v.withRequestedLocations(number));
    }

    @Test
    void whatThePurchaserAskedForComesBeforeTheMethod() {
        Season large = SI.surface(s -> s.withArea(m2("99999")));
        assertEquals(List.of(), large.visit(v -> v.withRequestedLocations(3)).findings());
        assertEquals(List.of(FEW + "/visits/0"), asked(4).findings());
        assertEquals(List.of(), asked(0).findings());
        assertEquals(List.of(), asked(-1).findings());
    }

    @ParameterizedTest
    @EnumSource(Visit.Purpose.class)
    void complaintsResearchAndTrainingNeedNoNumber(Visit.Purpose purpose) {
        boolean isSilent = List.of(Visit.Purpose.COMPLAINT, Visit.Purpose.RESEARCH, Visit.Purpose.TRAINING)
                .contains(purpose);
        Season season = asked(4).visit(v -> v.withPurpose(purpose));
        assertEquals(isSilent ? List.of() : List.of(FEW + "/visits/0"), season.findings());
        assertEquals(
                List.of(FEW + "/visits/0"),
                asked(4).visit(v -> v.withPurpose(null)).findings());
    }

    @Test
    void aLocationCountsByARunThatIsNotVoidOrADiscontinuedPrewetting() {
        Season isVoid = SI.test(
                0,
                t -> t.withRuns(t.runs().stream().map(r -> r.withEnd(End.VOID)).toList()));
        assertEquals(
                List.of(
                        FEW + "/visits/0",
                        "run.void CAUTION NONE /visits/0/tests/0/runs/0",
                        "run.void CAUTION NONE /visits/0/tests/0/runs/1"),
                isVoid.findings());
        Season drained = SI.test(0, t -> t.withRuns(List.of()));
        assertEquals(List.of(FEW + "/visits/0"), drained.findings());
        Season discontinued = drained.preWet(0, p -> p.withEnd(End.STOPPED));
        assertEquals(List.of("prewet.discontinued CAUTION NONE /visits/0/tests/0/preWet"), discontinued.findings());
    }

    @Test
    void aLocationCountsOnce() {
        Season season = asked(4).andTest(t -> t.withId("V1-A1b")
                .withPreWet(t.preWet().withStart(at("12:10:00")))
                .withRuns(List.of(t.runs().get(0).withStart(at("12:11:30")).withEnd(End.STOPPED))));
        assertEquals(
                List.of(
                        FEW + "/visits/0",
                        "run.too-many DEVIATION EITHER /visits/0/tests/3/runs/0",
                        "run.discontinued CAUTION RAISES /visits/0/tests/3/runs/0"),
                season.findings());
    }

    /** Two locations at the first visit and the third a day later. */
    private static Season twoDays(String campaign, String later) {
        LocationTest third = SI.book().visits().get(0).tests().get(2);
        LocationTest moved = third.withPreWet(third.preWet().withStart(null))
                .withRuns(third.runs().stream().map(r -> r.withStart(null)).toList());
        return SI.andVisit(v -> v.withId("V2")
                        .withDate(v.date().plusDays(1))
                        .withCampaign(later)
                        .withTests(List.of(moved)))
                .visit(v -> v.withCampaign(campaign).withTests(v.tests().subList(0, 2)));
    }

    @Test
    void visitsOfACampaignCountTogether() {
        assertEquals(List.of(), twoDays("2026", "2026").findings());
        assertEquals(
                List.of(FEW + "/visits/0", FEW + "/visits/1"),
                twoDays(null, null).findings());
        assertEquals(
                List.of(FEW + "/visits/0", FEW + "/visits/1"),
                twoDays("2026", "2027").findings());
        assertEquals(
                List.of(FEW + "/visits/0", FEW + "/visits/1"),
                twoDays("2026", null).findings());
    }

    @Test
    void theLastVisitOfACampaignSaysHowMany() {
        Season season = twoDays("2026", "2026");
        assertEquals(
                List.of(), season.visit(0, v -> v.withRequestedLocations(9)).findings());
        assertEquals(
                List.of(FEW + "/visits/1"),
                season.visit(1, v -> v.withRequestedLocations(4)).findings());
        assertEquals(
                List.of(),
                season.visit(1, v -> v.withRequestedLocations(4).withPurpose(Visit.Purpose.RESEARCH))
                        .findings());
        assertEquals(
                List.of(FEW + "/visits/0"),
                season.visit(1, v -> v.withDate(v.date().minusDays(5)))
                        .visit(0, v -> v.withRequestedLocations(4))
                        .findings(),
                "the last by date, wherever it stands");
    }

    @Test
    void aCampaignOfOneNameOnAnotherSurfaceIsAnother() {
        Season season = twoDays("2026", "2026")
                .site(site -> site.withSurfaces(and(
                        site.surfaces(), site.surfaces().get(0).withId("HQ-B").withArea(m2("9")))))
                .visit(1, v -> v.withSurface("HQ-B"));
        assertEquals(List.of(FEW + "/visits/0", FEW + "/visits/1"), season.findings());
    }

    @Test
    void anUnknownMethodAtTheLastVisitCountsNothing() {
        Season season = twoDays("2026", "2026")
                .visit(1, v -> v.withRequestedLocations(4).withMethod("bucket"));
        assertEquals(List.of("visit.method-unknown OMISSION NONE /visits/1"), season.findings());
    }

    @Test
    void areaIsAskedForOncePerSurface() {
        Season season = twoDays(null, null).surface(s -> s.withArea(null));
        assertEquals(List.of("visit.area-unrecorded OMISSION NONE /sites/0/surfaces/0"), season.findings());
    }

    @Test
    void aLocationThatNobodyPlacedStillWasTested() {
        Season season = SI.surface(s -> s.withLocations(and(
                        s.locations().subList(0, 2),
                        Location.of("A9").withX(m("50")).withY(m("0")))))
                .test(2, t -> t.withLocation("A9"));
        assertEquals(List.of(), season.findings());
    }

    /** A training visit takes no part in campaigns: it neither adds locations nor decides the number. */
    @Test
    void aTrainingVisitIsNoPartOfACampaign() {
        Season two = SI.visit(v -> v.withCampaign("2026").withTests(v.tests().subList(0, 2)));
        Season trained = two.andVisit(v -> v.withId("V2")
                .withPurpose(Visit.Purpose.TRAINING)
                .withDate(v.date().plusDays(1))
                .withTests(List.of()));
        assertEquals(List.of(FEW + "/visits/0"), two.findings());
        assertEquals(List.of(FEW + "/visits/0"), trained.findings());
    }
}
