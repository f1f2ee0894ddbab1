// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.check.SurfaceAt;
import dev.infiltration.check.VisitAt;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Maintenance;
import dev.infiltration.field.Site;
import dev.infiltration.field.Surface;
import dev.infiltration.review.Review;
import dev.infiltration.review.SurfaceHistory;
import dev.infiltration.review.VisitAction;
import dev.infiltration.review.VisitDecision;
import dev.infiltration.summary.Decision;
import dev.infiltration.summary.SurfaceRate;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Every surface on record and where it stands. */
final class Programme {

    private final Review review;
    private final IdentityHashMap<Surface, List<SurfaceRate>> visits = new IdentityHashMap<>();
    private final IdentityHashMap<Surface, SurfaceHistory> histories = new IdentityHashMap<>();
    private final Map<VisitAt, List<Decision>> decisions;
    private final Map<VisitAt, VisitAction> actions;
    private final List<SurfaceStatus> surfaces = new ArrayList<>();

    Programme(Review review) {
        this.review = review;
        this.decisions = review.decisions().stream()
                .collect(Collectors.groupingBy(
                        VisitDecision::visit, Collectors.mapping(VisitDecision::decision, Collectors.toList())));
        this.actions = review.actions().stream().collect(Collectors.toMap(VisitAction::visit, each -> each));
        review.histories().forEach(history -> histories.put(history.surface().surface(), history));
        review.surfaces().forEach(this::add);
        FieldBook book = review.book();
        book.sites().forEach(site -> site.surfaces().forEach(surface -> surfaces.add(standing(site, surface))));
    }

    private void add(SurfaceRate row) {
        Optional<Surface> surface = row.visit().surface().map(SurfaceAt::surface);
        if (surface.isPresent()
                && row.visit().visit().date() != null
                && !row.visit().isTraining()) {
            visits.computeIfAbsent(surface.get(), key -> new ArrayList<>()).add(row);
        }
    }

    private SurfaceStatus standing(Site site, Surface surface) {
        List<SurfaceRate> made = visits.getOrDefault(surface, List.of()).stream()
                .sorted(Comparator.comparing((SurfaceRate row) -> SurfaceStatus.dateOf(row.visit())))
                .toList();
        Optional<VisitAt> last = made.stream()
                .filter(row -> row.usedCount() > 0)
                .reduce((earlier, later) -> later)
                .map(SurfaceRate::visit);
        return new SurfaceStatus(
                site,
                surface,
                made,
                maintenance(surface),
                last.map(visit -> decisions.getOrDefault(visit, List.of())).orElse(List.of()),
                last.flatMap(visit -> Optional.ofNullable(actions.get(visit)).flatMap(VisitAction::choice)),
                nextTest(surface),
                open(surface, made, last));
    }

    /** What is incomplete at the last visit with a result and later, since the last cleaning; and visits without a date. */
    private List<String> open(Surface surface, List<SurfaceRate> made, Optional<VisitAt> last) {
        List<String> open = new ArrayList<>();
        LocalDate cleaned = maintenance(surface).stream()
                .flatMap(entry -> HistoryPlots.day(entry).stream())
                .max(LocalDate::compareTo)
                .orElse(LocalDate.MIN);
        made.stream()
                .map(SurfaceRate::visit)
                .filter(visit -> !SurfaceStatus.dateOf(visit).isBefore(cleaned))
                .filter(visit ->
                        last.isEmpty() || !SurfaceStatus.dateOf(visit).isBefore(SurfaceStatus.dateOf(last.get())))
                .forEach(visit -> review.unresolved(visit).forEach(each -> open.add(visit.subject() + ", " + each)));
        review.surfaces().stream()
                .map(SurfaceRate::visit)
                .filter(visit -> visit.visit().date() == null && !visit.isTraining())
                .filter(visit -> visit.surface()
                        .filter(at -> at.surface().equals(surface))
                        .isPresent())
                .forEach(visit -> open.add(visit.subject() + " has no date that could be read"));
        return open;
    }

    /** {@return the visits that name no surface on record, each in words} */
    List<String> lostVisits() {
        return review.surfaces().stream()
                .map(SurfaceRate::visit)
                .filter(visit -> visit.surface().isEmpty() && !visit.isTraining())
                .map(visit -> visit.subject()
                        + (visit.visit().date() == null
                                ? ""
                                : " of " + visit.visit().date()))
                .toList();
    }

    private List<Maintenance> maintenance(Surface surface) {
        return review.book().maintenance().stream()
                .filter(entry -> surface.id() != null && surface.id().equals(entry.surface()))
                .toList();
    }

    private Optional<LocalDate> nextTest(Surface surface) {
        return Optional.ofNullable(histories.get(surface)).stream()
                .flatMap(history -> review.specification().criteria().stream()
                        .flatMap(criterion -> history.reached(criterion).nextTest().stream()))
                .min(LocalDate::compareTo);
    }

    List<SurfaceStatus> surfaces() {
        return surfaces;
    }

    Optional<SurfaceHistory> history(SurfaceStatus standing) {
        return Optional.ofNullable(histories.get(standing.surface()));
    }

    List<SurfaceStatus> surfaces(Predicate<SurfaceStatus> which) {
        return surfaces.stream().filter(which).toList();
    }

    double area(Predicate<SurfaceStatus> which) {
        return surfaces(which).stream().mapToDouble(SurfaceStatus::area).sum();
    }
}
