// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import dev.infiltration.field.Event;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Pouring;
import dev.infiltration.field.PreWet;
import dev.infiltration.field.TestRun;
import dev.infiltration.method.Range;
import dev.infiltration.method.TestMethod;
import dev.infiltration.units.Reading;
import dev.infiltration.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * What was poured at a location on a date, in the order in which it was poured.
 *
 * @param all prewettings and runs
 */
record PouredSoFar(List<Pouring> all) {

    static PouredSoFar of(List<LocationTest> tests) {
        List<Pouring> all = new ArrayList<>();
        tests.forEach(test -> {
            Stream.ofNullable(test.preWet()).forEach(all::add);
            all.addAll(test.runs());
        });
        return new PouredSoFar(all);
    }

    @Nullable
    Pouring last() {
        return all.isEmpty() ? null : all.get(all.size() - 1);
    }

    /** {@return how many runs count} */
    long runs() {
        return all.stream()
                .filter(pouring -> pouring instanceof TestRun && !pouring.isVoid())
                .count();
    }

    /** {@return whether water was poured and nobody has written down yet how it ended} */
    static boolean isUnderWay(Pouring pouring) {
        return pouring.start() != null && pouring.elapsed() == null && pouring.end() == null;
    }

    /** {@return the member without which the next step cannot be told} */
    static Optional<String> missing(Pouring pouring) {
        if (pouring.isVoid() || pouring.isStopped()) {
            return Optional.empty();
        }
        @Nullable Reading<Time> elapsed = pouring.elapsed();
        if (elapsed == null || !elapsed.isPositive()) {
            return Optional.of(pouring.start() == null ? "start" : "elapsed");
        }
        return pouring.start() == null ? Optional.of("start") : Optional.empty();
    }

    static boolean sawRain(Pouring pouring) {
        return pouring.events().stream().anyMatch(event -> event.kind() == Event.Kind.RAIN);
    }

    /** {@return whether what was poured last and is not void was given up with water standing} */
    boolean stands() {
        return all.stream()
                .filter(pouring -> !pouring.isVoid())
                .reduce((earlier, later) -> later)
                .map(Pouring::isStopped)
                .orElse(false);
    }

    /** {@return the mass that a run needs, by the time of the last prewetting that counts; without one the last step's} */
    Range<Mass> runMass(TestMethod method, UnitSystem system) {
        @Nullable
        Reading<Time> preWetTime = all.stream()
                .filter(pouring -> pouring instanceof PreWet && !pouring.isVoid())
                .reduce((earlier, later) -> later)
                .map(Pouring::elapsed)
                .orElse(null);
        return method.massSteps().stream()
                .filter(step -> preWetTime == null ? step.below() == null : step.isFor(preWetTime))
                .findFirst()
                .orElseThrow()
                .mass()
                .in(system);
    }
}
