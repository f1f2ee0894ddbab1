// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.report.Block.Fact;
import dev.infiltration.report.Block.Paragraph;
import dev.infiltration.report.Block.Section;
import dev.infiltration.review.BeforeAfter;
import dev.infiltration.review.LimitReached;
import dev.infiltration.review.Review;
import dev.infiltration.review.SurfaceHistory;
import dev.infiltration.statistics.Interval;
import dev.infiltration.trend.LimitDate;
import java.util.ArrayList;
import java.util.List;

/** The history of a surface: its visits, rates before and after maintenance, dates at the limits, and its last visit. */
final class SurfacePart {

    private final Review review;
    private final SurfaceHistory history;
    private final PlotRegistry drawn;

    SurfacePart(Review review, SurfaceHistory history, PlotRegistry drawn) {
        this.review = review;
        this.history = history;
        this.drawn = drawn;
    }

    Section section(String id) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Paragraph.of(ReportText.count(history.visits().size(), "visit") + " with a rate or a bound."));
        blocks.addAll(drawn.of(new HistoryPlots(review, history).all()));
        history.beforeAfter().forEach(change -> blocks.add(change(change)));
        review.specification().criteria().forEach(criterion -> blocks.add(reached(history.reached(criterion))));
        blocks.addAll(drawn.of(lastVisit().all()));
        return new Section(
                id,
                Phrase.of("Surface ")
                        .and(Phrase.written(history.surface().surface().id())),
                blocks);
    }

    private VisitPlots lastVisit() {
        return new VisitPlots(
                review, history.visits().get(history.visits().size() - 1).visit());
    }

    private static Block change(BeforeAfter change) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(
                "Compared",
                Phrase.written(change.before().subject())
                        .and(" and ")
                        .and(Phrase.written(change.after().subject()))));
        facts.add(new Fact("Locations", Phrase.written(String.join(", ", change.locations()))));
        if (!change.locations().isEmpty()) {
            facts.add(new Fact("After / before", ratio(change)));
            facts.add(new Fact("Conclusion", Phrase.of(change.comparison().conclusionText())));
        }
        change.recovery()
                .ifPresent(recovery ->
                        facts.add(new Fact("Recovery of the lost rate", Phrase.of(HistoryWords.recovery(recovery)))));
        change.notes().forEach(note -> facts.add(new Fact("Note", Phrase.written(note))));
        return new Block.Facts(facts);
    }

    private static Phrase ratio(BeforeAfter change) {
        return change.comparison()
                .ratio(Interval.LEVEL)
                .map(ratio -> Phrase.of(ratio.toString()))
                .orElse(Phrase.of("none: a rate of zero has no ratio"));
    }

    private static Block reached(LimitReached reached) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("Limit", Phrase.written(reached.criterion())));
        facts.add(new Fact("Expected date at the limit", Phrase.written(when(reached.crossing()))));
        reached.crossing().notes().forEach(note -> facts.add(new Fact("Note", Phrase.written(note))));
        reached.nextTestText().ifPresent(words -> facts.add(new Fact("Next test", Phrase.of(words))));
        return new Block.Facts(facts);
    }

    private static String when(LimitDate crossing) {
        return crossing instanceof LimitDate.Expected expected ? HistoryWords.date(expected) : "no date can be given";
    }
}
