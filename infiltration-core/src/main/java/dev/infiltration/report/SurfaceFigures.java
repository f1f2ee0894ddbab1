// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.rate.RateOutcome;
import dev.infiltration.summary.SurfaceRate;
import java.util.List;

/** The figures of a surface on a visit, with the number of locations that they rest on. */
final class SurfaceFigures {

    private SurfaceFigures() {}

    static Block of(SurfaceRate rate, RateWords words) {
        return rate.usedCount() == 0
                ? Block.Paragraph.of("The surface has no figure: " + counts(rate) + ".")
                : Block.Table.of(
                        "Figures of the surface over " + ReportText.count(rate.usedCount(), "location") + ": "
                                + counts(rate),
                        List.of("Figure", "Rate"),
                        List.of(
                                row("Mean", rate.mean(), words),
                                row("Geometric mean", rate.geometricMean(), words),
                                row("Median", rate.median(), words),
                                row("Minimum", rate.minimum(), words)));
    }

    private static List<Phrase> row(String name, RateOutcome outcome, RateWords words) {
        return List.of(Phrase.of(name), Phrase.of(words.text(outcome)));
    }

    static String counts(SurfaceRate rate) {
        return rate.planned() + " planned, " + rate.measured() + " measured, " + rate.bounded() + " bounded, "
                + rate.withheld() + " withheld, " + rate.notTested() + " not tested";
    }
}
