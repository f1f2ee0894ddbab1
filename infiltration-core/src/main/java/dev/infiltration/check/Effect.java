// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

/** How much a finding weighs, the most serious first. */
public enum Effect {
    /** A rate cannot or must not be given. */
    NO_RATE,
    /** A requirement of the method was not met: the rate stands only with the deviation stated. */
    DEVIATION,
    /** Something the method or the report needs was not recorded. */
    OMISSION,
    /** Worth knowing; no requirement broken. */
    CAUTION
}
