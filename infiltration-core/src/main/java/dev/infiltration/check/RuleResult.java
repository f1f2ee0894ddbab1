// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import java.util.Objects;

/**
 * What a rule of a user's own has to say of a record.
 *
 * @param observed what was found, with units
 * @param allowed  what is allowed, with units; empty where nothing can be named
 * @param message  the matter in a sentence
 * @param remedy   what can still be done
 */
public record RuleResult(String observed, String allowed, String message, String remedy) {

    /** Checks that all texts are there. */
    public RuleResult {
        Objects.requireNonNull(observed, "observed");
        Objects.requireNonNull(allowed, "allowed");
        Objects.requireNonNull(message, "message");
        Objects.requireNonNull(remedy, "remedy");
    }

    /**
     * {@return a remark in one sentence}
     *
     * @param message the matter
     */
    public static RuleResult of(String message) {
        return new RuleResult("", "", message, "");
    }
}
