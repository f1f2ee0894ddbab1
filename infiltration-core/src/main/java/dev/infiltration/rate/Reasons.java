// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.field.Event;
import dev.infiltration.field.Head;
import dev.infiltration.field.Pouring;
import dev.infiltration.field.TestRun;
import dev.infiltration.units.InfiltrationRate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Why a run does not give a plain rate: ids of rules, by which way they push. */
record Reasons(String unusable, Set<String> upper, Set<String> lower, Set<String> none) {

    /** A prewetting gives a bound only if it was discontinued; events are evaluated on runs. */
    static Reasons of(Pouring pouring) {
        boolean isRun = pouring instanceof TestRun;
        Reasons reasons = new Reasons(
                isRun ? "run.unusable" : "prewet.discontinued",
                new LinkedHashSet<>(),
                new LinkedHashSet<>(),
                new LinkedHashSet<>());
        if (pouring.isStopped()) {
            reasons.upper.add(isRun ? "run.discontinued" : "prewet.discontinued");
        }
        if (isRun) {
            reasons.addWhatHappened(pouring);
        }
        return reasons;
    }

    private void addWhatHappened(Pouring run) {
        if (run.head() != null && run.head().state() == Head.State.NEVER_REACHED) {
            lower.add("run.head");
        }
        run.events().forEach(event -> add(event.kind()));
    }

    private void add(Event.@Nullable Kind kind) {
        if (kind == null) {
            return;
        }
        switch (kind) {
            case LEAK, OVERFLOW, SPILL, TIMER_LATE -> upper.add("run.event");
            case POUR_INTERRUPTED, HEAD_LOST -> lower.add("run.event");
            case RING_MOVED -> none.add("run.event");
            default -> {}
        }
    }

    RateOutcome outcome(double millimetresPerHour) {
        if (!Double.isFinite(millimetresPerHour)) {
            return new RateOutcome.Withheld(with(List.of("run.implausible")));
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
