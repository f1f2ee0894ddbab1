// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import dev.infiltration.summary.Decision.AsStated;
import dev.infiltration.units.InfiltrationRate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a judgement came to. */
record Verdict(
        AsStated asStated,
        @Nullable InfiltrationRate figure,
        boolean isMeasured,
        List<String> doubts,
        List<String> says) {

    Verdict {
        doubts = List.copyOf(doubts);
        says = List.copyOf(says);
    }

    static Verdict refused(Criterion criterion, String method) {
        String why = "refused: the limit belongs to " + criterion.method() + ", the rates to " + method;
        return new Verdict(AsStated.NO_FIGURE, null, false, List.of(why), List.of());
    }
}
