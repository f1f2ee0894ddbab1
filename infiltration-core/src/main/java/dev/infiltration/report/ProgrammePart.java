// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.report.Block.Paragraph;
import dev.infiltration.report.Block.Section;
import dev.infiltration.report.Block.Table;
import dev.infiltration.review.Review;
import dev.infiltration.summary.SurfaceRate;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;

/** The programme in summary: surfaces by status, what is overdue, and each surface in one row. */
final class ProgrammePart {

    private final Review review;
    private final Programme programme;
    private final LocalDate asOf;

    ProgrammePart(Review review, Programme programme, LocalDate asOf) {
        this.review = review;
        this.programme = programme;
        this.asOf = asOf;
    }

    Section section() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Table.of("Surfaces by status", List.of("Surfaces", "Number", "Area"), counts()));
        blocks.add(Paragraph.of(share()));
        blocks.add(new Section("overdue", Phrase.of("Overdue"), List.of(overdue())));
        blocks.add(new Section("surfaces", Phrase.of("Every surface"), List.of(every())));
        return new Section("programme", Phrase.of("The programme"), blocks);
    }

    private boolean hasCriterion() {
        return !review.specification().criteria().isEmpty();
    }

    private List<List<Phrase>> counts() {
        List<List<Phrase>> rows = new ArrayList<>();
        rows.add(count("On record", surface -> true));
        rows.add(count("Inspected", SurfaceStatus::isInspected));
        rows.add(count("Tested", surface -> surface.lastTested().isPresent()));
        if (hasCriterion()) {
            rows.add(count("Meeting every criterion", SurfaceStatus::isMeeting));
            rows.add(count("Due for work", SurfaceStatus::isDue));
            rows.add(count("Overdue", surface -> surface.isOverdue(asOf)));
        }
        rows.add(count("Cleaned", SurfaceStatus::isCleaned));
        rows.add(count("Tested again after the last cleaning", SurfaceStatus::isRetested));
        return rows;
    }

    private List<Phrase> count(String name, Predicate<SurfaceStatus> which) {
        return List.of(
                Phrase.of(name),
                Phrase.of(String.valueOf(programme.surfaces(which).size())),
                Phrase.of(area(programme.area(which))));
    }

    private static String area(double squareMetres) {
        return String.format(Locale.ROOT, "%.0f m\u00B2", squareMetres);
    }

    private String share() {
        if (!hasCriterion()) {
            return "No criterion was given: this page does not state which surfaces meet one or are due for cleaning."
                    + " The user states a criterion: its limit, relation, method and source.";
        }
        double evaluated = programme.area(SurfaceStatus::isEvaluated);
        return evaluated > 0
                ? String.format(
                        Locale.ROOT,
                        "Weighted by area, %.0f %% of the evaluated surfaces meet every criterion (literal result): %s of %s."
                                + " Surfaces of unknown area are excluded.",
                        100 * programme.area(SurfaceStatus::isMeeting) / evaluated,
                        area(programme.area(SurfaceStatus::isMeeting)),
                        area(evaluated))
                : "No surface of known area was evaluated.";
    }

    private Block overdue() {
        List<Phrase> points = new ArrayList<>();
        for (SurfaceStatus surface : programme.surfaces()) {
            Phrase name = Phrase.written(surface.surface().id()).and(": ");
            if (surface.isOverdue(asOf)) {
                points.add(name.and(Phrase.written(surface.action().orElseThrow())));
            }
            if (surface.isTestOverdue(asOf)) {
                points.add(name.and("a test was due by " + surface.nextTest().orElseThrow()));
            }
            if (surface.isCleaned() && !surface.isRetested()) {
                points.add(name.and("cleaned and not tested since"));
            }
        }
        return points.isEmpty()
                ? Paragraph.of("Nothing is known to be overdue on " + asOf + ".")
                : new Block.Points(points);
    }

    private Table every() {
        List<List<Phrase>> rows = programme.surfaces().stream().map(this::row).toList();
        return Table.of(
                "Surfaces on " + asOf,
                List.of("Surface", "Site", "Kind", "Area", "Last tested", "Mean then", "Criteria", "Last cleaned"),
                rows);
    }

    private List<Phrase> row(SurfaceStatus surface) {
        Optional<SurfaceRate> last = surface.lastTested();
        return List.of(
                Phrase.written(surface.surface().id()),
                Phrase.written(surface.site().id()),
                surface.surface().type() == null
                        ? Phrase.NOT_RECORDED
                        : Phrase.of(surface.surface().type().word().replace('-', ' ')),
                Phrase.written(surface.surface().area()),
                last.map(row -> Phrase.of(SurfaceStatus.dateOf(row.visit()).toString()))
                        .orElse(Phrase.of("never")),
                last.map(row -> Phrase.of(RateWords.of(row.visit(), review.specification())
                                .text(row.mean())))
                        .orElse(Phrase.of("none")),
                decisions(surface),
                surface.isCleaned()
                        ? Phrase.of(
                                surface.lastCleaned().map(LocalDate::toString).orElse("day not recorded"))
                        : Phrase.of("no entry"));
    }

    private static Phrase decisions(SurfaceStatus surface) {
        List<Phrase> phrases = surface.decisions().stream()
                .map(decision -> Phrase.written(decision.criterion().relation().symbol() + "\u00A0"
                                + decision.criterion().limit())
                        .and(": " + DecisionPart.inShort(decision)))
                .toList();
        return phrases.isEmpty() ? Phrase.of("none given") : Phrase.joined(phrases, "; ");
    }
}
