// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import dev.infiltration.units.Reading;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/** Water poured into a ring and timed: a prewetting or a run, written down alike. */
public sealed interface Pouring permits PreWet, TestRun {

    /** {@return when water first met the surface} */
    @Nullable
    ClockTime start();

    /** {@return the time from the end of what came before, timed directly} */
    @Nullable
    Reading<Time> delay();

    /** {@return the water poured onto the surface} */
    @Nullable
    WaterReading water();

    /** {@return the pours, which sum to {@link #water} where that is absent} */
    List<Pour> pours();

    /** {@return the time from first water to no free water left, or the time watched if stopped} */
    @Nullable
    Reading<Time> elapsed();

    /** {@return how it ended} */
    @Nullable
    End end();

    /** {@return the depth of the water left standing when it was stopped} */
    @Nullable
    Reading<Length> depthAtStop();

    /** {@return the head held while pouring} */
    @Nullable
    Head head();

    /** {@return what happened meanwhile} */
    List<Event> events();

    /**
     * {@return the water poured}: {@code water} where it is recorded, else the sum of what the pours took from their vessels,
     * in their unit where they share one; empty when neither can be had
     */
    default Optional<WaterReading> pouredWater() {
        return water() == null ? Pours.sum(pours()) : Optional.of(water());
    }

    /** {@return whether it is kept for the record and never used} */
    default boolean isVoid() {
        return end() == End.VOID;
    }

    /** {@return whether it was given up with water standing} */
    default boolean isStopped() {
        return end() == End.STOPPED;
    }

    /** {@return whether it drained, or its end was not recorded and is taken so} */
    default boolean isDrained() {
        return end() == End.DRAINED || end() == null;
    }

    /** How a prewetting or a run ended. */
    enum End implements JsonName {
        /** No free water was left: the elapsed time is the time to that. */
        DRAINED,
        /** It was given up with water standing: the elapsed time is the time watched. */
        STOPPED,
        /** Kept for the record, never used. */
        VOID
    }
}
