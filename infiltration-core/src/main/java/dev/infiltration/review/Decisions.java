// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.review;

import dev.infiltration.check.Finding;
import dev.infiltration.check.TestAt;
import dev.infiltration.check.VisitAt;
import dev.infiltration.field.Place;
import dev.infiltration.method.TestMethod;
import dev.infiltration.rule.Bias;
import dev.infiltration.rule.RuleId;
import dev.infiltration.summary.ActionTable;
import dev.infiltration.summary.Criterion;
import dev.infiltration.summary.Decision;
import dev.infiltration.summary.LocationRate;
import dev.infiltration.summary.SurfaceRate;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a specification says of the visits of a review. */
final class Decisions {

    private static final RuleId UNREADABLE = RuleId.DATA_UNREADABLE;

    private final Review review;
    private final Map<VisitAt, List<RunRate>> runs;
    private final Map<VisitAt, List<UnresolvedLocation>> unresolved = new HashMap<>();

    Decisions(Review review) {
        this.review = review;
        this.runs = review.runs().stream()
                .collect(Collectors.groupingBy(run -> run.run().test().visit()));
    }

    List<VisitDecision> all() {
        return judged().flatMap(visit -> review.specification().criteria().stream()
                        .map(criterion -> new VisitDecision(visit, of(visit, criterion))))
                .toList();
    }

    List<VisitAction> actions() {
        return judged().flatMap(visit -> action(visit).stream()).toList();
    }

    private Stream<VisitAt> judged() {
        return review.surfaces().stream()
                .filter(surface ->
                        surface.planned() > 0 || !unresolved(surface.visit()).isEmpty())
                .map(surface -> surface.visit())
                .filter(visit -> !visit.isTraining());
    }

    private Optional<VisitAction> action(VisitAt visit) {
        LocalDate date = visit.visit().date();
        Optional<ActionTable.Choice> choice = review.specification()
                .actions()
                .choose(date == null ? LocalDate.EPOCH : date, criterion -> of(visit, criterion));
        boolean isNothing = choice.map(ActionTable.Choice::isNone).orElse(true);
        List<UnresolvedLocation> open = isNothing ? openForNothing(visit) : unresolved(visit);
        return (isNothing && !open.isEmpty()) || date == null
                ? Optional.of(new VisitAction(visit, null, conditions(choice), open))
                : choice.map(given -> new VisitAction(visit, given, conditions(choice), open));
    }

    private static List<String> conditions(Optional<ActionTable.Choice> choice) {
        return choice.stream()
                .flatMap(given -> given.because().stream())
                .map(decision ->
                        decision.criterion() + ": " + decision.literalResult().word())
                .toList();
    }

    /** A visit of the surface without a date may be later than this one: nothing that this one says is repeated for it. */
    private List<UnresolvedLocation> openForNothing(VisitAt visit) {
        String surface = visit.visit().surface();
        List<UnresolvedLocation> open = new ArrayList<>(unresolved(visit));
        review.surfaces().stream()
                .map(SurfaceRate::visit)
                .filter(other -> other != visit && !other.isTraining())
                .filter(other -> other.visit().date() == null
                        && surface != null
                        && surface.equals(other.visit().surface()))
                .map(other -> new UnresolvedLocation(
                        null, List.of(other.subject() + " of this surface has no date that could be read")))
                .forEach(open::add);
        return open;
    }

    private List<UnresolvedLocation> unresolved(VisitAt visit) {
        return unresolved.computeIfAbsent(visit, review::unresolved);
    }

    Decision of(VisitAt visit, Criterion criterion) {
        return Decision.of(criterion, review.summary(visit), methodFor(criterion, visit), biases(visit))
                .withUnresolved(unresolved(visit).stream()
                        .map(UnresolvedLocation::toString)
                        .toList());
    }

    /** The criterion's own name of the method where the visit's goes by it. */
    private static String methodFor(Criterion criterion, VisitAt visit) {
        Optional<TestMethod> method = visit.method();
        return method.filter(known -> known.isNamed(criterion.method())).isPresent()
                ? criterion.method()
                : method.map(TestMethod::id).orElse("an unknown method");
    }

    /** What the findings do that bear on the tests whose rates and bounds count. */
    private Set<Bias> biases(VisitAt visit) {
        Set<String> counting = review.locations(visit).stream()
                .filter(location -> location.outcome().figure().isPresent())
                .map(LocationRate::location)
                .collect(Collectors.toSet());
        Set<Bias> biases = EnumSet.noneOf(Bias.class);
        bearing(visit, counting).flatMap(Decisions::biases).forEach(biases::add);
        return biases;
    }

    /** A value that could not be read may have led to a finding of either bias. */
    private static Stream<Bias> biases(Finding finding) {
        return UNREADABLE.is(finding.rule()) && finding.bias() == Bias.EITHER
                ? Stream.of(Bias.RAISES, Bias.LOWERS)
                : Stream.of(finding.bias());
    }

    private Stream<Finding> bearing(VisitAt visit, Set<String> counting) {
        return Stream.concat(
                runs.getOrDefault(visit, List.of()).stream()
                        .filter(run -> run.outcome().figure().isPresent())
                        .flatMap(run -> review.findings(run).stream()),
                visit.tests().stream()
                        .filter(test -> test.runs().isEmpty()
                                && counting.contains(test.test().location()))
                        .flatMap(this::within));
    }

    /** Findings on a test itself: a discontinued prewetting bounds its location without any run. */
    private Stream<Finding> within(TestAt test) {
        Place place = review.placeOf(test);
        return review.findings(test).stream().filter(finding -> finding.where().isWithin(place));
    }
}
