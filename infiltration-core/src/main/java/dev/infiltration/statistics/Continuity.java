// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

/** Whether a normal approximation to a statistic that goes by steps is moved half a step towards the middle. */
enum Continuity {
    /** Half a step is taken off: closer to the exact probability of small groups. */
    CORRECTED(0.5),
    /** The statistic as it stands. */
    UNCORRECTED(0);

    private final double halfStep;

    Continuity(double halfStep) {
        this.halfStep = halfStep;
    }

    /** {@return the distance from the middle less the correction, not below 0} */
    double shrink(double distance, double step) {
        return Math.max(0, Math.abs(distance) - halfStep * step);
    }
}
