// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * The test of change in a yes or no at the same places (McNemar 1947): only the places that changed count.
 *
 * <p>The exact probability is that of the sign test of the changes. The chi-squared forms are for comparison with tables.
 *
 * @param gained how many changed from no to yes
 * @param lost   how many changed from yes to no
 */
public record McNemar(int gained, int lost) {

    /**
     * Checks the counts.
     *
     * @throws IllegalArgumentException if one is negative
     */
    public McNemar {
        if (gained < 0 || lost < 0) {
            throw new IllegalArgumentException("gained, lost: expected counts, got " + gained + ", " + lost);
        }
    }

    /** {@return the two-sided probability, computed exactly} */
    public ExactProbability exact() {
        return changes().exact();
    }

    /** {@return the conclusion at a two-sided risk of 5 %: are more gained than lost} */
    public Conclusion conclusion() {
        return changes().conclusion();
    }

    private SignTest changes() {
        return new SignTest(gained, lost);
    }

    /**
     * {@return the chi-squared statistic with one degree of freedom, 0 where nothing changed}
     *
     * @param continuity whether one is taken off the difference of the counts
     */
    double chiSquared(Continuity continuity) {
        double distance = continuity.shrink((double) gained - lost, 2);
        return gained + lost == 0 ? 0 : distance * distance / ((double) gained + lost);
    }

    /**
     * {@return the probability of {@link #chiSquared}}
     *
     * @param continuity whether one is taken off the difference of the counts
     */
    double approximate(Continuity continuity) {
        return ChiSquaredDistribution.of(1).survivalProbability(chiSquared(continuity));
    }

    /** {@return the test as a small table} */
    @Override
    public String toString() {
        TextTable table =
                TextTable.titled("change in a yes or no").with("from no to yes, from yes to no", gained + ", " + lost);
        return TestRows.ended(table, exact().value(), conclusion()).toString();
    }
}
