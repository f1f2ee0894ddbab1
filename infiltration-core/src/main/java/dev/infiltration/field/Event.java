// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Something that happened during a prewetting or a run.
 *
 * @param at    when
 * @param kind  what
 * @param note  anything else
 * @param extra the host's own values, kept and written back untouched
 */
public record Event(
        @Nullable ClockTime at,
        @Nullable Kind kind,
        @Nullable String note,
        Map<String, Object> extra) {

    /** Copies the collections; absent ones become empty. */
    public Event {
        extra = Copies.extra(extra);
    }

    /**
     * {@return a record with these parts; the others are absent}
     *
     * @param kind what
     */
    public static Event of(@Nullable Kind kind) {
        return new Event(null, kind, null, Map.of());
    }

    /**
     * {@return this record with another {@code at}}
     *
     * @param at when
     */
    public Event withAt(@Nullable ClockTime at) {
        return new Event(at, kind, note, extra);
    }

    /**
     * {@return this record with another {@code kind}}
     *
     * @param kind what
     */
    public Event withKind(@Nullable Kind kind) {
        return new Event(at, kind, note, extra);
    }

    /**
     * {@return this record with another {@code note}}
     *
     * @param note anything else
     */
    public Event withNote(@Nullable String note) {
        return new Event(at, kind, note, extra);
    }

    /**
     * {@return this record with other {@code extra}}
     *
     * @param extra the host's own values, kept and written back untouched
     */
    public Event withExtra(Map<String, Object> extra) {
        return new Event(at, kind, note, extra);
    }

    /** What happened. */
    public enum Kind implements JsonName {
        /** Water left under or through the seal. */
        LEAK,
        /** Water ran over the ring. */
        OVERFLOW,
        /** Water was spilled outside. */
        SPILL,
        /** The timer was started late. */
        TIMER_LATE,
        /** Pouring was interrupted. */
        POUR_INTERRUPTED,
        /** The head fell away. */
        HEAD_LOST,
        /** The seal was repaired. */
        SEAL_REPAIRED,
        /** The ring moved. */
        RING_MOVED,
        /** It rained. */
        RAIN,
        /** Any other event, described in the note. */
        OTHER
    }
}
