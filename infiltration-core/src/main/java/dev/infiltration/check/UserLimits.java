// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.units.Reading;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * Limits that no method states and that a user may set; a rule whose limit is not set says nothing.
 *
 * @param outOfRound  the largest spread of a ring's inside diameters; null: not judged
 * @param pairSpread  the largest ratio of two runs that follow each other, above 1; null: not judged
 * @param preWetRatio the largest ratio of the rates of prewetting and run, above 1; null: not judged
 * @param ringMismatch the largest mismatch of the joints in a ring to those of the surface, to either side, as a share of the
 *     surface's open share, above 0; null: not judged
 */
public record UserLimits(
        @Nullable Reading<Length> outOfRound,
        @Nullable Double pairSpread,
        @Nullable Double preWetRatio,
        @Nullable Double ringMismatch) {

    /**
     * Checks the limits.
     *
     * @throws IllegalArgumentException if a ratio is not above 1, a mismatch or a spread not above 0, or one is not finite
     */
    public UserLimits {
        if (outOfRound != null && !outOfRound.isPositive()) {
            throw new IllegalArgumentException("outOfRound: expected above 0, got " + outOfRound);
        }
        requireAbove(1, "pairSpread", pairSpread);
        requireAbove(1, "preWetRatio", preWetRatio);
        requireAbove(0, "ringMismatch", ringMismatch);
    }

    private static void requireAbove(double least, String name, @Nullable Double limit) {
        if (limit != null && !(limit > least && Double.isFinite(limit))) {
            throw new IllegalArgumentException(name + ": expected above " + (int) least + " and finite, got " + limit);
        }
    }

    /** {@return no limits} */
    public static UserLimits none() {
        return new UserLimits(null, null, null, null);
    }

    /**
     * {@return these limits with another spread of diameters}
     *
     * @param outOfRound the largest spread of a ring's inside diameters; null: not judged
     */
    public UserLimits withOutOfRound(@Nullable Reading<Length> outOfRound) {
        return new UserLimits(outOfRound, pairSpread, preWetRatio, ringMismatch);
    }

    /**
     * {@return these limits with another ratio of runs}
     *
     * @param pairSpread the largest ratio of two runs that follow each other; null: not judged
     */
    public UserLimits withPairSpread(@Nullable Double pairSpread) {
        return new UserLimits(outOfRound, pairSpread, preWetRatio, ringMismatch);
    }

    /**
     * {@return these limits with another ratio of prewetting and run}
     *
     * @param preWetRatio the largest ratio of their rates; null: not judged
     */
    public UserLimits withPreWetRatio(@Nullable Double preWetRatio) {
        return new UserLimits(outOfRound, pairSpread, preWetRatio, ringMismatch);
    }

    /**
     * {@return these limits with another mismatch of joints}, for the rule {@code test.ring-placement} of the planning package
     *
     * @param ringMismatch the largest mismatch to either side, 0.2 for a fifth; null: not judged
     */
    public UserLimits withRingMismatch(@Nullable Double ringMismatch) {
        return new UserLimits(outOfRound, pairSpread, preWetRatio, ringMismatch);
    }
}
