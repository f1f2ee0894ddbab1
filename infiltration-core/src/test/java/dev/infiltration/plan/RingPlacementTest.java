// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import static dev.infiltration.plan.Laid.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.check.Checker;
import dev.infiltration.check.Finding;
import dev.infiltration.check.Policy;
import dev.infiltration.check.UserLimits;
import dev.infiltration.exchange.FieldBookJson;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Joints;
import dev.infiltration.field.Laying;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Offset;
import dev.infiltration.field.ReadBook;
import dev.infiltration.field.Ring;
import dev.infiltration.field.Site;
import dev.infiltration.field.Surface;
import dev.infiltration.field.Visit;
import dev.infiltration.review.Review;
import dev.infiltration.rule.Bias;
import dev.infiltration.rule.Effect;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RingPlacementTest {

    private static final Joints SLABS = Joints.of(Laying.STACK, mm("600"), mm("600"), mm("10"));

    /** On a slab, where two joints cross, where one joint passes. */
    private static final Map<String, Offset> OFFSETS =
            Map.of("T1", offset("0", "0"), "T2", offset("305", "305"), "T3", offset("305", "0"));

    @Test
    void ringThatMisrepresentsThePatternGetsCaution() {
        List<Finding> findings = findings(0.5);
        assertEquals(
                List.of("/visits/0/tests/0", "/visits/0/tests/1"),
                findings.stream().map(finding -> finding.where().toString()).toList());
        assertEquals("test.ring-placement", findings.get(0).rule());
        assertEquals(Effect.CAUTION, findings.get(0).effect());
        assertEquals(Bias.EITHER, findings.get(0).bias());
        assertEquals(
                "0.0 % open in the ring, 3.3 % in the pattern", findings.get(0).observed());
        assertEquals("within 50.0 % of the pattern's share", findings.get(0).allowed());
    }

    /** Without a joint the mismatch is −1; at one joint it is 0.305, at the crossing 1.566 (derived, by segments). */
    @Test
    void limitIsTheUsers() {
        assertEquals(3, findings(0.25).size());
        assertEquals(1, findings(1).size(), "−1 is within 1");
        assertEquals(0, findings(2).size());
        assertEquals(List.of(), findings(SLABS, offset("0", "0"), null), "none set, nothing said");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.1, Double.NaN})
    void limitIsAboveZero(double limit) {
        UserLimits none = UserLimits.none();
        assertThrows(IllegalArgumentException.class, () -> none.withRingMismatch(limit));
    }

    /** The crossing lies 431.3 mm along an axis turned by 45°; along x the ring would lie beside a joint (derived). */
    @Test
    void turnIsTaken() {
        Offset along = offset("431.3", "0");
        assertEquals(
                List.of(),
                findings(SLABS, offset("305", "305").withTurn(new BigDecimal("0")), 2.0),
                "1.57 is within 2");
        assertTrue(observed(SLABS, along.withTurn(new BigDecimal("45"))).startsWith("8.3 % open"));
        assertTrue(observed(SLABS, along).startsWith("2.3 % open"), () -> observed(SLABS, along));
    }

    private static String observed(Joints joints, Offset offset) {
        return findings(joints, offset, 1e-9).get(0).observed();
    }

    @Test
    void whatIsNotRecordedIsNotJudged() {
        Offset slab = offset("0", "0");
        assertEquals(1, findings(SLABS, slab, 0.1).size());
        List<@Nullable Joints> unknown = Arrays.asList(
                null,
                SLABS.withPattern(null),
                SLABS.withLength(null),
                SLABS.withWidth(null),
                SLABS.withJoint(null),
                SLABS.withLength(mm("1e999")),
                SLABS.withWidth(mm("601")),
                SLABS.withPattern(Laying.GRID),
                SLABS.withPattern(Laying.GRID).withVoids(Joints.Voids.of(null, 1, mm("100"), mm("100"))));
        unknown.forEach(joints -> assertEquals(List.of(), findings(joints, slab, 0.1), () -> "" + joints));
        List<@Nullable Offset> nowhere = Arrays.asList(
                null,
                slab.withX(null),
                slab.withY(null),
                slab.withX(mm("1000001")),
                slab.withY(mm("-1e300")),
                slab.withTurn(new BigDecimal("1e999999999")));
        nowhere.forEach(offset -> assertEquals(List.of(), findings(SLABS, offset, 0.1), () -> "" + offset));
    }

    /** Small books that kept the checker busy for minutes. */
    @Test
    @Timeout(20)
    void moreUnitsAndVoidsThanTheCapAreNotJudged() {
        Offset slab = offset("0", "0");
        Joints.Voids voids = Joints.Voids.of(100, 100, mm("0.005"), mm("0.005"));
        Joints grid = Joints.of(Laying.GRID, mm("1"), mm("1"), mm("0")).withVoids(voids);
        assertEquals(List.of(), findings(grid, slab, 1e-9));
        assertEquals(List.of(), findings(Joints.of(Laying.STACK, mm("2"), mm("2"), mm("0.2")), slab, 1e-9));
    }

    @ParameterizedTest(name = "ring {0}: {1} findings")
    @CsvSource({"R1, 1", "R2, 0", "R3, 0", "R4, 0", "R5, 0", ", 0"})
    void ringIsKnownAndUsable(String ring, int count) {
        LocationTest test = LocationTest.of("T1", "A1", ring).withRingOffset(offset("0", "0"));
        assertEquals(count, findings(SLABS, List.of(test), 0.1).size());
    }

    @Test
    void keysAreReadFromTheFieldBook() {
        ReadBook read = FieldBookJson.withDefaults().read("""
                {"format": "infiltration-field-book/1",
                 "sites": [{"id": "HQ", "surfaces": [{"id": "HQ-G", "type": "grid",
                   "joints": {"pattern": "grid", "length": {"value": 600, "unit": "mm"}, "width": {"value": 400, "unit": "mm"},
                              "joint": {"value": 0, "unit": "mm"}, "chamfer": {"value": 1, "unit": "mm"},
                              "voids": {"along": 6, "across": 4, "length": {"value": 60, "unit": "mm"},
                                        "width": {"value": 60, "unit": "mm"}}}}]}],
                 "rings": [{"id": "R1", "insideDiameter": {"value": 300, "unit": "mm"}}],
                 "visits": [{"id": "V1", "surface": "HQ-G", "date": "2026-06-03",
                   "tests": [{"id": "T1", "ring": "R1",
                     "ringOffset": {"x": {"value": 5, "unit": "cm"}, "y": {"value": 0, "unit": "mm"}, "turn": 30}}]}]}
                """);
        assertEquals(List.of(), read.problems());
        FieldBook book = read.book().orElseThrow();
        Joints joints = book.sites().get(0).surfaces().get(0).joints();
        JointPattern pattern = JointPattern.of(joints).orElseThrow();
        assertEquals(new JointPattern.Voids(6, 4, mm("60"), mm("60")), pattern.voids());
        assertEquals(mm("1"), pattern.chamfer());
        Offset offset = book.visits().get(0).tests().get(0).ringOffset();
        assertEquals(new RingOffset(50, 0, 30), RingOffset.of(offset).orElseThrow());
    }

    @Test
    void limitIsToldAmongTheChanges() {
        Policy policy = Policy.asWritten().withLimits(UserLimits.none().withRingMismatch(0.2));
        Checker checker = Checker.withDefaults().withPolicy(policy);
        ReadBook book = ReadBook.of(FieldBook.empty());
        assertEquals(List.of(), Review.of(book, checker).policyChanges(), "nothing judges it");
        assertEquals(
                List.of("test.ring-placement: at most 0.2"),
                Review.of(book, checker.withRule(RingPlacement.rule())).policyChanges());
        Policy louder = policy.withEffect(RingPlacement.RULE, Effect.DEVIATION);
        assertEquals(List.of("test.ring-placement: DEVIATION"), louder.changes());
    }

    private static List<Finding> findings(double limit) {
        List<LocationTest> tests = List.of("T1", "T2", "T3", "T4").stream()
                .map(id -> LocationTest.of(id, "A1", "R1").withRingOffset(OFFSETS.get(id)))
                .toList();
        return findings(SLABS, tests, limit);
    }

    private static List<Finding> findings(@Nullable Joints joints, @Nullable Offset offset, @Nullable Double limit) {
        return findings(joints, List.of(LocationTest.of("T1", "A1", "R1").withRingOffset(offset)), limit);
    }

    private static List<Finding> findings(@Nullable Joints joints, List<LocationTest> tests, @Nullable Double limit) {
        Visit visit = Visit.of("V1", "HQ-A", LocalDate.of(2026, 6, 3)).withTests(tests);
        Surface surface = Surface.of("HQ-A").withType(Surface.Type.PAVERS).withJoints(joints);
        Ring ring = Ring.of("R1").withInsideDiameter(mm("300"));
        FieldBook book = FieldBook.empty()
                .withSites(List.of(Site.of("HQ").withSurfaces(List.of(surface))))
                .withRings(List.of(
                        ring,
                        Ring.of("R2"),
                        ring.withId("R3").withInsideDiameter(mm("0")),
                        ring.withId("R4").withInsideDiameter(mm("1e999"))))
                .withVisits(List.of(visit));
        return Checker.withDefaults()
                .withPolicy(Policy.asWritten().withLimits(UserLimits.none().withRingMismatch(limit)))
                .withRule(RingPlacement.rule())
                .check(book)
                .findings()
                .stream()
                .filter(finding -> finding.rule().equals(RingPlacement.RULE))
                .toList();
    }

    private static Offset offset(String x, String y) {
        return Offset.of(mm(x), mm(y));
    }
}
