// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.check.VisitAt;
import dev.infiltration.field.Maintenance;
import dev.infiltration.field.Site;
import dev.infiltration.field.Surface;
import dev.infiltration.summary.ActionTable;
import dev.infiltration.summary.Decision;
import dev.infiltration.summary.SurfaceRate;
import dev.infiltration.units.FieldUnit;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Where a surface of the programme stands.
 *
 * @param site        its site
 * @param surface     the surface
 * @param visits      its visits with a date, earliest first
 * @param maintenance its maintenance
 * @param decisions   the decisions on it as it was found at the last visit with a figure
 * @param action      what the user's table of actions asks for after that visit
 * @param nextTest    the day by which to test next, where one can be given
 * @param open        what is incomplete in the record since the last visit with a result, a text each
 */
record SurfaceStatus(
        Site site,
        Surface surface,
        List<SurfaceRate> visits,
        List<Maintenance> maintenance,
        List<Decision> decisions,
        Optional<ActionTable.Choice> action,
        Optional<LocalDate> nextTest,
        List<String> open) {

    /** {@return whether the record is incomplete}, so that no result since the last complete visit is confirmed */
    boolean isOpen() {
        return !open.isEmpty();
    }

    boolean isInspected() {
        return !visits.isEmpty();
    }

    /** {@return the last visit with a rate or a bound} */
    Optional<SurfaceRate> lastTested() {
        return visits.stream().filter(row -> row.usedCount() > 0).reduce((earlier, later) -> later);
    }

    /** {@return whether every evaluated criterion is met, and the record is complete} */
    boolean isMeeting() {
        return !isOpen() && isEvaluated() && isLiterallyMet();
    }

    private boolean isLiterallyMet() {
        return evaluated().stream().allMatch(decision -> decision.literalResult() == Decision.LiteralResult.MET);
    }

    boolean isEvaluated() {
        return !evaluated().isEmpty();
    }

    private List<Decision> evaluated() {
        return decisions.stream()
                .filter(decision -> decision.literalResult() != Decision.LiteralResult.NOT_EVALUATED)
                .toList();
    }

    /** {@return whether work is due}: the table of actions names a day or a criterion is not met, and nothing was done since */
    boolean isDue() {
        return (dueDay().isPresent() || (isEvaluated() && !isLiterallyMet())) && !isWorkedOnSince();
    }

    boolean isOverdue(LocalDate asOf) {
        return isDue() && dueDay().filter(day -> day.isBefore(asOf)).isPresent();
    }

    /** {@return the day by which the table of actions asks for work} */
    Optional<LocalDate> dueDay() {
        return action.map(ActionTable.Choice::due);
    }

    boolean isTestOverdue(LocalDate asOf) {
        return nextTest.filter(day -> day.isBefore(asOf)).isPresent();
    }

    Optional<LocalDate> lastCleaned() {
        return maintenance.stream()
                .flatMap(entry -> HistoryPlots.day(entry).stream())
                .max(LocalDate::compareTo);
    }

    boolean isCleaned() {
        return !maintenance.isEmpty();
    }

    /** {@return whether it was tested on or after the day of its last cleaning} */
    boolean isRetested() {
        return lastCleaned()
                .flatMap(cleaned -> lastTested().map(row -> !dateOf(row.visit()).isBefore(cleaned)))
                .orElse(false);
    }

    private boolean isWorkedOnSince() {
        return isCleaned() && lastCleaned().isPresent() && !isRetested();
    }

    static LocalDate dateOf(VisitAt visit) {
        return Objects.requireNonNull(visit.visit().date());
    }

    /** {@return the area in square metres; 0 where it is not known} */
    double area() {
        double area = surface.area() == null ? 0 : surface.area().in(FieldUnit.SQUARE_METRE);
        return area > 0 && Double.isFinite(area) ? area : 0;
    }
}
