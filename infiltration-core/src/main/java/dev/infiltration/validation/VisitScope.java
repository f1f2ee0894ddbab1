// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.validation;

import dev.infiltration.check.Finding;
import dev.infiltration.field.ClockTime;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Pouring;
import dev.infiltration.field.Visit;
import dev.infiltration.field.Weather;
import dev.infiltration.method.ReportItem.Item;
import dev.infiltration.rule.RuleId;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The findings on a visit that do not depend on its book.
 *
 * @param visit the visit, in a book without other records
 */
record VisitScope(Visit visit) {

    /** Report items that are recorded elsewhere in the book. */
    private static final Set<String> ELSEWHERE =
            EnumSet.of(Item.SITE_DESCRIPTION, Item.PAVEMENT_DESCRIPTION, Item.AGE, Item.THICKNESS).stream()
                    .map(Item::word)
                    .collect(Collectors.toUnmodifiableSet());

    /** {@return the findings that no book of the visit could remove} */
    List<Finding> known(List<Finding> findings) {
        Set<RuleId> unknown = unknown();
        return findings.stream()
                .filter(finding -> !unknown.contains(finding.ruleId()))
                .flatMap(VisitScope::withoutElsewhere)
                .toList();
    }

    private Set<RuleId> unknown() {
        Set<RuleId> rules = new HashSet<>(Set.of(RuleId.DATA_REFERENCE));
        if (!isGiven(visit.method())) {
            rules.add(RuleId.REPORT_MISSING);
        }
        if (isGiven(visit.campaign()) || (!isGiven(visit.method()) && visit.requestedLocations() == null)) {
            rules.add(RuleId.VISIT_LOCATION_COUNT);
        }
        if (!visit.instruments().isEmpty()) {
            rules.add(RuleId.VISIT_RESOLUTION_UNSHOWN);
        }
        addClock(rules);
        return rules;
    }

    /** Without the time zone of the site an instant cannot be compared with a local time or a date. */
    private void addClock(Set<RuleId> rules) {
        List<ClockTime> times = times().toList();
        long instants = times.stream().filter(time -> time.offset() != null).count();
        if (instants > 0) {
            if (instants == times.size()) {
                rules.add(RuleId.DATA_CLOCK);
            } else {
                RuleId.all().stream().filter(RuleId::needsClock).forEach(rules::add);
            }
        }
    }

    private Stream<ClockTime> times() {
        Stream<ClockTime> starts =
                visit.tests().stream().flatMap(VisitScope::pourings).map(Pouring::start);
        return Stream.concat(weather(visit.weather()), starts).filter(time -> time != null);
    }

    private static Stream<Pouring> pourings(LocationTest test) {
        return Stream.concat(Stream.ofNullable(test.preWet()), test.runs().stream());
    }

    private static Stream<ClockTime> weather(@Nullable Weather weather) {
        return weather == null
                ? Stream.empty()
                : Stream.of(weather.lastRainEnd(), weather.noRainSince(), weather.rainFrom());
    }

    private static boolean isGiven(@Nullable String text) {
        return text != null && !text.isEmpty();
    }

    /** The finding unchanged, with fewer report items, or none. */
    private static Stream<Finding> withoutElsewhere(Finding finding) {
        if (!finding.ruleId().equals(RuleId.REPORT_MISSING)) {
            return Stream.of(finding);
        }
        String left = Arrays.stream(finding.observed().split(" "))
                .filter(item -> !ELSEWHERE.contains(item))
                .collect(Collectors.joining(" "));
        return left.isEmpty() ? Stream.empty() : Stream.of(finding.withObserved(left));
    }
}
