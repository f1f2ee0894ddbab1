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

/** Decisions in lines of text: the literal result, whether it is confirmed, and the reasons where it is not. */
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
            return List.of("Not evaluated: " + head + String.join("; ", decision.reasons()));
        }
        List<String> lines = new ArrayList<>();
        lines.add((decision.literalResult() == LiteralResult.MET ? "Met" : "Not met")
                + (decision.isConfirmed() ? ", confirmed: " : ", not confirmed: ")
                + head
                + decision.comparedRate()
                        .map(outcome -> words.text(outcome, decision.criterion()::text))
                        .orElse(locations(decision)
                                + decision.areaShare()
                                        .filter(share -> share.passing() > 0)
                                        .map(share -> ", " + share.area())
                                        .orElse("")));
        decision.reasons().forEach(reason -> lines.add(BESIDE + "Not confirmed because: " + reason));
        decision.notes().forEach(note -> lines.add(BESIDE + "Note: " + note));
        decision.additionalLocationCount()
                .ifPresent(count -> lines.add(BESIDE + "Additional locations needed: " + additional(decision, count)));
        return lines;
    }

    /** {@return how many more locations are needed, from the variation observed and from its upper limit} */
    static String additional(Decision decision, long count) {
        return "about " + count
                + decision.additionalLocationCountConservative().stream()
                        .mapToObj(conservative ->
                                " (" + conservative + " if the variation is at its upper 80 % confidence limit)")
                        .collect(Collectors.joining());
    }
}
