// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import java.util.Optional;

/** Rows that the tables of several tests have in common. */
final class TestRows {

    private TestRows() {}

    /** {@return the table with its last rows; without a p-value where so few values cannot give a small one} */
    static TextTable ended(TextTable test, double p, Conclusion conclusion) {
        String probability = conclusion == Conclusion.INSUFFICIENT_DATA ? "none" : TextTable.number(p);
        return test.with("two-sided probability", probability).with("conclusion", conclusion);
    }

    /** {@return an interval, or that there is none} */
    static String limits(Optional<Interval> interval) {
        return interval.map(Interval::toString).orElse("not given");
    }
}
