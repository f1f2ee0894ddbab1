// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.field.Place;
import dev.infiltration.rule.Bias;
import dev.infiltration.rule.Effect;
import dev.infiltration.rule.RuleId;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * A rule of a user's own: one function over a visit, a test, a prewetting or a run in its surroundings.
 *
 * <p>Its id starts with a name of the user's own, {@code harrow.sealant}; its findings show up like any other, after those of
 * the catalogue at the same place. Void prewettings and runs are not shown to it, nor visits whose id an earlier one has.
 *
 * <p>If the function throws an exception, the check goes on. A finding of this rule at that record names the cause; it
 * withholds the rate if findings of this rule do.
 *
 * <pre>{@code
 * Rule photographed = Rule.onTest("harrow.photo", Effect.CAUTION, test ->
 *         test.test().photos().isEmpty() ? Optional.of(RuleResult.of("no photograph")) : Optional.empty());
 * Checker checker = Checker.withDefaults().withRule(photographed);
 * }</pre>
 */
public final class Rule {

    /** The id of the library's own add-on, which other packages make and a checker takes in. */
    static final String RING_PLACEMENT = "test.ring-placement";

    private static final Set<String> TAKEN = Set.of("data", "ring", "visit", "test", "prewet", "run", "rate", "report");

    private final String id;
    private final RuleId ruleId;
    private final Effect effect;
    private final Bias bias;
    private final Function<VisitAt, Optional<RuleResult>> onVisit;
    private final BiFunction<TestAt, UserLimits, Optional<RuleResult>> onTest;
    private final Function<PouringAt, Optional<RuleResult>> onPouring;

    private Rule(
            String id,
            Effect effect,
            Bias bias,
            Function<VisitAt, Optional<RuleResult>> onVisit,
            BiFunction<TestAt, UserLimits, Optional<RuleResult>> onTest,
            Function<PouringAt, Optional<RuleResult>> onPouring) {
        this.id = id;
        this.ruleId = RuleId.ofUser(id, effect, bias);
        this.effect = effect;
        this.bias = bias;
        this.onVisit = onVisit;
        this.onTest = onTest;
        this.onPouring = onPouring;
    }

    private static Rule of(
            String id,
            Effect effect,
            Function<VisitAt, Optional<RuleResult>> onVisit,
            BiFunction<TestAt, UserLimits, Optional<RuleResult>> onTest,
            Function<PouringAt, Optional<RuleResult>> onPouring) {
        if (!isOutsideCatalogue(id)) {
            throw new IllegalArgumentException(
                    "id: expected a name of your own, a dot and the rule's name, not one of " + TAKEN + ", got " + id);
        }
        return new Rule(id, Objects.requireNonNull(effect, "effect"), Bias.NONE, onVisit, onTest, onPouring);
    }

    /** Whether an id is in a namespace of the user's own, or that of the library's add-on. */
    static boolean isOutsideCatalogue(String id) {
        int dot = id.indexOf('.');
        boolean isOwn = dot >= 1 && dot < id.length() - 1 && !TAKEN.contains(id.substring(0, dot));
        return isOwn || id.equals(RING_PLACEMENT);
    }

    /**
     * {@return a rule over visits}
     *
     * @param id     its id, in a namespace of the user's own
     * @param effect how much its findings weigh
     * @param judge  what there is to say of a visit
     */
    public static Rule onVisit(String id, Effect effect, Function<VisitAt, Optional<RuleResult>> judge) {
        return of(id, effect, judge, Rule::nothing, pouring -> Optional.empty());
    }

    /**
     * {@return a rule over tests}
     *
     * @param id     its id, in a namespace of the user's own
     * @param effect how much its findings weigh
     * @param judge  what there is to say of a test
     */
    public static Rule onTest(String id, Effect effect, Function<TestAt, Optional<RuleResult>> judge) {
        return onTest(id, effect, (test, limits) -> judge.apply(test));
    }

    /**
     * {@return a rule over tests that goes by a limit of the checker's own policy}
     *
     * @param id     its id, in a namespace of the user's own
     * @param effect how much its findings weigh
     * @param judge  what there is to say of a test under the user's limits
     */
    public static Rule onTest(String id, Effect effect, BiFunction<TestAt, UserLimits, Optional<RuleResult>> judge) {
        return of(id, effect, visit -> Optional.empty(), judge, pouring -> Optional.empty());
    }

    /**
     * {@return a rule over prewettings}
     *
     * @param id     its id, in a namespace of the user's own
     * @param effect how much its findings weigh
     * @param judge  what there is to say of a prewetting
     */
    public static Rule onPreWet(String id, Effect effect, Function<PouringAt, Optional<RuleResult>> judge) {
        return of(
                id,
                effect,
                visit -> Optional.empty(),
                Rule::nothing,
                pouring -> pouring.isRun() ? Optional.empty() : judge.apply(pouring));
    }

    /**
     * {@return a rule over runs}
     *
     * @param id     its id, in a namespace of the user's own
     * @param effect how much its findings weigh
     * @param judge  what there is to say of a run
     */
    public static Rule onRun(String id, Effect effect, Function<PouringAt, Optional<RuleResult>> judge) {
        return of(
                id,
                effect,
                visit -> Optional.empty(),
                Rule::nothing,
                pouring -> pouring.isRun() ? judge.apply(pouring) : Optional.empty());
    }

    /**
     * {@return this rule saying which way its matter moves the rate}
     *
     * @param bias what the matter does to the rate
     */
    public Rule withBias(Bias bias) {
        return new Rule(id, effect, Objects.requireNonNull(bias, "bias"), onVisit, onTest, onPouring);
    }

    /** {@return the id} */
    public String id() {
        return id;
    }

    void judge(VisitAt visit, Findings findings) {
        add(() -> onVisit.apply(visit), visit.place(), visit.subject(), findings);
    }

    private static Optional<RuleResult> nothing(TestAt test, UserLimits limits) {
        return Optional.empty();
    }

    /** What a review says of this rule having been taken in. */
    String says(UserLimits limits) {
        if (!id.equals(RING_PLACEMENT)) {
            return "a rule of the user's own, " + effect;
        }
        return limits.ringMismatch() == null ? "taken in, no limit set" : "at most " + limits.ringMismatch();
    }

    void judge(TestAt test, UserLimits limits, Findings findings) {
        add(() -> onTest.apply(test, limits), test.place(), test.subject(), findings);
    }

    void judge(PouringAt pouring, Findings findings) {
        add(() -> onPouring.apply(pouring), pouring.place(), pouring.subject(), findings);
    }

    /** A rule that throws ends nothing: the finding names the cause, with the effect that the rule has. */
    private void add(Supplier<Optional<RuleResult>> judge, Place where, String subject, Findings findings) {
        Optional<RuleResult> remark;
        try {
            remark = Objects.requireNonNull(judge.get(), "the rule returned null");
        } catch (RuntimeException failure) {
            remark = Optional.of(failed(failure));
        }
        remark.ifPresent(
                result -> findings.add(Finding.of(ruleId, effect, bias, where, subject, result, RuleBases.USER)));
    }

    private static RuleResult failed(RuntimeException failure) {
        return new RuleResult(
                failure.toString(),
                "",
                "the rule could not be evaluated: " + failure,
                "correct the rule; until then check this record by hand");
    }

    /** Whether its findings withhold rates. */
    boolean isWithholding() {
        return effect == Effect.NO_RATE;
    }
}
