// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import dev.infiltration.field.Location.Selection;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.statistics.Interval;
import dev.infiltration.statistics.TextTable;
import dev.infiltration.units.InfiltrationRate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A summary told to people. */
final class SummaryWords {

    private final RateSummary summary;
    private final int figures;

    SummaryWords(RateSummary summary) {
        this.summary = summary;
        this.figures = summary.measured() + summary.bounded();
    }

    List<String> notes() {
        int left = summary.withheld() + summary.notTested();
        boolean stands = summary.sample().isRepresentative();
        boolean isZero =
                summary.bounded() == 0 && Arrays.stream(summary.values()).anyMatch(rate -> rate == 0);
        List<String> notes = new ArrayList<>();
        add(notes, !stands, "the locations do not stand for the surface (" + chosen() + "): no intervals");
        add(notes, figures < RateSummary.FEWEST_FOR_SCATTER, "too few locations for any interval");
        add(
                notes,
                figures < RateSummary.FEWEST_FOR_SHAPE,
                "too few locations for outliers, a fit to bounds and drawing anew");
        add(notes, summary.bounded() > 0, summary.bounded() + " of " + figures + " figures are bounds");
        add(notes, isZero, "a rate is zero: nothing else on the log scale");
        add(notes, left > 0, left + " planned locations are left out");
        return notes;
    }

    private String chosen() {
        Selection selection = summary.sample().selection();
        if (selection == Selection.STRATIFIED) {
            return "stratified, areas of the zones not known";
        }
        return selection == null ? "selection not known or mixed" : selection.word();
    }

    private static void add(List<String> list, boolean holds, String text) {
        if (holds) {
            list.add(text);
        }
    }

    TextTable table() {
        List<TextTable.Row> rows = new ArrayList<>();
        add(rows, "locations", counts());
        if (figures < RateSummary.FEWEST_FOR_SHAPE) {
            add(rows, "values", list(summary.values()));
        }
        add(rows, "mean", text(summary.mean()));
        summary.areaWeightedMean().ifPresent(mean -> add(rows, "area-weighted mean", text(mean)));
        if (figures >= RateSummary.FEWEST_FOR_SCATTER) {
            addTypical(rows);
        }
        add(rows, "minimum", text(summary.minimum()));
        addScatter(rows);
        addSurface(rows);
        notes().forEach(text -> add(rows, "know", text));
        return new TextTable("rates in mm/h", rows);
    }

    private String counts() {
        return "planned " + summary.planned() + ", measured " + summary.measured() + ", bounded " + summary.bounded()
                + ", withheld " + summary.withheld() + ", not tested " + summary.notTested();
    }

    private void addTypical(List<TextTable.Row> rows) {
        add(rows, "geometric mean", text(summary.geometricMean()));
        add(rows, "median", text(summary.median()));
    }

    private void addScatter(List<TextTable.Row> rows) {
        summary.cv().ifPresent(cv -> add(rows, "coefficient of variation", TextTable.number(cv)));
        summary.geometricCv().ifPresent(cv -> add(rows, "the same from the log scale", TextTable.number(cv)));
        if (summary.outliers().length > 0) {
            double[] values = summary.values();
            double[] far = Arrays.stream(summary.outliers())
                    .mapToDouble(i -> values[i])
                    .toArray();
            add(rows, "far from the others", list(far));
        }
    }

    private void addSurface(List<TextTable.Row> rows) {
        summary.geometricMeanInterval(Interval.LEVEL)
                .ifPresent(limits ->
                        add(rows, "geometric mean of the surface", text(limits, summary.surfaceGeometricMean())));
        summary.meanInterval(Interval.LEVEL)
                .ifPresent(limits -> add(rows, "mean of the surface, log-normal", text(limits, summary.surfaceMean())));
        summary.boundedFit()
                .ifPresent(fit -> add(
                        rows,
                        "geometric mean, with bounds",
                        text(fit.interval(Interval.LEVEL), OptionalDouble.of(fit.geometricMean()))));
    }

    private static String text(Interval limits, OptionalDouble estimate) {
        return limits.text(estimate.orElse(Double.POSITIVE_INFINITY), TextTable::rate, "locations");
    }

    private static void add(List<TextTable.Row> rows, String name, String value) {
        rows.add(new TextTable.Row(name, value));
    }

    private static String list(double[] values) {
        return Arrays.stream(values).mapToObj(TextTable::rate).collect(Collectors.joining(", "));
    }

    private static String text(RateOutcome outcome) {
        return text(outcome, rate -> TextTable.rate(rate.millimetresPerHour()));
    }

    /** {@return an outcome, with what it says of a bound before the words of the rate} */
    static String text(RateOutcome outcome, Function<InfiltrationRate, String> words) {
        return outcome.match(
                measured -> words.apply(measured.value()),
                upper -> "at most " + words.apply(upper.bound()),
                lower -> "at least " + words.apply(lower.bound()),
                withheld -> "withheld");
    }
}
