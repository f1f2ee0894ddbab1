// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.units.InfiltrationRate;

/**
 * Bias of a rate by a leaking seal: water that leaks under the ring is counted as infiltrated, so the rate is too high. It is a
 * one-sided bias, reported separately and never part of a ±.
 *
 * @param share the share of the water that may have gone so at most, 0 to 1
 */
public record LeakBias(double share) {

    /**
     * Checks the share.
     *
     * @throws IllegalArgumentException if it is not 0 to 1
     */
    public LeakBias {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("share: allowed 0 to 1, found " + share);
        }
    }

    /**
     * {@return the bias of a leak that flows at a rate}: all of the water at most
     *
     * @param kilogramsPerSecond the leak, 0 or more
     * @param kilograms          mass of water poured
     * @param seconds            time to infiltrate
     * @throws IllegalArgumentException if the leak is negative or not finite, mass or time are not above 0 and finite
     */
    public static LeakBias ofFlow(double kilogramsPerSecond, double kilograms, double seconds) {
        if (!(kilogramsPerSecond >= 0 && Double.isFinite(kilogramsPerSecond))) {
            throw new IllegalArgumentException(
                    "kilogramsPerSecond: allowed 0 or more and finite, found " + kilogramsPerSecond);
        }
        RunAmounts.requirePositive("kilograms", kilograms);
        RunAmounts.requirePositive("seconds", seconds);
        return new LeakBias(Math.min(1, kilogramsPerSecond * seconds / kilograms));
    }

    /**
     * {@return the least that a rate would be}
     *
     * @param rate the rate as it came out
     */
    public InfiltrationRate least(InfiltrationRate rate) {
        return new InfiltrationRate(rate.millimetresPerHour() * (1 - share));
    }

    /** {@return the bias for people} */
    @Override
    public String toString() {
        return "the seal may leak up to " + Rounding.digits(100 * share, 2) + " % of the water";
    }
}
