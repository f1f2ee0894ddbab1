// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import static dev.infiltration.plan.Laid.inches;
import static dev.infiltration.plan.Laid.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.Laying;
import dev.infiltration.plan.JointPattern.Voids;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class JointPatternTest {

    @ParameterizedTest(name = "{0} {1} x {2}, joint {3}, chamfer {4}")
    @CsvSource(delimiter = '|', textBlock = """
            # derived by hand: 1 - solid / repeated area; absolute tolerance 1e-12
            # laying        | L   | W    | j   | c | share
            STACK           | 200 | 100  | 5   |   | 0.070847851336
            RUNNING_BOND    | 200 | 100  | 5   |   | 0.070847851336
            HERRINGBONE_90  | 200 | 100  | 5   |   | 0.070847851336
            HERRINGBONE_45  | 200 | 100  | 5   |   | 0.070847851336
            STACK           | 200 | 100  | 5   | 3 | 0.152799070848
            BASKET_WEAVE    | 200 | 97.5 | 5   |   | 0.071980963712
            BASKET_WEAVE    | 200 | 100  | 5   |   | 0.092970521542
            BASKET_WEAVE    | 240 | 75   | 5   |   | 0.100374843815
            HEXAGONAL       | 100 | 100  | 8   |   | 0.142661179698
            """)
    void openShareAgreesWithClosedForm(
            Laying laying, String length, String width, String joint, String chamfer, double share) {
        JointPattern plain = JointPattern.of(laying, mm(length), mm(width), mm(joint));
        JointPattern pattern = chamfer == null ? plain : plain.withChamfer(mm(chamfer));
        assertEquals(share, pattern.openShare(), 1e-12);
    }

    @ParameterizedTest(name = "joint {0}: {1}")
    @CsvSource({"0, 0.36", "10, 0.385845661735"})
    void gridCountsVoidsAndJoints(String joint, double share) {
        Voids voids = new Voids(6, 4, mm("60"), mm("60"));
        assertEquals(
                share, JointPattern.grid(mm("600"), mm("400"), mm(joint), voids).openShare(), 1e-12);
    }

    @Test
    void inchesAndMillimetresGiveOneShare() {
        JointPattern inches = JointPattern.of(Laying.STACK, inches("8"), inches("4"), inches("0.25"));
        assertEquals(0.087344028520, inches.openShare(), 1e-12);
    }

    /** The polygons that ring shares are computed from hold what the closed form says. */
    @ParameterizedTest
    @EnumSource
    void closedFormAgreesWithPolygons(Laying laying) {
        JointPattern pattern = Laid.example(laying);
        Tiling tiling = Tiling.of(pattern);
        double solid =
                tiling.faces().stream().mapToDouble(CirclePolygon::signedArea).sum();
        assertEquals(pattern.openShare(), 1 - solid / tiling.cell(), 1e-12);
    }

    @ParameterizedTest(name = "{0}, {1} x {2}, joint {3}, chamfer {4}: {5}")
    @CsvSource({
        "STACK, 10001, 100, 5, 0, length",
        "STACK, 100, 0.9, 5, 0, width",
        "STACK, 100, 100.1, 5, 0, width",
        "HEXAGONAL, 100, 99, 5, 0, width",
        "STACK, 200, 100, 0, 0, joint",
        "STACK, 200, 100, -1, 0, joint",
        "STACK, 200, 100, 10001, 0, joint",
        "STACK, 200, 100, 5, 50, chamfer",
        "STACK, 200, 100, 5, -1, chamfer",
        "GRID, 200, 100, 5, 0, voids",
    })
    void sizesOutOfRangeAreRefusedByName(
            Laying laying, String length, String width, String joint, String chamfer, String name) {
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class,
                () -> JointPattern.of(laying, mm(length), mm(width), mm(joint)).withChamfer(mm(chamfer)));
        assertTrue(refused.getMessage().startsWith(name + ": "), refused::getMessage);
    }

    @ParameterizedTest(name = "{0} x {1} voids of {2} x {3}: {4}")
    @CsvSource({
        "0, 1, 10, 10, along",
        "101, 1, 1, 1, along",
        "1, 0, 10, 10, across",
        "1, 1, 0, 10, length",
        "1, 1, 10, -1, width",
        "2, 1, 100, 10, voids",
        "1, 3, 10, 34, voids",
    })
    void voidsThatDoNotFitAreRefusedByName(int along, int across, String length, String width, String name) {
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class,
                () -> JointPattern.grid(
                        mm("200"), mm("100"), mm("5"), new Voids(along, across, mm(length), mm(width))));
        assertTrue(refused.getMessage().startsWith(name + ": "), refused::getMessage);
    }

    @Test
    void onlyGridsHaveVoids() {
        Voids voids = new Voids(1, 1, mm("10"), mm("10"));
        assertThrows(
                IllegalArgumentException.class,
                () -> new JointPattern(Laying.STACK, mm("200"), mm("100"), mm("5"), null, voids));
    }
}
