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
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A summary as text and as a table. */
final class SummaryWords {

    private final RateSummary summary;
    private final int values;

    SummaryWords(RateSummary summary) {
        this.summary = summary;
        this.values = summary.measured() + summary.bounded();
    }

    List<String> notes() {
        boolean isRepresentative = summary.sample().isRepresentative();
        boolean isZero =
                summary.bounded() == 0 && Arrays.stream(summary.values()).anyMatch(rate -> rate == 0);
        List<String> notes = new ArrayList<>();
        add(
                notes,
                !isRepresentative,
                "the locations are not representative of the surface (" + chosen() + "): no intervals");
        add(
                notes,
                values < RateSummary.FEWEST_FOR_SCATTER,
                "fewer than " + RateSummary.FEWEST_FOR_SCATTER + " locations: no interval");
        add(
                notes,
                values < RateSummary.FEWEST_FOR_SHAPE,
                "fewer than " + RateSummary.FEWEST_FOR_SHAPE
                        + " locations: no outlier test, no censored fit, no bootstrap interval");
        add(notes, summary.bounded() > 0, summary.bounded() + " of " + values + " values are bounds");
        add(notes, isZero, "a rate is zero: no interval or other result on the logarithmic scale");
        excluded(summary).ifPresent(notes::add);
        return notes;
    }

    /** {@return the planned locations without a value, for people: {@code 2 of 5 planned locations have no rate and are excluded}} */
    static Optional<String> excluded(RateSummary summary) {
        int excluded = summary.withheld() + summary.notTested();
        return excluded == 0
                ? Optional.empty()
                : Optional.of(excluded + " of " + summary.planned() + " planned locations"
                        + (excluded == 1 ? " has no rate and is excluded" : " have no rate and are excluded"));
    }

    private String chosen() {
        Selection selection = summary.sample().selection();
        if (selection == Selection.STRATIFIED) {
            return "stratified, areas of the zones unknown";
        }
        return selection == null ? "selection unknown or mixed" : selection.word();
    }

    private static void add(List<String> list, boolean isTrue, String text) {
        if (isTrue) {
            list.add(text);
        }
    }

    TextTable table() {
        List<TextTable.Row> rows = new ArrayList<>();
        add(rows, "locations", counts());
        if (values < RateSummary.FEWEST_FOR_SHAPE) {
            add(rows, "values", list(summary.values()));
        }
        add(rows, "mean", text(summary.mean()));
        summary.areaWeightedMean().ifPresent(mean -> add(rows, "area-weighted mean", text(mean)));
        if (values >= RateSummary.FEWEST_FOR_SCATTER) {
            addTypical(rows);
        }
        add(rows, "minimum", text(summary.minimum()));
        addScatter(rows);
        addSurface(rows);
        notes().forEach(text -> add(rows, "note", text));
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
        summary.geometricCv().ifPresent(cv -> add(rows, "geometric coefficient of variation", TextTable.number(cv)));
        if (summary.outliers().length > 0) {
            double[] values = summary.values();
            double[] outliers = Arrays.stream(summary.outliers())
                    .mapToDouble(i -> values[i])
                    .toArray();
            add(rows, "outliers", list(outliers));
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
                        "geometric mean of the surface, censored fit",
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

    /** {@return an outcome for people: of a bound {@code at most} or {@code at least} and the rate} */
    static String text(RateOutcome outcome, Function<InfiltrationRate, String> words) {
        return outcome.match(
                measured -> words.apply(measured.value()),
                upper -> "at most " + words.apply(upper.bound()),
                lower -> "at least " + words.apply(lower.bound()),
                withheld -> "withheld");
    }
}
