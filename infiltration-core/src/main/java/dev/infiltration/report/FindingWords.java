// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.check.Finding;
import dev.infiltration.rule.Bias;
import dev.infiltration.rule.Effect;

/** Puts findings, their effects and their biases into words. */
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

    /** {@return the bias of a finding} */
    static String bias(Bias bias) {
        return switch (bias) {
            case RAISES -> "may bias the rate high";
            case LOWERS -> "may bias the rate low";
            case EITHER -> "may bias the rate in either direction";
            case NONE -> "does not affect the rate";
        };
    }

    /** {@return a finding in a line}: effect, bias, subject, message, remedy, rule and basis */
    static Phrase line(Finding finding) {
        Phrase subject = Phrase.written(finding.subject()).and(": ").and(Phrase.written(finding.message()));
        return Phrase.strong(word(finding.effect()))
                .and(" (" + bias(finding.bias()) + "), ")
                .and(subject)
                .and(". What can be done: " + finding.remedy() + ". Rule " + finding.rule() + "; " + finding.basis()
                        + ".");
    }
}
