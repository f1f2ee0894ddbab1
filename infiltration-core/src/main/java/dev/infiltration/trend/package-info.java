// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
/**
 * Loss of rate with time, and when a limit is reached.
 *
 * <p>Trends are taken on the log scale and start anew at each maintenance. What is drawn on beyond the last test is said;
 * where the data do not carry a date there is none, with the reasons. A programmer's mistake (numbers that should be pairs,
 * a negative rate) throws with the argument's name.
 *
 * <pre>{@code
 * double[] years = {0, 1.1, 2.0, 3.2, 4.1};
 * double[] rates = {2540, 2190, 1800, 1510, 1240};
 * LogTrend trend = LogTrend.of(years, rates);
 * trend.annualFactor(0.95);                           // Optional[0.8396, 0.8189 to 0.8608 (95 %)]
 * trend.crossing(254, 0.95);                         // the year at which a test will read 254
 * }</pre>
 */
@NullMarked
package dev.infiltration.trend;

import org.jspecify.annotations.NullMarked;
