// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import static dev.infiltration.plan.NextStep.PreWet.Occasion.REPEAT_MISSED;
import static dev.infiltration.plan.NextStep.PreWet.Occasion.START_MISSED;
import static dev.infiltration.plan.NextStep.PreWet.Occasion.VOID;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.ClockTime.Precision;
import dev.infiltration.field.Pouring.End;
import dev.infiltration.plan.NextStep.Done;
import dev.infiltration.plan.NextStep.MakeReady.Lack;
import dev.infiltration.plan.NextStep.PreWet.Occasion;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.review.Review;
import dev.infiltration.units.UnitSystem;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * One wrong turn a day: what the guide says there, what the checker finds when the crew goes against it, and that it finds
 * nothing when the crew goes by it.
 */
class WrongTurnTest {

    @Test
    void lateStart() {
        FieldDay day = preWetted().pass("120.1");
        assertOccasion(START_MISSED, day);
        FieldDay against = preWetted().pass("120.1").run("3.60").drained("60");
        assertFound(against, "run.start-delay");
        assertClean(day.preWet().drained("45").pass("120").run("3.60").drained("60"));
        assertMeasured(day, 1);
    }

    @Test
    void repeatInTimeNeedsNoPrewetting() {
        FieldDay day = tested().pass("300");
        assertInstanceOf(NextStep.Repeat.class, day.next());
        assertClean(day.run("3.60").drained("70"));
        assertMeasured(day, 2);
        assertDone(Done.Reason.RUNS_MADE, day);
    }

    @Test
    void lateRepeat() {
        FieldDay day = tested().pass("300.1");
        assertOccasion(REPEAT_MISSED, day);
        assertFound(tested().pass("300.1").run("3.60").drained("70"), "run.repeat-delay");
        assertFound(tested().pass("300.1").testWithout("3.60").drained("70"), "run.repeat-delay");
        assertClean(day.preWet().drained("50").pass("30").run("3.60").drained("70"));
        assertMeasured(day, 2);
    }

    @Test
    void thirdRun() {
        FieldDay day = tested().pass("60").run("3.60").drained("70");
        assertDone(Done.Reason.RUNS_MADE, day);
        assertClean(day);
        assertFound(day.pass("60").run("3.60").drained("80"), "run.too-many");
    }

    @Test
    void thirdRunOfAnotherCrew() {
        FieldDay day = tested().pass("60").run("3.60").drained("70").comeBack().pass("3600");
        assertDone(Done.Reason.RUNS_MADE, day);
        assertFound(day.preWet().drained("50").pass("60").run("3.60").drained("80"), "run.too-many");
    }

    @Test
    void givenUpPrewetting() {
        FieldDay day = new FieldDay("09:00:00").preWet().pass("500").end(End.STOPPED);
        assertDone(Done.Reason.WATER_STANDS, day);
        assertClean(day);
        assertInstanceOf(RateOutcome.UpperBound.class, outcome(day));
        assertFound(day.pass("60").run("3.60").drained("90"), "prewet.standing");
    }

    @Test
    void givenUpRun() {
        FieldDay day = preWetted().pass("60").run("3.60").pass("400").end(End.STOPPED);
        assertDone(Done.Reason.WATER_STANDS, day);
        assertClean(day);
        assertInstanceOf(RateOutcome.UpperBound.class, outcome(day));
    }

    /** Water poured in the field is 3.60 kg: at 254 mm/h it takes 721.9 s (derived: 3.6·4583666000 / (300²·254)). */
    @Test
    void stoppedWaitingByTheLimit() {
        FieldDay day = preWetted().pass("60").run("3.60").pass("721.8");
        assertInstanceOf(NextStep.Watch.class, day.next());
        assertInstanceOf(NextStep.StopWaiting.class, day.pass("0.1").next());
        assertClean(day.end(End.STOPPED));
        RateOutcome.UpperBound bound = assertInstanceOf(RateOutcome.UpperBound.class, outcome(day));
        assertTrue(bound.bound().compareTo(FieldDay.LIMIT) < 0, bound::toString);
        FieldDay hasty = preWetted().pass("60").run("3.60").pass("721.8").end(End.STOPPED);
        RateOutcome.UpperBound early = assertInstanceOf(RateOutcome.UpperBound.class, outcome(hasty));
        assertTrue(early.bound().compareTo(FieldDay.LIMIT) >= 0, early::toString);
    }

    @Test
    void voidPrewetting() {
        FieldDay day =
                new FieldDay("09:00:00").preWet().pass("20").end(End.VOID).pass("60");
        assertOccasion(VOID, day);
        FieldDay against = new FieldDay("09:00:00")
                .preWet()
                .pass("20")
                .end(End.VOID)
                .pass("60")
                .run("3.60");
        assertFound(against.drained("60"), "prewet.absent");
        assertClean(day.preWet().drained("45").pass("60").run("3.60").drained("60"));
        assertMeasured(day, 1);
    }

    @Test
    void voidRun() {
        FieldDay day =
                preWetted().pass("60").run("3.60").pass("30").end(End.VOID).pass("301");
        assertOccasion(VOID, day);
        FieldDay against =
                preWetted().pass("60").run("3.60").pass("30").end(End.VOID).pass("301");
        assertFound(against.run("3.60").drained("60"), "run.repeat-delay");
        assertClean(day.preWet().drained("45").pass("60").run("3.60").drained("60"));
        assertClean(day.pass("60").run("3.60").drained("60"));
        assertDone(Done.Reason.RUNS_MADE, day);
        assertMeasured(day, 2);
    }

    @Test
    void wrongMassAfterTheSecondPrewetting() {
        FieldDay day = new FieldDay("09:00:00")
                .preWet()
                .drained("29.9")
                .pass("130")
                .preWet()
                .drained("30.1")
                .pass("9");
        NextStep.Start start = assertInstanceOf(NextStep.Start.class, day.next());
        assertEquals("3.55 to 3.65 kg", start.water().toString());
        assertFound(day.run("18.00").drained("60"), "run.mass");
    }

    @Test
    void tooSoonAfterRain() {
        FieldDay day = new FieldDay("08:20:00");
        NextStep.NotYet wait = assertInstanceOf(NextStep.NotYet.class, day.next());
        FieldDay against =
                new FieldDay("08:20:00").preWet().drained("45").pass("60").run("3.60");
        assertFound(against.drained("60"), "visit.rain");
        day.pass(Duration.between(day.now(), wait.until()));
        assertOccasion(Occasion.FIRST, day);
        assertClean(day.preWet().drained("45").pass("60").run("3.60").drained("60"));
    }

    /** Rain written down late: what was begun before it ended is spoiled, and nothing more is poured on it. */
    @Test
    void rainSinceThePrewetting() {
        assertInstanceOf(
                NextStep.NotYet.class, preWetted().pass("30").rainEnded().next());
        FieldDay repeat = tested().pass("30").rainEnded();
        assertInstanceOf(NextStep.NotYet.class, repeat.next());
        assertFound(repeat.run("3.60").drained("70"), "visit.rain");
    }

    @Test
    void unsweptSurface() {
        FieldDay day = new FieldDay("09:00:00").isSwept(false);
        assertEquals(new NextStep.MakeReady(Lack.SWEEPING), day.next());
        FieldDay against = preWetted().isSwept(false).pass("60").run("3.60").drained("60");
        assertFound(against, "visit.unswept");
        assertOccasion(Occasion.FIRST, day.isSwept(true));
    }

    @Test
    void waterThatIsNotPotable() {
        FieldDay day = preWetted().isPotable(false);
        assertEquals(new NextStep.MakeReady(Lack.POTABLE_WATER), day.next());
        assertFound(day.pass("60").run("3.60").drained("60"), "visit.water-not-potable");
    }

    @Test
    void locationTooNear() {
        FieldDay day = tested().goTo("A2").pass("60");
        assertDone(Done.Reason.TOO_NEAR, day);
        FieldDay against =
                tested().goTo("A2").pass("60").preWet().drained("45").pass("60").run("3.60");
        assertFound(against.drained("60"), "visit.spacing");
        assertOccasion(Occasion.FIRST, day.goTo("A3"));
        assertClean(day.preWet().drained("45").pass("60").run("3.60").drained("60"));
    }

    @Test
    void locationTooNearToThatOfAnotherCrew() {
        FieldDay day = tested().comeBack().goTo("A2").pass("3600");
        assertDone(Done.Reason.TOO_NEAR, day);
        assertOccasion(Occasion.FIRST, day.goTo("A3"));
    }

    @Test
    void rainBeforeTheRun() {
        FieldDay day = preWetted().pass("30").rainBegins();
        assertDone(Done.Reason.RAIN, day);
        assertClean(day);
        assertFound(day.pass("10").run("3.60").drained("60"), "visit.rain-during");
    }

    @Test
    void rainIntoTheRun() {
        FieldDay day = preWetted().pass("60").run("3.60").pass("20").rainBegins();
        assertDone(Done.Reason.RAIN, day);
        assertFound(preWetted().pass("60").run("3.60").pass("20").rainBegins().drained("60"), "visit.rain-during");
        assertClean(day.end(End.VOID));
    }

    @Test
    void onIntoTheNextDay() {
        FieldDay day = new FieldDay("09:00:00")
                .pass(Duration.ofHours(27))
                .preWet()
                .drained("45")
                .pass("0.1");
        assertDone(Done.Reason.OTHER_DAY, day);
        assertFound(day.run("3.60").drained("60"), "data.clock");
        FieldDay noon = new FieldDay("09:00:00")
                .pass(Duration.ofSeconds(27 * 3600 - 50))
                .preWet()
                .drained("45");
        NextStep.Start start = assertInstanceOf(NextStep.Start.class, noon.next());
        assertEquals(Duration.ofSeconds(5), start.within().orElseThrow());
        assertClean(noon.pass("5").run("3.60").drained("60"));
        assertFound(
                new FieldDay("09:00:00")
                        .pass(Duration.ofSeconds(27 * 3600 - 50))
                        .preWet()
                        .drained("45")
                        .pass("6")
                        .run("3.60")
                        .drained("60"),
                "data.clock");
    }

    /** Begun at 09:00:50, written as 09:00: the guide lets start to 09:02:45 at most, the checker cannot show more. */
    @Test
    void timesToTheMinute() {
        FieldDay day = new FieldDay("09:00:50", Precision.MINUTE, UnitSystem.SI)
                .preWet()
                .drained("45");
        NextStep.Start start = assertInstanceOf(NextStep.Start.class, day.next());
        assertEquals(Duration.ofSeconds(70), start.within().orElseThrow());
        assertClean(day.pass("70").run("3.60").drained("60"));
        FieldDay late = new FieldDay("09:00:50", Precision.MINUTE, UnitSystem.SI)
                .preWet()
                .drained("45")
                .pass("70.1");
        assertOccasion(START_MISSED, late);
        assertFound(late.pass("115").run("3.60").drained("60"), "run.start-delay");
    }

    @Test
    void forgottenWatch() {
        FieldDay day = new FieldDay("09:00:00").preWet().end(End.DRAINED).pass("60");
        assertEquals(new NextStep.WriteDown("elapsed"), day.next());
    }

    private static FieldDay preWetted() {
        return new FieldDay("09:00:00").preWet().drained("45");
    }

    private static FieldDay tested() {
        return preWetted().pass("60").run("3.60").drained("60");
    }

    private static void assertOccasion(Occasion occasion, FieldDay day) {
        assertEquals(
                occasion, assertInstanceOf(NextStep.PreWet.class, day.next()).occasion());
    }

    private static void assertDone(Done.Reason reason, FieldDay day) {
        assertEquals(new Done(reason), day.next());
    }

    private static void assertClean(FieldDay day) {
        assertEquals(List.of(), day.deviations(), day::diary);
    }

    private static void assertFound(FieldDay day, String... rules) {
        List<String> found = day.deviations().stream()
                .map(finding -> finding.rule())
                .sorted()
                .toList();
        assertEquals(List.of(rules), found, day::diary);
    }

    private static RateOutcome outcome(FieldDay day) {
        return Review.of(day.book()).locations().get(0).outcome();
    }

    private static void assertMeasured(FieldDay day, int runs) {
        assertInstanceOf(RateOutcome.Measured.class, outcome(day));
        assertEquals(runs, Review.of(day.book()).locations().get(0).runs());
    }
}
