// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import dev.infiltration.field.Joints;
import dev.infiltration.field.Laying;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * How pavers or grids are laid: the units, the joints between them and the voids in them, repeated without end.
 *
 * <p>The datum that offsets are measured from is the middle of a unit that lies along x (basket weave: of a block of such
 * units; grid: of a slab). In herringbone the unit across stands at the left end of the unit along; a mirrored pavement is
 * the same pattern with y turned round. Sizes are those at the top of the units, all units being alike and straight.
 *
 * <pre>{@code
 * JointPattern pattern = JointPattern.of(
 *         Laying.HERRINGBONE_45, Reading.of("200", FieldUnit.MILLIMETRE),
 *         Reading.of("100", FieldUnit.MILLIMETRE), Reading.of("5", FieldUnit.MILLIMETRE));
 * pattern.openShare();    // 0.0708…
 * }</pre>
 *
 * @param laying  how the units are laid
 * @param length  length of a unit, at most 10 m; of a hexagon the distance across its flats
 * @param width   width of a unit, 1 mm to its length; of a hexagon as {@code length}
 * @param joint   width of the joints, 0 to 10 m; above 0 where there are no voids
 * @param chamfer width of the chamfer in plan, which then counts as open; null where chamfers are ignored
 * @param voids   the voids in a grid's slab; null for all other layings
 */
public record JointPattern(
        Laying laying,
        Reading<Length> length,
        Reading<Length> width,
        Reading<Length> joint,
        @Nullable Reading<Length> chamfer,
        @Nullable Voids voids) {

    private static final double SHORTEST = 1;
    private static final double LONGEST = 10_000;

    /**
     * Checks the sizes.
     *
     * @throws IllegalArgumentException if a size is out of its range, the voids do not fit, or nothing is open
     */
    public JointPattern {
        Objects.requireNonNull(laying, "laying");
        require(millimetres(length) <= LONGEST, "length", length);
        require(millimetres(width) >= SHORTEST && width.compareAmount(length) <= 0, "width", width);
        require(laying != Laying.HEXAGONAL || width.sameAmountAs(length), "width", width);
        require(joint.value().signum() >= 0 && millimetres(joint) <= LONGEST, "joint", joint);
        require(chamfer == null || fits(chamfer, width), "chamfer", chamfer);
        require((voids != null) == (laying == Laying.GRID), "voids", voids);
        require(voids == null || voids.fit(length, width), "voids", voids);
        require(joint.isPositive() || voids != null, "joint", joint);
    }

    /**
     * {@return units with joints between them, chamfers ignored}
     *
     * @param laying how they are laid, anything but a grid
     * @param length length of a unit; of a hexagon the distance across its flats
     * @param width  width of a unit, at most its length; of a hexagon as {@code length}
     * @param joint  width of the joints, above 0
     * @throws IllegalArgumentException if a size is out of its range
     */
    public static JointPattern of(Laying laying, Reading<Length> length, Reading<Length> width, Reading<Length> joint) {
        return new JointPattern(laying, length, width, joint, null, null);
    }

    /**
     * {@return grid slabs with filled voids, laid in straight rows}
     *
     * @param length length of a slab
     * @param width  width of a slab, at most its length
     * @param joint  width of the joints between slabs, 0 or more
     * @param voids  the voids in a slab
     * @throws IllegalArgumentException if a size is out of its range or the voids do not fit
     */
    public static JointPattern grid(Reading<Length> length, Reading<Length> width, Reading<Length> joint, Voids voids) {
        return new JointPattern(Laying.GRID, length, width, joint, null, voids);
    }

    /**
     * {@return the pattern that a field book holds; empty where a part of it is not recorded or out of its range}
     *
     * @param written what was written down; null where nothing was
     */
    public static Optional<JointPattern> of(@Nullable Joints written) {
        if (written == null
                || written.pattern() == null
                || written.length() == null
                || written.width() == null
                || written.joint() == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(new JointPattern(
                    written.pattern(),
                    written.length(),
                    written.width(),
                    written.joint(),
                    written.chamfer(),
                    Voids.of(written.voids())));
        } catch (IllegalArgumentException outOfRange) {
            return Optional.empty();
        }
    }

    /**
     * {@return this pattern with the chamfers of the units counted as open}
     *
     * @param width width of the chamfer in plan, less than half a unit
     * @throws IllegalArgumentException if it is negative or too wide
     */
    public JointPattern withChamfer(Reading<Length> width) {
        return new JointPattern(laying, length, this.width, joint, width, voids);
    }

    /**
     * {@return the share of the whole surface that is joint or void, 0 to 1, in closed form}
     *
     * <p>One less the solid area over the area that repeats: L·W / ((L + j)·(W + j)) of stack, running bond and
     * herringbone, (F / (F + j))² of hexagons, n·L·W / s² of basket weave with n units to a block of side s
     * ({@link Laying#BASKET_WEAVE}), and a grid's slab less its voids.
     */
    public double openShare() {
        double solid = face(length) * face(width);
        return switch (laying) {
            case BASKET_WEAVE -> 1 - unitsInBlock() * solid / (block() * block());
            case GRID -> 1 - (solid - Objects.requireNonNull(voids).area()) / (pitch(length) * pitch(width));
            default -> 1 - solid / (pitch(length) * pitch(width));
        };
    }

    /** {@return the side of a unit that counts as solid, in mm} */
    double face(Reading<Length> side) {
        return millimetres(side) - (chamfer == null ? 0 : 2 * millimetres(chamfer));
    }

    /** {@return a side of a unit and a joint, in mm} */
    double pitch(Reading<Length> side) {
        return millimetres(side) + millimetres(joint);
    }

    /** {@return how many units lie side by side in a block of basket weave} */
    int unitsInBlock() {
        return (int) Math.round(pitch(length) / pitch(width));
    }

    /** {@return how many units and voids repeat} */
    int faces() {
        return switch (laying) {
            case BASKET_WEAVE -> 2 * unitsInBlock();
            case GRID -> 1 + Objects.requireNonNull(voids).along() * voids.across();
            case HERRINGBONE_90, HERRINGBONE_45 -> 2;
            default -> 1;
        };
    }

    /** {@return the side of a block of basket weave with its joint, in mm} */
    double block() {
        return Math.max(pitch(length), unitsInBlock() * pitch(width));
    }

    static double millimetres(Reading<Length> length) {
        return length.in(FieldUnit.MILLIMETRE);
    }

    private static boolean fits(Reading<Length> chamfer, Reading<Length> width) {
        return chamfer.value().signum() >= 0 && 2 * millimetres(chamfer) < millimetres(width);
    }

    private static void require(boolean holds, String name, @Nullable Object found) {
        if (!holds) {
            throw new IllegalArgumentException(name + ": out of range, got " + found);
        }
    }

    /**
     * The voids in a grid's slab: rectangles, evenly spread.
     *
     * @param along  how many along the slab's length, 1 to 100
     * @param across how many along its width, 1 to 100
     * @param length the side of a void along the slab's length
     * @param width  the side of a void along its width
     */
    public record Voids(int along, int across, Reading<Length> length, Reading<Length> width) {

        private static final int MOST = 100;

        /**
         * Checks counts and sizes.
         *
         * @throws IllegalArgumentException if one is out of its range
         */
        public Voids {
            require(along >= 1 && along <= MOST, "along", along);
            require(across >= 1 && across <= MOST, "across", across);
            require(length.isPositive(), "length", length);
            require(width.isPositive(), "width", width);
        }

        private static @Nullable Voids of(Joints.@Nullable Voids written) {
            if (written == null) {
                return null;
            }
            @Nullable Integer along = written.along();
            @Nullable Integer across = written.across();
            @Nullable Reading<Length> length = written.length();
            @Nullable Reading<Length> width = written.width();
            if (along == null || across == null || length == null || width == null) {
                throw new IllegalArgumentException("voids: a part is missing, got " + written);
            }
            return new Voids(along, across, length, width);
        }

        boolean fit(Reading<Length> slabLength, Reading<Length> slabWidth) {
            return along * millimetres(length) < millimetres(slabLength)
                    && across * millimetres(width) < millimetres(slabWidth);
        }

        /** {@return the area of all of them, in mm²} */
        double area() {
            return along * across * millimetres(length) * millimetres(width);
        }
    }
}
