// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import dev.infiltration.rate.RateOutcome;
import dev.infiltration.summary.Decision.LiteralResult;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Result of evaluating a criterion: the rate compared with the limit, if one was, and if only too few locations prevent confirmation. */
record Verdict(
        LiteralResult literalResult,
        @Nullable RateOutcome comparedRate,
        List<String> reasons,
        List<String> notes,
        boolean lacksLocationsOnly) {

    Verdict {
        reasons = List.copyOf(reasons);
        notes = List.copyOf(notes);
    }

    Verdict unconfirmedBy(List<String> unresolved) {
        List<String> all = Stream.concat(reasons.stream(), unresolved.stream()).toList();
        return new Verdict(literalResult, comparedRate, all, notes, false);
    }

    static Verdict otherMethod(Criterion criterion, String method) {
        String why = "the limit applies to method " + criterion.method() + "; these rates were measured by " + method;
        return new Verdict(LiteralResult.NOT_EVALUATED, null, List.of(why), List.of(), false);
    }
}
