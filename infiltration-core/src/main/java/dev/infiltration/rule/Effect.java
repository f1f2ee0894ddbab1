// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rule;

/** The seriousness of a finding, the most serious first. */
public enum Effect {
    /** A rate cannot or must not be given. */
    NO_RATE,
    /** A requirement of the method was not met: the rate may be used only with the deviation stated. */
    DEVIATION,
    /** Something the method or the report needs was not recorded. */
    OMISSION,
    /** A note on something that may matter; no requirement was broken. */
    CAUTION
}
