// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import java.util.Arrays;

/** Figures of several rates in mm/h. */
final class Figures {

    private Figures() {}

    static double mean(double[] rates) {
        double sum = 0;
        for (double rate : rates) {
            sum += rate / rates.length;
        }
        return rates.length == 1 ? rates[0] : sum;
    }

    /** A zero makes it zero. */
    static double geometricMean(double[] rates) {
        double sum = 0;
        for (double rate : rates) {
            sum += StrictMath.log(rate);
        }
        return rates.length == 1 ? rates[0] : StrictMath.exp(sum / rates.length);
    }

    static double minimum(double[] rates) {
        return Arrays.stream(rates).min().orElseThrow();
    }
}
