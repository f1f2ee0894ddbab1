// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.method.Band;
import dev.infiltration.method.Basis;
import dev.infiltration.method.LocationCount;
import dev.infiltration.method.MassStep;
import dev.infiltration.method.TestMethod;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A method's limits in both unit systems, each with where it comes from. */
final class LimitTable {

    private final List<List<Phrase>> rows = new ArrayList<>();

    private LimitTable() {}

    static Block.Table of(TestMethod method) {
        LimitTable table = new LimitTable();
        table.ring(method);
        table.water(method);
        table.times(method);
        table.place(method);
        return Block.Table.of(
                "Limits of " + method.designation(), List.of("Limit", "SI", "Inch-pound", "Source"), table.rows);
    }

    private void ring(TestMethod method) {
        row("Ring inside diameter", method.insideDiameter());
        row("Ring height", method.ringHeight());
        row("Diameter read to", method.diameterResolution());
        row("Head", method.head());
    }

    private void water(TestMethod method) {
        row("Prewetting water", method.preWetMass());
        for (MassStep step : method.massSteps()) {
            row("Run water, prewetting " + (step.below() == null ? "longer" : "below " + step.below()), step.mass());
        }
        row("Pour off by", method.pourTolerance());
        row("Water read to", method.massResolution());
    }

    private void times(TestMethod method) {
        row("Time read to", method.timeResolution());
        row("Prewetting to run", method.startDelay());
        row("Run to repeat", method.repeatDelay());
        row("Dry before a test", method.dryTime());
    }

    private void place(TestMethod method) {
        row("Clear distance between locations", method.clearSpacing());
        row("unless this lies between tests", method.spacingTime());
        row("Surface temperature", method.surfaceTemperature());
        LocationCount count = method.locationCount();
        row("Locations", steps(count.si()), steps(count.inchPound()), count.basis());
    }

    private void row(String name, Band<?> band) {
        row(name, band.si().toString(), band.inchPound().toString(), band.basis());
    }

    private void row(String name, String si, String inchPound, Basis basis) {
        rows.add(List.of(Phrase.of(name), Phrase.of(si), Phrase.of(inchPound), Phrase.of(basis.toString())));
    }

    private static String steps(List<LocationCount.Step> steps) {
        return steps.stream().map(LocationCount.Step::toString).collect(Collectors.joining(", then "));
    }
}
