// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.method;

import dev.infiltration.units.Reading;
import java.util.Objects;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * The mass of a run by the time that the prewetting took.
 *
 * @param below the prewetting took less than this; null in the last step
 * @param mass  the mass that the run then needs
 */
public record MassStep(@Nullable Reading<Time> below, Band<Mass> mass) {

    /** Checks that the mass is there. */
    public MassStep {
        Objects.requireNonNull(mass, "mass");
    }

    /**
     * {@return whether this step is for a prewetting of that time}, an earlier step not being
     *
     * @param preWetTime the time that the prewetting took
     */
    public boolean isFor(Reading<Time> preWetTime) {
        return below == null || preWetTime.compareAmount(below) < 0;
    }
}
