// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Water poured from one weighed vessel: mass before less mass after.
 *
 * @param vessel which vessel
 * @param before what it held before
 * @param after  what it held after
 * @param extra  the host's own values, kept and written back untouched
 */
public record Pour(
        @Nullable String vessel,
        @Nullable WaterReading before,
        @Nullable WaterReading after,
        Map<String, Object> extra) {

    /** Copies the collections; absent ones become empty. */
    public Pour {
        extra = Copies.extra(extra);
    }

    /**
     * {@return a record with these parts; the others are absent}
     *
     * @param before what it held before
     * @param after  what it held after
     */
    public static Pour of(@Nullable WaterReading before, @Nullable WaterReading after) {
        return new Pour(null, before, after, Map.of());
    }

    /**
     * {@return this record with another {@code vessel}}
     *
     * @param vessel which vessel
     */
    public Pour withVessel(@Nullable String vessel) {
        return new Pour(vessel, before, after, extra);
    }

    /**
     * {@return this record with another {@code before}}
     *
     * @param before what it held before
     */
    public Pour withBefore(@Nullable WaterReading before) {
        return new Pour(vessel, before, after, extra);
    }

    /**
     * {@return this record with another {@code after}}
     *
     * @param after what it held after
     */
    public Pour withAfter(@Nullable WaterReading after) {
        return new Pour(vessel, before, after, extra);
    }

    /**
     * {@return this record with other {@code extra}}
     *
     * @param extra the host's own values, kept and written back untouched
     */
    public Pour withExtra(Map<String, Object> extra) {
        return new Pour(vessel, before, after, extra);
    }
}
