// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

/**
 * A coverage interval, in the unit of what was measured.
 *
 * @param low  its lower end
 * @param high its upper end
 */
public record Interval(double low, double high) {

    /** {@return how wide it is} */
    public double width() {
        return high - low;
    }
}
