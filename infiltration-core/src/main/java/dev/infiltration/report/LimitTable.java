// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.method.Band;
import dev.infiltration.method.Basis;
import dev.infiltration.method.Limit;
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
        Limit.all().forEach(limit -> table.limit(limit, method));
        LocationCount count = method.locationCount();
        table.row("Locations", steps(count.si()), steps(count.inchPound()), count.basis());
        return Block.Table.of(
                "Limits of " + method.designation(), List.of("Limit", "SI", "Inch-pound", "Source"), table.rows);
    }

    private void limit(Limit<?> limit, TestMethod method) {
        row(limit.label(), method.limit(limit));
        if (limit == Limit.PREWET_MASS) {
            method.massSteps().forEach(this::runWater);
        }
    }

    private void runWater(MassStep step) {
        row("Run water, prewetting " + (step.below() == null ? "longer" : "below " + step.below()), step.mass());
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
