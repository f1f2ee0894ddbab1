// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.review;

import dev.infiltration.check.PouringAt;
import dev.infiltration.check.TestAt;
import dev.infiltration.check.VisitAt;
import dev.infiltration.field.Event;
import dev.infiltration.field.Place;
import dev.infiltration.field.Pouring;
import dev.infiltration.field.UnreadableValue;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.rule.RuleId;
import dev.infiltration.summary.LocationRate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Finds the locations of a visit whose record is incomplete. */
final class OpenRecords {

    /** Rules that withhold a rate because the record is incomplete, not because of what was observed. */
    private static final Set<RuleId> INCOMPLETE = Set.of(
            RuleId.DATA_REQUIRED,
            RuleId.DATA_REFERENCE,
            RuleId.DATA_DUPLICATE,
            RuleId.DATA_UNREADABLE,
            RuleId.RING_UNUSABLE,
            RuleId.RUN_UNUSABLE);

    private final Review review;
    private final VisitAt visit;
    private final List<String> ofVisit;
    private final Map<String, List<TestAt>> tests = new LinkedHashMap<>();
    private final List<UnresolvedLocation> unresolved = new ArrayList<>();

    private OpenRecords(Review review, VisitAt visit) {
        this.review = review;
        this.visit = visit;
        this.ofVisit = ofVisit();
    }

    static List<UnresolvedLocation> of(Review review, VisitAt visit) {
        OpenRecords records = new OpenRecords(review, visit);
        records.add();
        return List.copyOf(records.unresolved);
    }

    private void add() {
        if (!ofVisit.isEmpty()) {
            unresolved.add(new UnresolvedLocation(null, ofVisit));
        }
        for (TestAt test : visit.tests()) {
            String location = test.test().location();
            if (location != null && !location.isEmpty()) {
                tests.computeIfAbsent(location, key -> new ArrayList<>()).add(test);
            } else if (isAttempted(test)) {
                unresolved.add(new UnresolvedLocation(
                        null, List.of("test " + (test.index() + 1) + " names no location that could be read")));
            }
        }
        tests.forEach(this::add);
    }

    private void add(String location, List<TestAt> made) {
        Set<String> reasons = new LinkedHashSet<>();
        for (TestAt test : made) {
            unreadable(test).forEach(value -> reasons.add(lost(value)));
            test.runs().forEach(run -> reasons.addAll(ofRun(run)));
        }
        if (made.stream().anyMatch(this::isAttempted)) {
            reasons.addAll(ofRow(location));
        }
        if (!reasons.isEmpty()) {
            unresolved.add(new UnresolvedLocation(location, List.copyOf(reasons)));
        }
    }

    private boolean isAttempted(TestAt test) {
        return test.test().isMade()
                || test.isLost()
                || test.unreadable().stream().anyMatch(UnreadableValue::isPartOfRate);
    }

    /** Values of the test that are part of a rate or decide which runs are used, and all values of its runs. */
    private Stream<UnreadableValue> unreadable(TestAt test) {
        Place runs = review.placeOf(test).member("runs");
        return test.unreadable().stream()
                .filter(value -> value.isPartOfRate() || value.decidesWhichRunsAreUsed() || value.isWithin(runs));
    }

    private List<String> ofRun(PouringAt at) {
        Pouring run = at.pouring();
        List<String> reasons = new ArrayList<>();
        if (run.isVoid() || at.isLost()) {
            return reasons;
        }
        String which = "run " + (at.test().runs().indexOf(at) + 1) + ": ";
        if (run.end() == null) {
            reasons.add(which + "its end is not recorded");
        }
        if (run.isStopped() && !isDepthRecorded(run)) {
            reasons.add(which + "stopped, the depth of water left is not recorded");
        }
        if (run.events().stream().map(Event::kind).anyMatch(kind -> kind == null)) {
            reasons.add(which + "an event has no kind");
        }
        at.outcome().reasons().stream()
                .filter(rule -> at.outcome() instanceof RateOutcome.Withheld
                        && RuleId.of(rule).filter(INCOMPLETE::contains).isPresent())
                .forEach(rule -> reasons.add(which + "no rate (" + rule + ")"));
        return reasons;
    }

    private static boolean isDepthRecorded(Pouring pouring) {
        return pouring.depthAtStop() != null && pouring.depthAtStop().isPositive();
    }

    private List<String> ofRow(String location) {
        LocationRate row = review.locations(visit).stream()
                .filter(each -> each.location().equals(location))
                .findFirst()
                .orElse(null);
        if (row == null || row.outcome().figure().isEmpty()) {
            return List.of("attempted, no result");
        }
        boolean isBounded = row.from() == LocationRate.Source.PREWETTING
                && row.counted().stream().map(PouringAt::pouring).noneMatch(OpenRecords::isDepthRecorded);
        List<String> reasons = new ArrayList<>();
        if (isBounded) {
            reasons.add("prewetting stopped, the depth of water left is not recorded");
        }
        if (hasSeveralRuns(location)) {
            review.unreadable().stream().filter(this::mayCutSeries).forEach(value -> reasons.add(lost(value)));
        }
        return reasons;
    }

    private boolean hasSeveralRuns(String location) {
        return review.runs().stream()
                        .map(run -> run.run().test())
                        .filter(test -> location.equals(test.test().location())
                                && isSame(
                                        visit.visit().surface(),
                                        test.visit().visit().surface())
                                && isSame(
                                        visit.visit().date(),
                                        test.visit().visit().date()))
                        .limit(2)
                        .count()
                > 1;
    }

    private static boolean isSame(@Nullable Object one, @Nullable Object other) {
        return one != null && one.equals(other);
    }

    /** A maintenance entry of this surface or of an unknown one, or the time zone of the site. */
    private boolean mayCutSeries(UnreadableValue value) {
        if (!value.decidesWhichRunsAreUsed()) {
            return false;
        }
        if (value.lost().startsWith("/maintenance")) {
            return review.maintenanceAt(value)
                    .map(entry -> entry.surface() == null
                            || entry.surface().equals(visit.visit().surface()))
                    .orElse(true);
        }
        return value.lost().endsWith("/timeZone");
    }

    /** What is unresolved for every location of the visit. */
    private List<String> ofVisit() {
        List<String> reasons = new ArrayList<>();
        if (visit.visit().surface() == null || visit.visit().surface().isEmpty()) {
            reasons.add("the visit names no surface that could be read");
        }
        if (visit.visit().date() == null) {
            reasons.add("the visit has no date that could be read");
        }
        Place tests = review.placeOf(visit).member("tests");
        visit.unreadable().stream()
                .filter(value -> value.isPartOfRate() || value.decidesWhichRunsAreUsed())
                .filter(value -> !value.isWithin(tests) || value.lost().equals(tests.toString()))
                .forEach(value -> reasons.add(lost(value)));
        if (visit.visit().method() == null) {
            review.unreadable().stream()
                    .filter(value -> value.decidesWhichRunsAreUsed() && isOfSurfaceType(value))
                    .forEach(value -> reasons.add(lost(value)));
        }
        return reasons;
    }

    private boolean isOfSurfaceType(UnreadableValue value) {
        return value.lost().endsWith("/type")
                && visit.surface()
                        .map(surface -> surface.surface().type() == null)
                        .orElse(true);
    }

    private static String lost(UnreadableValue value) {
        return value.lost() + " could not be read";
    }
}
