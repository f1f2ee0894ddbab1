// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.Joints;
import dev.infiltration.field.Laying;
import dev.infiltration.field.Location;
import dev.infiltration.field.Position;
import dev.infiltration.field.Surface;
import dev.infiltration.method.Basis;
import dev.infiltration.method.LocationCount;
import dev.infiltration.method.LocationCount.Step;
import dev.infiltration.method.Methods;
import dev.infiltration.method.TestMethod;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class VisitPlanTest {

    private static final TestMethod METHOD = Methods.perviousConcrete();

    /** Everett WA maintenance table 22 (published): 1 up to 2 500 ft2, 1 more per 2 500 up to 15 000, then per 10 000. */
    private static final LocationCount EVERETT = count(
            FieldUnit.SQUARE_FOOT,
            new Step(1, null, area("2500", FieldUnit.SQUARE_FOOT)),
            new Step(1, area("2500", FieldUnit.SQUARE_FOOT), area("15000", FieldUnit.SQUARE_FOOT)),
            new Step(1, area("10000", FieldUnit.SQUARE_FOOT), null));

    /** Everett WA spec 5-06.3(6) (published): 4 per lot of at most 360 yd2. */
    private static final LocationCount LOTS =
            count(FieldUnit.SQUARE_FOOT, new Step(4, area("3240", FieldUnit.SQUARE_FOOT), null));

    /** Japan (published): 1 per 1 000 m2. */
    private static final LocationCount JAPAN =
            count(FieldUnit.SQUARE_METRE, new Step(1, area("1000", FieldUnit.SQUARE_METRE), null));

    @ParameterizedTest(name = "{0}: {1} {2}")
    @CsvSource(delimiter = '|', textBlock = """
            # rule (source: Brown and Borst 2013, C1701 7.1, secondary; others published, see above) | area | unit | count
            method  |  100      | m2      | 3
            method  |  2500     | m2      | 3
            method  |  2500.01  | m2      | 4
            method  |  3500     | m2      | 4
            method  |  3501     | m2      | 5
            method  |  25000    | [sft_i] | 3
            method  |  25001    | [sft_i] | 4
            method  |  35000    | [sft_i] | 4
            method  |  35001    | [sft_i] | 5
            method  |  2400     | m2      | 3
            method  |  25833.4  | [sft_i] | 4
            everett |  2500     | [sft_i] | 1
            everett |  2501     | [sft_i] | 2
            everett |  15000    | [sft_i] | 6
            everett |  15001    | [sft_i] | 7
            everett |  25000    | [sft_i] | 7
            everett |  25001    | [sft_i] | 8
            lots    |  3240     | [sft_i] | 4
            lots    |  3241     | [sft_i] | 8
            japan   |  1000     | m2      | 1
            japan   |  1001     | m2      | 2
            """)
    void locationsAreCountedByTheSystemOfTheArea(String rule, String area, String unit, long count) {
        Surface surface = surface(area, FieldUnit.parse(unit, Area.class).orElseThrow());
        VisitPlan plan = VisitPlan.of(METHOD.withLocationCount(rule(rule)), surface, rate(254));
        assertEquals(OptionalLong.of(count), plan.locationCount());
    }

    static LocationCount rule(String name) {
        return switch (name) {
            case "everett" -> EVERETT;
            case "lots" -> LOTS;
            case "japan" -> JAPAN;
            default -> METHOD.locationCount();
        };
    }

    /** Water and times are those of practice: 7.2 to 21.6 kg for one run, 39.6 kg with a repeat (derived). */
    @ParameterizedTest(name = "{0} mm/h, {1} runs: {2} kg, in all {3} kg")
    @CsvSource({
        "254, 1, 7.2, 21.6",
        "254, 2, 10.8, 32.4",
        "6111, 2, 10.8, 32.4",
        "6112, 1, 21.6, 64.8",
        "6112, 2, 39.6, 118.8",
    })
    void waterFollowsFromTheTimeOfThePrewetting(double rate, int runs, String each, String all) {
        VisitPlan plan = plan(rate).withRuns(runs);
        assertTrue(plan.waterPerLocation().sameAmountAs(Reading.of(each, FieldUnit.KILOGRAM)), plan::text);
        assertTrue(plan.waterInAll().orElseThrow().sameAmountAs(Reading.of(all, FieldUnit.KILOGRAM)), plan::text);
    }

    @Test
    void anAreaThatNeedsMoreThanTenThousandLocationsIsRefusedInOneSentence() {
        Surface surface = surface("1e9", FieldUnit.SQUARE_METRE);
        VisitPlan plan = VisitPlan.of(METHOD.withLocationCount(JAPAN), surface, rate(254));
        String refusal =
                "locations: 1000000 for an area of 1000000000 m²; a plan may have 10000: correct the area or the number requested";
        assertEquals(Optional.of(refusal), plan.tooMany());
        List<LocationSample.Zone> bay =
                List.of(new LocationSample.Zone("bay", SurfaceOutline.of(FieldUnit.METRE, 0, 0, 5, 0, 5, 4, 0, 4)));
        assertEquals(
                refusal,
                assertThrows(IllegalArgumentException.class, () -> plan.withDraw(bay, 1))
                        .getMessage());
        assertEquals(Optional.empty(), plan.withRequestedLocations(10_000).tooMany());
    }

    @Test
    void waterIsCarriedForTheRateThatNeedsMost() {
        VisitPlan plan = VisitPlan.of(METHOD, surface("100", FieldUnit.SQUARE_METRE), expected(254, 1000, 7000));
        assertTrue(plan.waterPerLocation().sameAmountAs(Reading.of("39.6", FieldUnit.KILOGRAM)));
    }

    @Test
    void inchPoundSurfacesArePlannedInPounds() {
        VisitPlan plan = VisitPlan.of(METHOD, surface("20000", FieldUnit.SQUARE_FOOT), rate(254));
        assertTrue(plan.waterPerLocation().sameAmountAs(Reading.of("24", FieldUnit.POUND)), "8 + 2 times 8 lb");
        assertTrue(plan.ring().sameAmountAs(Laid.inches("12")), plan::text);
        assertTrue(plan.text().contains("Prewet with 7.9 to 8.1 lb at a head of 0.40 to 0.60 in"), plan::text);
    }

    /** K·M/(D²·I), from method-independent arithmetic: 3.6 kg spread over a ring of 300 mm is 50.93 mm deep (derived). */
    @Test
    void timesFollowFromTheEquation() {
        LocationPlan spot = plan(254).spot(new InfiltrationRate(254));
        double depth = 3.6 / (Math.PI / 4 * 0.3 * 0.3);
        assertEquals(depth / 254 * 3600, spot.preWetTime().toMillis() / 1000.0, 1e-3 + 1e-5 * 722);
        assertEquals(spot.preWetTime(), spot.runTime());
        assertEquals(12, spot.preWetTime().toMinutes(), "practice: 12 min at 254 mm/h");
        LocationPlan fast = plan(2540).withRuns(1).spot(new InfiltrationRate(6200));
        assertEquals(18 / (Math.PI / 4 * 0.09) / 6200 * 3600, fast.runTime().toMillis() / 1000.0, 2e-3);
    }

    @Test
    void pourRateIsTheRateTimesTheRingsArea() {
        LocationPlan spot = plan(2540).spot(new InfiltrationRate(2540));
        assertEquals(2540 * Math.PI / 4 * 0.09 / 60, spot.pourLitresPerMinute(), 1e-12);
        VisitPlan wide = plan(2540).withRing(Laid.mm("310"));
        assertEquals(
                2540 * Math.PI / 4 * 0.0961 / 60,
                wide.spot(new InfiltrationRate(2540)).pourLitresPerMinute(),
                1e-12);
    }

    @Test
    void timeOnSiteAddsSetUpPouringAndWaits() {
        VisitPlan plan = plan(254).withSetUp(Duration.ofMinutes(15));
        InfiltrationRate rate = new InfiltrationRate(254);
        Duration pouring = plan.spot(rate).preWetTime().multipliedBy(3);
        Duration each = Duration.ofMinutes(15 + 2 + 5).plus(pouring);
        assertEquals(each, plan.timePerLocation(rate));
        assertEquals(Optional.of(each.multipliedBy(3)), plan.timeOnSite(rate));
        assertEquals(
                Duration.ofMinutes(15 + 2).plus(pouring.multipliedBy(2).dividedBy(3)),
                plan.withRuns(1).timePerLocation(rate));
    }

    @Test
    void requestOfThePurchaserComesFirst() {
        VisitPlan plan = plan(254).withRequestedLocations(7);
        assertEquals(OptionalLong.of(7), plan.locationCount());
        assertTrue(plan.text().contains("Locations: 7, as asked for\n"), plan::text);
    }

    @Test
    void whatRestsOnUnknownAreaIsAbsent() {
        VisitPlan plan = VisitPlan.of(METHOD, Surface.of("HQ-A"), rate(254));
        assertEquals(OptionalLong.empty(), plan.locationCount());
        assertEquals(Optional.empty(), plan.waterInAll());
        assertEquals(Optional.empty(), plan.timeOnSite(new InfiltrationRate(254)));
        assertTrue(plan.text().contains("Locations: not known without the area"), plan::text);
        assertEquals(
                OptionalLong.of(2),
                VisitPlan.of(Methods.utilityPractice(), Surface.of("HQ-A"), rate(254))
                        .locationCount());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "reversing",
                "alone",
                "night",
                "Lightning",
                "Heat",
                "kneel",
                "Dust",
                "Lifting",
                "total load",
                "Trips",
                "children",
                "Ice",
                "Local codes",
                "engineer of record",
            })
    void cautionsSpeakOf(String matter) {
        assertTrue(plan(254).cautions().stream().anyMatch(caution -> caution.contains(matter)), matter);
    }

    @Test
    void cautionsForbidGritAndSand() {
        // sand for winter traction clogs permeable pavement: US EPA, Stormwater Best Management Practice, Permeable
        // Pavements (memory)
        String ice = plan(254).cautions().stream()
                .filter(caution -> caution.startsWith("Ice"))
                .findFirst()
                .orElseThrow();
        assertTrue(ice.contains("Wait for a thaw. Do not spread grit or sand: it clogs"), ice);
        assertFalse(plan(254).text().contains("grit it"), plan(254)::text);
    }

    @Test
    void cautionsComeBeforeTheSteps() {
        String text = plan(254).text();
        assertTrue(text.indexOf("Safety:") < text.indexOf("At each location:"), text);
        assertTrue(text.contains("limits not verified against the licensed edition"), text);
    }

    @Test
    void jointedSurfacesAreSealedAtTheirJoints() {
        Surface pavers = surface("100", FieldUnit.SQUARE_METRE).withType(Surface.Type.PAVERS);
        VisitPlan plan = VisitPlan.of(Methods.unitPavement(), pavers, rate(254));
        assertTrue(plan.steps().get(2).contains("joints that cross its wall"), plan::text);
        assertTrue(plan.steps().get(plan.steps().size() - 1).contains("refill the joints"), plan::text);
        assertTrue(plan.equipment()
                .contains("joint filling of the kind and grading that the pavement has, never sand in its place"));
        assertFalse(plan(254).text().contains("joint"), plan(254)::text);
    }

    @Test
    void textTellsLocationsWindowAndSpread() {
        Location location = Location.of("L1")
                .withZone("run-on edge")
                .withX(Reading.of("4.00", FieldUnit.METRE))
                .withY(Reading.of("1.50", FieldUnit.METRE));
        String text = VisitPlan.of(METHOD, surface("100", FieldUnit.SQUARE_METRE), expected(254, 1000, 7000))
                .withLocations(new LocationSample.Drawn(List.of(location), 2, 7))
                .withSetUp(Duration.ofMinutes(15))
                .withWindow(new DryWindow(Instant.parse("2026-06-03T12:00:00Z"), Instant.parse("2026-06-03T15:00:00Z")))
                .text();
        assertTrue(text.contains("Start: from 2026-06-03 12:00 to 2026-06-03 15:00 (Z)"), text);
        assertTrue(
                text.contains(
                        "  L1: x 4.00 m, y 1.50 m, run-on edge\n  no room found for 2 more\n  selected with seed 7"),
                text);
        assertTrue(text.contains("Moving, sealing and cleaning up: 15 min"), text);
        assertTrue(plan(254).text().contains("Moving, sealing and cleaning up: not included"), text);
        assertTrue(text.contains("Prewetting time: 183 s (at the lowest rate 12 min, at the highest 26 s)"), text);
        assertTrue(text.contains("Pour rate to keep the head: 1.18 L/min (0.311 gal/min)"), text);
    }

    @Test
    void timesAreToldByTheClockOfTheSite() {
        String text = plan(254)
                .withWindow(new DryWindow(Instant.parse("2026-06-03T12:00:00Z"), Instant.parse("2026-06-03T15:00:00Z")))
                .withZone(ZoneId.of("America/Chicago"))
                .text();
        assertTrue(text.contains("Start: from 2026-06-03 07:00 to 2026-06-03 10:00 (America/Chicago)"), text);
    }

    @Test
    void locationsOnRecordAreListedAndWhatIsMissingIsTold() {
        VisitPlan plan = plan(254)
                .withLocations(List.of(Location.of("A1"), Location.of(null).withZone("interior")));
        assertEquals(1, plan.missing());
        assertTrue(plan.text().contains("""
                  A1: place not recorded, no zone
                  without id: place not recorded, interior
                  1 more to select
                """), plan::text);
        assertEquals(0, plan.withRequestedLocations(1).missing());
    }

    /**
     * Invented spots. Three are counted by the area; a metre clear is asked for (memory: C1701 7.2), so middles lie 1.3 m apart
     * with a ring of 300 mm: 1.08 m are 0.78 m clear (derived).
     */
    @Test
    void locationsBeyondTheNumberAreSparesAndThoseTooNearAreNamed() {
        List<Location> spots =
                List.of(at("A1", "0"), at("A2", "1.08"), at("A3", "2.38"), at("A4", "9"), at("A5", "3.46"));
        VisitPlan plan = plan(254).withLocations(spots);
        assertEquals(spots, plan.locations());
        assertEquals(List.of("A1", "A3", "A4"), ids(plan.planned()));
        assertEquals(List.of("A2", "A5"), ids(plan.spares()));
        assertEquals(0, plan.missing());
        assertTrue(plan.text().contains("""
                  A4: x 9 m, y 0 m, no zone
                  A2: x 1.08 m, y 0 m, no zone; spare, 0.78 m clear of A1 (required: at least 1 m)
                  A5: x 3.46 m, y 0 m, no zone; spare, 0.78 m clear of A3 (required: at least 1 m)
                """), plan::text);
        VisitPlan pair = plan(254).withLocations(spots.subList(0, 2));
        assertEquals(List.of("A1"), ids(pair.planned()));
        assertEquals(2, pair.missing());
        VisitPlan apart =
                plan(254).withLocations(List.of(at("A1", "0"), at("A2", "1.3"), at("A3", "2.6"), at("A4", "3.9")));
        assertEquals(List.of(), apart.tooNear());
        assertEquals(List.of("A4"), ids(apart.spares()));
    }

    /** A degree of latitude at the equator is 110 574 m (WGS 84, memory): 0.00001 are 1.106 m, 0.906 m clear with the accuracies. */
    @Test
    void locationsWithPositionsAreNearWhereTheyAreAtMostSoFar() {
        VisitPlan near = plan(254).withLocations(List.of(on("A1", "0", "0.05"), on("A2", "0.00001", "0.05")));
        assertEquals(0.906, near.tooNear().get(0).clearMetres(), 1e-3);
        VisitPlan vague = plan(254).withLocations(List.of(on("A1", "0", "3"), on("A2", "0.00001", "3")));
        assertEquals(List.of(), vague.tooNear());
        VisitPlan unlike = plan(254).withLocations(List.of(on("A1", "0", "0.05"), at("A2", "0")));
        assertEquals(List.of(), unlike.tooNear());
    }

    private static Location at(String id, String x) {
        return Location.of(id).withX(Reading.of(x, FieldUnit.METRE)).withY(Reading.of("0", FieldUnit.METRE));
    }

    private static Location on(String id, String latitude, String accuracy) {
        return Location.of(id)
                .withPosition(Position.of(new BigDecimal(latitude), BigDecimal.ZERO)
                        .withAccuracy(Reading.of(accuracy, FieldUnit.METRE)));
    }

    private static List<String> ids(List<Location> locations) {
        return locations.stream().map(Location::id).toList();
    }

    /** Dry for 24 h (memory: C1701 8.1) before the visit and until it is over. */
    @Test
    void windowIsLookedForInTheRain() {
        Instant start = Instant.parse("2026-06-02T00:00:00Z");
        RainRecord rain = RainRecord.hourly(start, Collections.nCopies(48, Reading.of("0", FieldUnit.MILLIMETRE)));
        VisitPlan plan = plan(254).withRain(rain, start);
        DryWindow window = plan.window().orElseThrow();
        assertEquals(Instant.parse("2026-06-03T00:00:00Z"), window.firstStart());
        Duration onSite = plan.timeOnSite(new InfiltrationRate(254)).orElseThrow();
        assertEquals(Instant.parse("2026-06-04T00:00:00Z").minus(onSite), window.lastStart());
        VisitPlan slow = plan.withSetUp(Duration.ofHours(9));
        assertEquals(Optional.empty(), slow.window());
        assertTrue(slow.text()
                .contains("Start: no dry time in the rain record from 2026-06-02 00:00 to 2026-06-04 00:00 (Z)"));
        assertTrue(plan(254)
                .text()
                .contains("Start: no rain record given; required: the last rain ended at least 24 h before"));
        assertEquals(
                Optional.empty(), plan.withSetUp(Duration.ofDays(1_000_000_000)).window());
    }

    /** As many as counted, each a metre and a ring from the next (memory: C1701 7.2), half a ring from the edge. */
    @Test
    void drawKeepsTheDistancesOfTheMethod() {
        SurfaceOutline outline = SurfaceOutline.of(FieldUnit.METRE, 0, 0, 6, 0, 6, 2, 0, 2);
        VisitPlan plan = plan(254).withDraw(List.of(new LocationSample.Zone("bay", outline)), 11);
        List<Location> drawn = plan.locations();
        assertEquals(3, drawn.size());
        assertEquals(11, plan.drawn().orElseThrow().seed());
        for (int i = 0; i < drawn.size(); i++) {
            Location one = drawn.get(i);
            assertTrue(metres(one.x()) >= 0.15 && metres(one.x()) <= 5.85, plan::text);
            for (Location other : drawn.subList(0, i)) {
                double apart = Math.hypot(metres(one.x()) - metres(other.x()), metres(one.y()) - metres(other.y()));
                assertTrue(apart >= 1.3, plan::text);
            }
        }
        VisitPlan crowded =
                plan(254).withRequestedLocations(40).withDraw(List.of(new LocationSample.Zone("bay", outline)), 11);
        assertTrue(crowded.missing() > 20, crowded::text);
        assertEquals(40 - crowded.locations().size(), crowded.missing());
    }

    private static double metres(Reading<Length> length) {
        return length.in(FieldUnit.METRE);
    }

    @Test
    void waterOfTheVisitIsNamedWhereItIsLifted() {
        assertTrue(plan(7000).text().contains("Lifting: 18.00 kg of water for one run"), plan(7000)::text);
        assertTrue(plan(7000).text().contains("of the vehicle, 118.80 kg of water alone."), plan(7000)::text);
        VisitPlan unknown = VisitPlan.of(METHOD, Surface.of("HQ-A"), rate(254));
        assertTrue(unknown.text().contains("Lifting: 3.60 kg of water for one run"), unknown::text);
        assertTrue(unknown.text().contains("of the vehicle.\n"), unknown::text);
    }

    @Test
    void ringStandsOnTheJointsOfTheSurface() {
        Joints joints = Joints.of(Laying.HERRINGBONE_90, Laid.mm("200"), Laid.mm("100"), Laid.mm("5"));
        Surface surface = surface("100", FieldUnit.SQUARE_METRE).withJoints(joints);
        VisitPlan plan = VisitPlan.of(METHOD, surface, rate(254)).withRing(Laid.mm("290"));
        assertTrue(plan.text().contains("Ring of 290 mm on the joints"), plan::text);
        assertTrue(plan.text().contains("% open in the ring, 7.1 % in the pattern"), plan::text);
        assertFalse(plan(254).text().contains("on the joints"));
    }

    @ParameterizedTest(name = "{0} s: {1}")
    @CsvSource({
        "0, 0 s",
        "299, 299 s",
        "300, 5 min",
        "329, 5 min",
        "330, 6 min",
        "3569, 59 min",
        "3600, 1 h 0 min",
        "5400, 1 h 30 min"
    })
    void timesAreTexts(long seconds, String text) {
        assertEquals(text, PlanText.time(Duration.ofSeconds(seconds)));
    }

    @Test
    void whatIsOutOfRangeIsRefused() {
        VisitPlan plan = plan(254);
        assertThrows(IllegalArgumentException.class, () -> plan.withRuns(0));
        assertThrows(IllegalArgumentException.class, () -> plan.withRuns(3));
        assertThrows(IllegalArgumentException.class, () -> plan.withRequestedLocations(0));
        assertThrows(IllegalArgumentException.class, () -> plan.withSetUp(Duration.ofSeconds(-1)));
        assertThrows(IllegalArgumentException.class, () -> plan.withRing(Laid.mm("0")));
        assertThrows(IllegalArgumentException.class, () -> plan.withRing(Laid.mm("10001")));
        assertThrows(IllegalArgumentException.class, () -> plan.withDraw(List.of(), 1));
        assertThrows(IllegalArgumentException.class, () -> plan.spot(new InfiltrationRate(0)));
        assertThrows(IllegalArgumentException.class, () -> expected(0, 1, 2));
        assertThrows(IllegalArgumentException.class, () -> expected(2, 1, 3));
        assertThrows(IllegalArgumentException.class, () -> expected(1, 4, 3));
    }

    private static VisitPlan plan(double rate) {
        return VisitPlan.of(METHOD, surface("100", FieldUnit.SQUARE_METRE), rate(rate));
    }

    private static ExpectedRate rate(double rate) {
        return ExpectedRate.of(new InfiltrationRate(rate));
    }

    private static ExpectedRate expected(double low, double likely, double high) {
        return new ExpectedRate(new InfiltrationRate(low), new InfiltrationRate(likely), new InfiltrationRate(high));
    }

    private static Surface surface(String area, FieldUnit<Area> unit) {
        return Surface.of("HQ-A").withType(Surface.Type.PERVIOUS_CONCRETE).withArea(area(area, unit));
    }

    private static Reading<Area> area(String digits, FieldUnit<Area> unit) {
        return Reading.of(digits, unit);
    }

    private static LocationCount count(FieldUnit<Area> unit, Step... steps) {
        List<Step> other = METHOD.locationCount().si();
        return unit == FieldUnit.SQUARE_FOOT
                ? new LocationCount(other, List.of(steps), Basis.commonPractice())
                : new LocationCount(List.of(steps), METHOD.locationCount().inchPound(), Basis.commonPractice());
    }
}
