// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.compare;

import dev.infiltration.statistics.Conclusion;
import dev.infiltration.statistics.Interval;
import dev.infiltration.statistics.TextTable;
import java.util.Optional;
import java.util.OptionalDouble;

/** Conclusions in sentences. */
final class ConclusionText {

    private ConclusionText() {}

    static String of(Conclusion conclusion, String second, String first, OptionalDouble p, String needed) {
        String probability = p.isPresent() ? " (p = " + TextTable.number(p.getAsDouble()) + ")" : "";
        return switch (conclusion) {
            case HIGHER -> second + " is shown to be higher than " + first + probability;
            case LOWER -> second + " is shown to be lower than " + first + probability;
            case DIFFERENT -> "they are shown to differ" + probability;
            case NOT_SIGNIFICANT -> "no difference shown" + probability + "; that they are equal is not shown either";
            case INSUFFICIENT_DATA -> "cannot tell: so few values could not show a difference, " + needed;
        };
    }

    /** {@return an interval, or that there is none} */
    static String limits(Optional<Interval> interval) {
        return interval.map(Interval::toString).orElse("not given");
    }

    static String of(Optional<Ratio> ratio) {
        return ratio.map(Ratio::toString).orElse("not given");
    }
}
