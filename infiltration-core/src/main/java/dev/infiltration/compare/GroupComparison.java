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

    /** {@return Welch's probability for the logarithms, absent where {@link #p} is or a rate is zero} */
    public OptionalDouble welchP() {
        double p = hasRatio() ? MeanDifference.of(second, first).p() : Double.NaN;
        return Double.isNaN(p) || conclusion() == Conclusion.INSUFFICIENT_DATA
                ? OptionalDouble.empty()
                : OptionalDouble.of(p);
    }

    /** {@return the two-sided probability of the rank sum, absent where it could not reach 0.05 (3 against 3)} */
    public OptionalDouble p() {
        RankSum test = rankSum();
        return test.conclusion() == Conclusion.INSUFFICIENT_DATA ? OptionalDouble.empty() : OptionalDouble.of(test.p());
    }

    /** {@return what the rank sum allows one to say} */
    public Conclusion conclusion() {
        return rankSum().conclusion();
    }

    /** {@return what was tested, in words} */
    public String tested() {
        return "whether a rate of the second group is as often above one of the first as below it (rank sum, "
                + first.length + " against " + second.length + ")";
    }

    /** {@return what can be concluded, in words} */
    public String concluded() {
        return ConclusionText.of(
                conclusion(), "the second group", "the first", p(), "4 against 4 or 3 against 5 could");
    }

    /** {@return the comparison as a small table} */
    @Override
    public String toString() {
        return TextTable.titled("second group / first group")
                .with("locations", first.length + ", " + second.length)
                .with("ratio of geometric means", ConclusionText.of(ratio(Interval.LEVEL)))
                .with("typical ratio", ConclusionText.of(hodgesLehmannRatio(Interval.LEVEL)))
                .with("tested", tested())
                .with("conclusion", concluded())
                .toString();
    }
}
