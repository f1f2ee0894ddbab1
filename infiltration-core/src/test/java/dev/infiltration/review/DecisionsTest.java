// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.Event;
import dev.infiltration.field.Location.Selection;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.Visit;
import dev.infiltration.summary.ActionTable;
import dev.infiltration.summary.Criterion;
import dev.infiltration.summary.Criterion.Relation;
import dev.infiltration.summary.Decision;
import dev.infiltration.summary.Decision.LiteralResult;
import dev.infiltration.summary.Specification;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** Decisions on the visits of invented books. */
class DecisionsTest {

    private static final Criterion MEAN = criterion(Criterion.Type.MEAN, "unit-pavement");
    private static final Criterion EVERY = criterion(Criterion.Type.EVERY_LOCATION, "unit-pavement");

    private static final Years SIX = Years.random(6).visit("V1", "2026-06-03", 5000, 5100, 5200, 5300, 5400, 5500);

    private static Criterion criterion(Criterion.Type type, String method) {
        return Criterion.of(
                type, Relation.AT_LEAST, Reading.of("2540", FieldUnit.MILLIMETRE_PER_HOUR), method, "invented");
    }

    private static Decision only(Years years, Criterion criterion) {
        List<VisitDecision> decisions =
                years.review().withSpecification(Specification.of(criterion)).decisions();
        assertEquals(1, decisions.size());
        return decisions.get(0).decision();
    }

    @Test
    void everyCriterionIsJudgedAtEveryVisitWithATest() {
        Review review =
                SIX.visit("V2", "2026-07-03").visit("V3", "2026-08-03", 100).review();
        assertTrue(review.decisions().isEmpty());
        List<VisitDecision> decisions =
                review.withSpecification(Specification.of(MEAN, EVERY)).decisions();
        assertEquals(
                List.of("V1 MET", "V1 MET", "V3 NOT_MET", "V3 NOT_MET"),
                decisions.stream()
                        .map(each ->
                                each.visit().subject() + " " + each.decision().literalResult())
                        .toList());
    }

    @Test
    void randomLocationsCarryADecisionAndTargetedOnesDoNot() {
        assertTrue(only(SIX, MEAN).isConfirmed());
        Years targeted = Years.of(Selection.TARGETED, 6).visit("V1", "2026-06-03", 5000, 5100, 5200, 5300, 5400, 5500);
        Decision decision = only(targeted, MEAN);
        assertEquals(LiteralResult.MET, decision.literalResult());
        assertEquals(
                List.of(
                        "the locations are not representative of the surface (not selected at random, or areas of the zones unknown)"),
                decision.reasons());
    }

    @Test
    void criterionGoesByAnyNameOfTheMethod() {
        assertEquals(
                LiteralResult.MET,
                only(SIX, criterion(Criterion.Type.MEAN, "C1781")).literalResult());
        assertEquals(
                LiteralResult.MET,
                only(SIX, criterion(Criterion.Type.MEAN, "Unit-Pavement")).literalResult());
    }

    @Test
    void criterionOfAnotherMethodIsRefusedUnlessItSaysHow() {
        Criterion other = criterion(Criterion.Type.MEAN, "pervious-concrete");
        Decision refused = only(SIX, other);
        assertEquals(LiteralResult.NOT_EVALUATED, refused.literalResult());
        assertEquals(
                List.of("the limit applies to method pervious-concrete; these rates were measured by unit-pavement"),
                refused.reasons());
        Decision told = only(SIX, other.forOtherMethods("the town judges pavers alike"));
        assertEquals(LiteralResult.MET, told.literalResult());
        assertEquals(List.of("limit of pervious-concrete: the town judges pavers alike"), told.notes());
        Decision unknown = only(SIX.last(visit -> visit.withMethod("home-made")), MEAN);
        assertEquals(
                List.of("the limit applies to method unit-pavement; these rates were measured by an unknown method"),
                unknown.reasons());
    }

    /** A seal that was repaired may have leaked before: the finding raises the rate and the run still counts. */
    @Test
    void findingThatRaisesTheRateOfACountingRunPutsAPassInDoubt() {
        UnaryOperator<TestRun> leak = run -> run.withEvents(List.of(Event.of(Event.Kind.LEAK)));
        Decision decision = only(SIX.last(visit -> firstRun(visit, leak)), MEAN);
        assertEquals(LiteralResult.MET, decision.literalResult());
        assertEquals(
                List.of("it is based on upper bounds", "findings on these tests may bias the rate high"),
                decision.reasons());
    }

    private static Visit firstRun(Visit visit, UnaryOperator<TestRun> change) {
        List<LocationTest> tests = new ArrayList<>(visit.tests());
        LocationTest first = tests.get(0);
        tests.set(0, first.withRuns(List.of(change.apply(first.runs().get(0)))));
        return visit.withTests(tests);
    }

    /** One blank cell turned "clean locally" into "no action": the mean of the others passes. */
    @Test
    void runWithoutWaterLeavesTheDecisionAndTheActionOpen() {
        ActionTable table = new ActionTable(List.of(
                ActionTable.Row.of(
                        "clean locally",
                        Period.ofDays(60),
                        List.of(new ActionTable.Condition(EVERY, LiteralResult.NOT_MET))),
                ActionTable.Row.none("no action", List.of(new ActionTable.Condition(EVERY, LiteralResult.MET)))));
        Specification specification = Specification.of(EVERY).withActions(table);
        Years slow = Years.random(6).visit("V1", "2026-06-03", 500, 5100, 5200, 5300, 5400, 5500);
        assertEquals(
                "clean locally by 2026-08-02 (based on a result that is not confirmed)",
                slow.review().withSpecification(specification).actions().get(0).toString());
        Years blank = slow.last(visit -> firstRun(visit, run -> run.withWater(null)));
        Review review = blank.review().withSpecification(specification);
        Decision decision = review.decisions().get(0).decision();
        assertTrue(decision.isOpen());
        assertFalse(decision.isConfirmed());
        VisitAction action = review.actions().get(0);
        assertTrue(action.isOpen());
        assertEquals(
                "open: location A1: run 1: no rate (run.unusable); attempted, no result; look up the field sheet and"
                        + " complete the record, or test again",
                action.toString());
        assertEquals(
                List.of("A1"),
                action.unresolved().stream().map(UnresolvedLocation::location).toList());
    }

    @Test
    void actionThatRequiresSomethingStaysWhereTheRecordIsIncomplete() {
        ActionTable table = new ActionTable(List.of(ActionTable.Row.of("clean", Period.ofDays(60), List.of())));
        Years blank = SIX.last(visit -> firstRun(visit, run -> run.withEnd(null)));
        VisitAction action = blank.review()
                .withSpecification(Specification.none().withActions(table))
                .actions()
                .get(0);
        assertEquals("clean by 2026-08-02 (the record is incomplete)", action.toString());
        assertFalse(action.isConfirmed());
    }

    @Test
    void trainingVisitIsPartOfNoDecision() {
        Review training =
                SIX.last(visit -> visit.withPurpose(Visit.Purpose.TRAINING)).review();
        assertEquals(6, training.locations().size());
        assertTrue(training.histories().isEmpty());
        assertTrue(
                training.withSpecification(Specification.of(MEAN)).decisions().isEmpty());
    }

    @Test
    void firstActionWhoseConditionsHoldIsDueFromTheDayOfTheVisit() {
        ActionTable table = new ActionTable(List.of(
                ActionTable.Row.of(
                        "clean locally",
                        Period.ofDays(30),
                        List.of(
                                new ActionTable.Condition(MEAN, LiteralResult.MET),
                                new ActionTable.Condition(EVERY, LiteralResult.NOT_MET))),
                ActionTable.Row.of("no action", Period.ofYears(1), List.of())));
        Years clogged = Years.random(6).visit("V2", "2026-06-04", 5000, 5100, 5200, 5300, 5400, 500);
        Review review = clogged.review().withSpecification(Specification.none().withActions(table));
        VisitAction action = review.actions().get(0);
        assertEquals("clean locally", action.chosen().action());
        assertEquals(LocalDate.of(2026, 7, 4), action.chosen().due());
        assertFalse(action.isConfirmed(), "one location so low leaves the mean open");
        assertEquals(
                "no action",
                SIX.review()
                        .withSpecification(Specification.none().withActions(table))
                        .actions()
                        .get(0)
                        .chosen()
                        .action());
    }

    @Test
    void visitWithoutADateLeavesTheActionOpen() {
        ActionTable table = new ActionTable(List.of(ActionTable.Row.of("no action", Period.ofYears(1), List.of())));
        Years undated = SIX.last(visit -> visit.withDate(null));
        List<VisitAction> actions = undated.review()
                .withSpecification(Specification.none().withActions(table))
                .actions();
        assertEquals(1, actions.size());
        assertTrue(actions.get(0).isOpen());
    }

    /** An undated visit may be the later one: the surface is open, whatever the dated visit gave. */
    @Test
    void noActionIsNotRepeatedBesideAVisitWithoutADate() {
        ActionTable table = new ActionTable(List.of(ActionTable.Row.none("no action", List.of())));
        Years two = SIX.visit("V2", "2026-07-03", 100).last(visit -> visit.withDate(null));
        List<VisitAction> actions = two.review()
                .withSpecification(Specification.none().withActions(table))
                .actions();
        assertTrue(actions.stream().allMatch(VisitAction::isOpen), actions::toString);
    }
}
