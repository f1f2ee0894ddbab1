// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import dev.infiltration.units.Reading;
import java.util.Map;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * The head of water in the ring while pouring, from first reaching the lower mark until the last water is poured, at the lowest point in the ring.
 *
 * @param state   position of the water level relative to the two marks
 * @param lowest  lowest level
 * @param highest highest level
 * @param extra   the host's own values, kept and written back untouched
 */
public record Head(
        @Nullable State state,
        @Nullable Reading<Length> lowest,
        @Nullable Reading<Length> highest,
        Map<String, Object> extra) {

    /** Copies the collections; absent ones become empty. */
    public Head {
        extra = Copies.extra(extra);
    }

    /**
     * {@return a record with these parts; the others are absent}
     *
     * @param state position of the water level relative to the two marks
     */
    public static Head of(@Nullable State state) {
        return new Head(state, null, null, Map.of());
    }

    /**
     * {@return this record with another {@code state}}
     *
     * @param state position of the water level relative to the two marks
     */
    public Head withState(@Nullable State state) {
        return new Head(state, lowest, highest, extra);
    }

    /**
     * {@return this record with another {@code lowest}}
     *
     * @param lowest lowest level
     */
    public Head withLowest(@Nullable Reading<Length> lowest) {
        return new Head(state, lowest, highest, extra);
    }

    /**
     * {@return this record with another {@code highest}}
     *
     * @param highest highest level
     */
    public Head withHighest(@Nullable Reading<Length> highest) {
        return new Head(state, lowest, highest, extra);
    }

    /**
     * {@return this record with other {@code extra}}
     *
     * @param extra the host's own values, kept and written back untouched
     */
    public Head withExtra(Map<String, Object> extra) {
        return new Head(state, lowest, highest, extra);
    }

    /** Position of the water level. */
    public enum State implements JsonName {
        /** Between the two marks throughout. */
        BETWEEN_MARKS,
        /** Below the lower mark at some time. */
        BELOW,
        /** Above the upper mark at some time. */
        ABOVE,
        /** Below and above at some time. */
        BOTH,
        /** Pouring could not fill to the lower mark. */
        NEVER_REACHED
    }
}
