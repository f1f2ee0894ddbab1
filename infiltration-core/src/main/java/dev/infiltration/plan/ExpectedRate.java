// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import dev.infiltration.units.InfiltrationRate;
import java.util.List;

/**
 * What rate a surface is expected to have, from earlier visits or from others like it.
 *
 * <p>Rates across a pavement are skewed, often over more than one power of ten (memory), so the bounds matter as much as the
 * rate itself.
 *
 * @param lowest  the lowest rate to be ready for, above 0
 * @param likely  the likely rate
 * @param highest the highest rate to be ready for
 */
public record ExpectedRate(InfiltrationRate lowest, InfiltrationRate likely, InfiltrationRate highest) {

    /**
     * Checks the order.
     *
     * @throws IllegalArgumentException if they do not ascend from above 0
     */
    public ExpectedRate {
        boolean ascends = lowest.compareTo(likely) <= 0 && likely.compareTo(highest) <= 0;
        if (!(lowest.millimetresPerHour() > 0) || !ascends) {
            throw new IllegalArgumentException("lowest, likely, highest: expected to ascend from above 0, got " + lowest
                    + ", " + likely + ", " + highest);
        }
    }

    /**
     * {@return a rate expected without spread}
     *
     * @param rate the rate, above 0
     * @throws IllegalArgumentException if it is 0
     */
    public static ExpectedRate of(InfiltrationRate rate) {
        return new ExpectedRate(rate, rate, rate);
    }

    /** {@return all three, ascending} */
    List<InfiltrationRate> all() {
        return List.of(lowest, likely, highest);
    }
}
