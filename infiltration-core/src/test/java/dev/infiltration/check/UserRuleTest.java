// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.Season;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.rule.Effect;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A rule of the user that throws ends nothing, and a policy switches it off like a rule of the catalogue. */
class UserRuleTest {

    private static final Season SI = Season.si();
    private static final Rule NOTED =
            Rule.onVisit("harrow.noted", Effect.CAUTION, v -> Optional.of(RuleResult.of("noted")));

    private static Optional<RuleResult> failing() {
        throw new IllegalStateException("no sealant table");
    }

    private static Rule failing(Effect effect) {
        return Rule.onRun(
                "harrow.sealant",
                effect,
                run -> run.index() == 0 && run.test().index() == 0 ? failing() : Optional.empty());
    }

    @Test
    void anExceptionIsAFindingAndOtherRulesGoOn() {
        Checker checker =
                Checker.withDefaults().withRule(failing(Effect.CAUTION)).withRule(NOTED);
        assertEquals(
                List.of("harrow.noted CAUTION NONE /visits/0", "harrow.sealant CAUTION NONE /visits/0/tests/0/runs/0"),
                SI.findings(checker));
        Finding finding = checker.check(SI.book()).findings().get(1);
        assertTrue(finding.message().contains("IllegalStateException: no sealant table"), finding.message());
        assertEquals("V1, A1, run 1", finding.subject());
    }

    @Test
    void anExceptionWithholdsTheRateWhereTheRuleCouldHave() {
        Checker strict = Checker.withDefaults().withRule(failing(Effect.NO_RATE));
        assertEquals(List.of("harrow.sealant"), outcome(strict).reasons());
        Checker raised = Checker.withDefaults()
                .withRule(failing(Effect.DEVIATION))
                .withPolicy(Policy.asWritten().withEffect("harrow.sealant", Effect.NO_RATE));
        assertEquals(List.of("harrow.sealant"), outcome(raised).reasons());
        assertInstanceOf(
                RateOutcome.Measured.class, outcome(Checker.withDefaults().withRule(failing(Effect.DEVIATION))));
    }

    private static RateOutcome outcome(Checker checker) {
        return checker.check(SI.book())
                .visits()
                .get(0)
                .tests()
                .get(0)
                .runs()
                .get(0)
                .outcome();
    }

    @Test
    void aRuleThatReturnsNullIsNamedToo() {
        Rule none = Rule.onTest("harrow.none", Effect.OMISSION, test -> null);
        assertEquals(
                "harrow.none OMISSION NONE /visits/0/tests/0",
                SI.findings(Checker.withDefaults().withRule(none)).get(0));
    }

    @Test
    void aPolicySwitchesItOff() {
        Policy off = Policy.asWritten().withoutRule("harrow.noted");
        assertEquals(
                List.of(), SI.findings(Checker.withDefaults().withRule(NOTED).withPolicy(off)));
        assertEquals(
                List.of(), SI.findings(Checker.withDefaults().withPolicy(off).withRule(NOTED)));
        assertEquals(List.of("harrow.noted: switched off"), off.changes());
        assertThrows(IllegalArgumentException.class, () -> Policy.asWritten().withoutRule("run.nothing"));
    }

    @Test
    void oneThatWithholdsRatesCannotBeSwitchedOff() {
        Policy off = Policy.asWritten().withoutRule("harrow.sealant");
        Checker strict = Checker.withDefaults().withRule(failing(Effect.NO_RATE));
        assertThrows(IllegalArgumentException.class, () -> strict.withPolicy(off));
        Checker without = Checker.withDefaults().withPolicy(off);
        assertThrows(IllegalArgumentException.class, () -> without.withRule(failing(Effect.NO_RATE)));
    }
}
