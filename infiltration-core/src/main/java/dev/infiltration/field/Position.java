// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.util.Map;
import java.util.OptionalDouble;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * A geographic position on WGS 84.
 *
 * @param latitude  degrees north, as written
 * @param longitude degrees east, as written
 * @param accuracy  horizontal accuracy stated by the receiver
 * @param extra     the host's own values, kept and written back untouched
 */
public record Position(
        @Nullable BigDecimal latitude,
        @Nullable BigDecimal longitude,
        @Nullable Reading<Length> accuracy,
        Map<String, Object> extra) {

    private static final BigDecimal POLE = BigDecimal.valueOf(90);
    private static final BigDecimal ANTIMERIDIAN = BigDecimal.valueOf(180);

    /** Copies the collections; absent ones become empty. */
    public Position {
        extra = Copies.extra(extra);
    }

    /**
     * {@return a record with these parts; the others are absent}
     *
     * @param latitude  degrees north, as written
     * @param longitude degrees east, as written
     */
    public static Position of(@Nullable BigDecimal latitude, @Nullable BigDecimal longitude) {
        return new Position(latitude, longitude, null, Map.of());
    }

    /**
     * {@return this record with another {@code latitude}}
     *
     * @param latitude degrees north, as written
     */
    public Position withLatitude(@Nullable BigDecimal latitude) {
        return new Position(latitude, longitude, accuracy, extra);
    }

    /**
     * {@return this record with another {@code longitude}}
     *
     * @param longitude degrees east, as written
     */
    public Position withLongitude(@Nullable BigDecimal longitude) {
        return new Position(latitude, longitude, accuracy, extra);
    }

    /**
     * {@return this record with another {@code accuracy}}
     *
     * @param accuracy horizontal accuracy stated by the receiver
     */
    public Position withAccuracy(@Nullable Reading<Length> accuracy) {
        return new Position(latitude, longitude, accuracy, extra);
    }

    /**
     * {@return this record with other {@code extra}}
     *
     * @param extra the host's own values, kept and written back untouched
     */
    public Position withExtra(Map<String, Object> extra) {
        return new Position(latitude, longitude, accuracy, extra);
    }

    /** {@return whether latitude and longitude are recorded and within 90 and 180 degrees} */
    public boolean isOnEarth() {
        return isWithin(latitude, POLE) && isWithin(longitude, ANTIMERIDIAN);
    }

    private static boolean isWithin(@Nullable BigDecimal degrees, BigDecimal most) {
        return degrees != null && degrees.abs().compareTo(most) <= 0;
    }

    /**
     * {@return the distance to another position in metres, along the geodesic on WGS 84; empty where a position is not on Earth}
     *
     * @param other the other position
     */
    public OptionalDouble metresTo(Position other) {
        if (latitude == null || longitude == null || other.latitude == null || other.longitude == null) {
            return OptionalDouble.empty();
        }
        if (!isOnEarth() || !other.isOnEarth()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Geodesic.metres(
                latitude.doubleValue(),
                longitude.doubleValue(),
                other.latitude.doubleValue(),
                other.longitude.doubleValue()));
    }
}
