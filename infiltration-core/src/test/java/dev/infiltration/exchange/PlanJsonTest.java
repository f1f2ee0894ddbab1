// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.Joints;
import dev.infiltration.field.Laying;
import dev.infiltration.field.Location;
import dev.infiltration.field.Surface;
import dev.infiltration.method.Methods;
import dev.infiltration.plan.DryWindow;
import dev.infiltration.plan.ExpectedRate;
import dev.infiltration.plan.LocationSample;
import dev.infiltration.plan.RainRecord;
import dev.infiltration.plan.VisitPlan;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Read back with Jackson's tree, a general library. */
class PlanJsonTest {

    private static final VisitPlan BARE =
            VisitPlan.of(Methods.perviousConcrete(), Surface.of("HQ-A"), ExpectedRate.of(new InfiltrationRate(254)));

    private static final VisitPlan FULL = VisitPlan.of(
                    Methods.perviousConcrete(),
                    Surface.of("HQ-A").withArea(Reading.of("2501", FieldUnit.SQUARE_METRE)),
                    new ExpectedRate(
                            new InfiltrationRate(254), new InfiltrationRate(1000 / 3.0), new InfiltrationRate(7000)))
            .withSetUp(Duration.ofMinutes(15))
            .withWindow(new DryWindow(Instant.parse("2026-06-03T12:00:00Z"), Instant.parse("2026-06-03T15:00:00Z")))
            .withLocations(new LocationSample.Drawn(
                    List.of(Location.of("L1").withZone("run-on edge").withX(Reading.of("4.00", FieldUnit.METRE))),
                    3,
                    20260603));

    @Test
    void documentHoldsThePlan() {
        JsonNode json = read(FULL);
        assertEquals("HQ-A", json.at("/surface").asString());
        assertEquals("pervious-concrete", json.at("/method/id").asString());
        assertEquals(
                "limits not verified against the licensed edition",
                json.at("/method/verification").asString());
        assertEquals(4, json.at("/locationCount").asInt());
        assertEquals("run-on edge", json.at("/locations/0/zone").asString());
        assertEquals(
                "{\"value\":4.00,\"unit\":\"m\"}", json.at("/locations/0/x").toString());
        assertEquals(3, json.at("/missingCount").asInt());
        assertEquals(20260603, json.at("/seed").asLong());
        assertEquals(900, json.at("/setUpTimePerLocation/value").asInt());
        assertEquals(
                "2026-06-03T12:00:00Z", json.at("/startWindow/earliestStart").asString());
        assertEquals("2026-06-03T15:00:00Z", json.at("/startWindow/latestStart").asString());
        assertEquals(39.6, json.at("/waterPerLocation/value").asDouble(), 1e-12);
        assertEquals(158.4, json.at("/totalWater/value").asDouble(), 1e-12);
        assertEquals("kg", json.at("/totalWater/unit").asString());
        assertEquals(2, json.at("/runsPerLocation").asInt());
    }

    @Test
    void figuresOfEachRateAreThoseOfThePlan() {
        JsonNode json = read(FULL);
        assertEquals(
                "{\"value\":333.333,\"unit\":\"mm/h\"}",
                json.at("/estimates/likely/rate").toString());
        assertEquals("L/min", json.at("/estimates/lowest/pourRate/unit").asString());
        assertEquals(
                254 * Math.PI / 4 * 0.09 / 60,
                json.at("/estimates/lowest/pourRate/value").asDouble(),
                1e-6);
        assertEquals(3.6, json.at("/estimates/lowest/preWetWater/value").asDouble());
        assertEquals(18, json.at("/estimates/highest/runWater/value").asDouble());
        InfiltrationRate lowest = new InfiltrationRate(254);
        assertEquals(
                seconds(FULL.spot(lowest).preWetTime()),
                json.at("/estimates/lowest/preWetTime/value").asDouble());
        assertEquals(
                seconds(FULL.spot(lowest).runTime()),
                json.at("/estimates/lowest/runTime/value").asDouble());
        assertEquals(
                seconds(FULL.timePerLocation(lowest)),
                json.at("/estimates/lowest/timePerLocation/value").asDouble());
        assertEquals(
                seconds(FULL.timeOnSite(lowest).orElseThrow()),
                json.at("/estimates/lowest/timeOnSite/value").asDouble());
    }

    @Test
    void whereNumbersAndTimesComeFromIsTold() {
        JsonNode json = read(FULL);
        assertEquals(FULL.countBasis(), json.at("/locationCountBasis").asString());
        assertEquals("{\"value\":300,\"unit\":\"mm\"}", json.at("/ringDiameter").toString());
        assertEquals("Z", json.at("/startWindow/timeZone").asString());
        JsonNode spared = read(SPARED);
        assertEquals(List.of("A2"), texts(spared.at("/spareLocations")));
        assertEquals(
                "[{\"plannedLocation\":\"A1\",\"spareLocation\":\"A2\",\"clearDistance\":{\"value\":0.780000,\"unit\":\"m\"}}]",
                spared.at("/spacingConflicts").toString().replaceAll("0\\.78\\d*", "0.780000"));
        assertEquals("2026-06-02T00:00:00Z", spared.at("/rainRecord/start").asString());
        assertEquals("2026-06-02T00:00:00Z", spared.at("/rainRecord/end").asString());
    }

    /** Two locations with centres 1.08 m apart, a ring of 300 mm (invented). */
    private static final VisitPlan SPARED = FULL.withLocations(List.of(spot("A1", "0"), spot("A2", "1.08")))
            .withRain(
                    RainRecord.hourly(Instant.parse("2026-06-02T00:00:00Z"), List.of()),
                    Instant.parse("2026-06-02T00:00:00Z"));

    private static Location spot(String id, String x) {
        return Location.of(id).withX(Reading.of(x, FieldUnit.METRE)).withY(Reading.of("0", FieldUnit.METRE));
    }

    /** The page lists each key that a plan may have, and no other. */
    @Test
    void keysOfThePageAreThoseOfThePlan() throws IOException {
        Joints joints = Joints.of(Laying.STACK, millimetres("600"), millimetres("600"), millimetres("10"));
        VisitPlan jointed = VisitPlan.of(
                Methods.unitPavement(),
                Surface.of("HQ-A").withJoints(joints),
                ExpectedRate.of(new InfiltrationRate(254)));
        Set<String> written = new TreeSet<>();
        List.of(FULL, SPARED, jointed).forEach(plan -> collect("", read(plan), written));
        Set<String> listed = Pattern.compile("(?m)^\\| `([^|]*)` \\|")
                .matcher(keysOfThePage())
                .results()
                .flatMap(row -> Stream.of(row.group(1).split("`, `")))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(written, listed);
    }

    private static String keysOfThePage() throws IOException {
        String page = Files.readString(Path.of("..", "docs", "planning.md"));
        return page.substring(page.indexOf("## The plan as JSON"), page.indexOf("## The next step"));
    }

    /** An amount, a location of the field book and a text are leaves; the object for each of three rates is one too. */
    private static void collect(String path, JsonNode node, Set<String> keys) {
        boolean isLeaf = !node.isContainer() || node.has("unit") || path.equals("locations[]");
        if (isLeaf) {
            keys.add(path.replaceAll("\\[]$", ""));
        } else if (node.isArray()) {
            node.forEach(entry -> collect(path + "[]", entry, keys));
        } else {
            String prefix =
                    path.isEmpty() ? "" : path.replaceFirst("^estimates[.](lowest|highest)$", "estimates.likely") + ".";
            node.propertyStream().forEach(member -> collect(prefix + member.getKey(), member.getValue(), keys));
        }
    }

    @Test
    void wordsAreThoseOfThePlan() {
        JsonNode json = read(FULL);
        assertEquals(FULL.cautions(), texts(json.at("/cautions")));
        assertEquals(FULL.equipment(), texts(json.at("/equipment")));
        assertEquals(FULL.steps(), texts(json.at("/steps")));
    }

    @Test
    void whatThePlanCannotTellIsAbsent() {
        JsonNode json = read(BARE);
        for (String name : List.of(
                "area",
                "locationCount",
                "locations",
                "missingCount",
                "startWindow",
                "rainRecord",
                "totalWater",
                "seed",
                "ringPlacement")) {
            assertFalse(json.has(name), name);
        }
        assertFalse(json.at("/estimates/likely").has("timeOnSite"));
        assertTrue(json.has("waterPerLocation"));
    }

    @Test
    void ringStandsOnTheJointsOfTheSurface() {
        Joints joints = Joints.of(Laying.STACK, millimetres("600"), millimetres("600"), millimetres("10"));
        JsonNode json = read(VisitPlan.of(
                Methods.unitPavement(),
                Surface.of("HQ-A").withJoints(joints),
                ExpectedRate.of(new InfiltrationRate(254))));
        JsonNode ring = json.at("/ringPlacement");
        assertEquals(
                1.566,
                ring.at("/worst/relativeDifference/value").asDouble(),
                1e-3,
                "two joints cross (derived, by segments)");
        assertEquals(
                ring.at("/worst/ringOpenShare/value").asDouble()
                                / ring.at("/worst/patternOpenShare/value").asDouble()
                        - 1,
                ring.at("/worst/relativeDifference/value").asDouble(),
                1e-4);
        assertTrue(Math.abs(ring.at("/best/relativeDifference/value").asDouble()) < 0.3, ring::toString);
        assertEquals("mm", ring.at("/best/x/unit").asString());
    }

    private static Reading<Length> millimetres(String digits) {
        return Reading.of(digits, FieldUnit.MILLIMETRE);
    }

    private static double seconds(Duration time) {
        return time.toMillis() / 1000.0;
    }

    private static List<String> texts(JsonNode list) {
        return list.valueStream().map(JsonNode::asString).toList();
    }

    private static JsonNode read(VisitPlan plan) {
        return JsonMapper.builder()
                .enable(tools.jackson.databind.DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
                .build()
                .readTree(PlanJson.text(plan));
    }
}
