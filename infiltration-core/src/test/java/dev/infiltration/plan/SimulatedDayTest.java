// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.check.Finding;
import dev.infiltration.field.ClockTime.Precision;
import dev.infiltration.field.Event;
import dev.infiltration.field.Pouring.End;
import dev.infiltration.method.Methods;
import dev.infiltration.method.Range;
import dev.infiltration.method.TestMethod;
import dev.infiltration.plan.NextStep.MakeReady.Lack;
import dev.infiltration.rate.RateEquation;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.units.Reading;
import dev.infiltration.units.UnitSystem;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.measure.quantity.Mass;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Whole days by a simulated clock, each judged afterwards by the checker; {@link WrongTurnTest} takes the turns one by one. */
class SimulatedDayTest {

    /**
     * A crew that does what it is told in time, or not at all; that is slow, gives up, spoils runs, comes back, meets rain, finds
     * the surface unswept or no potable water at hand, and goes on to locations near and far.
     */
    @Property(tries = 900)
    void stepsTakenInTimeLeadToNoDeviation(
            @ForAll long seed,
            @ForAll Precision precision,
            @ForAll UnitSystem weighed,
            @ForAll("builtIn") TestMethod method) {
        Crew crew = new Crew(seed, precision, weighed == UnitSystem.NEITHER ? UnitSystem.SI : weighed, method);
        crew.work();
        List<Finding> steps = crew.day.isPouredUpon() ? crew.day.deviations() : List.of();
        assertEquals(List.of(), steps, crew.day::diary);
    }

    @Provide
    Arbitrary<TestMethod> builtIn() {
        return Arbitraries.of(Methods.builtIn().all());
    }

    @Test
    void simulatedDaysTakeEveryTurn() {
        Set<String> met = new TreeSet<>();
        for (int seed = 0; seed < 300; seed++) {
            Crew crew = new Crew(seed, Precision.EXACT, UnitSystem.SI, Methods.perviousConcrete());
            crew.work();
            crew.steps.forEach(step -> met.add(turn(step)));
        }
        Set<String> every = Set.of(
                "first",
                "start-missed",
                "repeat-missed",
                "void",
                "Start",
                "Repeat",
                "Watch",
                "StopWaiting",
                "NotYet",
                "MakeReady",
                "too-near",
                "runs-made",
                "water-stands",
                "rain",
                "other-day");
        assertEquals(new TreeSet<>(every), met);
    }

    private static String turn(NextStep step) {
        if (step instanceof NextStep.PreWet preWet) {
            return preWet.occasion().word();
        }
        return step instanceof NextStep.Done done
                ? done.reason().word()
                : step.getClass().getSimpleName();
    }

    /** Started all the same, whatever the guide says: it says missed exactly when the checker finds a deviation. */
    @Property(tries = 300)
    void startIsMissedWhenTheCheckerSaysSo(
            @ForAll @IntRange(min = 50, max = 3000) int elapsed, @ForAll @IntRange(max = 2400) int gap) {
        FieldDay day = drained(Precision.EXACT, elapsed).pass(tenths(gap));
        boolean isMissed = day.next() instanceof NextStep.PreWet;
        day.run(elapsed < 300 ? "18.00" : "3.60").drained("90");
        assertEquals(isMissed, day.rules().contains("run.start-delay"), day::diary);
    }

    /** Written to the minute, what is told to be in time is no deviation, and what is told to be missed is not shown in time. */
    @Property(tries = 300)
    void startWrittenToTheMinuteIsJudgedCautiously(
            @ForAll @IntRange(max = 599) int second,
            @ForAll @IntRange(min = 50, max = 3000) int elapsed,
            @ForAll @IntRange(max = 2400) int gap) {
        FieldDay day = new FieldDay("09:00:00", Precision.MINUTE, UnitSystem.SI)
                .pass(tenths(second))
                .preWet()
                .pass(tenths(elapsed))
                .end(End.DRAINED)
                .pass(tenths(gap));
        boolean isMissed = day.next() instanceof NextStep.PreWet;
        day.run(elapsed < 300 ? "18.00" : "3.60").drained("90");
        Set<String> rules = day.rules();
        boolean isShown = !rules.contains("run.start-delay") && !rules.contains("run.start-delay-unshown");
        assertTrue(isMissed ? !isShown : !rules.contains("run.start-delay"), day::diary);
    }

    @Property(tries = 300)
    void repeatIsMissedWhenTheCheckerSaysSo(@ForAll @IntRange(max = 6000) int gap) {
        FieldDay day = drained(Precision.EXACT, 400)
                .pass("20")
                .run("3.60")
                .drained("50")
                .pass(tenths(gap));
        boolean isMissed = day.next() instanceof NextStep.PreWet;
        day.run("3.60").drained("50");
        assertEquals(isMissed, day.rules().contains("run.repeat-delay"), day::diary);
    }

    /** The masses told are those that the checker takes, to the last gram. */
    @Property(tries = 200)
    void massesToldAreThoseTheCheckerTakes(
            @ForAll @IntRange(min = 200, max = 400) int elapsed, @ForAll boolean isTooMuch) {
        FieldDay day = drained(Precision.EXACT, elapsed);
        Reading<Mass> most = ((NextStep.Start) day.next()).water().highest();
        Reading<Mass> beyond =
                FieldDay.kilograms(most.value().add(new BigDecimal("0.01")).toString());
        day.run(isTooMuch ? beyond : most).drained("50");
        assertEquals(isTooMuch, day.rules().contains("run.mass"), day::diary);
    }

    private static FieldDay drained(Precision precision, int elapsed) {
        return new FieldDay("09:00:00", precision, UnitSystem.SI)
                .preWet()
                .pass(tenths(elapsed))
                .end(End.DRAINED);
    }

    private static Duration tenths(long tenths) {
        return Duration.ofMillis(100 * tenths);
    }

    /** A crew at work. */
    private static final class Crew {

        private static final int MOST_STEPS = 80;

        /** All but rain, which comes by the clock. */
        private static final List<Event.Kind> HAPPENINGS = Stream.of(Event.Kind.values())
                .filter(kind -> kind != Event.Kind.RAIN)
                .toList();

        private final Random random;
        private final FieldDay day;
        private final List<NextStep> steps = new ArrayList<>();
        private Instant drains = Instant.MAX;
        private Instant rains = Instant.MAX;
        private boolean isBack;
        private final List<String> toGo = new ArrayList<>();

        Crew(long seed, Precision precision, UnitSystem weighed, TestMethod method) {
            random = new Random(seed);
            boolean isNight = random.nextInt(5) == 0;
            day = new FieldDay("08:00:00", precision, weighed, method).pass(tenths(random.nextInt(36_000)));
            day.isSwept(random.nextInt(4) > 0).isPotable(random.nextInt(4) > 0);
            day.pass(Duration.ofMinutes(isNight ? 24 * 60 + 150 + random.nextInt(60) : 0));
            Stream.of("A2", "A3", "A1")
                    .filter(location -> random.nextInt(2) == 0)
                    .forEach(toGo::add);
            if (random.nextInt(5) == 0) {
                rains = day.now().plusSeconds(random.nextInt(3600));
            }
        }

        void work() {
            for (int i = 0; i < MOST_STEPS; i++) {
                lookUp();
                NextStep step = day.next();
                steps.add(step);
                if (step instanceof NextStep.Done && !isComingBack() && !isGoingOn()) {
                    spoilByRain();
                    return;
                }
                take(step);
            }
        }

        /** Now and then another crew looks in at the same spot. */
        private boolean isComingBack() {
            boolean comes = !isBack && day.poured() != null && !isUnderWay() && random.nextInt(4) == 0;
            if (comes) {
                isBack = true;
                day.comeBack();
            }
            return comes;
        }

        private boolean isGoingOn() {
            boolean goesOn = !isUnderWay() && !toGo.isEmpty();
            if (goesOn) {
                day.goTo(toGo.remove(0));
            }
            return goesOn;
        }

        private boolean isUnderWay() {
            return day.poured() != null && PouredSoFar.isUnderWay(day.poured());
        }

        private void spoilByRain() {
            if (isUnderWay()) {
                day.end(End.VOID);
            }
        }

        private void take(NextStep step) {
            if (step instanceof NextStep.NotYet wait) {
                day.pass(Duration.between(day.now(), wait.until()).plusSeconds(random.nextInt(600)));
            } else if (step instanceof NextStep.MakeReady ready) {
                makeReady(ready.lack());
            } else if (step instanceof NextStep.PreWet preWet) {
                day.preWet(amount(preWet.water()));
                begin();
            } else if (step instanceof NextStep.Start start) {
                startOrMiss(start.water(), start.within().orElseThrow());
            } else if (step instanceof NextStep.Repeat repeat) {
                startOrMiss(repeat.water(), repeat.within().orElseThrow());
            } else if (step instanceof NextStep.StopWaiting stop) {
                day.end(End.STOPPED);
                RateOutcome outcome = RateEquation.asPublished().rate(FieldDay.RING, day.poured());
                RateOutcome.UpperBound bound = assertInstanceOf(RateOutcome.UpperBound.class, outcome, day::diary);
                assertTrue(bound.bound().compareTo(FieldDay.LIMIT) < 0, () -> bound + " after " + stop);
            } else if (step instanceof NextStep.Watch) {
                watch();
            }
        }

        private void makeReady(Lack lack) {
            if (lack == Lack.SWEEPING) {
                day.pass("300").isSwept(true);
            } else {
                day.pass("900").isPotable(true);
            }
        }

        /** In time, at the very last moment too, or so late that it is not done. */
        private void startOrMiss(Range<Mass> water, Duration within) {
            int left = (int) (within.toMillis() / 100);
            int taken = random.nextInt(4) == 0 ? left : random.nextInt(1 + left * 3 / 2);
            day.pass(tenths(taken));
            if (taken <= left && rains.isAfter(day.now())) {
                day.run(amount(water));
                begin();
            }
        }

        private Reading<Mass> amount(Range<Mass> range) {
            Reading<Mass> mass = random.nextBoolean() ? range.lowest() : range.highest();
            return Reading.of(mass.value().setScale(2), mass.unit());
        }

        private void begin() {
            drains = day.now().plusMillis(100L * (30 + random.nextInt(random.nextInt(3) == 0 ? 20_000 : 900)));
        }

        private void lookUp() {
            if (!rains.isAfter(day.now())) {
                day.rainBegins();
                rains = Instant.MAX;
            }
        }

        private void watch() {
            Instant looked = day.now().plusSeconds(1 + random.nextInt(300));
            Instant next = Stream.of(looked, drains, rains)
                    .min(Comparator.naturalOrder())
                    .orElseThrow();
            day.pass(Duration.between(day.now(), next));
            if (random.nextInt(8) == 0) {
                day.happens(HAPPENINGS.get(random.nextInt(HAPPENINGS.size())));
            }
            if (next.equals(drains)) {
                day.end(random.nextInt(6) == 0 ? End.VOID : End.DRAINED);
            } else if (next.equals(looked) && random.nextInt(20) == 0) {
                day.end(End.STOPPED);
            }
        }
    }
}
