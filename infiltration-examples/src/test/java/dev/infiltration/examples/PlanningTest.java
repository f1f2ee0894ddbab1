// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.check.Checker;
import dev.infiltration.check.Policy;
import dev.infiltration.check.UserLimits;
import dev.infiltration.exchange.FieldBookJson;
import dev.infiltration.exchange.PlanJson;
import dev.infiltration.exchange.ZonesJson;
import dev.infiltration.field.ReadBook;
import dev.infiltration.field.Surface;
import dev.infiltration.method.Methods;
import dev.infiltration.plan.DryWindow;
import dev.infiltration.plan.ExpectedRate;
import dev.infiltration.plan.LocationSample;
import dev.infiltration.plan.LocationSample.Zone;
import dev.infiltration.plan.RainRecord;
import dev.infiltration.plan.RingPlacement;
import dev.infiltration.plan.SurfaceOutline;
import dev.infiltration.plan.VisitPlan;
import dev.infiltration.review.NextVisit;
import dev.infiltration.review.Review;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Runs the snippet of the page on planning, and sees that it stands there as it is run here. */
class PlanningTest {

    private static final Path PAGE = Path.of("..", "docs", "planning.md");
    private static final Path HERE = Path.of("src/test/java/dev/infiltration/examples/PlanningTest.java");

    private static List<String> snippet(
            Surface surface,
            SurfaceOutline edge,
            SurfaceOutline interior,
            ExpectedRate expected,
            RainRecord gauge,
            RainRecord forecast,
            Instant now) {
        // begin
        LocationSample draw = LocationSample.of(List.of(new Zone("run-on edge", edge), new Zone("interior", interior)))
                .withRing(Reading.of("300", FieldUnit.MILLIMETRE))
                .withClearDistance(Reading.of("1", FieldUnit.METRE));
        VisitPlan plan = VisitPlan.of(Methods.unitPavement(), surface, expected)
                .withSetUp(Duration.ofMinutes(15))
                .withLocations(draw.draw(3, 20260603))
                .withWindow(DryWindow.first(gauge.then(forecast), Methods.unitPavement(), Duration.ofHours(4), now)
                        .orElseThrow());
        String text = plan.text();
        String json = PlanJson.text(plan);
        // end
        return List.of(text, json);
    }

    @Test
    void snippetRuns() {
        Instant now = Instant.parse("2026-06-02T12:00:00Z");
        RainRecord gauge = new RainRecord(
                now.minus(Duration.ofHours(12)),
                now,
                List.of(new RainRecord.Fall(
                        now.minus(Duration.ofHours(6)),
                        now.minus(Duration.ofHours(5)),
                        Reading.of("4", FieldUnit.MILLIMETRE))));
        RainRecord forecast = RainRecord.hourly(now, Collections.nCopies(48, Reading.of("0", FieldUnit.MILLIMETRE)));
        List<String> plan = snippet(
                Surface.of("HQ-A").withArea(Reading.of("1841", FieldUnit.SQUARE_METRE)),
                SurfaceOutline.of(FieldUnit.METRE, 0, 0, 50, 0, 50, 4, 0, 4),
                SurfaceOutline.of(FieldUnit.METRE, 0, 4, 50, 4, 50, 37, 0, 37),
                ExpectedRate.of(new InfiltrationRate(2540)),
                gauge,
                forecast,
                now);
        assertTrue(plan.get(0).contains("Start: from 2026-06-03 07:00 to 2026-06-04 08:00 (Z)"), plan.get(0));
        assertTrue(plan.get(1).contains("\"earliestStart\": \"2026-06-03T07:00:00Z\""), plan.get(1));
    }

    private static VisitPlan fromTheBook(Review review, ZonesJson.ReadZones zones) {
        // begin
        NextVisit next = NextVisit.of(review, Methods.builtIn(), "HQ-A").orElseThrow();
        VisitPlan planned = next.plan(next.expected().orElseThrow()).withDraw(zones.zones(), 20260603);
        // end
        return planned;
    }

    /** The zones shown on the page are those of the demo. */
    @Test
    void zonesOfThePageAreReadAndDrawnIn() throws IOException {
        String page = Files.readString(PAGE);
        String shown = page.substring(page.indexOf("```json\n") + 8);
        ZonesJson.ReadZones zones = ZonesJson.read(shown.substring(0, shown.indexOf("```")));
        ReadBook read = FieldBookJson.withDefaults().read(Path.of("demo", "harrow-quay.json"));
        VisitPlan plan = fromTheBook(Review.of(read), zones);
        assertEquals(3, plan.locations().size());
        VisitPlan ofDemo = fromTheBook(Review.of(read), ZonesJson.read(Path.of("demo", "harrow-quay-zones.json")));
        assertEquals(plan.text(), ofDemo.text());
    }

    private static Checker ringPlacement() {
        // begin
        Policy policy = Policy.asWritten().withLimits(UserLimits.none().withRingMismatch(0.2));
        Checker checker = Checker.withDefaults().withPolicy(policy).withRule(RingPlacement.rule());
        // end
        return checker;
    }

    @Test
    void ringPlacementIsTakenIn() throws IOException {
        ReadBook read = FieldBookJson.withDefaults().read(Path.of("demo", "harrow-quay.json"));
        Review review = Review.of(read, ringPlacement());
        assertEquals(List.of("test.ring-placement: at most 0.2"), review.policyChanges());
    }

    @Test
    void snippetsStandOnThePage() throws IOException {
        Snippets.assertAllStandAlike(PAGE, HERE);
    }
}
