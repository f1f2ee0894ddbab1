// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rule;

import dev.infiltration.field.Event;
import org.jspecify.annotations.Nullable;

/**
 * The direction in which a finding may bias the computed rate.
 *
 * <p>For acceptance, a pass is not confirmed if it is based on {@link #RAISES}; a fail is not confirmed if it is based on
 * {@link #LOWERS}.
 */
public enum Bias {
    /** May bias the rate high. */
    RAISES,
    /** May bias the rate low. */
    LOWERS,
    /** May bias the rate in either direction. */
    EITHER,
    /** Does not affect the rate. */
    NONE;

    /**
     * {@return the direction in which an event during a run may bias the rate}
     *
     * <p>A run with an event that biases the rate high gives an upper bound; low, a lower bound; in either direction, no rate.
     *
     * @param kind the kind of event; null if it was not recorded
     */
    public static Bias of(Event.@Nullable Kind kind) {
        if (kind == null) {
            return NONE;
        }
        return switch (kind) {
            case LEAK, OVERFLOW, SPILL, TIMER_LATE -> RAISES;
            case POUR_INTERRUPTED, HEAD_LOST -> LOWERS;
            case RING_MOVED -> EITHER;
            case SEAL_REPAIRED, RAIN, OTHER -> NONE;
        };
    }
}
