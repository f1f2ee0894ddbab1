// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import dev.infiltration.units.Reading;
import java.util.Map;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * The units of a jointed surface and the joints between them: sizes at the top of the units, all units being alike.
 *
 * @param pattern laying pattern of the units
 * @param length  length of a unit; of a hexagon the distance across its flats
 * @param width   width of a unit; of a hexagon as {@code length}
 * @param joint   width of the joints
 * @param chamfer width of the chamfer in plan, if chamfers count as open
 * @param voids   the voids in a grid's slab
 * @param extra   the host's own values, kept and written back untouched
 */
public record Joints(
        @Nullable Laying pattern,
        @Nullable Reading<Length> length,
        @Nullable Reading<Length> width,
        @Nullable Reading<Length> joint,
        @Nullable Reading<Length> chamfer,
        @Nullable Voids voids,
        Map<String, Object> extra) {

    /** Copies the collections; absent ones become empty. */
    public Joints {
        extra = Copies.extra(extra);
    }

    /**
     * {@return a record with these parts; the others are absent}
     *
     * @param pattern laying pattern of the units
     * @param length  length of a unit; of a hexagon the distance across its flats
     * @param width   width of a unit; of a hexagon as {@code length}
     * @param joint   width of the joints
     */
    public static Joints of(
            @Nullable Laying pattern,
            @Nullable Reading<Length> length,
            @Nullable Reading<Length> width,
            @Nullable Reading<Length> joint) {
        return new Joints(pattern, length, width, joint, null, null, Map.of());
    }

    /**
     * {@return this record with another {@code pattern}}
     *
     * @param pattern laying pattern of the units
     */
    public Joints withPattern(@Nullable Laying pattern) {
        return new Joints(pattern, length, width, joint, chamfer, voids, extra);
    }

    /**
     * {@return this record with another {@code length}}
     *
     * @param length length of a unit; of a hexagon the distance across its flats
     */
    public Joints withLength(@Nullable Reading<Length> length) {
        return new Joints(pattern, length, width, joint, chamfer, voids, extra);
    }

    /**
     * {@return this record with another {@code width}}
     *
     * @param width width of a unit; of a hexagon as {@code length}
     */
    public Joints withWidth(@Nullable Reading<Length> width) {
        return new Joints(pattern, length, width, joint, chamfer, voids, extra);
    }

    /**
     * {@return this record with another {@code joint}}
     *
     * @param joint width of the joints
     */
    public Joints withJoint(@Nullable Reading<Length> joint) {
        return new Joints(pattern, length, width, joint, chamfer, voids, extra);
    }

    /**
     * {@return this record with another {@code chamfer}}
     *
     * @param chamfer width of the chamfer in plan, if chamfers count as open
     */
    public Joints withChamfer(@Nullable Reading<Length> chamfer) {
        return new Joints(pattern, length, width, joint, chamfer, voids, extra);
    }

    /**
     * {@return this record with another {@code voids}}
     *
     * @param voids the voids in a grid's slab
     */
    public Joints withVoids(@Nullable Voids voids) {
        return new Joints(pattern, length, width, joint, chamfer, voids, extra);
    }

    /**
     * {@return this record with other {@code extra}}
     *
     * @param extra the host's own values, kept and written back untouched
     */
    public Joints withExtra(Map<String, Object> extra) {
        return new Joints(pattern, length, width, joint, chamfer, voids, extra);
    }

    /**
     * The voids in a grid's slab: rectangles, evenly spread.
     *
     * @param along  how many along the slab's length
     * @param across how many along its width
     * @param length the side of a void along the slab's length
     * @param width  the side of a void along its width
     * @param extra  the host's own values, kept and written back untouched
     */
    public record Voids(
            @Nullable Integer along,
            @Nullable Integer across,
            @Nullable Reading<Length> length,
            @Nullable Reading<Length> width,
            Map<String, Object> extra) {

        /** Copies the collections; absent ones become empty. */
        public Voids {
            extra = Copies.extra(extra);
        }

        /**
         * {@return a record with these parts; the others are absent}
         *
         * @param along  how many along the slab's length
         * @param across how many along its width
         * @param length the side of a void along the slab's length
         * @param width  the side of a void along its width
         */
        public static Voids of(
                @Nullable Integer along,
                @Nullable Integer across,
                @Nullable Reading<Length> length,
                @Nullable Reading<Length> width) {
            return new Voids(along, across, length, width, Map.of());
        }

        /**
         * {@return this record with other {@code extra}}
         *
         * @param extra the host's own values, kept and written back untouched
         */
        public Voids withExtra(Map<String, Object> extra) {
            return new Voids(along, across, length, width, extra);
        }
    }
}
