// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
/**
 * Statistics: numbers in, numbers out; nothing here knows a rate, a location or a surface.
 *
 * <p>Intervals, rank tests, trend tests and fits, each with its formula, its source and its range. A result that the data do
 * not allow is absent, or not a number where the Javadoc states it. A wrong argument throws
 * {@link java.lang.IllegalArgumentException} with the argument's name.
 *
 * <pre>{@code
 * double[] years = {0, 1, 2, 3, 4, 5};
 * double[] logs = {7.8, 7.7, 7.4, 7.3, 7.1, 6.8};
 * LineFit.of(years, logs).slope();                    // -0.1943 a year
 * MannKendall.of(years, logs).conclusion();           // lower
 * }</pre>
 */
@NullMarked
package dev.infiltration.statistics;

import org.jspecify.annotations.NullMarked;
