// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.compare;

import dev.infiltration.units.InfiltrationRate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Logarithms of rates: a rate of zero is minus infinity, lower than all others and equal to its like. */
final class Logs {

    private Logs() {}

    static double[] of(double[] rates, String name) {
        return Arrays.stream(rates).map(rate -> log(rate, name)).toArray();
    }

    private static double log(double rate, String name) {
        if (!(rate >= 0) || Double.isInfinite(rate)) {
            throw new IllegalArgumentException(name + ": expected finite rates of at least 0, got " + rate);
        }
        return StrictMath.log(rate);
    }

    /** {@return the logarithms of {@code over / under}, pair by pair: 0 for equal rates, infinite where one is zero} */
    static double[] ofRatios(double[] over, double[] under) {
        return IntStream.range(0, over.length)
                .mapToDouble(i -> over[i] == under[i] ? 0 : over[i] - under[i])
                .toArray();
    }

    static double[] rates(List<InfiltrationRate> rates) {
        return rates.stream().mapToDouble(InfiltrationRate::millimetresPerHour).toArray();
    }

    static boolean areFinite(double[] logs) {
        return Arrays.stream(logs).allMatch(Double::isFinite);
    }

    static void requirePairs(double[] first, double[] second, String names) {
        if (first.length != second.length) {
            throw new IllegalArgumentException(
                    names + ": expected pairs, got " + first.length + " and " + second.length);
        }
    }
}
