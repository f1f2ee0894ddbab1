// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.check.TestAt;
import dev.infiltration.check.VisitAt;
import dev.infiltration.field.Location;
import dev.infiltration.field.Maintenance;
import dev.infiltration.report.Block.Fact;
import dev.infiltration.report.Block.Paragraph;
import dev.infiltration.report.Block.Section;
import dev.infiltration.review.Review;
import dev.infiltration.review.UnresolvedLocation;
import dev.infiltration.summary.Decision;
import dev.infiltration.summary.LocationRate;
import dev.infiltration.summary.SurfaceRate;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Work list for cleaning crews: surfaces with the earliest due date first, each with its slowest locations. */
final class WorkList {

    private final Review review;
    private final Programme programme;

    WorkList(Review review, Programme programme) {
        this.review = review;
        this.programme = programme;
    }

    Section section() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                Paragraph.of(
                        review.specification().criteria().isEmpty()
                                ? "No criterion was given, so nothing can be listed as due."
                                : "Based on the last visit with a rate or a bound. Where an entry says \u201Cnot confirmed\u201D, more tests could still change it. An incomplete record comes first: until it is complete, no surface under it is known to be in order."));
        programme.lostVisits().forEach(visit -> blocks.add(lost(visit, "work-" + blocks.size())));
        due().forEach(surface -> blocks.add(entry(surface, "work-" + blocks.size())));
        if (blocks.size() == 1 && !review.specification().criteria().isEmpty()) {
            blocks.add(Paragraph.of("Nothing is due, and no record is incomplete."));
        }
        blocks.add(Paragraph.of(
                "On site: mind traffic, hot surfaces, lifting and trips; follow the local rules for traffic control."
                        + " What is washed out must not reach a drain where local rules forbid it."));
        return new Section("work", Phrase.of("Work list for cleaning"), blocks);
    }

    private List<SurfaceStatus> due() {
        return programme.surfaces(surface -> surface.isOpen() || surface.isDue()).stream()
                .sorted(Comparator.comparing((SurfaceStatus surface) -> !surface.isOpen())
                        .thenComparing(surface -> surface.dueDay().orElse(LocalDate.MAX)))
                .toList();
    }

    /** A visit of an unknown surface may have found any surface due. */
    private static Section lost(String visit, String id) {
        List<Fact> facts = List.of(
                new Fact("Open", Phrase.written(visit + ": the surface is not known")),
                new Fact("To do", Phrase.of(UnresolvedLocation.REMEDY)));
        return new Section(id, Phrase.of("Visit of an unknown surface"), List.of(new Block.Facts(facts)));
    }

    private Section entry(SurfaceStatus surface, String id) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("Where", where(surface)));
        surface.open().forEach(text -> facts.add(new Fact("Open", Phrase.written(text))));
        facts.add(new Fact("To do", toDo(surface)));
        facts.add(new Fact("Area", Phrase.written(surface.surface().area())));
        surface.lastTested().map(SurfaceRate::visit).ifPresent(visit -> locations(visit, facts));
        facts.add(new Fact("Because", because(surface)));
        facts.add(new Fact("Cleaned before", cleaned(surface)));
        return new Section(
                id, Phrase.of("Surface ").and(Phrase.written(surface.surface().id())), List.of(new Block.Facts(facts)));
    }

    private static Phrase where(SurfaceStatus surface) {
        return Phrase.written(surface.site().name())
                .and(", ")
                .and(Phrase.written(surface.surface().description()));
    }

    private static Phrase toDo(SurfaceStatus surface) {
        Phrase open = Phrase.of(UnresolvedLocation.REMEDY);
        if (surface.isOpen()) {
            return surface.action()
                    .filter(action -> !action.isNone())
                    .map(action -> Phrase.written(action).and("; ").and(open))
                    .orElse(open);
        }
        return surface.action()
                .map(Phrase::written)
                .orElse(Phrase.of("clean, then test again: no table of actions names a day"));
    }

    private void locations(VisitAt visit, List<Fact> facts) {
        RateWords words = RateWords.of(visit, review.specification());
        List<Phrase> locations = review.locations(visit).stream()
                .filter(row -> row.outcome().figure().isPresent())
                .sorted(Comparator.comparing(row -> row.outcome().figure().orElseThrow()))
                .map(row -> located(row, words))
                .toList();
        facts.add(new Fact("Slowest first", Phrase.joined(locations, "; ")));
    }

    private Phrase located(LocationRate row, RateWords words) {
        Optional<Location> location = review.tests(row).stream().findFirst().flatMap(TestAt::location);
        String zone = location.map(Location::zone).map(name -> ", " + name).orElse("");
        String grid = location.filter(each -> each.x() != null && each.y() != null)
                .map(each -> ", at " + each.x() + " along and " + each.y() + " across")
                .orElse("");
        return Phrase.written(row.location() + zone).and(grid + ": " + words.text(row.outcome()));
    }

    /** What is not met; where all is met, what the table of actions went by. */
    private static Phrase because(SurfaceStatus surface) {
        List<Decision> all = surface.decisions();
        List<Decision> missed = all.stream()
                .filter(decision -> decision.literalResult() == Decision.LiteralResult.NOT_MET)
                .toList();
        return Phrase.joined(
                (missed.isEmpty() ? all : missed)
                        .stream()
                                .map(decision ->
                                        Phrase.written(decision.criterion()).and(": " + DecisionPart.inShort(decision)))
                                .toList(),
                "; ");
    }

    private static Phrase cleaned(SurfaceStatus surface) {
        List<Maintenance> entries = surface.maintenance();
        return entries.isEmpty()
                ? Phrase.of("no entry")
                : Phrase.written(entries.stream().map(WorkList::entry).collect(Collectors.joining("; ")));
    }

    private static String entry(Maintenance entry) {
        String day = HistoryPlots.day(entry).map(Object::toString).orElse("day not recorded");
        return day + (entry.technique() == null ? "" : ", " + entry.technique());
    }
}
