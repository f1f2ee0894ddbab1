// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.report.Block.Fact;
import dev.infiltration.summary.Decision;
import dev.infiltration.units.FieldUnit;
import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Speed;

/** A decision on a surface at a visit: the literal result, whether it is confirmed, and the reasons where it is not. */
final class DecisionPart {

    private DecisionPart() {}

    static String literalResult(Decision decision) {
        return switch (decision.literalResult()) {
            case MET -> "met";
            case NOT_MET -> "not met";
            case NOT_EVALUATED -> "not evaluated";
        };
    }

    /** {@return the literal result, with a note where it is not confirmed} */
    static String inShort(Decision decision) {
        boolean isBare = decision.literalResult() == Decision.LiteralResult.NOT_EVALUATED || decision.isConfirmed();
        return literalResult(decision) + (isBare ? "" : ", not confirmed");
    }

    static Block of(Decision decision) {
        FieldUnit<Speed> unit = decision.criterion().limit().unit();
        List<Fact> facts = new ArrayList<>(List.of(
                new Fact("Criterion", Phrase.written(decision.criterion())),
                new Fact("Result", Phrase.strong(literalResult(decision))),
                new Fact("Confirmed", Phrase.of(decision.isConfirmed() ? "yes" : "no"))));
        decision.comparedRateText(unit).ifPresent(rate -> facts.add(new Fact("Compared rate", Phrase.of(rate))));
        facts.add(new Fact("Locations", Phrase.of(decision.locationsText())));
        decision.areaShare().ifPresent(share -> facts.add(new Fact("Area", Phrase.of(share.area()))));
        decision.reasons().forEach(reason -> facts.add(new Fact("Reason", Phrase.written(reason))));
        decision.notes().forEach(note -> facts.add(new Fact("Note", Phrase.written(note))));
        decision.additionalLocationCount()
                .ifPresent(count -> facts.add(
                        new Fact("Additional locations needed", Phrase.of(DecisionText.additional(decision, count)))));
        return new Block.Facts(facts);
    }
}
