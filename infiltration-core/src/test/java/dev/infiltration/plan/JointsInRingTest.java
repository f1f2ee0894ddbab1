// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import static dev.infiltration.plan.Laid.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.Laying;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;

class JointsInRingTest {

    /** By how far a pattern may be shifted to lie on itself, along its own axes, in mm. */
    private static final Map<Laying, double[][]> SHIFTS = new EnumMap<>(Map.of(
            Laying.STACK, new double[][] {{206, 0}, {0, 106}},
            Laying.RUNNING_BOND, new double[][] {{206, 0}, {103, 106}},
            Laying.HERRINGBONE_90, new double[][] {{106, 106}, {206, -206}},
            Laying.HERRINGBONE_45, new double[][] {{106 * Math.sqrt(2), 0}, {0, -206 * Math.sqrt(2)}},
            Laying.BASKET_WEAVE, new double[][] {{212, 212}, {212, -212}},
            Laying.HEXAGONAL, new double[][] {{159, 0}, {79.5, 79.5 * Math.sqrt(3)}},
            Laying.GRID, new double[][] {{608, 0}, {0, 408}}));

    @ParameterizedTest(name = "{0} laid unit by unit in JTS (general library, derived), within 1e-4")
    @EnumSource
    void shareAgreesWithPavementLaidUnitByUnit(Laying laying) {
        List<Geometry> units = Laid.units(laying);
        Random random = new Random(20260603);
        for (int i = 0; i < 40; i++) {
            double x = 300 * random.nextDouble() - 150;
            double y = 300 * random.nextDouble() - 150;
            double turn = 360 * random.nextDouble();
            RingOffset offset = offset(x, y, turn);
            assertEquals(
                    Laid.openShare(units, x, y, 150), ring(laying).at(offset).openShare(), 5e-6, offset::toString);
        }
    }

    @ParameterizedTest(name = "{0}: the nearest neighbours are a joint apart, none overlaps")
    @EnumSource
    void jointsAreAsWideAsStated(Laying laying) {
        List<Geometry> units = Tiling.of(Laid.example(laying))
                .facesNear(0, 0, 200)
                .filter(face -> CirclePolygon.signedArea(face) > 0)
                .map(Laid::polygon)
                .toList();
        double nearest = IntStream.range(0, units.size())
                .mapToDouble(i -> nearest(units.get(i), units.subList(0, i)))
                .min()
                .orElseThrow();
        assertEquals(JointPattern.millimetres(Laid.example(laying).joint()), nearest, 1e-9);
    }

    private static double nearest(Geometry unit, List<Geometry> others) {
        return others.stream().mapToDouble(unit::distance).min().orElse(Double.MAX_VALUE);
    }

    @Property(tries = 600)
    void shiftByRepeatOfPatternChangesNothing(
            @ForAll Laying laying,
            @ForAll @DoubleRange(min = -500, max = 500) double x,
            @ForAll @DoubleRange(min = -500, max = 500) double y,
            @ForAll @IntRange(min = -5, max = 5) int m,
            @ForAll @IntRange(min = -5, max = 5) int n) {
        double[][] shifts = SHIFTS.get(laying);
        double shiftX = m * shifts[0][0] + n * shifts[1][0];
        double shiftY = m * shifts[0][1] + n * shifts[1][1];
        double here = share(laying, x, y);
        assertEquals(here, share(laying, x + shiftX, y + shiftY), 1e-10);
    }

    @Property(tries = 200)
    void halfTurnAboutDatumChangesNothing(
            @ForAll Laying laying,
            @ForAll @DoubleRange(min = -300, max = 300) double x,
            @ForAll @DoubleRange(min = -300, max = 300) double y) {
        assertEquals(share(laying, x, y), share(laying, -x, -y), 1e-10);
    }

    @Property(tries = 100)
    void turnedAxesNameTheSamePlace(
            @ForAll Laying laying,
            @ForAll @DoubleRange(min = -300, max = 300) double x,
            @ForAll @DoubleRange(min = -300, max = 300) double y,
            @ForAll @DoubleRange(min = -360, max = 360) double turn) {
        assertEquals(share(laying, x, y), ring(laying).at(offset(x, y, turn)).openShare(), 1e-10);
    }

    /** Each point of the pavement lies in the ring equally often, so the mean over all places is the pattern's own share. */
    @ParameterizedTest
    @EnumSource
    void meanOverAllPlacesIsPatternsShare(Laying laying) {
        double[][] shifts = SHIFTS.get(laying);
        int points = 60;
        double mean = IntStream.range(0, points * points)
                .mapToDouble(k -> {
                    double i = (k % points) / (double) points;
                    double j = Math.floorDiv(k, points) / (double) points;
                    return share(laying, i * shifts[0][0] + j * shifts[1][0], i * shifts[0][1] + j * shifts[1][1]);
                })
                .average()
                .orElseThrow();
        assertEquals(Laid.example(laying).openShare(), mean, 2e-5);
    }

    @ParameterizedTest
    @EnumSource
    void worstIsNoBetterThanAnyPlace(Laying laying) {
        RingPlacement worst = ring(laying).worst();
        double found = somePlaces(laying).map(Math::abs).max().orElseThrow();
        assertTrue(Math.abs(worst.mismatch()) >= found - 1e-9, () -> worst + " against " + found);
        assertEquals(worst, ring(laying).at(worst.offset()));
    }

    @ParameterizedTest
    @EnumSource
    void bestRepresentsPatternAndStandsSlipping(Laying laying) {
        List<RingPlacement> best = ring(laying).best(mm("8"));
        assertTrue(best.size() >= 1);
        double slipped = best.stream()
                .mapToDouble(place -> slipped(laying, place.offset(), 8))
                .max()
                .orElseThrow();
        double elsewhere = new Random(7)
                .doubles(150, -300, 300)
                .map(x -> slipped(laying, offset(x, 700 - 3 * x, 0), 8))
                .min()
                .orElseThrow();
        assertTrue(slipped <= elsewhere + 1e-9, () -> slipped + " against " + elsewhere);
    }

    /** Told from the datum that the crew measures from: no like place lies nearer, and the nearest of all comes first. */
    @ParameterizedTest
    @EnumSource
    void bestLieNearTheDatumNearestFirst(Laying laying) {
        double[] distances = ring(laying).best(mm("8")).stream()
                .mapToDouble(
                        place -> Math.hypot(place.offset().x(), place.offset().y()))
                .toArray();
        for (int i = 1; i < distances.length; i++) {
            assertTrue(distances[i - 1] <= distances[i] + 1e-3, () -> Arrays.toString(distances));
        }
        double[][] shifts = SHIFTS.get(laying);
        double half = (Math.hypot(shifts[0][0], shifts[0][1]) + Math.hypot(shifts[1][0], shifts[1][1])) / 2;
        assertTrue(distances[distances.length - 1] <= half, () -> Arrays.toString(distances));
    }

    @ParameterizedTest
    @EnumSource
    void withoutSlipSomePlaceHoldsJustThePatternsShare(Laying laying) {
        assertEquals(0, ring(laying).best(mm("0")).get(0).mismatch(), 1e-5);
    }

    /** Slabs larger than the ring: at a crossing it holds two strips of 10 mm (closed form, derived), on a slab nothing. */
    @Test
    void crossingHoldsTwoJointsAndSlabNone() {
        JointPattern slabs = JointPattern.of(Laying.STACK, mm("600"), mm("600"), mm("10"));
        JointsInRing ring = JointsInRing.of(slabs, mm("300")).orElseThrow();
        RingPlacement crossing = ring.at(new RingOffset(305, 305, 0));
        double strip = 2 * (5 * Math.sqrt(150 * 150 - 25) + 150 * 150 * Math.asin(5 / 150.0));
        assertEquals((2 * strip - 100) / (Math.PI * 150 * 150), crossing.openShare(), 1e-14);
        assertEquals(crossing.mismatch(), ring.worst().mismatch(), 1e-9);
        assertEquals(-1, ring.at(new RingOffset(0, 0, 0)).mismatch(), 1e-14);
    }

    @Test
    void mismatchIsRelativeToPattern() {
        assertEquals(0.5, new RingPlacement(new RingOffset(0, 0, 0), 0.15, 0.1).mismatch(), 1e-15);
    }

    @ParameterizedTest(name = "diameter {0}")
    @ValueSource(strings = {"0", "-300", "10001", "1e999"})
    void diameterOutOfRangeIsRefused(String diameter) {
        JointPattern pattern = Laid.example(Laying.STACK);
        assertThrows(IllegalArgumentException.class, () -> JointsInRing.of(pattern, mm(diameter)));
    }

    @ParameterizedTest(name = "{0} units of {1} x {2} mm, joint {3} mm, ring {4} mm")
    @CsvSource({
        "STACK, 15, 15, 1, 300, true",
        "STACK, 10, 10, 1, 300, false",
        "STACK, 200, 100, 5, 3000, true",
        "STACK, 200, 100, 5, 10000, false",
        "STACK, 10000, 1, 0.1, 300, false",
        "BASKET_WEAVE, 10000, 1, 0.1, 300, false",
        "HERRINGBONE_45, 10000, 1, 0.1, 300, false",
    })
    @Timeout(20)
    void moreUnitsThanTheCapAreNotLookedAt(
            Laying laying, String length, String width, String joint, String ring, boolean isTold) {
        JointPattern pattern = JointPattern.of(laying, mm(length), mm(width), mm(joint));
        Optional<JointsInRing> joints = JointsInRing.of(pattern, mm(ring));
        assertEquals(isTold, joints.isPresent());
        joints.ifPresent(told -> told.best(mm("10")));
    }

    @Test
    void negativeSlipIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> ring(Laying.STACK).best(mm("-1")));
    }

    @ParameterizedTest
    @CsvSource({"NaN, 0, 0", "0, Infinity, 0", "0, 0, NaN"})
    void offsetsAreNumbers(double x, double y, double turn) {
        assertThrows(IllegalArgumentException.class, () -> new RingOffset(x, y, turn));
    }

    @Test
    void tapedOffsetsAreReadInMillimetres() {
        assertEquals(
                new RingOffset(50, -25.4, 30),
                RingOffset.of(mm("50"), Laid.inches("-1")).turned(30));
    }

    private static DoubleStream somePlaces(Laying laying) {
        return new Random(1)
                .doubles(500, -300, 300)
                .map(x -> ring(laying).at(offset(x, 500 - 2.7 * x, 0)).mismatch());
    }

    private static double slipped(Laying laying, RingOffset offset, double slip) {
        return IntStream.range(0, 8)
                .mapToDouble(i -> Math.PI * i / 4 + Math.toRadians(laying == Laying.HERRINGBONE_45 ? -45 : 0))
                .map(way -> ring(laying)
                        .at(offset(offset.x() + slip * Math.cos(way), offset.y() + slip * Math.sin(way), 0))
                        .mismatch())
                .map(Math::abs)
                .max()
                .orElseThrow();
    }

    private static double share(Laying laying, double x, double y) {
        return ring(laying).at(offset(x, y, 0)).openShare();
    }

    /** {@return the place (x, y) of the pattern, measured along axes turned by {@code turn}} */
    private static RingOffset offset(double x, double y, double turn) {
        double angle = Math.toRadians(turn);
        return new RingOffset(
                x * Math.cos(angle) + y * Math.sin(angle), y * Math.cos(angle) - x * Math.sin(angle), turn);
    }

    private static JointsInRing ring(Laying laying) {
        return JointsInRing.of(Laid.example(laying), mm("300")).orElseThrow();
    }
}
