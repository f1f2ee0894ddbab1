// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import dev.infiltration.units.Reading;
import jakarta.validation.Valid;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * The wetting of a location before its first run.
 *
 * @param start       when water first met the surface
 * @param delay       time from the end of what came before, timed directly
 * @param water       the water poured onto the surface; absent: the sum of {@code pours}
 * @param pours       the pours from weighed vessels
 * @param elapsed     time from first water to no free water left, or the time watched if stopped
 * @param end         how it ended; absent: taken as drained
 * @param depthAtStop depth of the water left standing when it was stopped
 * @param voidReason  why it is void
 * @param head        the head held while pouring
 * @param events      what happened meanwhile
 * @param extra       the host's own values, kept and written back untouched
 */
public record PreWet(
        @Nullable ClockTime start,
        @Nullable Reading<Time> delay,
        @Nullable WaterReading water,
        List<@Valid Pour> pours,
        @Nullable Reading<Time> elapsed,
        @Nullable End end,
        @Nullable Reading<Length> depthAtStop,
        @Nullable String voidReason,
        @Valid @Nullable Head head,
        List<@Valid Event> events,
        Map<String, Object> extra)
        implements Pouring {

    /** Copies the collections; absent ones become empty. */
    public PreWet {
        pours = Copies.list(pours, "pours");
        events = Copies.list(events, "events");
        extra = Copies.extra(extra);
    }

    /**
     * {@return a record with these parts; the others are absent}
     *
     * @param start   when water first met the surface
     * @param water   the water poured onto the surface; absent: the sum of {@code pours}
     * @param elapsed time from first water to no free water left, or the time watched if stopped
     * @param end     how it ended; absent: taken as drained
     */
    public static PreWet of(
            @Nullable ClockTime start,
            @Nullable WaterReading water,
            @Nullable Reading<Time> elapsed,
            @Nullable End end) {
        return new PreWet(start, null, water, List.of(), elapsed, end, null, null, null, List.of(), Map.of());
    }

    /**
     * {@return this record with another {@code start}}
     *
     * @param start when water first met the surface
     */
    public PreWet withStart(@Nullable ClockTime start) {
        return new PreWet(start, delay, water, pours, elapsed, end, depthAtStop, voidReason, head, events, extra);
    }

    /**
     * {@return this record with another {@code delay}}
     *
     * @param delay time from the end of what came before, timed directly
     */
    public PreWet withDelay(@Nullable Reading<Time> delay) {
        return new PreWet(start, delay, water, pours, elapsed, end, depthAtStop, voidReason, head, events, extra);
    }

    /**
     * {@return this record with another {@code water}}
     *
     * @param water the water poured onto the surface; absent: the sum of {@code pours}
     */
    public PreWet withWater(@Nullable WaterReading water) {
        return new PreWet(start, delay, water, pours, elapsed, end, depthAtStop, voidReason, head, events, extra);
    }

    /**
     * {@return this record with another {@code pours}}
     *
     * @param pours the pours from weighed vessels
     */
    public PreWet withPours(List<Pour> pours) {
        return new PreWet(start, delay, water, pours, elapsed, end, depthAtStop, voidReason, head, events, extra);
    }

    /**
     * {@return this record with another {@code elapsed}}
     *
     * @param elapsed time from first water to no free water left, or the time watched if stopped
     */
    public PreWet withElapsed(@Nullable Reading<Time> elapsed) {
        return new PreWet(start, delay, water, pours, elapsed, end, depthAtStop, voidReason, head, events, extra);
    }

    /**
     * {@return this record with another {@code end}}
     *
     * @param end how it ended; absent: taken as drained
     */
    public PreWet withEnd(@Nullable End end) {
        return new PreWet(start, delay, water, pours, elapsed, end, depthAtStop, voidReason, head, events, extra);
    }

    /**
     * {@return this record with another {@code depthAtStop}}
     *
     * @param depthAtStop depth of the water left standing when it was stopped
     */
    public PreWet withDepthAtStop(@Nullable Reading<Length> depthAtStop) {
        return new PreWet(start, delay, water, pours, elapsed, end, depthAtStop, voidReason, head, events, extra);
    }

    /**
     * {@return this record with another {@code voidReason}}
     *
     * @param voidReason why it is void
     */
    public PreWet withVoidReason(@Nullable String voidReason) {
        return new PreWet(start, delay, water, pours, elapsed, end, depthAtStop, voidReason, head, events, extra);
    }

    /**
     * {@return this record with another {@code head}}
     *
     * @param head the head held while pouring
     */
    public PreWet withHead(@Nullable Head head) {
        return new PreWet(start, delay, water, pours, elapsed, end, depthAtStop, voidReason, head, events, extra);
    }

    /**
     * {@return this record with another {@code events}}
     *
     * @param events what happened meanwhile
     */
    public PreWet withEvents(List<Event> events) {
        return new PreWet(start, delay, water, pours, elapsed, end, depthAtStop, voidReason, head, events, extra);
    }

    /**
     * {@return this record with other {@code extra}}
     *
     * @param extra the host's own values, kept and written back untouched
     */
    public PreWet withExtra(Map<String, Object> extra) {
        return new PreWet(start, delay, water, pours, elapsed, end, depthAtStop, voidReason, head, events, extra);
    }
}
