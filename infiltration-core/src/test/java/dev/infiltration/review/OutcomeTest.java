// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.review;

import static dev.infiltration.Amounts.kg;
import static dev.infiltration.Amounts.mm;
import static dev.infiltration.Amounts.s;
import static dev.infiltration.Season.and;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.Season;
import dev.infiltration.field.Event;
import dev.infiltration.field.Head;
import dev.infiltration.field.Location;
import dev.infiltration.field.Pouring.End;
import dev.infiltration.field.Ring;
import dev.infiltration.field.Surface;
import dev.infiltration.field.TestRun;
import dev.infiltration.rate.RateOutcome;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a run comes to, and which rules say why it comes to nothing. */
class OutcomeTest {

    private static final Season SI = Season.si();
    private static final String RUN = "/visits/0/tests/0/runs/0";

    private static RateOutcome outcome(Season season) {
        return season.review().outcome(RUN).orElseThrow();
    }

    private static String told(Season season) {
        RateOutcome outcome = outcome(season);
        return outcome instanceof RateOutcome.Withheld
                ? outcome.word() + " " + String.join(" ", outcome.reasons())
                : outcome.word();
    }

    private static Season first(UnaryOperator<TestRun> change) {
        return SI.run(0, 0, change);
    }

    @ParameterizedTest
    @CsvSource({
        "LEAK, upper-bound", "OVERFLOW, upper-bound", "SPILL, upper-bound", "TIMER_LATE, upper-bound",
        "POUR_INTERRUPTED, lower-bound", "HEAD_LOST, lower-bound", "SEAL_REPAIRED, measured", "RAIN, measured",
        "OTHER, measured", "RING_MOVED, withheld run.event"
    })
    void anEventMovesTheRateByItsKind(Event.Kind kind, String expected) {
        assertEquals(expected, told(first(r -> r.withEvents(List.of(Event.of(kind))))));
    }

    @ParameterizedTest
    @CsvSource({
        "BETWEEN_MARKS, measured",
        "BELOW, measured",
        "ABOVE, measured",
        "BOTH, measured",
        "NEVER_REACHED, lower-bound"
    })
    void aHeadThatWasNeverReachedBoundsFromBelow(Head.State state, String expected) {
        assertEquals(expected, told(first(r -> r.withHead(Head.of(state)))));
    }

    @Test
    void endsBoundOrWithhold() {
        assertEquals("measured", told(SI));
        assertEquals("measured", told(first(r -> r.withEnd(null))), "taken as drained");
        assertEquals("upper-bound", told(first(r -> r.withEnd(End.STOPPED))));
        assertEquals("withheld run.void", told(first(r -> r.withEnd(End.VOID))));
    }

    private static Season with(Head.State state, End end, Event.Kind... kinds) {
        return first(r -> r.withHead(Head.of(state))
                .withEnd(end)
                .withEvents(Arrays.stream(kinds).map(Event::of).toList()));
    }

    @Test
    void reasonsOnOneSideAddUp() {
        assertEquals("upper-bound", told(with(null, End.STOPPED, Event.Kind.LEAK, Event.Kind.SPILL)));
        assertEquals("lower-bound", told(with(Head.State.NEVER_REACHED, End.DRAINED, Event.Kind.HEAD_LOST)));
    }

    @Test
    void reasonsOnBothSidesWithhold() {
        assertEquals("withheld run.event", told(with(null, End.DRAINED, Event.Kind.LEAK, Event.Kind.POUR_INTERRUPTED)));
        assertEquals("withheld run.discontinued run.event", told(with(null, End.STOPPED, Event.Kind.HEAD_LOST)));
        assertEquals("withheld run.head run.discontinued", told(with(Head.State.NEVER_REACHED, End.STOPPED)));
        assertEquals("withheld run.head run.event", told(with(Head.State.NEVER_REACHED, End.DRAINED, Event.Kind.LEAK)));
    }

    @Test
    void waterTimeAndRingMustBeUsable() {
        assertEquals("withheld run.unusable", told(first(r -> r.withWater(kg("0")))));
        assertEquals("withheld run.unusable", told(first(r -> r.withElapsed(null))));
        assertEquals("withheld ring.unusable", told(SI.ring(r -> r.withInsideDiameter(mm("0")))));
        Season both = first(r -> r.withElapsed(s("-1"))).ring(r -> r.withInsideDiameter(null));
        assertEquals("withheld ring.unusable run.unusable", told(both));
    }

    @Test
    void whatIdentifiesTheRunMustBeThere() {
        assertEquals("withheld data.required", told(SI.visit(v -> v.withSurface(null))));
        assertEquals("withheld data.required", told(SI.visit(v -> v.withDate(null))));
        assertEquals("withheld data.required", told(SI.test(0, t -> t.withLocation(""))));
        assertEquals("withheld data.required", told(SI.test(0, t -> t.withRing(null))));
        assertEquals("measured", told(SI.visit(v -> v.withId(null))), "an id of the visit is not needed");
        assertEquals("measured", told(SI.test(0, t -> t.withId(null))));
        assertEquals("withheld data.reference", told(SI.visit(v -> v.withSurface("HQ-X"))));
        assertEquals("withheld data.reference", told(SI.test(0, t -> t.withLocation("A9"))));
        assertEquals("withheld data.reference", told(SI.test(0, t -> t.withRing("R9"))));
        assertEquals("measured", told(SI.visit(v -> v.withInstruments(List.of("B9")))), "an instrument is not");
        assertEquals(
                "withheld data.required data.reference",
                told(SI.visit(v -> v.withDate(null)).test(0, t -> t.withRing("R9"))));
    }

    @Test
    void aDoubledRecordWithholdsTheRunsThatNameIt() {
        String doubled = "withheld data.duplicate";
        Surface surface = Surface.of("HQ-A");
        assertEquals(doubled, told(SI.site(s -> s.withSurfaces(and(s.surfaces(), surface)))));
        Season location = SI.surface(s -> s.withLocations(and(s.locations(), Location.of("A1"))));
        assertEquals(doubled, told(location));
        assertEquals(
                "measured",
                location.review()
                        .outcome("/visits/0/tests/1/runs/0")
                        .orElseThrow()
                        .word());
        Season ring = SI.book(b -> b.withRings(and(b.rings(), Ring.of("R1").withInsideDiameter(mm("300")))));
        assertEquals(doubled, told(ring));
        Season visit = SI.andVisit(v -> v);
        assertEquals("measured", told(visit));
        RateOutcome later = visit.review().outcome("/visits/1/tests/0/runs/0").orElseThrow();
        assertEquals(List.of("data.duplicate"), later.reasons());
        assertEquals("measured", told(SI.test(1, t -> t.withId("V1-A1"))), "a doubled test is not");
        assertEquals("measured", told(SI.test(0, t -> t.withId("V1-A2"))));
    }

    @Test
    void aVoidRunNamesWhatItsTestAndVisitLackToo() {
        Season isVoid = first(r -> r.withEnd(End.VOID));
        assertEquals("withheld data.required run.void", told(isVoid.test(0, t -> t.withLocation(null))));
        assertEquals("withheld data.reference run.void", told(isVoid.test(0, t -> t.withRing("R9"))));
        assertEquals("withheld run.void", told(isVoid.run(0, 0, r -> r.withWater(null))));
    }

    @Test
    void whatIsNotFiniteIsImplausible() {
        assertEquals("withheld run.implausible", told(first(r -> r.withWater(kg("1e400")))));
        assertEquals("measured", told(first(r -> r.withWater(kg("1e15")))), "only a caution");
    }

    @Test
    void methodsAndDeviationsWithholdNothing() {
        assertEquals("measured", told(SI.visit(v -> v.withMethod("bucket"))));
        assertEquals("measured", told(SI.visit(v -> v.withMethod(null))));
        assertEquals("measured", told(SI.test(0, t -> t.withPreWet(null))));
        assertEquals("measured", told(first(r -> r.withWater(kg("9")))));
    }

    @Test
    void everyRunHasItsOutcomeInTheOrderOfTheDocument() {
        List<String> places =
                SI.review().runs().stream().map(run -> run.where().toString()).toList();
        assertEquals(
                List.of(
                        RUN,
                        "/visits/0/tests/0/runs/1",
                        "/visits/0/tests/1/runs/0",
                        "/visits/0/tests/1/runs/1",
                        "/visits/0/tests/2/runs/0",
                        "/visits/0/tests/2/runs/1"),
                places);
    }
}
