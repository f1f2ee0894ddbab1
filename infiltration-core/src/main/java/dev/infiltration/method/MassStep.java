// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.method;

import dev.infiltration.units.Reading;
import java.util.Objects;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * The mass of water of a run, by the time of the prewetting.
 *
 * @param below upper limit of the prewetting time, excluded; null in the last step
 * @param mass  mass of water of the run
 */
public record MassStep(@Nullable Reading<Time> below, Band<Mass> mass) {

    /** Checks that the mass is there. */
    public MassStep {
        Objects.requireNonNull(mass, "mass");
    }

    /**
     * {@return whether this step applies to a prewetting time}, if no earlier step does
     *
     * @param preWetTime time of the prewetting
     */
    public boolean isFor(Reading<Time> preWetTime) {
        return below == null || preWetTime.compareAmount(below) < 0;
    }
}
