// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.check.Series.Before;
import dev.infiltration.field.ClockTime;
import dev.infiltration.field.Place;
import dev.infiltration.field.Pouring;
import dev.infiltration.field.UnreadableValue;
import dev.infiltration.rate.RateConstant;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.rate.UncertaintyBudget;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/** A prewetting or a run in its surroundings: its test and the series it stands in. */
public final class PouringAt {

    /** The index of a prewetting. */
    static final int PREWETTING = -1;

    private final TestAt test;
    private final int index;
    private final Pouring pouring;
    private @Nullable TimeRange start;
    private Before before = Before.NOTHING;
    private boolean isFollowed;

    PouringAt(TestAt test, int index, Pouring pouring) {
        this.test = test;
        this.index = index;
        this.pouring = pouring;
    }

    /** {@return the test it belongs to} */
    public TestAt test() {
        return test;
    }

    /** {@return the prewetting or run} */
    public Pouring pouring() {
        return pouring;
    }

    /** {@return whether it is a run, not a prewetting} */
    public boolean isRun() {
        return index != PREWETTING;
    }

    /** {@return its place in the book} */
    public Place place() {
        return isRun() ? test.place().member("runs").entry(index) : test.place().member("preWet");
    }

    /** {@return the values that could not be read inside this prewetting or run, or in its place} */
    public List<UnreadableValue> unreadable() {
        return List.copyOf(test.visit().book().register().unreadable().within(place()));
    }

    /** {@return whether the run could not be read at all}: it keeps its place in the series and has no rate */
    public boolean isLost() {
        return test.visit().book().register().unreadable().isLost(place());
    }

    /** {@return it in words: visit, location, and which run} */
    public String subject() {
        return test.subject() + (isRun() ? ", run " + (index + 1) : ", prewetting");
    }

    /** {@return what it comes to, with the ids of the rules that withhold or bound the rate in the order of the catalogue} */
    public RateOutcome outcome() {
        RateOutcome bare = test.equation().rate(test.ringOrNull(), pouring);
        Set<BuiltInRule> obstacles = test.obstacles();
        Set<String> raised = test.visit().book().withholding(this);
        boolean isWithheld = !obstacles.isEmpty() || !raised.isEmpty() || bare instanceof RateOutcome.Withheld;
        return isWithheld ? new RateOutcome.Withheld(withholding(obstacles, raised, bare)) : bare;
    }

    /** {@return the constant that its rate is worked with; empty where the ring or the water is not known} */
    public Optional<RateConstant> constant() {
        return test.ring()
                .filter(ring -> pouring.pouredWater().isPresent())
                .map(ring -> test.equation().constant(ring, pouring));
    }

    /**
     * {@return the uncertainty budget of its rate, from its readings and the instruments that its visit names}; empty unless
     * it was measured. Terms that others share, of ring, balance or test, have the same name in theirs
     */
    public Optional<UncertaintyBudget> budget() {
        return outcome().rate().isPresent() ? test.visit().book().budgets().of(this) : Optional.empty();
    }

    private List<String> withholding(Set<BuiltInRule> obstacles, Set<String> raised, RateOutcome bare) {
        Set<String> ids = new LinkedHashSet<>(raised);
        obstacles.forEach(entry -> ids.add(entry.id()));
        if (bare instanceof RateOutcome.Withheld && !isLost()) {
            ids.addAll(bare.reasons());
        }
        if (!isRun() && !pouring.isStopped()) {
            ids.remove(BuiltInRule.PREWET_DISCONTINUED.id());
        }
        if (!isRun() && pouring.isStopped()) {
            ids.add(BuiltInRule.PREWET_DISCONTINUED.id());
        }
        if (pouring.isVoid()) {
            ids.removeIf(id -> id.equals(BuiltInRule.RUN_EVENT.id()));
        }
        return ids.stream().sorted(Comparator.comparingInt(BuiltInRule::order)).toList();
    }

    /** {@return whether it is a prewetting whose end is not recorded and that no run which is not void follows} */
    public boolean isEndMissing() {
        return !isRun() && pouring.end() == null && !isFollowed;
    }

    int index() {
        return index;
    }

    /** When it may have started; null when that is not recorded. */
    @Nullable
    TimeRange start() {
        ClockTime written = pouring.start();
        if (start == null && written != null) {
            start = TimeRange.of(written, test.visit().zone());
        }
        return start;
    }

    /** Its elapsed time in seconds; null when that is not recorded or not positive. */
    @Nullable
    BigDecimal elapsed() {
        Reading<Time> elapsed = pouring.elapsed();
        return elapsed == null || !elapsed.isPositive() ? null : TimeRange.seconds(elapsed);
    }

    /** The delay that was timed directly, in seconds; null when there is none or it is negative. */
    @Nullable
    BigDecimal delay() {
        Reading<Time> delay = pouring.delay();
        return delay == null || delay.value().signum() < 0 ? null : TimeRange.seconds(delay);
    }

    /** What stands before it in its series; a void prewetting stands in none. */
    Before before() {
        return before;
    }

    void stand(Before before) {
        this.before = before;
    }

    /** Whether a run that is not void follows it at its location and date. */
    void follow(boolean isFollowed) {
        this.isFollowed = isFollowed;
    }
}
