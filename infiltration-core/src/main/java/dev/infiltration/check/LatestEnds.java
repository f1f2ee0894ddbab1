// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The latest ends met so far at a location, of two different tests, so that a prewetting can be compared with other tests' alone. */
final class LatestEnds {

    private @Nullable PouringAt last;
    private @Nullable PouringAt lastOfAnother;

    /** Prewetting and runs that take part: a void prewetting does not. */
    static List<PouringAt> records(TestAt test) {
        return test.countingPreWet() == null ? test.runs() : test.pourings();
    }

    boolean isBeforeAnEnd(PouringAt record) {
        PouringAt before = isOwn(record) ? lastOfAnother : last;
        return before != null && isSurelyBeforeEnd(record, before);
    }

    /** A prewetting comes before its own test's runs, whatever the clock says. */
    private boolean isOwn(PouringAt record) {
        return !record.isRun() && last != null && last.test() == record.test();
    }

    void add(PouringAt record) {
        if (last == null || endsLater(record, last)) {
            if (last != null && last.test() != record.test()) {
                lastOfAnother = last;
            }
            last = record;
        } else if (last.test() != record.test() && (lastOfAnother == null || endsLater(record, lastOfAnother))) {
            lastOfAnother = record;
        }
    }

    private static boolean endsLater(PouringAt record, PouringAt other) {
        TimeRange start = record.start();
        TimeRange otherStart = other.start();
        return start != null
                && otherStart != null
                && start.leastAfter(otherStart)
                                .add(spreadOf(otherStart))
                                .add(length(record))
                                .compareTo(length(other))
                        > 0;
    }

    private static BigDecimal spreadOf(TimeRange span) {
        return span.mostAfter(span);
    }

    private static BigDecimal length(PouringAt record) {
        BigDecimal elapsed = record.elapsed();
        return elapsed == null ? BigDecimal.ZERO : elapsed;
    }

    /** Even read most kindly, {@code later} started before {@code earlier} had ended (or started, where no time is known). */
    static boolean isSurelyBeforeEnd(PouringAt later, PouringAt earlier) {
        TimeRange start = later.start();
        TimeRange before = earlier.start();
        return start != null && before != null && start.mostAfter(before).compareTo(length(earlier)) < 0;
    }
}
