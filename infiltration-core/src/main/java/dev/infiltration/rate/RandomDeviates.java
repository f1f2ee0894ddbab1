// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import java.util.SplittableRandom;

/**
 * Random numbers from a seed, the same on every Java platform.
 *
 * <p>The bits are those of {@link SplittableRandom} (SplitMix64: Steele, Lea and Flood 2014), of which
 * {@code nextLong} alone is used; all further arithmetic uses {@link StrictMath}.
 */
final class RandomDeviates {

    private static final double ULP = 0x1.0p-53;

    private final SplittableRandom bits;
    private double x;
    private double y;
    private boolean spare;

    RandomDeviates(long seed) {
        bits = new SplittableRandom(seed);
    }

    /** {@return a number from 0 (included) to 1 (not included)} */
    double unit() {
        return (bits.nextLong() >>> 11) * ULP;
    }

    /** {@return a number from −1 to 1} */
    double centred() {
        return 2 * unit() - 1;
    }

    /** {@return a standard Gaussian number}, by the polar method of Marsaglia; every second one is the other half of a pair */
    double normal() {
        spare = !spare;
        if (!spare) {
            return y;
        }
        double square = discPoint();
        double factor = StrictMath.sqrt(-2 * StrictMath.log(square) / square);
        y *= factor;
        return x * factor;
    }

    /** {@return a number of the t-distribution}, by the polar method of Bailey (1994), Math. Comp. 62, 779 */
    double student(double degreesOfFreedom) {
        spare = false;
        double square = discPoint();
        double power = StrictMath.pow(square, -2 / degreesOfFreedom);
        return x * StrictMath.sqrt(degreesOfFreedom * (power - 1) / square);
    }

    /** {@return the squared distance from the middle of a point of the unit disc}, which is drawn into x and y */
    private double discPoint() {
        double square;
        do {
            x = centred();
            y = centred();
            square = x * x + y * y;
        } while (square >= 1 || square == 0);
        return square;
    }
}
