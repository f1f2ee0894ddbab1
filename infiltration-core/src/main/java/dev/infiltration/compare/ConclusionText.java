// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.compare;

import dev.infiltration.statistics.Conclusion;
import dev.infiltration.statistics.Interval;
import dev.infiltration.statistics.TextTable;
import java.util.Optional;
import java.util.OptionalDouble;

/** Conclusions of tests as sentences. */
final class ConclusionText {

    private ConclusionText() {}

    static String of(Conclusion conclusion, String second, String first, OptionalDouble p, String needed) {
        String probability = p.isPresent() ? " (p = " + TextTable.number(p.getAsDouble()) + ")" : "";
        String twoSided = probability.replace(")", ", two-sided)");
        return switch (conclusion) {
            case HIGHER -> second + " is significantly higher than " + first + twoSided;
            case LOWER -> second + " is significantly lower than " + first + twoSided;
            case DIFFERENT -> "at least one group differs significantly from the others" + probability;
            case NOT_SIGNIFICANT ->
                "no significant difference" + probability + "; this does not show that they are equal";
            case INSUFFICIENT_DATA -> "insufficient data: " + needed;
        };
    }

    /** {@return an interval, or {@code not given}} */
    static String limits(Optional<Interval> interval) {
        return interval.map(Interval::toString).orElse("not given");
    }

    static String of(Optional<Ratio> ratio) {
        return ratio.map(Ratio::toString).orElse("not given");
    }
}
