// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.util.Map;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * Where the middle of a ring lay in the pattern of the joints.
 *
 * <p>The datum is the middle of a unit that lies along the pattern's x axis; of basket weave, of a block of such units; of a
 * grid, of a slab.
 *
 * @param x     distance from the pattern's datum along x
 * @param y     distance from the datum along y
 * @param turn  angle from the pattern's x axis to the axis that {@code x} was taped along, in degrees anticlockwise; absent: none
 * @param extra the host's own values, kept and written back untouched
 */
public record Offset(
        @Nullable Reading<Length> x,
        @Nullable Reading<Length> y,
        @Nullable BigDecimal turn,
        Map<String, Object> extra) {

    /** Copies the collections; absent ones become empty. */
    public Offset {
        extra = Copies.extra(extra);
    }

    /**
     * {@return a record with these parts; the others are absent}
     *
     * @param x distance from the pattern's datum along x
     * @param y distance from the datum along y
     */
    public static Offset of(@Nullable Reading<Length> x, @Nullable Reading<Length> y) {
        return new Offset(x, y, null, Map.of());
    }

    /**
     * {@return this record with another {@code x}}
     *
     * @param x distance from the pattern's datum along x
     */
    public Offset withX(@Nullable Reading<Length> x) {
        return new Offset(x, y, turn, extra);
    }

    /**
     * {@return this record with another {@code y}}
     *
     * @param y distance from the datum along y
     */
    public Offset withY(@Nullable Reading<Length> y) {
        return new Offset(x, y, turn, extra);
    }

    /**
     * {@return this record with another {@code turn}}
     *
     * @param turn angle from the pattern's x axis to the axis that {@code x} was taped along, in degrees anticlockwise; absent: none
     */
    public Offset withTurn(@Nullable BigDecimal turn) {
        return new Offset(x, y, turn, extra);
    }

    /**
     * {@return this record with other {@code extra}}
     *
     * @param extra the host's own values, kept and written back untouched
     */
    public Offset withExtra(Map<String, Object> extra) {
        return new Offset(x, y, turn, extra);
    }
}
