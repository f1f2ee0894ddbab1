// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.field.Location;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Ring;
import dev.infiltration.method.Limit;
import dev.infiltration.method.Range;
import dev.infiltration.method.TestMethod;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.math.MathContext;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;

/** Rules of a test as a whole. */
final class TestRules {

    private TestRules() {}

    static void made(TestAt at, Findings findings) {
        LocationTest test = at.test();
        if (test.notTested() != null && test.runs().isEmpty()) {
            findings.add(
                    BuiltInRule.TEST_NOT_TESTED,
                    at.place(),
                    at.subject(),
                    test.notTested().word());
        }
        if (test.notTested() == null && !test.isMade()) {
            findings.add(BuiltInRule.TEST_EMPTY, at.place(), at.subject(), "");
        }
    }

    static void hotSurface(TestAt at, TestMethod method, Findings findings) {
        Reading<Temperature> temperature = at.test().surfaceTemperature();
        if (temperature != null) {
            findings.judge(
                    BuiltInRule.VISIT_HOT_SURFACE,
                    method.limit(Limit.SURFACE_TEMPERATURE),
                    temperature,
                    at.place(),
                    at.subject());
        }
    }

    static void freezing(TestAt at, Findings findings) {
        Reading<Temperature> temperature = at.test().surfaceTemperature();
        if (temperature != null && VisitRules.isFreezing(temperature)) {
            findings.add(
                    BuiltInRule.VISIT_FREEZING,
                    at.place(),
                    at.subject(),
                    "surface " + temperature,
                    "above 0 °C / 32 °F",
                    RuleBases.COMMON_PRACTICE);
        }
    }

    /** The first run of a series that is not void is its test's first such run, after a prewetting that counts. */
    static void preWetAbsent(TestAt at, Findings findings) {
        for (PouringAt run : at.runs()) {
            if (run.pouring().isVoid() || run.before().countingRuns() > 0) {
                continue;
            }
            if (at.countingPreWet() == null || firstCountingRun(at) != run) {
                findings.add(
                        BuiltInRule.PREWET_ABSENT,
                        at.place(),
                        at.subject(),
                        observed(at),
                        "a prewetting",
                        RuleBases.PREWETTING);
            }
        }
    }

    private static String observed(TestAt at) {
        if (at.preWetOrNull() == null) {
            return "no prewetting";
        }
        return at.countingPreWet() == null ? "the prewetting is void" : "maintenance since the prewetting";
    }

    private static @Nullable PouringAt firstCountingRun(TestAt at) {
        return at.runsInOrder().stream()
                .filter(run -> !run.pouring().isVoid())
                .findFirst()
                .orElse(null);
    }

    /** The ring floor is wet throughout while the fall across the ring is no more than the highest head. */
    static void slope(TestAt at, TestMethod method, Findings findings) {
        Location location = at.locationOrNull();
        Reading<Dimensionless> slope = location == null ? null : location.slope();
        Ring ring = at.ringOrNull();
        if (slope == null || ring == null || !ring.isUsable() || !at.test().isMade()) {
            return;
        }
        Reading<Length> diameter = ring.diametersInUse().get(0);
        Range<Length> head = method.limit(Limit.HEAD).in(diameter.unit().system());
        Reading<Length> fall = fall(slope, ring, diameter.unit());
        if (head.highest() != null && fall.compareAmount(head.highest()) > 0) {
            String observed = slope + " over " + diameter + ": " + fall;
            findings.add(
                    BuiltInRule.RUN_SLOPE_UNCOVERED,
                    at.place(),
                    at.subject(),
                    observed,
                    "at most " + head.highest(),
                    RuleBases.DERIVED);
        }
    }

    private static Reading<Length> fall(Reading<Dimensionless> slope, Ring ring, FieldUnit<Length> unit) {
        BigDecimal diameter = RingRules.meanDiameter(ring).exactIn(unit);
        BigDecimal fall = slope.exactIn(FieldUnit.ONE).multiply(diameter);
        return Reading.of(fall.round(MathContext.DECIMAL128), unit);
    }
}
