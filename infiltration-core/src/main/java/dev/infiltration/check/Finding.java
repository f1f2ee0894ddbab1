// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.field.Place;
import dev.infiltration.method.Basis;

/**
 * Something that was not followed, not recorded, or is worth knowing.
 *
 * <p>Callers branch on {@code rule} and {@code effect}; texts may be reworded.
 *
 * @param rule     the stable id of the rule
 * @param effect   how much it weighs
 * @param bias     what it does to the rate
 * @param where    the place, printed as a JSON Pointer
 * @param subject  the ids in words: {@code V1, A1, run 2}
 * @param observed what was found, with units
 * @param allowed  what is allowed, with units; empty where nothing can be named
 * @param message  the finding in a sentence
 * @param remedy   what can still be done, in the field where possible
 * @param basis    the standard and clause, or common practice, and how far the value is trusted
 */
public record Finding(
        String rule,
        Effect effect,
        Bias bias,
        Place where,
        String subject,
        String observed,
        String allowed,
        String message,
        String remedy,
        Basis basis) {

    /**
     * {@return this finding with another effect}
     *
     * @param effect the effect
     */
    public Finding withEffect(Effect effect) {
        return new Finding(rule, effect, bias, where, subject, observed, allowed, message, remedy, basis);
    }

    /**
     * {@return this finding at another place}
     *
     * @param where the place
     */
    public Finding withWhere(Place where) {
        return new Finding(rule, effect, bias, where, subject, observed, allowed, message, remedy, basis);
    }

    /** {@return this finding with another remedy} */
    Finding withRemedy(String other) {
        return new Finding(rule, effect, bias, where, subject, observed, allowed, message, other, basis);
    }

    /** {@return the finding in a line for people} */
    @Override
    public String toString() {
        return rule + " " + where + " (" + subject + "): " + message;
    }
}
