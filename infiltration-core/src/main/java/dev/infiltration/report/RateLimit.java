// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.units.InfiltrationRate;
import java.util.Objects;

/**
 * A limit to be marked in a plot.
 *
 * @param label what it is the limit of
 * @param rate  the limit
 */
public record RateLimit(String label, InfiltrationRate rate) {

    /** Checks that both parts are there. */
    public RateLimit {
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(rate, "rate");
    }
}
