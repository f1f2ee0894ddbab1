// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import dev.infiltration.compare.Ratio;
import dev.infiltration.compare.RatioTest;
import dev.infiltration.compare.SeveralGroupsTest;
import dev.infiltration.verification.Check;
import dev.infiltration.verification.Table;
import dev.infiltration.verification.Table.Row;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Tests of two and of several groups against published cases. */
public final class CompareChecks {

    private CompareChecks() {}

    /** {@return the checks} */
    public static Stream<Check> all() {
        return Stream.of(
                        signedRank(),
                        signedRankIntervals(),
                        smallCases(),
                        rankSum(),
                        rankSumIntervals(),
                        rankSumApproximate(),
                        welch(),
                        mcNemar(),
                        kruskalWallis(),
                        holm(),
                        holmOfFifty(),
                        ratios())
                .flatMap(each -> each);
    }

    private static Stream<Check> signedRank() {
        return Table.at(SignedRankTest.class, "agreesWithPublishedCases").flatMap(row -> {
            SignedRank test = SignedRank.of(SignedRankTest.differences(row.text("case")));
            String what = row.text("case") + ", signed rank, ";
            return Stream.of(
                    row.within(0, what + "sum", "sum", test.statistic()),
                    fraction(
                            row, what + "two-sided p", "two-sided", test.exact().orElseThrow()),
                    fraction(
                            row,
                            what + "one-sided p",
                            "one-sided",
                            test.exactGreater().orElseThrow()),
                    row.relative(1e-12, what + "shift", "shift", test.shift().orElseThrow() + offset(row)));
        });
    }

    /** {@return a counted probability}, as the fraction that is expected where it is that one */
    public static Check fraction(Row row, String what, String column, ExactProbability got) {
        boolean isSame = Fractions.of(row.text(column)).equals(got);
        return row.exact(what, column, isSame ? row.text(column) : got);
    }

    /** One case asks whether the differences centre on 4. */
    private static int offset(Row row) {
        return row.text("case").equals("light-diff") ? 4 : 0;
    }

    private static Stream<Check> signedRankIntervals() {
        return Table.at(SignedRankTest.class, "intervalsAgreeWithPublishedCases")
                .flatMap(row -> {
                    Interval interval = SignedRank.of(SignedRankTest.differences(row.text("case")))
                            .interval(row.number("level"))
                            .orElseThrow();
                    String what = row.text("case") + ", signed rank, " + row.text("level") + " ";
                    return Stream.of(
                            row.within(1e-9, what + "from", "low", interval.low() + offset(row)),
                            row.within(1e-9, what + "to", "high", interval.high() + offset(row)));
                });
    }

    private static Stream<Check> smallCases() {
        return Table.at(SignedRankTest.class, "smallCasesAgreeWithPublishedFractions")
                .map(row -> fraction(
                        row,
                        "differences " + row.text("differences") + ", two-sided p",
                        "two-sided",
                        SignedRank.of(SeveralGroupsTest.numbers(row.text("differences")))
                                .exact()
                                .orElseThrow()));
    }

    private static RankSum rankSum(Row row) {
        return RankSum.of(
                Published.group(row.text("case"), row.text("group")),
                Published.group(row.text("case"), row.text("against")));
    }

    private static Stream<Check> rankSum() {
        return Table.at(RankSumTest.class, "agreesWithPublishedCases").flatMap(row -> {
            RankSum test = rankSum(row);
            String what = row.text("case") + ", rank sum, ";
            return Stream.of(
                    row.within(0, what + "pairs", "pairs", test.statistic()),
                    fraction(
                            row, what + "two-sided p", "two-sided", test.exact().orElseThrow()),
                    fraction(
                            row,
                            what + "one-sided p",
                            "one-sided",
                            test.exactGreater().orElseThrow()),
                    row.within(1e-12, what + "shift", "shift", test.shift().orElseThrow()));
        });
    }

    private static Stream<Check> rankSumIntervals() {
        return Table.at(RankSumTest.class, "intervalsAgreeWithPublishedCases").flatMap(row -> {
            Interval interval = rankSum(row).interval(0.95).orElseThrow();
            String what = row.text("case") + ", rank sum, 0.95 ";
            return Stream.of(
                    row.within(1e-12, what + "from", "low", interval.low()),
                    row.within(1e-12, what + "to", "high", interval.high()));
        });
    }

    private static Stream<Check> rankSumApproximate() {
        return Table.at(RankSumTest.class, "approximationWithoutCorrectionAgreesWithPublishedCases")
                .map(row -> row.within(
                        1e-14,
                        row.text("case") + ", rank sum, p without correction",
                        "p",
                        rankSum(row).approximate(Continuity.UNCORRECTED)));
    }

    private static Stream<Check> welch() {
        return Table.at(MeanDifferenceTest.class, "agreesWithPublishedCases").flatMap(row -> {
            MeanDifference welch = MeanDifferenceTest.test(row.text("case"));
            String what = row.text("case") + ", Welch, ";
            return Stream.of(
                    row.within(1e-13, what + "t", "t", welch.t()),
                    row.within(1e-12, what + "degrees of freedom", "degrees", welch.degrees()),
                    row.within(1e-13, what + "p", "p", welch.pValue()));
        });
    }

    private static Stream<Check> mcNemar() {
        return Table.at(McNemarTest.class, "agreesWithPublishedCases").flatMap(row -> {
            McNemar test = new McNemar((int) row.number("gained"), (int) row.number("lost"));
            String what = row.text("gained") + " gained, " + row.text("lost") + " lost, McNemar, ";
            return Stream.of(
                    row.relative(1e-14, what + "exact p", "exact", test.exact().value()),
                    row.within(1e-12, what + "corrected", "corrected", test.chiSquared(Continuity.CORRECTED)),
                    row.within(1e-12, what + "uncorrected", "plain", test.chiSquared(Continuity.UNCORRECTED)));
        });
    }

    private static Stream<Check> kruskalWallis() {
        KruskalWallis test = KruskalWallisTest.mucociliary();
        return Table.at(KruskalWallisTest.class, "agreesWithThePublishedCase")
                .map(row -> row.within(
                        row.number("within"),
                        "hw-mucociliary, Kruskal-Wallis, " + row.text("figure"),
                        "value",
                        KruskalWallisTest.figure(test, row.text("figure"))));
    }

    private static Stream<Check> holm() {
        return Table.at(SeveralGroupsTest.class, "holmAgreesWithPublishedLists").flatMap(row -> {
            String[] expected = row.text("adjusted").split(" ", -1);
            double[] adjusted = PValueAdjustment.holm(SeveralGroupsTest.numbers(row.text("p")));
            return IntStream.range(0, expected.length)
                    .mapToObj(i -> Check.within(
                            1e-12,
                            "Holm, " + (i + 1) + " of " + expected.length,
                            row.text("source and mark"),
                            expected[i],
                            adjusted[i]));
        });
    }

    private static Stream<Check> holmOfFifty() {
        double[] adjusted = PValueAdjustment.holm(Published.column("p-adjust.csv", 0));
        String[] expected =
                Published.rows("p-adjust.csv").stream().map(row -> row[1]).toArray(String[]::new);
        return IntStream.range(0, expected.length)
                .mapToObj(i -> Check.within(
                        1e-14,
                        "Holm, " + (i + 1) + " of " + expected.length,
                        "help page p.adjust of R 4.2.2 (seen)",
                        expected[i],
                        adjusted[i]));
    }

    private static Stream<Check> ratios() {
        return Table.at(RatioTest.class, "readsPublishedMediansAsRatios")
                .map(row -> row.relative(
                        5e-4,
                        row.text("cleaning") + ", " + row.text("before") + " to " + row.text("after"),
                        "ratio",
                        Ratio.between(row.number("before"), row.number("after")).value()));
    }
}
