// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import dev.infiltration.units.Reading;
import java.util.Map;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;

/**
 * The weather of a visit and the last rain before it.
 *
 * @param description   the weather in words
 * @param air           air temperature
 * @param source        where the rain record comes from
 * @param lastRainEnd   when the last rain ended
 * @param noRainSince   since when it is known not to have rained, where the end of the last rain is not
 * @param lastRainDepth depth of the last rain
 * @param rainFrom      when rain began during the visit
 * @param extra         the host's own values, kept and written back untouched
 */
public record Weather(
        @Nullable String description,
        @Nullable Reading<Temperature> air,
        @Nullable String source,
        @Nullable ClockTime lastRainEnd,
        @Nullable ClockTime noRainSince,
        @Nullable Reading<Length> lastRainDepth,
        @Nullable ClockTime rainFrom,
        Map<String, Object> extra) {

    /** Copies the collections; absent ones become empty. */
    public Weather {
        extra = Copies.extra(extra);
    }

    /**
     * {@return an empty record, all else absent}
     */
    public static Weather of() {
        return new Weather(null, null, null, null, null, null, null, Map.of());
    }

    /**
     * {@return this record with another {@code description}}
     *
     * @param description the weather in words
     */
    public Weather withDescription(@Nullable String description) {
        return new Weather(description, air, source, lastRainEnd, noRainSince, lastRainDepth, rainFrom, extra);
    }

    /**
     * {@return this record with another {@code air}}
     *
     * @param air air temperature
     */
    public Weather withAir(@Nullable Reading<Temperature> air) {
        return new Weather(description, air, source, lastRainEnd, noRainSince, lastRainDepth, rainFrom, extra);
    }

    /**
     * {@return this record with another {@code source}}
     *
     * @param source where the rain record comes from
     */
    public Weather withSource(@Nullable String source) {
        return new Weather(description, air, source, lastRainEnd, noRainSince, lastRainDepth, rainFrom, extra);
    }

    /**
     * {@return this record with another {@code lastRainEnd}}
     *
     * @param lastRainEnd when the last rain ended
     */
    public Weather withLastRainEnd(@Nullable ClockTime lastRainEnd) {
        return new Weather(description, air, source, lastRainEnd, noRainSince, lastRainDepth, rainFrom, extra);
    }

    /**
     * {@return this record with another {@code noRainSince}}
     *
     * @param noRainSince since when it is known not to have rained, where the end of the last rain is not
     */
    public Weather withNoRainSince(@Nullable ClockTime noRainSince) {
        return new Weather(description, air, source, lastRainEnd, noRainSince, lastRainDepth, rainFrom, extra);
    }

    /**
     * {@return this record with another {@code lastRainDepth}}
     *
     * @param lastRainDepth depth of the last rain
     */
    public Weather withLastRainDepth(@Nullable Reading<Length> lastRainDepth) {
        return new Weather(description, air, source, lastRainEnd, noRainSince, lastRainDepth, rainFrom, extra);
    }

    /**
     * {@return this record with another {@code rainFrom}}
     *
     * @param rainFrom when rain began during the visit
     */
    public Weather withRainFrom(@Nullable ClockTime rainFrom) {
        return new Weather(description, air, source, lastRainEnd, noRainSince, lastRainDepth, rainFrom, extra);
    }

    /**
     * {@return this record with other {@code extra}}
     *
     * @param extra the host's own values, kept and written back untouched
     */
    public Weather withExtra(Map<String, Object> extra) {
        return new Weather(description, air, source, lastRainEnd, noRainSince, lastRainDepth, rainFrom, extra);
    }
}
