// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
/**
 * Amounts as they were written in the field, their units, and computed rates.
 *
 * <p>Conversions are exact decimals, rounded once to a double; text is read by a closed table of units that no locale
 * changes. A reading holds any number. A programmer's mistake (null, a negative rate) throws with the argument's name.
 *
 * <pre>{@code
 * Reading<Length> diameter = Reading.of("11.95", FieldUnit.INCH);
 * double millimetres = diameter.in(FieldUnit.MILLIMETRE);                  // 303.53
 * FieldUnit.parse("lbs", Mass.class);                                      // Optional[[lb_av]]
 * InfiltrationRate rate = InfiltrationRate.of(100, FieldUnit.INCH_PER_HOUR);
 * rate.in(FieldUnit.MILLIMETRE_PER_HOUR);                                  // 2540.0
 * }</pre>
 */
@NullMarked
package dev.infiltration.units;

import org.jspecify.annotations.NullMarked;
