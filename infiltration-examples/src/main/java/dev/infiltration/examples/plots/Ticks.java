// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.plots;

import java.util.ArrayList;
import java.util.List;

/** Round numbers on a scale. */
final class Ticks {

    private static final double[] IN_A_DECADE = {1, 2, 5};
    private static final int MOST = 7;

    private Ticks() {}

    /** {@return 1, 2 and 5 of each power of ten, or the powers alone where those are many} */
    static List<Double> log(double low, double high) {
        List<Double> all = decades(low, high, IN_A_DECADE);
        return all.size() > MOST ? decades(low, high, new double[] {1}) : all;
    }

    private static List<Double> decades(double low, double high, double[] digits) {
        List<Double> ticks = new ArrayList<>();
        for (int power = exponent(low); power <= exponent(high); power++) {
            for (double digit : digits) {
                double tick = digit * StrictMath.pow(10, power);
                if (tick >= low && tick <= high) {
                    ticks.add(tick);
                }
            }
        }
        return ticks;
    }

    private static int exponent(double value) {
        return (int) Math.floor(StrictMath.log10(value));
    }

    static List<Double> even(double low, double high) {
        double rough = (high - low) / (MOST - 1);
        double decade = StrictMath.pow(10, exponent(rough));
        double step = rough <= 2 * decade ? 2 * decade : rough <= 5 * decade ? 5 * decade : 10 * decade;
        List<Double> ticks = new ArrayList<>();
        for (double at = Math.ceil(low / step); at * step <= high; at++) {
            ticks.add(at * step);
        }
        return ticks;
    }
}
