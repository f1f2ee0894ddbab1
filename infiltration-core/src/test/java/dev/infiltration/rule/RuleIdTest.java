// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The constants of {@link RuleId} and the look-up by id. */
class RuleIdTest {

    @Test
    void eachConstantIsNamedAsItsIdAndIsFoundByIt() throws IllegalAccessException {
        List<RuleId> constants = new ArrayList<>();
        for (Field field : RuleId.class.getFields()) {
            if (Modifier.isStatic(field.getModifiers())) {
                RuleId rule = (RuleId) field.get(null);
                constants.add(rule);
                String name =
                        rule.id().toUpperCase(Locale.ROOT).replace('.', '_').replace('-', '_');
                assertEquals(name, field.getName());
                assertEquals(Optional.of(rule), RuleId.of(rule.id()));
                assertEquals(rule.id(), rule.toString());
            }
        }
        assertEquals(RuleId.all(), constants);
    }

    @Test
    void userRuleComesLastAndIsNotBuiltIn() {
        RuleId mine = RuleId.ofUser("harrow.sealant", Effect.CAUTION, Bias.LOWERS);
        assertEquals(Optional.empty(), RuleId.of(mine.id()));
        assertTrue(RuleId.all().stream().allMatch(rule -> rule.position() < mine.position()));
    }

    @Test
    void idOfABuiltInRuleIsRefusedForAUserRule() {
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class, () -> RuleId.ofUser("run.mass", Effect.CAUTION, Bias.NONE));
        assertTrue(refused.getMessage().startsWith("id: run.mass"), refused.getMessage());
    }
}
