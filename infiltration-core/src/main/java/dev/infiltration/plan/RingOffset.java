// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import dev.infiltration.field.Offset;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * Where the middle of a ring lies in a pattern.
 *
 * @param x    distance from the pattern's datum along the x axis, in mm, at most 1 km to either side
 * @param y    distance from the datum along the y axis, in mm, likewise
 * @param turn angle from the pattern's x axis to the axis that {@code x} was measured along, in degrees anticlockwise
 */
public record RingOffset(double x, double y, double turn) {

    private static final double FARTHEST = 1_000_000;

    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if a number is not finite, or a distance longer than 1 km
     */
    public RingOffset {
        if (!isNear(x) || !isNear(y) || !Double.isFinite(turn)) {
            throw new IllegalArgumentException("x, y, turn: out of range, got " + x + ", " + y + ", " + turn);
        }
    }

    private static boolean isNear(double distance) {
        return Math.abs(distance) <= FARTHEST;
    }

    /**
     * {@return the offset that a field book holds; empty where a distance is not recorded or a part out of its range}
     *
     * @param written what was written down; null where nothing was
     */
    public static Optional<RingOffset> of(@Nullable Offset written) {
        if (written == null || written.x() == null || written.y() == null) {
            return Optional.empty();
        }
        double x = written.x().in(FieldUnit.MILLIMETRE);
        double y = written.y().in(FieldUnit.MILLIMETRE);
        double turn = written.turn() == null ? 0 : written.turn().doubleValue();
        return isNear(x) && isNear(y) && Double.isFinite(turn)
                ? Optional.of(new RingOffset(x, y, turn))
                : Optional.empty();
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
