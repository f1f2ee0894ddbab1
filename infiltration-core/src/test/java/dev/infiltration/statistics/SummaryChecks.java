// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import dev.infiltration.summary.PassingShare;
import dev.infiltration.summary.PassingShareTest;
import dev.infiltration.summary.RateSummary;
import dev.infiltration.summary.RateSummaryTest;
import dev.infiltration.summary.Sample;
import dev.infiltration.verification.Check;
import dev.infiltration.verification.Table;
import dev.infiltration.verification.Table.Row;
import java.util.stream.Stream;

/** Means, spreads, intervals and shares against certified values and published data. */
public final class SummaryChecks {

    private SummaryChecks() {}

    /** {@return the checks} */
    public static Stream<Check> all() {
        return Stream.of(moments(), geometric(), logNormal(), factors(), bounded(), shares(), quantiles())
                .flatMap(each -> each);
    }

    private static Stream<Check> moments() {
        return Table.at(SampleStatisticsTest.class, "agreesWithCertifiedValues").flatMap(row -> {
            SampleStatistics moments = SampleStatistics.of(SampleStatisticsTest.data(row.text("set")));
            return Stream.of(
                    row.relative(3e-15, row.text("set") + ", mean", "certified mean", moments.mean()),
                    row.relative(row.number("relative"), row.text("set") + ", sd", "certified sd", moments.sd()));
        });
    }

    private static Stream<Check> geometric() {
        return Table.at(RateSummaryTest.class, "geometricMeanAgreesWithPublishedData")
                .flatMap(row -> {
                    RateSummary summary =
                            RateSummary.of(Sample.random(Published.column("lognormal.csv", row.text("case"), 1)));
                    Interval interval = summary.geometricMeanInterval(0.95).orElseThrow();
                    return Stream.of(
                            figure(
                                    row,
                                    "geometric mean",
                                    "geometric mean",
                                    summary.surfaceGeometricMean().orElseThrow()),
                            figure(row, "geometric mean, 95 % from", "low", interval.low()),
                            figure(row, "geometric mean, 95 % to", "high", interval.high()));
                });
    }

    private static Check figure(Row row, String what, String column, double got) {
        return row.relative(1e-12, row.text("case") + ", " + what, column, got);
    }

    private static Stream<Check> logNormal() {
        return Table.at(LogNormalMeanTest.class, "agreesWithPublishedCases").flatMap(row -> {
            LogNormalMean mean = LogNormalMeanTest.data(row.text("case"));
            String what = row.text("case") + ", log-normal mean, ";
            return Stream.of(
                    row.relative(1e-11, what + "95 % from", "low (2.5 %)", StrictMath.exp(mean.limit(0.025))),
                    row.relative(1e-11, what + "95 % to", "high (97.5 %)", StrictMath.exp(mean.limit(0.975))),
                    row.relative(1e-11, what + "one-sided 95 %", "high (95 %)", StrictMath.exp(mean.limit(0.95))));
        });
    }

    private static Stream<Check> factors() {
        return Table.at(LogNormalMeanTest.class, "agreesWithTheTableOfFactors").map(row -> {
            int n = Integer.parseInt(row.text("n"));
            double s = row.number("s");
            double high = new LogNormalMean(n, 0, s).limit(0.95);
            return row.within(
                    row.number("digits"),
                    "Land's factor H 95 %, n " + n + ", s " + row.text("s"),
                    "H",
                    (high - s * s / 2) * StrictMath.sqrt(n - 1.0) / s);
        });
    }

    private static Stream<Check> bounded() {
        return Table.at(LogNormalFitTest.class, "agreesWithPublishedCases")
                .map(row -> row.within(
                        row.number("within"),
                        row.text("case") + " with values below limits, " + row.text("figure"),
                        "value",
                        LogNormalFitTest.figure(LogNormalFitTest.data(row.text("case")), row.text("figure"))));
    }

    private static Stream<Check> shares() {
        return Table.at(PassingShareTest.class, "agreesWithPublishedCases").flatMap(row -> {
            PassingShare share = new PassingShare((int) row.number("of"), (int) row.number("n"));
            Interval interval = share.interval(0.95);
            String what = row.text("of") + " of " + row.text("n") + ", share 95 % ";
            return Stream.of(
                    row.within(1e-14, what + "from", "low", interval.low()),
                    row.within(1e-14, what + "to", "high", interval.high()));
        });
    }

    private static Stream<Check> quantiles() {
        return Table.at(QuantileTest.class, "studentAgrees")
                .map(row -> row.relative(
                        1e-12,
                        "Student's quantile " + row.text("p") + ", degrees of freedom " + row.text("degrees"),
                        "quantile",
                        Quantile.student(row.number("p"), row.number("degrees"))));
    }
}
