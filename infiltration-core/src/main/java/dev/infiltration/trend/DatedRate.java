// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.trend;

import dev.infiltration.rate.RateOutcome;
import dev.infiltration.units.InfiltrationRate;
import java.time.LocalDate;

/**
 * What a location or a surface came to on a day.
 *
 * @param date    the day
 * @param outcome the rate, a bound of it, or none
 * @param method  id of the method it was measured by; rates of different methods make no trend
 * @param where   what it stands for: a location, or all locations of a surface that the figure rests on, named in one way;
 *                rates of different locations make no trend
 */
public record DatedRate(LocalDate date, RateOutcome outcome, String method, String where) {

    /**
     * {@return a measured rate of the one method and place that are spoken of}
     *
     * @param date the day
     * @param rate the rate
     */
    public static DatedRate of(LocalDate date, InfiltrationRate rate) {
        return new DatedRate(date, new RateOutcome.Measured(rate), "", "");
    }

    /** {@return whether there is a plain rate above zero, which has a logarithm} */
    boolean hasLog() {
        return outcome.rate().filter(rate -> rate.millimetresPerHour() > 0).isPresent();
    }

    /** {@return whether there is a rate or a bound} */
    boolean hasFigure() {
        return outcome.figure().isPresent();
    }
}
