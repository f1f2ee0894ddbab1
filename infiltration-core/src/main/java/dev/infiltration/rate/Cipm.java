// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

/**
 * The density of water that the metrologists recommend: pure, air-free, at 101 325 Pa, 0 to 40 °C.
 *
 * <p>Tanaka, Girard, Davis, Peuto and Bignell 2001, Metrologia 38, 301; recommended by the CIPM. Coefficients seen in public
 * code, not in the paper itself; checked against every degree of its table in {@code WaterTest}.
 */
final class Cipm {

    /** Where the formula ends, in °C. */
    static final double WARMEST = 40;

    private static final double A1 = -3.983035;
    private static final double A2 = 301.797;
    private static final double A3 = 522528.9;
    private static final double A4 = 69.34881;
    private static final double A5 = 999.974950;

    private Cipm() {}

    /** {@return the density in kg/m³} */
    static double density(double celsius) {
        double from = celsius + A1;
        return A5 * (1 - from * from * (celsius + A2) / (A3 * (celsius + A4)));
    }
}
