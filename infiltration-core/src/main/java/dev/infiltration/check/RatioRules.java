// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.method.Basis;
import dev.infiltration.method.Basis.Trust;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.units.InfiltrationRate;

/** Rules that compare rates: {@code run.pair-spread}, {@code run.prewet-ratio}, {@code run.implausible}. */
final class RatioRules {

    private static final InfiltrationRate HIGHEST_PUBLISHED = new InfiltrationRate(68_400);
    private static final Basis PUBLISHED = new Basis("highest rate met in published studies", "", Trust.MEMORY);

    private RatioRules() {}

    static void judge(PouringAt run, UserLimits limits, Findings findings) {
        RateOutcome outcome = run.outcome();
        implausible(run, outcome, findings);
        Double spread = limits.pairSpread();
        PouringAt before = spread == null ? null : run.before().countingRun();
        if (before != null && spread != null) {
            compare(Entry.RUN_PAIR_SPREAD, run, outcome, before.outcome(), spread, findings);
        }
        Double ratio = limits.preWetRatio();
        PouringAt preWet = run.test().countingPreWet();
        if (preWet != null && ratio != null) {
            compare(Entry.RUN_PREWET_RATIO, run, outcome, preWet.outcome(), ratio, findings);
        }
    }

    private static void implausible(PouringAt run, RateOutcome outcome, Findings findings) {
        boolean isTooHigh = !(outcome instanceof RateOutcome.UpperBound)
                && outcome.figure()
                        .filter(rate -> rate.compareTo(HIGHEST_PUBLISHED) > 0)
                        .isPresent();
        if (isTooHigh || outcome.reasons().contains(Entry.RUN_IMPLAUSIBLE.id())) {
            String observed = outcome.figure().map(InfiltrationRate::toString).orElse("not finite");
            findings.add(
                    Entry.RUN_IMPLAUSIBLE,
                    run.place(),
                    run.subject(),
                    observed,
                    "0 to " + HIGHEST_PUBLISHED,
                    PUBLISHED);
        }
    }

    private static void compare(
            Entry entry, PouringAt run, RateOutcome one, RateOutcome other, double most, Findings findings) {
        if (one.rate().isEmpty() || other.rate().isEmpty()) {
            return;
        }
        double rate = one.rate().get().millimetresPerHour();
        double reference = other.rate().get().millimetresPerHour();
        if (Math.max(rate, reference) > most * Math.min(rate, reference)) {
            String observed = one.rate().get() + " and " + other.rate().get();
            findings.add(entry, run.place(), run.subject(), observed, "ratio at most " + most, Bases.USER);
        }
    }
}
