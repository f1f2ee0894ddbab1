// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import static dev.infiltration.plan.Laid.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.infiltration.check.Bias;
import dev.infiltration.check.Checker;
import dev.infiltration.check.Effect;
import dev.infiltration.check.Finding;
import dev.infiltration.check.TestAt;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Visit;
import dev.infiltration.plan.JointPattern.Laying;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RingPlacementTest {

    private static final JointsInRing SLABS =
            JointsInRing.of(JointPattern.of(Laying.STACK, mm("600"), mm("600"), mm("10")), mm("300"));

    /** On a slab without a joint, at a crossing of two joints, halfway to one, and not recorded. */
    private static final Map<String, RingOffset> OFFSETS = Map.of(
            "T1", new RingOffset(0, 0, 0),
            "T2", new RingOffset(305, 305, 0),
            "T3", new RingOffset(305, 0, 0));

    @Test
    void ringThatMisrepresentsThePatternGetsCaution() {
        List<Finding> findings = findings(0.5);
        assertEquals(
                List.of("/visits/0/tests/0", "/visits/0/tests/1"),
                findings.stream().map(finding -> finding.where().toString()).toList());
        assertEquals(Effect.CAUTION, findings.get(0).effect());
        assertEquals(Bias.EITHER, findings.get(0).bias());
        assertEquals(
                "0.0 % open in the ring, 3.3 % in the pattern", findings.get(0).observed());
        assertEquals("within 50.0 % of the pattern's share", findings.get(0).allowed());
    }

    /** Without a joint the mismatch is −1; at one joint it is 0.305, at the crossing 1.566 (derived, by segments). */
    @Test
    void thresholdIsTheUsers() {
        assertEquals(3, findings(0.25).size());
        assertEquals(1, findings(1).size(), "−1 is within 1");
        assertEquals(0, findings(2).size());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.1, Double.NaN})
    void thresholdIsAboveZero(double threshold) {
        assertThrows(IllegalArgumentException.class, () -> RingPlacement.rule(threshold, RingPlacementTest::placement));
    }

    private static List<Finding> findings(double threshold) {
        List<LocationTest> tests = List.of("T1", "T2", "T3", "T4").stream()
                .map(id -> LocationTest.of(id, "A1", "R1"))
                .toList();
        Visit visit = Visit.of("V1", "HQ-A", LocalDate.of(2026, 6, 3)).withTests(tests);
        return Checker.withDefaults()
                .withRule(RingPlacement.rule(threshold, RingPlacementTest::placement))
                .check(FieldBook.empty().withVisits(List.of(visit)))
                .findings()
                .stream()
                .filter(finding -> finding.rule().equals(RingPlacement.RULE))
                .toList();
    }

    private static Optional<RingPlacement> placement(TestAt test) {
        return Optional.ofNullable(OFFSETS.get(test.test().id())).map(SLABS::at);
    }
}
