// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import dev.infiltration.check.Bias;
import dev.infiltration.check.Effect;
import dev.infiltration.check.Remark;
import dev.infiltration.check.Rule;
import dev.infiltration.check.TestAt;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/**
 * How well a ring at one place in a pattern stands for the pattern.
 *
 * @param offset       where the middle of the ring lies
 * @param openShare    the share of the ring's area that is joint or void
 * @param patternShare the share of the whole pattern that is joint or void
 */
public record RingPlacement(RingOffset offset, double openShare, double patternShare) {

    /** The id of the rule that {@link #rule} makes. */
    public static final String RULE = "plan.ring-placement";

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
     * {@return a rule that cautions where a ring misrepresents its pattern}, for a checker to take in
     *
     * @param threshold  the largest mismatch to either side that is let pass, above 0: the user's, no method states one
     * @param placements where the ring of a test lay; empty where that is not recorded, which the rule says nothing of
     * @throws IllegalArgumentException if the threshold is not above 0
     */
    public static Rule rule(double threshold, Function<TestAt, Optional<RingPlacement>> placements) {
        if (!(threshold > 0)) {
            throw new IllegalArgumentException("threshold: expected above 0, got " + threshold);
        }
        return Rule.onTest(
                        RULE,
                        Effect.CAUTION,
                        test -> placements
                                .apply(test)
                                .filter(placement -> Math.abs(placement.mismatch()) > threshold)
                                .map(placement -> placement.remark(threshold)))
                .withBias(Bias.EITHER);
    }

    private Remark remark(double threshold) {
        return new Remark(
                percent(openShare) + " open in the ring, " + percent(patternShare) + " in the pattern",
                "within " + percent(threshold) + " of the pattern's share",
                "the ring does not stand for the joint pattern",
                "move the ring until units and joints in it stand for the pattern, and test there");
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.1f %%", 100 * share);
    }
}
