// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.rate.Distribution.Shape;
import dev.infiltration.statistics.Interval;
import dev.infiltration.verification.Check;
import dev.infiltration.verification.Table;
import dev.infiltration.verification.Table.Row;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** Uncertainty against the examples of the guide, of its supplement and of others. */
public final class UncertaintyChecks {

    private UncertaintyChecks() {}

    /** {@return the checks} */
    public static Stream<Check> all() {
        return Stream.of(
                        spreads(),
                        endGauge(),
                        impedance(),
                        lines(),
                        worked(),
                        table(),
                        linear(),
                        secondOrder(),
                        trials(),
                        symmetric(),
                        shortest(),
                        printed())
                .flatMap(each -> each);
    }

    /** A table whose first column says the figure and, behind a comma, its mark. */
    private static Stream<Check> figures(
            Class<?> test, String name, String source, String column, ToDoubleFunction<String> got) {
        return Table.at(test, name).map(row -> {
            String[] parts = row.text(column).split(",(?! *y2)", 2);
            String mark = parts.length > 1 ? parts[1].strip() : row.text("mark");
            return Check.within(
                    row.number("within"),
                    parts[0].replaceFirst("^[0-9]: ", ""),
                    source + " (" + mark + ")",
                    row.text("value"),
                    got.applyAsDouble(parts[0]));
        });
    }

    private static Stream<Check> spreads() {
        return Table.at(DistributionTest.class, "standardUncertaintyIsThatOfTheDistribution")
                .map(row -> Check.within(
                        1e-14,
                        "standard uncertainty of "
                                + row.text("shape").toLowerCase(Locale.ROOT).replace('_', ' ') + " limits "
                                + row.text("width") + ", inexact by " + row.text("inexactness"),
                        row.text("source") + " (" + row.text("mark") + ")",
                        row.text("u"),
                        new Distribution(
                                        Shape.valueOf(row.text("shape")),
                                        row.number("width"),
                                        row.number("inexactness"),
                                        Double.POSITIVE_INFINITY)
                                .standardUncertainty()));
    }

    private static Stream<Check> endGauge() {
        return Stream.concat(
                Table.at(EndGaugeTest.class, "endGaugeComesOutAsInTheGuide").map(row -> {
                    String[] parts = row.text("figure, mark").split(",", 2);
                    return Check.within(
                            row.number("within"),
                            "end gauge, " + parts[0],
                            "JCGM 100:2008, " + row.text("JCGM 100:2008, H.1") + " (" + parts[1].strip() + ")",
                            row.text("value"),
                            EndGaugeTest.figure(EndGaugeTest.GAUGE.propagate(), parts[0]));
                }),
                Table.at(EndGaugeTest.class, "endGaugeWithSecondOrderTermsComesOutAsInTheGuide")
                        .map(row -> Check.within(
                                row.number("within"),
                                "end gauge, u with second-order terms",
                                "JCGM 100:2008, " + row.text("clause, mark").replaceFirst(", (.*)", " ($1)"),
                                row.text("u"),
                                EndGaugeTest.GAUGE
                                        .withSecondOrderTerms()
                                        .propagate()
                                        .standardUncertainty())));
    }

    private static Stream<Check> impedance() {
        return Stream.of(
                        impedance(
                                "impedanceFromMeansComesOutAsInTheGuide",
                                "mark, approach",
                                figure -> ImpedanceTest.impedance(figure, ImpedanceTest::fromMeans)),
                        impedance(
                                "impedanceFromEachSetComesOutAsInTheGuide",
                                "mark, approach",
                                figure -> ImpedanceTest.impedance(figure, ImpedanceTest::fromSets)),
                        impedance(
                                "impedanceWithoutCorrelationsIsFarOff",
                                "mark",
                                figure -> ImpedanceTest.impedance(
                                        figure, y -> ImpedanceTest.measured(y).propagate())))
                .flatMap(each -> each);
    }

    private static Stream<Check> impedance(String test, String mark, ToDoubleFunction<String> got) {
        String where = mark.equals("mark") ? "without correlations (Table H.5), " : "";
        return Table.at(ImpedanceTest.class, test)
                .map(row -> Check.within(
                        row.heading().contains("within") ? row.number("within") : 1e-10,
                        "impedance, " + where + row.text("figure"),
                        "JCGM 100:2008, H.2 (" + row.text(mark) + ")",
                        row.text("value"),
                        got.applyAsDouble(row.text("figure"))));
    }

    private static Stream<Check> lines() {
        return Stream.of(
                        figures(
                                CalibrationLineTest.class,
                                "thermometerLineComesOutAsInTheGuide",
                                "JCGM 100:2008, H.3, thermometer",
                                "figure, mark",
                                CalibrationLineTest::thermometer),
                        figures(
                                CalibrationLineTest.class,
                                "concentrationFromALineComesOutAsInTheGuide",
                                "EURACHEM/CITAC QUAM 3rd ed., A5",
                                "figure, mark",
                                CalibrationLineTest::concentration),
                        Table.at(CalibrationLineTest.class, "eachTermOfTheReleaseAddsWhatIsPublished")
                                .map(row -> Check.within(
                                        row.number("within"),
                                        "release, what the " + row.text("term") + " adds",
                                        "EURACHEM/CITAC QUAM 3rd ed., A5, in the documentation of GTC (seen)",
                                        row.text("amount, seen, printed"),
                                        CalibrationLineTest.added(row.text("term")))))
                .flatMap(each -> each);
    }

    private static Stream<Check> worked() {
        Stream<Check> expansion = Table.at(WorkedExamplesTest.class, "expansionComesOutAsPublished")
                .flatMap(row -> Stream.of(
                        Check.within(
                                Math.min(row.number("within"), 5e-10),
                                "expansion coefficient",
                                marked(row),
                                row.text("value"),
                                WorkedExamplesTest.EXPANSION.value()),
                        Check.within(
                                row.number("within"),
                                "expansion coefficient, u",
                                marked(row),
                                row.text("u"),
                                WorkedExamplesTest.EXPANSION.standardUncertainty())));
        return Stream.concat(
                expansion,
                figures(
                        WorkedExamplesTest.class,
                        "quotientComesOutAsPublished",
                        "quotient of three inputs by Welch-Satterthwaite, tests of suncal",
                        "figure, mark",
                        WorkedExamplesTest::quotient));
    }

    private static String marked(Row row) {
        return row.text("source") + " (" + row.text("mark") + ")";
    }

    private static Stream<Check> table() {
        return Table.at(WorkedExamplesTest.class, "coverageFactorsAreThoseOfTheTable")
                .flatMap(row -> Stream.of(
                        coverage(row, "68.27 %", 0.6827), coverage(row, "95 %", 0.95), coverage(row, "99 %", 0.99)));
    }

    private static Check coverage(Row row, String column, double level) {
        return Check.within(
                5.1e-3,
                "coverage factor for " + column + ", degrees of freedom " + row.text("nu"),
                "JCGM 100:2008, Table G.2 (memory)",
                row.text(column),
                Uncertainty.coverageFactor(level, row.number("nu")));
    }

    private static Stream<Check> linear() {
        return Table.at(SupplementExamplesTest.class, "linearPropagationGivesItsOwnInterval")
                .flatMap(row -> {
                    Uncertainty linear = example(row).propagate();
                    Interval interval = linear.interval(0.95);
                    return Stream.of(
                            figure(row, "linear propagation, value", "value", linear.value()),
                            figure(row, "linear propagation, u", "u", linear.standardUncertainty()),
                            figure(row, "linear propagation, 95 % from", "low", interval.low()),
                            figure(row, "linear propagation, 95 % to", "high", interval.high()));
                });
    }

    private static Stream<Check> secondOrder() {
        return Table.at(SupplementExamplesTest.class, "secondOrderTermsWidenTheInterval")
                .flatMap(row -> {
                    Uncertainty linear = example(row).withSecondOrderTerms().propagate();
                    Interval interval = linear.interval(0.95);
                    return Stream.of(
                            figure(row, "second-order terms, u", "u", linear.standardUncertainty()),
                            figure(row, "second-order terms, 95 % from", "low", interval.low()),
                            figure(row, "second-order terms, 95 % to", "high", interval.high()));
                });
    }

    private static Stream<Check> trials() {
        return Table.at(SupplementExamplesTest.class, "trialsHaveMeanAndStandardUncertainty")
                .flatMap(row -> {
                    MonteCarloResult trials = SupplementExamplesTest.trials(row.text("example"), 0.95);
                    return Stream.of(
                            figure(row, "a million trials, mean", "mean", trials.mean()),
                            Check.within(
                                    row.number("of u"),
                                    what(row, "a million trials, u"),
                                    clause(row),
                                    row.text("u"),
                                    trials.standardUncertainty()));
                });
    }

    private static Stream<Check> symmetric() {
        return Table.at(SupplementExamplesTest.class, "trialsHaveTheSymmetricInterval")
                .flatMap(row -> interval(row, "symmetric", trials(row).symmetric()));
    }

    private static Stream<Check> shortest() {
        return Table.at(SupplementExamplesTest.class, "trialsHaveTheShortestInterval")
                .flatMap(row -> interval(row, "shortest", trials(row).shortest()));
    }

    private static Stream<Check> interval(Row row, String kind, Interval interval) {
        String what = "a million trials, " + kind + " " + row.text("level") + " ";
        return Stream.of(
                figure(row, what + "from", "low", interval.low()), figure(row, what + "to", "high", interval.high()));
    }

    private static MonteCarloResult trials(Row row) {
        return SupplementExamplesTest.trials(row.text("example"), row.number("level"));
    }

    private static MeasurementModel example(Row row) {
        return SupplementExamplesTest.EXAMPLES.get(row.text("example"));
    }

    private static Check figure(Row row, String what, String column, double got) {
        return Check.within(row.number("within"), what(row, what), clause(row), row.text(column), got);
    }

    private static String what(Row row, String what) {
        return row.text("example") + ": " + what;
    }

    private static String clause(Row row) {
        String mark = row.text("mark")
                .replace("2e7 trials, 40-digit code", "recomputed, 2e7 trials")
                .replace("1e7 trials, 40-digit code", "recomputed, 1e7 trials");
        return row.text("clause") + " (" + mark + ")";
    }

    private static Stream<Check> printed() {
        return Table.at(RoundingTest.class, "valueMatchesItsUncertainty")
                .filter(row -> row.text("source, mark").startsWith("JCGM"))
                .map(row -> Check.exact(
                        row.text("value") + " and " + row.text("u") + " as one",
                        row.text("source, mark"),
                        row.text("text"),
                        Rounding.pair(number(row, "value"), number(row, "u"))));
    }

    private static double number(Row row, String column) {
        return Double.parseDouble(row.text(column).replace(" ", ""));
    }
}
