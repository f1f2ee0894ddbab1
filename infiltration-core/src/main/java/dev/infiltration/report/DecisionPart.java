// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.report.Block.Fact;
import dev.infiltration.summary.Decision;
import dev.infiltration.units.FieldUnit;
import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Speed;

/** A decision on a surface as it was found at a visit: as stated, and how sure. */
final class DecisionPart {

    private DecisionPart() {}

    static String literalResult(Decision decision) {
        return switch (decision.literalResult()) {
            case MET -> "met";
            case NOT_MET -> "not met";
            case NOT_EVALUATED -> "not evaluated";
        };
    }

    /** {@return the decision in two or three words} */
    static String inShort(Decision decision) {
        boolean isBare = decision.literalResult() == Decision.LiteralResult.NOT_EVALUATED || decision.isConfirmed();
        return literalResult(decision) + (isBare ? "" : ", not shown");
    }

    static Block of(Decision decision) {
        FieldUnit<Speed> unit = decision.criterion().limit().unit();
        List<Fact> facts = new ArrayList<>(List.of(
                new Fact("Criterion", Phrase.written(decision.criterion())),
                new Fact("As stated", Phrase.strong(literalResult(decision))),
                new Fact("How sure", Phrase.of(decision.isConfirmed() ? "shown" : "not shown"))));
        decision.figureText(unit).ifPresent(figure -> facts.add(new Fact("Figure", Phrase.of(figure))));
        facts.add(new Fact("Locations", Phrase.of(decision.locationsText())));
        decision.areaShare().ifPresent(share -> facts.add(new Fact("Area", Phrase.of(share.area()))));
        decision.reasons().forEach(doubt -> facts.add(new Fact("Because", Phrase.written(doubt))));
        decision.notes().forEach(says -> facts.add(new Fact("Know", Phrase.written(says))));
        decision.additionalLocationCount()
                .ifPresent(
                        more -> facts.add(new Fact("More locations", Phrase.of("about " + more + " would decide it"))));
        return new Block.Facts(facts);
    }
}
