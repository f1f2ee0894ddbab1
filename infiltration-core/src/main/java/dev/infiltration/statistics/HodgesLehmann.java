// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The shift that goes with a test by ranks (Hodges and Lehmann 1963): the median of all differences that the test counts,
 * with an interval between two of them counted from either end.
 *
 * <p>The count is the largest whose probability, were there no ties, does not exceed half the risk; the interval says the
 * level it reaches. It is absent where even the outermost differences do not reach the level asked for.
 */
final class HodgesLehmann {

    private final double[] sorted;

    private HodgesLehmann(double[] sorted) {
        this.sorted = sorted;
    }

    static HodgesLehmann of(double[] differences) {
        double[] sorted = differences.clone();
        Arrays.sort(sorted);
        return new HodgesLehmann(sorted);
    }

    /** {@return the median of the differences, absent if there is none or a zero rate makes it endless} */
    OptionalDouble estimate() {
        if (!isFinite()) {
            return OptionalDouble.empty();
        }
        int upper = sorted.length / 2;
        int lower = (sorted.length - 1) / 2;
        return OptionalDouble.of(lower == upper ? sorted[upper] : (sorted[lower] + sorted[upper]) / 2);
    }

    /** {@return the interval by exact counts of the sums of ranks} */
    Optional<Interval> interval(RankDistribution withoutTies, double level) {
        int count = withoutTies.lowSums(level);
        return count == 0
                ? Optional.empty()
                : between(count, withoutTies.probabilityOfLowest(count).level());
    }

    /** {@return the interval by a normal approximation, for more values than are computed exactly} */
    Optional<Interval> interval(double mean, double sd, double level) {
        int count = (int) Math.floor(mean + Quantile.normal((1 - level) / 2) * sd + 0.5);
        return count < 1 ? Optional.empty() : between(count, level);
    }

    private Optional<Interval> between(int count, double level) {
        return isFinite()
                ? Optional.of(new Interval(sorted[count - 1], sorted[sorted.length - count], level))
                : Optional.empty();
    }

    private boolean isFinite() {
        return sorted.length > 0 && Double.isFinite(sorted[0]) && Double.isFinite(sorted[sorted.length - 1]);
    }
}
