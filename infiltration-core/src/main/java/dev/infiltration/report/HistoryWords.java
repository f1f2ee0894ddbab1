// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.compare.Recovery;
import dev.infiltration.statistics.Interval;
import dev.infiltration.statistics.TextTable;
import dev.infiltration.trend.LimitDate;
import java.time.LocalDate;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Results of a surface's history in words, the same in text and on pages. */
final class HistoryWords {

    private HistoryWords() {}

    /** {@return the recovery in percent, with its confidence interval or the reason for none} */
    static String recovery(Recovery recovery) {
        return percent(recovery.share()) + " %"
                + recovery.interval(Interval.LEVEL)
                        .map(HistoryWords::limits)
                        .orElse(" (too few locations for a confidence interval)");
    }

    private static String limits(Interval interval) {
        String level = " (" + TextTable.number(100 * interval.level()) + " % confidence interval ";
        return Double.isFinite(interval.low()) && Double.isFinite(interval.high())
                ? level + percent(interval.low()) + " to " + percent(interval.high()) + " %)"
                : level + "not bounded)";
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f", 100 * share);
    }

    /** {@return the expected date at a limit, with its prediction limits} */
    static String date(LimitDate.Expected given) {
        return given.expected() + " (" + TextTable.number(100 * given.level()) + " % prediction limits "
                + orOpen(given.earliest()) + " to " + orOpen(given.latest()) + ")";
    }

    private static String orOpen(@Nullable LocalDate day) {
        return day == null ? "not bounded" : day.toString();
    }
}
