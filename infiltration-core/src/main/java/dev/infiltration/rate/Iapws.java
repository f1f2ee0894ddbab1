// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

/**
 * Formulas of the International Association for the Properties of Water and Steam, for liquid water near one atmosphere.
 *
 * <p>Coefficients as printed in SR6-08(2011) and R12-08 (seen in public code, not in the releases themselves; each checked
 * against the releases' own check values in {@code WaterTest}).
 */
final class Iapws {

    /** SR6-08: specific gas constant in J/(kg·K), reducing temperature and the two singular ones in K, pressure in Pa. */
    private static final double GAS_CONSTANT = 461.51805;

    private static final double REDUCING = 10;
    private static final double SINGULAR_ABOVE = 593;
    private static final double SINGULAR_BELOW = 232;
    private static final double PRESSURE = 0.1e6;

    /** SR6-08, volume: the constant a5, then a6 to a10 with exponents n, then b5 to b10 with exponents 1 to 6. */
    private static final double VOLUME = 1.93763157e-2;

    private static final double[] A = {6.74458446e3, -2.22521604e5, 1.00231247e8, -1.63552118e9, 8.32299658e9};
    private static final int[] N = {4, 5, 7, 8, 9};
    private static final double[] B = {
        5.78545292e-3, -1.53195665e-2, 3.11337859e-2, -4.23546241e-2, 3.38713507e-2, -1.19946761e-2
    };

    /** R12-08: reference temperature in K and density in kg/m³; viscosity in 1e-6 Pa·s. */
    private static final double CRITICAL_TEMPERATURE = 647.096;

    private static final double CRITICAL_DENSITY = 322;
    private static final double MICRO = 1e-6;

    /** R12-08, Table 1: H_i of the dilute gas. */
    private static final double[] DILUTE = {1.67752, 2.20462, 0.6366564, -0.241605};

    /** R12-08, Table 2: H_ij, a row for each i. */
    private static final double[][] DENSE = {
        {0.520094, 0.222531, -0.281378, 0.161913, -0.0325372, 0, 0},
        {0.0850895, 0.999115, -0.906851, 0.257399, 0, 0, 0},
        {-1.08374, 1.88797, -0.772479, 0, 0, 0, 0},
        {-0.289555, 1.26613, -0.489837, 0, 0.0698452, 0, -0.00435673},
        {0, 0, -0.257040, 0, 0, 0.00872102, 0},
        {0, 0.120573, 0, 0, 0, 0, -0.000593264},
    };

    private Iapws() {}

    /** {@return the density of liquid water at 0.1 MPa in kg/m³}, SR6-08 equation for the specific volume, 253.15 to 383.15 K */
    static double density(double kelvin) {
        double alpha = REDUCING / (SINGULAR_ABOVE - kelvin);
        double beta = REDUCING / (kelvin - SINGULAR_BELOW);
        double sum = VOLUME;
        for (int i = 0; i < A.length; i++) {
            sum += A[i] * StrictMath.pow(alpha, N[i]);
        }
        for (int i = 0; i < B.length; i++) {
            sum += B[i] * StrictMath.pow(beta, i + 1);
        }
        return PRESSURE / (GAS_CONSTANT * REDUCING * sum);
    }

    /** {@return the dynamic viscosity in Pa·s}, R12-08 without its critical enhancement, which is 1 in cold water */
    static double viscosity(double kelvin, double density) {
        double temperature = kelvin / CRITICAL_TEMPERATURE;
        double reduced = density / CRITICAL_DENSITY;
        double dilute = 100 * StrictMath.sqrt(temperature) / polynomial(DILUTE, 1 / temperature);
        double[] rows = new double[DENSE.length];
        for (int i = 0; i < rows.length; i++) {
            rows[i] = polynomial(DENSE[i], reduced - 1);
        }
        double dense = StrictMath.exp(reduced * polynomial(rows, 1 / temperature - 1));
        return dilute * dense * MICRO;
    }

    private static double polynomial(double[] coefficients, double x) {
        double sum = 0;
        for (int i = coefficients.length - 1; i >= 0; i--) {
            sum = sum * x + coefficients[i];
        }
        return sum;
    }
}
