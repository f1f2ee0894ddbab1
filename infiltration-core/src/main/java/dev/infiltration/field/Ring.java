// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import dev.infiltration.units.Reading;
import jakarta.validation.constraints.NotEmpty;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * An infiltration ring.
 *
 * @param id              identifies the ring in the book
 * @param height          height of the ring
 * @param insideDiameter  the inside diameter to use; absent: the mean of {@code insideDiameters}
 * @param insideDiameters inside diameters read across the ring
 * @param extra           the host's own values, kept and written back untouched
 */
public record Ring(
        @NotEmpty @Nullable String id,
        @Nullable Reading<Length> height,
        @Nullable Reading<Length> insideDiameter,
        List<Reading<Length>> insideDiameters,
        Map<String, Object> extra) {

    /** Copies the collections; absent ones become empty. */
    public Ring {
        insideDiameters = Copies.list(insideDiameters, "insideDiameters");
        extra = Copies.extra(extra);
    }

    /**
     * {@return a record with these parts; the others are absent}
     *
     * @param id identifies the ring in the book
     */
    public static Ring of(@Nullable String id) {
        return new Ring(id, null, null, List.of(), Map.of());
    }

    /**
     * {@return this record with another {@code id}}
     *
     * @param id identifies the ring in the book
     */
    public Ring withId(@Nullable String id) {
        return new Ring(id, height, insideDiameter, insideDiameters, extra);
    }

    /**
     * {@return this record with another {@code height}}
     *
     * @param height height of the ring
     */
    public Ring withHeight(@Nullable Reading<Length> height) {
        return new Ring(id, height, insideDiameter, insideDiameters, extra);
    }

    /**
     * {@return this record with another {@code insideDiameter}}
     *
     * @param insideDiameter the inside diameter to use; absent: the mean of {@code insideDiameters}
     */
    public Ring withInsideDiameter(@Nullable Reading<Length> insideDiameter) {
        return new Ring(id, height, insideDiameter, insideDiameters, extra);
    }

    /**
     * {@return this record with another {@code insideDiameters}}
     *
     * @param insideDiameters inside diameters read across the ring
     */
    public Ring withInsideDiameters(List<Reading<Length>> insideDiameters) {
        return new Ring(id, height, insideDiameter, insideDiameters, extra);
    }

    /**
     * {@return this record with other {@code extra}}
     *
     * @param extra the host's own values, kept and written back untouched
     */
    public Ring withExtra(Map<String, Object> extra) {
        return new Ring(id, height, insideDiameter, insideDiameters, extra);
    }

    /**
     * {@return the diameters that the rate is computed with}: {@code insideDiameter} alone where it is given, else all of
     * {@code insideDiameters}, whose mean counts
     */
    public List<Reading<Length>> diametersInUse() {
        return insideDiameter == null ? insideDiameters : List.of(insideDiameter);
    }

    /** {@return whether a diameter is in use and all that are in use are positive} */
    public boolean isUsable() {
        return !diametersInUse().isEmpty() && diametersInUse().stream().allMatch(Reading::isPositive);
    }
}
