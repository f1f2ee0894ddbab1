// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.field.Event;
import dev.infiltration.field.Head;
import dev.infiltration.field.Place;
import dev.infiltration.field.Pour;
import dev.infiltration.field.Pouring;
import dev.infiltration.field.WaterReading;
import dev.infiltration.method.Band;
import dev.infiltration.method.Limit;
import dev.infiltration.method.MassStep;
import dev.infiltration.method.Range;
import dev.infiltration.method.TestMethod;
import dev.infiltration.rule.Bias;
import dev.infiltration.rule.Effect;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/** Rules of a prewetting or a run by itself and by the prewetting before it. */
final class PouringRules {

    private PouringRules() {}

    static void preWetMass(PouringAt at, TestMethod method, Findings findings) {
        at.pouring()
                .pouredWater()
                .ifPresent(
                        water -> judge(BuiltInRule.PREWET_MASS, method.limit(Limit.PREWET_MASS), water, at, findings));
    }

    private static void judge(BuiltInRule entry, Band<Mass> band, WaterReading water, PouringAt at, Findings findings) {
        Range<Mass> range = band.in(water.system());
        if (!range.contains(water.mass())) {
            findings.add(
                    entry,
                    waterPlace(at),
                    at.subject(),
                    water.toString(),
                    range.toString(),
                    band.basis(),
                    EntryErrors.unit(at.pouring(), band));
        }
    }

    /** Water that is not positive is no reading: of a run, {@code run.unusable} alone speaks of it. */
    static boolean isPouredPositive(Pouring pouring) {
        return pouring.pouredWater().filter(WaterReading::isPositive).isPresent();
    }

    /** The member, or the record itself where the water came from its pours. */
    private static Place waterPlace(PouringAt at) {
        return at.pouring().water() == null ? at.place() : at.place().member("water");
    }

    static void head(PouringAt at, TestMethod method, Findings findings) {
        Head head = at.pouring().head();
        if (head == null) {
            return;
        }
        Band<Length> band = method.limit(Limit.HEAD);
        BuiltInRule entry = at.isRun() ? BuiltInRule.RUN_HEAD : BuiltInRule.PREWET_HEAD;
        Place where = at.place().member("head");
        if (head.state() != null && head.state() != Head.State.BETWEEN_MARKS) {
            findings.add(entry, where, at.subject(), head.state().word(), band.toString(), band.basis());
        }
        for (@Nullable Reading<Length> level : java.util.Arrays.asList(head.lowest(), head.highest())) {
            if (level != null) {
                findings.judge(entry, band, level, where, at.subject());
            }
        }
    }

    static void discontinued(PouringAt at, Findings findings) {
        if (at.pouring().isStopped()) {
            BuiltInRule entry = at.isRun() ? BuiltInRule.RUN_DISCONTINUED : BuiltInRule.PREWET_DISCONTINUED;
            Reading<Length> depth = at.pouring().depthAtStop();
            String observed = depth == null || !depth.isPositive() ? "stopped" : "stopped with " + depth + " left";
            findings.add(entry, at.place(), at.subject(), observed, "drained", RuleBases.DRAINED);
        }
    }

    static void isVoid(PouringAt at, Findings findings) {
        Pouring run = at.pouring();
        String reason =
                run instanceof dev.infiltration.field.TestRun test ? SubjectText.given(test.voidReason()) : null;
        findings.add(BuiltInRule.RUN_VOID, at.place(), at.subject(), reason == null ? "no reason recorded" : reason);
    }

    static void endUnrecorded(PouringAt at, Findings findings) {
        if (at.pouring().end() == null) {
            findings.add(
                    BuiltInRule.RUN_END_UNRECORDED,
                    at.place(),
                    at.subject(),
                    "",
                    "drained, stopped or void",
                    RuleBases.DRAINED);
        }
    }

    /** Without a run, the end of the prewetting is all that the location has to go by. */
    static void preWetEndUnrecorded(PouringAt at, Findings findings) {
        if (at.isEndMissing()) {
            findings.add(
                    BuiltInRule.PREWET_END_UNRECORDED,
                    at.place(),
                    at.subject(),
                    "",
                    "drained, stopped or void",
                    RuleBases.DRAINED);
        }
    }

    static void unusable(PouringAt at, Findings findings) {
        Pouring run = at.pouring();
        if (!dev.infiltration.rate.RateEquation.isUsable(run)) {
            String water = run.pouredWater().map(WaterReading::toString).orElse("not recorded");
            String elapsed =
                    run.elapsed() == null ? "not recorded" : run.elapsed().toString();
            String observed = "water " + water + ", elapsed " + elapsed;
            findings.add(
                    BuiltInRule.RUN_UNUSABLE,
                    at.place(),
                    at.subject(),
                    observed,
                    "both above zero",
                    RuleBases.COMMON_PRACTICE);
        }
    }

    /** The water of a run that drained, by the time of the prewetting that selects its mass. */
    static void mass(PouringAt at, TestMethod method, Findings findings) {
        PouringAt preWet = selecting(at);
        MassStep step = preWet == null ? null : step(preWet.pouring(), method);
        if (step != null && at.pouring().isDrained()) {
            at.pouring()
                    .pouredWater()
                    .filter(WaterReading::isPositive)
                    .ifPresent(water -> judge(BuiltInRule.RUN_MASS, step.mass(), water, at, findings));
        }
    }

    /** The prewetting of the run's own test, else the latest before it in the same series. */
    private static @Nullable PouringAt selecting(PouringAt run) {
        PouringAt own = run.test().countingPreWet();
        return own == null ? run.before().preWet() : own;
    }

    /** One that was stopped would have taken longer: it selects the last step, which is for every longer one, or nothing. */
    private static @Nullable MassStep step(Pouring preWet, TestMethod method) {
        Reading<Time> elapsed = preWet.elapsed();
        if (elapsed == null || !elapsed.isPositive()) {
            return null;
        }
        for (MassStep step : method.massSteps()) {
            if (step.isFor(elapsed)) {
                return preWet.isStopped() && step.below() != null ? null : step;
            }
        }
        return null;
    }

    static void waterByVolume(PouringAt at, Findings findings) {
        Pouring run = at.pouring();
        if (!isPouredPositive(run)) {
            return;
        }
        Stream<@Nullable WaterReading> readings = run.water() != null
                ? Stream.of(run.water())
                : run.pours().stream().flatMap(PouringRules::readings);
        readings.filter(water -> water != null && water.isVolume())
                .findFirst()
                .ifPresent(water -> findings.add(
                        BuiltInRule.RUN_WATER_BY_VOLUME,
                        at.place(),
                        at.subject(),
                        water.toString(),
                        "weighed",
                        RuleBases.WEIGHED));
    }

    private static Stream<@Nullable WaterReading> readings(Pour pour) {
        return Stream.of(pour.before(), pour.after());
    }

    static void poursDisagree(PouringAt at, TestMethod method, Findings findings) {
        WaterReading water = at.pouring().water();
        WaterReading sum = dev.infiltration.field.PreWet.of(null, null, null, null)
                .withPours(at.pouring().pours())
                .pouredWater()
                .orElse(null);
        if (water == null || sum == null || !water.isPositive()) {
            return;
        }
        FieldUnit<Mass> unit = water.mass().unit();
        BigDecimal off =
                sum.mass().exactIn(unit).subtract(water.mass().exactIn(unit)).abs();
        Range<Mass> tolerance = method.limit(Limit.POUR_TOLERANCE).in(water.system());
        if (!tolerance.contains(Reading.of(off, unit))) {
            String observed = "pours sum to " + sum + ", water " + water;
            findings.add(
                    BuiltInRule.RUN_POURS_DISAGREE,
                    at.place(),
                    at.subject(),
                    observed,
                    "within " + tolerance.highest(),
                    method.limit(Limit.POUR_TOLERANCE).basis());
        }
    }

    /** What was poured last before the run, and counts, is a prewetting given up with water standing. */
    static void standing(PouringAt at, Findings findings) {
        PouringAt before = at.before().counting();
        if (before != null && !before.isRun() && before.pouring().isStopped()) {
            findings.add(
                    BuiltInRule.PREWET_STANDING,
                    at.place(),
                    at.subject(),
                    "prewetting stopped with water standing",
                    "drained",
                    RuleBases.DRAINED);
        }
    }

    static void tooMany(PouringAt at, TestMethod method, Findings findings) {
        int position = at.before().countingRuns() + 1;
        if (position > method.runsPerDay()) {
            String observed = "run " + position + " at this location and date";
            findings.add(
                    BuiltInRule.RUN_TOO_MANY,
                    at.place(),
                    at.subject(),
                    observed,
                    "at most " + method.runsPerDay(),
                    RuleBases.RUNS_A_DAY);
        }
    }

    static void event(PouringAt at, Findings findings) {
        Set<Bias> ways = EnumSet.noneOf(Bias.class);
        List<Event> moving = at.pouring().events().stream()
                .filter(event -> Bias.of(event.kind()) != Bias.NONE)
                .toList();
        moving.forEach(event -> ways.add(Bias.of(event.kind())));
        if (!moving.isEmpty()) {
            String observed = moving.stream()
                    .map(event -> event.kind() == null ? "" : event.kind().word())
                    .collect(Collectors.joining(", "));
            Bias bias = ways.size() == 1 ? ways.iterator().next() : Bias.EITHER;
            findings.add(
                    BuiltInRule.RUN_EVENT,
                    Effect.CAUTION,
                    bias,
                    at.place(),
                    at.subject(),
                    observed,
                    "",
                    RuleBases.COMMON_PRACTICE);
        }
    }
}
