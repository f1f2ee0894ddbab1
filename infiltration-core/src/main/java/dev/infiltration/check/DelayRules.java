// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.method.Band;
import dev.infiltration.method.Limit;
import dev.infiltration.method.TestMethod;
import dev.infiltration.units.Reading;
import dev.infiltration.units.UnitSystem;
import java.math.BigDecimal;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/** {@code run.start-delay} and {@code run.repeat-delay}: two clocks, one from the prewetting, one from the run before. */
final class DelayRules {

    private DelayRules() {}

    static void judge(PouringAt run, TestMethod method, Findings findings) {
        PouringAt preWet = run.test().countingPreWet();
        if (preWet != null && run.test().runsInOrder().get(0) == run) {
            judge(
                    run,
                    preWet,
                    method.limit(Limit.START_DELAY),
                    BuiltInRule.RUN_START_DELAY,
                    BuiltInRule.RUN_START_DELAY_UNSHOWN,
                    findings);
            return;
        }
        PouringAt before = run.before().run();
        if (before != null) {
            judge(
                    run,
                    before,
                    method.limit(Limit.REPEAT_DELAY),
                    BuiltInRule.RUN_REPEAT_DELAY,
                    BuiltInRule.RUN_REPEAT_DELAY_UNSHOWN,
                    findings);
        }
    }

    private static void judge(
            PouringAt run,
            PouringAt before,
            Band<Time> band,
            BuiltInRule broken,
            BuiltInRule unshown,
            Findings findings) {
        @Nullable Reading<Time> limit = band.in(UnitSystem.NEITHER).highest();
        Gap gap = gap(run, before);
        if (limit == null || gap == null) {
            return;
        }
        BigDecimal most = TimeRange.seconds(limit);
        boolean isBroken = gap.least.compareTo(most) > 0;
        if (isBroken || gap.most.compareTo(most) > 0) {
            findings.add(
                    isBroken ? broken : unshown,
                    run.place(),
                    run.subject(),
                    gap.toString(),
                    "at most " + limit,
                    band.basis());
        }
    }

    /** The shortest and the longest time that may have passed. */
    private record Gap(BigDecimal least, BigDecimal most) {

        @Override
        public String toString() {
            boolean isExact = least.compareTo(most) == 0;
            return isExact
                    ? SubjectText.seconds(least)
                    : SubjectText.seconds(least) + " to " + SubjectText.seconds(most);
        }
    }

    /** A delay timed directly settles it; else the times of day, where both are known. */
    private static @Nullable Gap gap(PouringAt run, PouringAt before) {
        BigDecimal delay = run.delay();
        if (delay != null) {
            return new Gap(delay, delay);
        }
        TimeRange start = run.start();
        TimeRange earlier = before.start();
        BigDecimal elapsed = before.elapsed();
        if (start == null || earlier == null || elapsed == null) {
            return null;
        }
        return new Gap(
                start.leastAfter(earlier).subtract(elapsed),
                start.mostAfter(earlier).subtract(elapsed));
    }
}
