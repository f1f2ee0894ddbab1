// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.compare;

import dev.infiltration.statistics.Conclusion;
import dev.infiltration.statistics.Interval;
import dev.infiltration.statistics.MeanDifference;
import dev.infiltration.statistics.RankSum;
import dev.infiltration.statistics.TextTable;
import dev.infiltration.units.InfiltrationRate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Two independent groups of locations: two surfaces, two parts of one, two ways of cleaning.
 *
 * <p>Groups are compared on the log scale. The conclusion rests on the exact rank-sum test alone; the interval of the
 * ratio of geometric means (Welch) supposes logarithms near normal, that of the typical ratio (Hodges–Lehmann) only that
 * the groups differ by a factor. A rate of zero counts by rank; it leaves no ratio and no interval.
 *
 * <p>Rates may be in any unit, the same for all.
 */
public final class GroupComparison {

    private final double[] first;
    private final double[] second;

    private GroupComparison(double[] first, double[] second) {
        this.first = first;
        this.second = second;
    }

    /**
     * {@return the comparison of two groups}
     *
     * @param first  rates of the one
     * @param second rates of the other
     * @throws IllegalArgumentException if a rate is negative or not finite
     */
    public static GroupComparison of(double[] first, double[] second) {
        return new GroupComparison(Logs.of(first, "first"), Logs.of(second, "second"));
    }

    /**
     * {@return the comparison of two groups}
     *
     * @param first  rates of the one
     * @param second rates of the other
     */
    public static GroupComparison of(List<InfiltrationRate> first, List<InfiltrationRate> second) {
        return of(Logs.rates(first), Logs.rates(second));
    }

    /**
     * {@return the ratio of the geometric means, second to first, with Welch's interval; absent for an empty group or a
     *     zero rate}
     *
     * @param level how often such an interval is right
     */
    public Optional<Ratio> ratio(double level) {
        if (!hasRatio()) {
            return Optional.empty();
        }
        MeanDifference welch = MeanDifference.of(second, first);
        return Optional.of(Ratio.of(welch.difference(), welch.interval(level)));
    }

    private boolean hasRatio() {
        return first.length > 0 && second.length > 0 && Logs.areFinite(first) && Logs.areFinite(second);
    }

    /**
     * {@return the typical ratio (Hodges–Lehmann), second to first, with its interval; absent for an empty group or a zero
     *     rate}
     *
     * @param level how often such an interval is right; the interval says the level reached
     */
    public Optional<Ratio> hodgesLehmannRatio(double level) {
        if (!hasRatio()) {
            return Optional.empty();
        }
        RankSum test = rankSum();
        return Optional.of(Ratio.of(test.shift().orElseThrow(), test.interval(level)));
    }

    /** {@return the rank-sum test of the logarithms, second against first} */
    public RankSum rankSum() {
        return RankSum.ofLogs(second, first);
    }

    /** {@return the two-sided p-value of Welch's t test of the logarithms, absent where {@link #pValue} is or a rate is zero} */
    public OptionalDouble welchPValue() {
        double p = hasRatio() ? MeanDifference.of(second, first).pValue() : Double.NaN;
        return Double.isNaN(p) || conclusion() == Conclusion.INSUFFICIENT_DATA
                ? OptionalDouble.empty()
                : OptionalDouble.of(p);
    }

    /** {@return the two-sided p-value of the Wilcoxon rank-sum test; absent if no outcome could reach 0.05 (3 and 3 values)} */
    public OptionalDouble pValue() {
        RankSum test = rankSum();
        return test.conclusion() == Conclusion.INSUFFICIENT_DATA
                ? OptionalDouble.empty()
                : OptionalDouble.of(test.pValue());
    }

    /** {@return the conclusion of the Wilcoxon rank-sum test at a two-sided significance level of 5 %} */
    public Conclusion conclusion() {
        return rankSum().conclusion();
    }

    /** {@return the test in words} */
    public String test() {
        return "Wilcoxon rank-sum test of the logarithms, " + first.length + " and " + second.length + " values";
    }

    /** {@return the conclusion as a sentence} */
    public String conclusionText() {
        return ConclusionText.of(
                conclusion(),
                "the second group",
                "the first",
                pValue(),
                "at least 4 and 4, or 3 and 5, values are needed for p < 0.05");
    }

    /** {@return the comparison as a small table} */
    @Override
    public String toString() {
        return TextTable.titled("second group / first group")
                .with("locations", first.length + ", " + second.length)
                .with("ratio of geometric means", ConclusionText.of(ratio(Interval.LEVEL)))
                .with("Hodges–Lehmann ratio", ConclusionText.of(hodgesLehmannRatio(Interval.LEVEL)))
                .with("test", test())
                .with("conclusion", conclusionText())
                .toString();
    }
}
