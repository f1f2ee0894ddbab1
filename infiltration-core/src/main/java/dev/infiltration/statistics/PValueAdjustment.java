// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import java.util.Arrays;
import java.util.stream.IntStream;

/** P-values adjusted for several tests; the results keep the order of the arguments. */
public final class PValueAdjustment {

    private PValueAdjustment() {}

    /**
     * {@return p-values adjusted by Holm's step-down method (Scand. J. Statist. 6, 1979, 65–70): the probability of any false
     *     rejection among those at most α is at most α, whatever the dependence of the tests}
     *
     * @param pValues each 0 to 1; not a number where there is none: it stays so and does not count as a test
     */
    public static double[] holm(double... pValues) {
        int[] order = order(pValues);
        double[] adjusted = pValues.clone();
        double largest = 0;
        for (int step = 0; step < order.length; step++) {
            largest = Math.max(largest, Math.min(1, (order.length - step) * pValues[order[step]]));
            adjusted[order[step]] = largest;
        }
        return adjusted;
    }

    /**
     * {@return p-values adjusted by Benjamini and Hochberg (J. R. Statist. Soc. B 57, 1995, 289–300): among those at most α,
     *     the expected share of false rejections is at most α, for independent tests}
     *
     * @param pValues each 0 to 1; not a number where there is none: it stays so and does not count as a test
     */
    public static double[] benjaminiHochberg(double... pValues) {
        int[] order = order(pValues);
        double[] adjusted = pValues.clone();
        double smallest = 1;
        for (int step = order.length - 1; step >= 0; step--) {
            smallest = Math.min(smallest, (double) order.length / (step + 1) * pValues[order[step]]);
            adjusted[order[step]] = smallest;
        }
        return adjusted;
    }

    /** The indices of the p-values, smallest first, without those that are not a number. */
    private static int[] order(double... pValues) {
        if (!Arrays.stream(pValues).allMatch(p -> Double.isNaN(p) || (p >= 0 && p <= 1))) {
            throw new IllegalArgumentException("pValues: expected 0 to 1, got " + Arrays.toString(pValues));
        }
        return IntStream.range(0, pValues.length)
                .filter(i -> !Double.isNaN(pValues[i]))
                .boxed()
                .sorted((i, j) -> Double.compare(pValues[i], pValues[j]))
                .mapToInt(Integer::intValue)
                .toArray();
    }
}
