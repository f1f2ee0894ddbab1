// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import dev.infiltration.rate.RateOutcome;
import dev.infiltration.summary.Decision.AsStated;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What a judgement came to: the figure compared, where one was, and whether too few locations are all that leaves it open. */
record Verdict(
        AsStated asStated,
        @Nullable RateOutcome figure,
        List<String> doubts,
        List<String> says,
        boolean isOpenByNumber) {

    Verdict {
        doubts = List.copyOf(doubts);
        says = List.copyOf(says);
    }

    Verdict unconfirmedBy(List<String> reasons) {
        List<String> all = Stream.concat(reasons.stream(), doubts.stream()).toList();
        return new Verdict(asStated, figure, all, says, false);
    }

    static Verdict refused(Criterion criterion, String method) {
        String why = "refused: the limit belongs to " + criterion.method() + ", the rates to " + method;
        return new Verdict(AsStated.NO_FIGURE, null, List.of(why), List.of(), false);
    }
}
