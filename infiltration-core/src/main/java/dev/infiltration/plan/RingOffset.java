// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import javax.measure.quantity.Length;

/**
 * Where the middle of a ring lies in a pattern.
 *
 * @param x    distance from the pattern's datum along the x axis, in mm
 * @param y    distance from the datum along the y axis, in mm
 * @param turn angle from the pattern's x axis to the axis that {@code x} was measured along, in degrees anticlockwise
 */
public record RingOffset(double x, double y, double turn) {

    /**
     * Checks that the numbers are some.
     *
     * @throws IllegalArgumentException if one is not finite
     */
    public RingOffset {
        if (!Double.isFinite(x) || !Double.isFinite(y) || !Double.isFinite(turn)) {
            throw new IllegalArgumentException(
                    "x, y, turn: expected finite numbers, got " + x + ", " + y + ", " + turn);
        }
    }

    /**
     * {@return an offset as it was taped along the pattern's own axes}
     *
     * @param x distance from the pattern's datum along x
     * @param y distance from the datum along y
     */
    public static RingOffset of(Reading<Length> x, Reading<Length> y) {
        return new RingOffset(x.in(FieldUnit.MILLIMETRE), y.in(FieldUnit.MILLIMETRE), 0);
    }

    /**
     * {@return the same distances measured along turned axes}
     *
     * @param degrees angle from the pattern's x axis to the axis that {@code x} was measured along, anticlockwise
     */
    public RingOffset turned(double degrees) {
        return new RingOffset(x, y, degrees);
    }

    /** {@return the distance along the pattern's own x axis turned by {@code degrees}} */
    double alongX(double degrees) {
        double angle = StrictMath.toRadians(turn + degrees);
        return x * StrictMath.cos(angle) - y * StrictMath.sin(angle);
    }

    /** {@return the distance along the pattern's own y axis turned by {@code degrees}} */
    double alongY(double degrees) {
        double angle = StrictMath.toRadians(turn + degrees);
        return x * StrictMath.sin(angle) + y * StrictMath.cos(angle);
    }
}
