// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.method;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;

/** The limits of a method while they are put together. */
final class Limits {

    private final Map<Limit<?>, Band<?>> bands = new LinkedHashMap<>();

    /** Adds a limit. */
    <Q extends Quantity<Q>> Limits and(Limit<Q> limit, Band<Q> band) {
        bands.put(limit, band);
        return this;
    }

    Map<Limit<?>, Band<?>> toMap() {
        return inOrder(bands);
    }

    /** {@return an unmodifiable copy in the order of {@link Limit#all()}; a limit that is absent stays absent} */
    static Map<Limit<?>, Band<?>> inOrder(Map<Limit<?>, Band<?>> limits) {
        Map<Limit<?>, Band<?>> ordered = new LinkedHashMap<>();
        for (Limit<?> limit : Limit.all()) {
            @Nullable Band<?> band = limits.get(limit);
            if (band != null) {
                ordered.put(limit, band);
            }
        }
        return Collections.unmodifiableMap(ordered);
    }
}
