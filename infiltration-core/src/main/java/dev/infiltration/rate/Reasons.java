// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.field.Head;
import dev.infiltration.field.Pouring;
import dev.infiltration.field.TestRun;
import dev.infiltration.rule.Bias;
import dev.infiltration.rule.RuleId;
import dev.infiltration.units.InfiltrationRate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Why a run does not give a plain rate: ids of rules, by the direction of their bias. */
record Reasons(String unusable, Set<String> upper, Set<String> lower, Set<String> none) {

    /** A prewetting gives a bound only if it was discontinued; events are evaluated on runs. */
    static Reasons of(Pouring pouring) {
        boolean isRun = pouring instanceof TestRun;
        Reasons reasons = new Reasons(
                isRun ? RuleId.RUN_UNUSABLE.id() : RuleId.PREWET_DISCONTINUED.id(),
                new LinkedHashSet<>(),
                new LinkedHashSet<>(),
                new LinkedHashSet<>());
        if (pouring.isStopped()) {
            reasons.upper.add(isRun ? RuleId.RUN_DISCONTINUED.id() : RuleId.PREWET_DISCONTINUED.id());
        }
        if (isRun) {
            reasons.addWhatHappened(pouring);
        }
        return reasons;
    }

    private void addWhatHappened(Pouring run) {
        if (run.head() != null && run.head().state() == Head.State.NEVER_REACHED) {
            lower.add(RuleId.RUN_HEAD.id());
        }
        run.events().forEach(event -> add(Bias.of(event.kind())));
    }

    private void add(Bias bias) {
        String event = RuleId.RUN_EVENT.id();
        switch (bias) {
            case RAISES -> upper.add(event);
            case LOWERS -> lower.add(event);
            case EITHER -> none.add(event);
            case NONE -> {}
        }
    }

    RateOutcome outcome(double millimetresPerHour) {
        if (!Double.isFinite(millimetresPerHour)) {
            return new RateOutcome.Withheld(with(List.of(RuleId.RUN_IMPLAUSIBLE.id())));
        }
        List<String> withholding = with(List.of());
        if (!withholding.isEmpty()) {
            return new RateOutcome.Withheld(withholding);
        }
        InfiltrationRate rate = new InfiltrationRate(millimetresPerHour);
        if (!upper.isEmpty()) {
            return new RateOutcome.UpperBound(rate, List.copyOf(upper));
        }
        return lower.isEmpty() ? new RateOutcome.Measured(rate) : new RateOutcome.LowerBound(rate, List.copyOf(lower));
    }

    /** {@return what withholds the rate: the obstacles, a ring that moved, bounds from both sides} */
    List<String> with(List<String> obstacles) {
        Set<String> all = new LinkedHashSet<>(obstacles);
        all.addAll(none);
        if (!upper.isEmpty() && !lower.isEmpty()) {
            all.addAll(upper);
            all.addAll(lower);
        }
        return new ArrayList<>(all);
    }
}
