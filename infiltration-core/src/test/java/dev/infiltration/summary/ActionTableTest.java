// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.summary.ActionTable.Choice;
import dev.infiltration.summary.ActionTable.Condition;
import dev.infiltration.summary.ActionTable.Row;
import dev.infiltration.summary.Criterion.Relation;
import dev.infiltration.summary.Decision.LiteralResult;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ActionTableTest {

    private static Criterion above(Criterion.Type type) {
        return Criterion.of(
                type,
                Relation.AT_LEAST,
                Reading.of("254", FieldUnit.MILLIMETRE_PER_HOUR),
                "unit-pavement",
                "the owner");
    }

    private static final Condition MEAN_PASSES = new Condition(above(Criterion.Type.MEAN), LiteralResult.MET);
    private static final Condition A_SPOT_FAILS =
            new Condition(above(Criterion.Type.EVERY_LOCATION), LiteralResult.NOT_MET);
    private static final ActionTable TABLE = new ActionTable(List.of(
            Row.of("clean locally", Period.ofDays(30), List.of(MEAN_PASSES, A_SPOT_FAILS)),
            Row.none("no action", List.of(MEAN_PASSES)),
            Row.of(
                    "clean",
                    Period.ofDays(14),
                    List.of(new Condition(above(Criterion.Type.MEAN), LiteralResult.NOT_MET)))));

    private static Choice choose(double... rates) {
        return TABLE.choose(
                        LocalDate.of(2026, 6, 3),
                        criterion ->
                                Decision.of(criterion, RateSummary.of(Sample.random(rates)), "unit-pavement", Set.of()))
                .orElseThrow();
    }

    @Test
    void meanPassesAndOneSpotFailsCleansLocally() {
        Choice choice = choose(500, 600, 400, 50);
        assertEquals("clean locally", choice.action());
        assertEquals(LocalDate.of(2026, 7, 3), choice.due());
        assertEquals(2, choice.because().size());
        assertFalse(choice.isConfirmed());
        assertEquals("clean locally by 2026-07-03 (based on a result that is not confirmed)", choice.toString());
    }

    @Test
    void theFirstRowThatHoldsIsTaken() {
        assertEquals("no action", choose(1000, 1100, 900).action());
        assertTrue(choose(1000, 1100, 900).isConfirmed());
        assertEquals("clean", choose(100, 110, 90).action());
        assertEquals("no action", choose(1000, 1100, 900).toString());
    }

    @Test
    void noRowThatHoldsGivesNoAction() {
        assertTrue(TABLE.choose(
                        LocalDate.EPOCH,
                        criterion -> Decision.of(criterion, RateSummary.of(Sample.random()), "unit-pavement", Set.of()))
                .isEmpty());
    }
}
