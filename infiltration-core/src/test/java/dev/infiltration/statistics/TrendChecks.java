// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import dev.infiltration.verification.Check;
import dev.infiltration.verification.Table;
import dev.infiltration.verification.Table.Row;
import java.util.stream.Stream;

/** Trends, lines and reading them backwards against certified values and published series. */
public final class TrendChecks {

    private TrendChecks() {}

    /** {@return the checks} */
    public static Stream<Check> all() {
        return Stream.of(
                        mannKendall(),
                        counted(),
                        taus(),
                        slopes(),
                        slopeIntervals(),
                        exactIntervals(),
                        lines(),
                        backwards())
                .flatMap(each -> each);
    }

    private static Stream<Check> mannKendall() {
        return Table.at(MannKendallTest.class, "agreesWithPublishedCases").flatMap(row -> {
            MannKendall test = MannKendallTest.series(row.text("case"));
            return Stream.of(
                    row.within(0, what(row, "S"), "S", (double) test.statistic()),
                    row.within(1e-9, what(row, "variance"), "variance", test.variance()),
                    row.within(1e-10, what(row, "z"), "z", test.z()),
                    row.relative(1e-10, what(row, "p"), "p", test.approximate()));
        });
    }

    private static String what(Row row, String figure) {
        return row.text("case") + ", Mann-Kendall, " + figure;
    }

    private static Stream<Check> counted() {
        return Table.at(MannKendallTest.class, "countsLikePublishedCases").flatMap(row -> {
            MannKendall test = row.text("case").equals("tuna")
                    ? MannKendall.of(Published.group("hw-tuna", "hunterL"), Published.group("hw-tuna", "panel"))
                    : MannKendallTest.series(row.text("case"));
            ExactProbability tail = test.exactTail().orElseThrow();
            return Stream.of(
                    row.within(0, what(row, "S, exact"), "S", (double) test.statistic()),
                    CompareChecks.fraction(row, what(row, "one-sided p, exact"), "one-sided", tail));
        });
    }

    private static Stream<Check> taus() {
        return Table.at(MannKendallTest.class, "tausAgreeWithPublishedCases").flatMap(row -> {
            MannKendall test = MannKendallTest.series(row.text("case"));
            double tolerance = row.number("tolerance");
            return Stream.of(
                    row.within(tolerance, row.text("case") + ", tau-a", "tau-a", test.tauA()),
                    row.within(tolerance, row.text("case") + ", tau-b", "tau-b", test.tauB()));
        });
    }

    private static Stream<Check> slopes() {
        return Table.at(TheilSenTest.class, "agreesWithPublishedCases").flatMap(row -> {
            TheilSen line = TheilSenTest.series(row.text("case"));
            return Stream.of(
                    row.within(1e-13, row.text("case") + ", Theil-Sen slope", "slope", line.slope()),
                    row.within(1e-9, row.text("case") + ", Theil-Sen intercept", "intercept", line.intercept()));
        });
    }

    private static Stream<Check> slopeIntervals() {
        return Table.at(TheilSenTest.class, "intervalsByRoundedRanksAgree").flatMap(row -> {
            Interval interval = TheilSenTest.series(row.text("case"))
                    .interval(row.number("level"))
                    .orElseThrow();
            String what = row.text("case") + ", slope " + row.text("level") + " ";
            return Stream.of(
                    row.within(1e-9, what + "from", "low", interval.low()),
                    row.within(1e-9, what + "to", "high", interval.high()));
        });
    }

    private static Stream<Check> exactIntervals() {
        return Table.at(TheilSenTest.class, "exactRanksLieNextToRoundedOnes").flatMap(row -> {
            TheilSen line = TheilSenTest.series(row.text("case"));
            double level = row.number("level");
            Interval rounded = line.byNormalRanks(MannKendallTest.series(row.text("case")), level)
                    .orElseThrow();
            Interval exact = line.interval(level).orElseThrow();
            String what = row.text("case") + ", slope " + row.text("level") + " ";
            return Stream.of(
                    row.within(1e-9, what + "from, rounded ranks", "low by rounding", rounded.low()),
                    row.within(1e-9, what + "to, rounded ranks", "high by rounding", rounded.high()),
                    row.within(1e-9, what + "from, ranks exact", "low", exact.low()),
                    row.within(1e-9, what + "to, ranks exact", "high", exact.high()));
        });
    }

    private static Stream<Check> lines() {
        return Table.at(LineFitTest.class, "agreesWithPublishedLines")
                .map(row -> row.within(
                        row.number("within"),
                        row.text("case") + ", least squares, " + row.text("figure"),
                        "value",
                        LineFitTest.figure(LineFitTest.published(row.text("case")), row.text("figure"))));
    }

    private static Stream<Check> backwards() {
        return Table.at(LineFitTest.class, "readsBackwardsLikePublishedCases").flatMap(row -> {
            LineFit line = LineFitTest.calibration(row.text("case"));
            double y = row.number("y");
            double readings = row.number("readings");
            Fieller where = line.where(y, readings, row.number("level")).orElseThrow();
            double tolerance = 2e-12 * where.ratio();
            String what = row.text("case") + " read backwards at " + row.text("y") + ", readings "
                    + row.text("readings") + ", ";
            return Stream.of(
                    row.relative(1e-12, what + "x", "x", where.ratio()),
                    row.within(tolerance, what + row.text("level") + " from", "low", where.low()),
                    row.within(tolerance, what + row.text("level") + " to", "high", where.high()),
                    row.relative(1e-12, what + "u", "Wald u", line.whereError(y, readings)));
        });
    }
}
