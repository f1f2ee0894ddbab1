// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.check.Finding;
import dev.infiltration.rule.Bias;
import dev.infiltration.rule.Effect;

/** Findings in a line. */
final class FindingWords {

    private FindingWords() {}

    static String word(Effect effect) {
        return switch (effect) {
            case NO_RATE -> "No rate";
            case DEVIATION -> "Deviation";
            case OMISSION -> "Omission";
            case CAUTION -> "Caution";
        };
    }

    /** {@return the way a finding pushes the rate} */
    static String push(Bias bias) {
        return switch (bias) {
            case RAISES -> "makes the rate look higher";
            case LOWERS -> "makes the rate look lower";
            case EITHER -> "moves the rate either way";
            case NONE -> "does not move the rate";
        };
    }

    /** {@return a finding in a line}: what, its subject and what was found, and the way it pushes the rate */
    static Phrase line(Finding finding) {
        Phrase subject = Phrase.written(finding.subject()).and(": ").and(Phrase.written(finding.message()));
        return Phrase.strong(word(finding.effect()))
                .and(" (" + push(finding.bias()) + "), ")
                .and(subject)
                .and(". What can be done: " + finding.remedy() + ". Rule " + finding.rule() + "; " + finding.basis()
                        + ".");
    }
}
