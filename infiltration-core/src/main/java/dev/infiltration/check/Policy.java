// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.rule.Effect;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What a user wants otherwise than the catalogue has it, in one place: rules switched off, effects raised or lowered, and
 * limits that no method states.
 *
 * <p>What withholds a rate stays: a rule that does cannot be switched off, and such a finding is never made lighter. A rule
 * raised to {@link Effect#NO_RATE} withholds the rates it bears on. Every review lists what was changed.
 *
 * <pre>{@code
 * Policy policy = Policy.asWritten()
 *         .withoutRule("visit.freezing")
 *         .withEffect("prewet.mass", Effect.NO_RATE)
 *         .withLimits(UserLimits.none().withPairSpread(1.5));
 * }</pre>
 */
public final class Policy {

    private static final Policy AS_WRITTEN = new Policy(Map.of(), UserLimits.none());

    /** By rule, the effect it has; empty where it is switched off. */
    private final Map<String, Optional<Effect>> effects;

    private final UserLimits limits;

    private Policy(Map<String, Optional<Effect>> effects, UserLimits limits) {
        this.effects = effects;
        this.limits = limits;
    }

    /** {@return the catalogue as it is written, without limits of the user's own} */
    public static Policy asWritten() {
        return AS_WRITTEN;
    }

    /**
     * {@return this policy with a rule switched off}; a rule of the user that withholds rates is refused by the checker
     *
     * @param rule the id of a rule, of the catalogue or in a namespace of the user
     * @throws IllegalArgumentException if the catalogue has no such rule, or it can withhold a rate
     */
    public Policy withoutRule(String rule) {
        if (!Rule.isOutsideCatalogue(rule) && BuiltInRule.of(rule).canWithhold()) {
            throw new IllegalArgumentException("rule: " + rule + " withholds rates and cannot be switched off");
        }
        return with(rule, Optional.empty());
    }

    /**
     * {@return this policy with another effect for a rule}; what withholds a rate stays as it is
     *
     * @param rule   the id of a rule
     * @param effect the effect of its findings
     * @throws IllegalArgumentException if the catalogue has no such rule
     */
    public Policy withEffect(String rule, Effect effect) {
        if (!Rule.isOutsideCatalogue(rule)) {
            BuiltInRule.of(rule);
        }
        return with(rule, Optional.of(effect));
    }

    private Policy with(String rule, Optional<Effect> effect) {
        Map<String, Optional<Effect>> more = new HashMap<>(effects);
        more.put(rule, effect);
        return new Policy(more, limits);
    }

    /**
     * {@return this policy with limits of the user's own}
     *
     * @param limits limits that no method states
     */
    public Policy withLimits(UserLimits limits) {
        return new Policy(effects, Objects.requireNonNull(limits, "limits"));
    }

    /** {@return the limits of the user's own} */
    public UserLimits limits() {
        return limits;
    }

    /** {@return what is otherwise than the catalogue has it, a line each, sorted by rule} */
    public List<String> changes() {
        List<String> changes = new ArrayList<>();
        new TreeMap<>(effects)
                .forEach((rule, effect) ->
                        changes.add(rule + ": " + effect.map(Effect::toString).orElse("switched off")));
        add(changes, BuiltInRule.RING_OUT_OF_ROUND.id(), limits.outOfRound());
        add(changes, BuiltInRule.RUN_PAIR_SPREAD.id(), limits.pairSpread());
        add(changes, BuiltInRule.RUN_PREWET_RATIO.id(), limits.preWetRatio());
        return changes;
    }

    private static void add(List<String> changes, String rule, @Nullable Object limit) {
        if (limit != null) {
            changes.add(rule + ": at most " + limit);
        }
    }

    boolean isOff(String rule) {
        Optional<Effect> effect = effects.get(rule);
        return effect != null && effect.isEmpty();
    }

    /** {@return a finding as this policy has it, or empty where its rule is switched off} */
    Optional<Finding> apply(Finding finding) {
        Optional<Effect> effect = effects.get(finding.rule());
        if (effect == null || finding.effect() == Effect.NO_RATE) {
            return Optional.of(finding);
        }
        return effect.map(finding::withEffect);
    }
}
