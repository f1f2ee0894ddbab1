// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.summary.Criterion.Relation;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.time.Period;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Specifications add up: first come, first asked. Limits here are invented. */
class SpecificationTest {

    private static Specification of(String limit) {
        return Specification.of(Criterion.of(
                Criterion.Type.MEAN,
                Relation.AT_LEAST,
                Reading.of(limit, FieldUnit.MILLIMETRE_PER_HOUR),
                "unit-pavement",
                "x"));
    }

    private static ActionTable table(String action) {
        return new ActionTable(List.of(ActionTable.Row.of(action, Period.ZERO, List.of())));
    }

    @Test
    void noneAsksForNothing() {
        assertEquals(List.of(), Specification.none().criteria());
        assertTrue(Specification.none().risk().isEmpty());
        assertEquals(of("1"), Specification.none().and(of("1")));
        assertEquals(of("1"), of("1").and(Specification.none()));
    }

    @Test
    void criteriaAndActionsOfTheFirstComeFirst() {
        Specification both = of("1").withActions(table("a")).and(of("2").withActions(table("b")));
        assertEquals(List.of(of("1").criteria().get(0), of("2").criteria().get(0)), both.criteria());
        assertEquals(
                List.of("a", "b"),
                both.actions().rows().stream().map(ActionTable.Row::action).toList());
    }

    @Test
    void riskIsThatOfTheLastThatHasOne() {
        Specification tenth = of("1").withNextTestRisk(0.1);
        assertEquals(0.1, tenth.and(of("2")).risk().orElseThrow());
        assertEquals(0.2, tenth.and(of("2").withNextTestRisk(0.2)).risk().orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.5, -0.1, Double.NaN})
    void riskThatIsNoneIsRefused(double risk) {
        assertThrows(IllegalArgumentException.class, () -> of("1").withNextTestRisk(risk));
    }
}
