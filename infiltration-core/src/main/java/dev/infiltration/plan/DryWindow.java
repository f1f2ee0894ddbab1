// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import dev.infiltration.method.Limit;
import dev.infiltration.method.TestMethod;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import dev.infiltration.units.UnitSystem;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * When a visit may start: the rain has stopped long enough before, and holds off until the visit is over.
 *
 * @param firstStart the first start permitted
 * @param lastStart  the last start from which the visit ends before the next rain, or before the record does
 */
public record DryWindow(Instant firstStart, Instant lastStart) {

    /** Checks that both are there. */
    public DryWindow {
        Objects.requireNonNull(firstStart, "firstStart");
        Objects.requireNonNull(lastStart, "lastStart");
    }

    /**
     * {@return the first window that a record of rain shows}, or empty when it shows none
     *
     * <p>What the record does not reach over is not shown to be dry: a record that begins dry permits no start before the
     * method's dry time has passed from its beginning.
     *
     * @param rain      the rain, past and forecast
     * @param method    the method, for the time since the last rain
     * @param visit     how long the visit takes
     * @param notBefore no start is wanted earlier
     */
    public static Optional<DryWindow> first(RainRecord rain, TestMethod method, Duration visit, Instant notBefore) {
        Duration wait = dryTime(method);
        return rain.dryStretches()
                .map(dry -> new DryWindow(
                        later(dry.from().plus(wait), notBefore), dry.to().minus(visit)))
                .filter(window -> !window.lastStart.isBefore(window.firstStart))
                .findFirst();
    }

    /** {@return the time since the last rain that a method asks for} */
    static Duration dryTime(TestMethod method) {
        @Nullable
        Reading<Time> least =
                method.limit(Limit.DRY_TIME).in(UnitSystem.NEITHER).lowest();
        return least == null ? Duration.ZERO : Duration.ofMillis((long) Math.ceil(1000 * least.in(FieldUnit.SECOND)));
    }

    private static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }
}
