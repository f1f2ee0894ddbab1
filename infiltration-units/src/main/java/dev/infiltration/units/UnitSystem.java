// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.units;

/**
 * The system that a unit belongs to.
 *
 * <p>A reading is checked by the limits of the system in which it is written: the limits of the two systems are not conversions of
 * each other (ASTM C1701/C1701M and C1781/C1781M, scope 1.2).
 */
public enum UnitSystem {
    /** Metre, kilogram, degree Celsius and their decimal relatives. */
    SI,
    /** Inch, pound, degree Fahrenheit and their relatives. */
    INCH_POUND,
    /** Units that both systems use: seconds, minutes, hours, days, per cent, one. */
    NEITHER
}
