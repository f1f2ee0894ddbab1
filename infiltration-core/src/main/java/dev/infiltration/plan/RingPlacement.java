// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

/**
 * How well a ring at one place in a pattern stands for the pattern.
 *
 * @param offset       where the middle of the ring lies
 * @param openShare    the share of the ring's area that is joint or void
 * @param patternShare the share of the whole pattern that is joint or void
 */
public record RingPlacement(RingOffset offset, double openShare, double patternShare) {

    /**
     * {@return by how much the ring's share differs from the pattern's, relative to the pattern's}: +0.2 where the ring
     * holds a fifth more openings than its area of pavement has
     *
     * <p>Where joints alone take water in, the rate read there is off by about as much.
     */
    public double mismatch() {
        return openShare / patternShare - 1;
    }
}
