// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.method;

import dev.infiltration.units.Reading;
import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Time;

/** What makes a method contradict itself. */
final class MethodFaults {

    /** A limit and its name in the method. */
    record Named(String name, Band<?> band) {}

    private MethodFaults() {}

    static void refuse(String id, List<Named> bands, List<MassStep> steps, int runsPerDay, LocationCount count) {
        List<String> faults = new ArrayList<>();
        bands.forEach(named -> addEmptyRanges(named.name(), named.band(), faults));
        addStepFaults(steps, faults);
        if (id.isEmpty()) {
            faults.add("id: expected a name, got none");
        }
        if (runsPerDay < 1) {
            faults.add("runsPerDay: expected at least 1, got " + runsPerDay);
        }
        if (count.si().isEmpty() || count.inchPound().isEmpty()) {
            faults.add("locationCount: expected steps in both unit systems");
        }
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException("method " + id + " contradicts itself: " + String.join("; ", faults));
        }
    }

    private static void addEmptyRanges(String name, Band<?> band, List<String> faults) {
        if (band.si().isEmpty()) {
            faults.add(name + ".si: nothing lies in " + band.si());
        }
        if (band.inchPound().isEmpty()) {
            faults.add(name + ".inchPound: nothing lies in " + band.inchPound());
        }
    }

    private static void addStepFaults(List<MassStep> steps, List<String> faults) {
        if (steps.isEmpty() || steps.get(steps.size() - 1).below() != null) {
            faults.add("massSteps: expected a last step without a time, for every longer prewetting");
        }
        for (int i = 0; i < steps.size(); i++) {
            addEmptyRanges("massSteps[" + i + "].mass", steps.get(i).mass(), faults);
            if (i + 1 < steps.size()
                    && !isBefore(steps.get(i).below(), steps.get(i + 1).below())) {
                faults.add("massSteps[" + i + "]: expected to end before the next step ends");
            }
        }
    }

    private static boolean isBefore(
            @org.jspecify.annotations.Nullable Reading<Time> below,
            @org.jspecify.annotations.Nullable Reading<Time> next) {
        return below != null && (next == null || below.compareAmount(next) < 0);
    }
}
