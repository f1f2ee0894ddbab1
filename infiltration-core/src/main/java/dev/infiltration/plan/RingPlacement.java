// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import dev.infiltration.check.Rule;
import dev.infiltration.check.RuleResult;
import dev.infiltration.check.TestAt;
import dev.infiltration.check.UserLimits;
import dev.infiltration.rule.Bias;
import dev.infiltration.rule.Effect;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How well a ring at one place in a pattern stands for the pattern.
 *
 * @param offset       where the middle of the ring lies
 * @param openShare    the share of the ring's area that is joint or void
 * @param patternShare the share of the whole pattern that is joint or void
 */
public record RingPlacement(RingOffset offset, double openShare, double patternShare) {

    /** The id of {@link #rule}. */
    public static final String RULE = "test.ring-placement";

    /**
     * {@return by how much the ring's share differs from the pattern's, relative to the pattern's}: +0.2 where the ring
     * holds a fifth more openings than its area of pavement has
     *
     * <p>Where joints alone take water in, the rate read there is off by about as much.
     */
    public double mismatch() {
        return openShare / patternShare - 1;
    }

    /**
     * {@return how the ring of a test stood for the joints of its surface}; empty where joints, offset or ring are not recorded,
     * or not so that they can stand
     *
     * @param test the test
     */
    public static Optional<RingPlacement> of(TestAt test) {
        return RingOffset.of(test.test().ringOffset())
                .flatMap(offset -> joints(test).map(joints -> joints.at(offset)));
    }

    private static Optional<JointsInRing> joints(TestAt test) {
        return test.visit()
                .surface()
                .flatMap(surface -> JointPattern.of(surface.surface().joints()))
                .flatMap(pattern -> test.ring().flatMap(ring -> JointsInRing.of(pattern, ring)));
    }

    /**
     * {@return the rule {@value #RULE}, for a checker to take in}: it cautions where the recorded offset of a ring
     * misrepresents the joints of its surface by more than the policy of the checker allows
     * ({@link UserLimits#withRingMismatch}), and says nothing where that sets no limit; no method states one
     */
    public static Rule rule() {
        return Rule.onTest(RULE, Effect.CAUTION, RingPlacement::remark).withBias(Bias.EITHER);
    }

    private static Optional<RuleResult> remark(TestAt test, UserLimits limits) {
        @Nullable Double most = limits.ringMismatch();
        return most == null ? Optional.empty() : remark(test, most);
    }

    private static Optional<RuleResult> remark(TestAt test, double most) {
        return of(test).filter(placement -> Math.abs(placement.mismatch()) > most)
                .map(placement -> placement.remark(most));
    }

    private RuleResult remark(double threshold) {
        return new RuleResult(
                percent(openShare) + " open in the ring, " + percent(patternShare) + " in the pattern",
                "within " + percent(threshold) + " of the pattern's share",
                "the ring is not representative of the joint pattern",
                "move the ring until units and joints in it are representative of the pattern, and test there");
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.1f %%", 100 * share);
    }
}
