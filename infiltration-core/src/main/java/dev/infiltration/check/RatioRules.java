// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.method.Basis;
import dev.infiltration.method.Basis.Trust;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.units.InfiltrationRate;
import java.util.Optional;

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
            compare(BuiltInRule.RUN_PAIR_SPREAD, run, before.outcome(), spread, Optional.empty(), findings);
        }
        Double ratio = limits.preWetRatio();
        PouringAt preWet = run.test().countingPreWet();
        if (preWet != null && ratio != null) {
            Optional<String> entryError =
                    minutes(run, preWet.outcome(), ratio).or(() -> minutes(preWet, outcome, ratio));
            compare(BuiltInRule.RUN_PREWET_RATIO, run, preWet.outcome(), ratio, entryError, findings);
        }
    }

    private static void implausible(PouringAt run, RateOutcome outcome, Findings findings) {
        boolean isTooHigh = !(outcome instanceof RateOutcome.UpperBound)
                && outcome.figure()
                        .filter(rate -> rate.compareTo(HIGHEST_PUBLISHED) > 0)
                        .isPresent();
        if (isTooHigh || outcome.reasons().contains(BuiltInRule.RUN_IMPLAUSIBLE.id())) {
            String observed = outcome.figure().map(InfiltrationRate::toString).orElse("not finite");
            findings.add(
                    BuiltInRule.RUN_IMPLAUSIBLE,
                    run.place(),
                    run.subject(),
                    observed,
                    "0 to " + HIGHEST_PUBLISHED,
                    PUBLISHED,
                    EntryErrors.minutes(run, rate -> rate.compareTo(HIGHEST_PUBLISHED) <= 0));
        }
    }

    private static void compare(
            BuiltInRule entry,
            PouringAt run,
            RateOutcome other,
            double most,
            Optional<String> entryError,
            Findings findings) {
        Optional<InfiltrationRate> rate = run.outcome().rate();
        if (rate.isPresent()
                && other.rate()
                        .filter(reference -> !isWithin(rate.get(), reference, most))
                        .isPresent()) {
            String observed = rate.get() + " and " + other.rate().get();
            findings.add(
                    entry, run.place(), run.subject(), observed, "ratio at most " + most, RuleBases.USER, entryError);
        }
    }

    /** The elapsed time read as minutes and seconds, where the rate then agrees with the other. */
    private static Optional<String> minutes(PouringAt at, RateOutcome other, double most) {
        return other.rate().flatMap(reference -> EntryErrors.minutes(at, rate -> isWithin(rate, reference, most)));
    }

    private static boolean isWithin(InfiltrationRate one, InfiltrationRate other, double most) {
        double rate = one.millimetresPerHour();
        double reference = other.millimetresPerHour();
        return Math.max(rate, reference) <= most * Math.min(rate, reference);
    }
}
