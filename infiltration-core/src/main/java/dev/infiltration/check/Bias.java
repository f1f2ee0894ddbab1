// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

/**
 * What the matter of a finding does to the rate.
 *
 * <p>A pass that rests on {@link #RAISES} is no pass for acceptance; a fail that rests on {@link #LOWERS} is no fail.
 */
public enum Bias {
    /** The computed rate is too high, if it is off. */
    RAISES,
    /** The computed rate is too low, if it is off. */
    LOWERS,
    /** The computed rate may be off in either direction. */
    EITHER,
    /** The rate is not moved. */
    NONE
}
