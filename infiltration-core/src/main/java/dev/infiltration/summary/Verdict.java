// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import dev.infiltration.rate.RateOutcome;
import dev.infiltration.summary.Decision.LiteralResult;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What a judgement came to: the figure compared, where one was, and whether too few locations are all that leaves it open. */
record Verdict(
        LiteralResult literalResult,
        @Nullable RateOutcome figure,
        List<String> reasons,
        List<String> notes,
        boolean isOpenByNumber) {

    Verdict {
        reasons = List.copyOf(reasons);
        notes = List.copyOf(notes);
    }

    Verdict unconfirmedBy(List<String> reasons) {
        List<String> all = Stream.concat(reasons.stream(), reasons.stream()).toList();
        return new Verdict(literalResult, figure, all, notes, false);
    }

    static Verdict refused(Criterion criterion, String method) {
        String why = "refused: the limit belongs to " + criterion.method() + ", the rates to " + method;
        return new Verdict(LiteralResult.NOT_EVALUATED, null, List.of(why), List.of(), false);
    }
}
