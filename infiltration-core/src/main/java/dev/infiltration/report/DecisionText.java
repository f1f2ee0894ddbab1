// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.check.VisitAt;
import dev.infiltration.review.Review;
import dev.infiltration.review.UnresolvedLocation;
import dev.infiltration.review.VisitAction;
import dev.infiltration.review.VisitDecision;
import dev.infiltration.summary.Decision;
import dev.infiltration.summary.Decision.LiteralResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Decisions in lines of text: first as stated, then how sure that is. */
final class DecisionText {

    private static final String BESIDE = "    ";

    private final Review review;
    private final Map<VisitAt, List<VisitDecision>> decisions;
    private final Map<VisitAt, List<VisitAction>> actions;

    DecisionText(Review review) {
        this.review = review;
        this.decisions = review.decisions().stream().collect(Collectors.groupingBy(VisitDecision::visit));
        this.actions = review.actions().stream().collect(Collectors.groupingBy(VisitAction::visit));
    }

    List<String> lines(VisitAt visit) {
        RateWords words = RateWords.of(visit);
        List<String> lines = new ArrayList<>();
        lines.addAll(open(visit));
        decisions.getOrDefault(visit, List.of()).forEach(each -> lines.addAll(lines(each.decision(), words)));
        actions.getOrDefault(visit, List.of()).forEach(each -> lines.add("Action: " + each));
        return lines;
    }

    private List<String> open(VisitAt visit) {
        List<UnresolvedLocation> unresolved = review.unresolved(visit);
        List<String> lines = new ArrayList<>();
        if (!unresolved.isEmpty() && decisions.containsKey(visit)) {
            lines.add("Open: the record of this visit is incomplete; no decision on it is confirmed");
            unresolved.forEach(each -> lines.add(BESIDE + "Unresolved: " + each));
            lines.add(BESIDE + "What can be done: " + UnresolvedLocation.REMEDY);
        }
        return lines;
    }

    private static String locations(Decision decision) {
        return decision.locationsText().replaceFirst(" pass", " locations pass");
    }

    private static List<String> lines(Decision decision, RateWords words) {
        String head = decision.criterion().purpose().word().replace('-', ' ') + ", " + decision.criterion() + ": ";
        if (decision.literalResult() == LiteralResult.NOT_EVALUATED) {
            return List.of("Not decided: " + head + String.join("; ", decision.reasons()));
        }
        List<String> lines = new ArrayList<>();
        lines.add((decision.literalResult() == LiteralResult.MET ? "Met" : "Not met") + " as stated: " + head
                + decision.outcome()
                        .map(outcome -> words.text(outcome, decision.criterion()::text))
                        .orElse(locations(decision)
                                + decision.areaShare()
                                        .filter(share -> share.passing() > 0)
                                        .map(share -> ", " + share.area())
                                        .orElse(""))
                + (decision.isConfirmed() ? ", shown" : ", not shown"));
        decision.reasons().forEach(doubt -> lines.add(BESIDE + "Not sure: " + doubt));
        decision.notes().forEach(saying -> lines.add(BESIDE + "Know: " + saying));
        decision.additionalLocationCount()
                .ifPresent(more -> lines.add(BESIDE + "More locations: about " + more + " would decide it"
                        + decision.additionalLocationCountConservative().stream()
                                .mapToObj(careful -> ", " + careful + " to be careful")
                                .collect(Collectors.joining())));
        return lines;
    }
}
