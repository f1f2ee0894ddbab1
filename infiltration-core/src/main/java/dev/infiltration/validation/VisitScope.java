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

    /** Rules that compare times or depend on the order of runs. */
    private static final Set<String> CLOCK = Set.of(
            "data.clock",
            "prewet.absent",
            "prewet.standing",
            "report.missing",
            "visit.rain",
            "visit.rain-unshown",
            "visit.rain-during",
            "run.start-delay",
            "run.start-delay-unshown",
            "run.repeat-delay",
            "run.repeat-delay-unshown",
            "run.mass",
            "run.too-many");

    /** {@return the findings that no book of the visit could remove} */
    List<Finding> known(List<Finding> findings) {
        Set<String> unknown = unknown();
        return findings.stream()
                .filter(finding -> !unknown.contains(finding.rule()))
                .flatMap(VisitScope::withoutElsewhere)
                .toList();
    }

    private Set<String> unknown() {
        Set<String> rules = new HashSet<>(Set.of("data.reference"));
        if (!isGiven(visit.method())) {
            rules.add("report.missing");
        }
        if (isGiven(visit.campaign()) || (!isGiven(visit.method()) && visit.requestedLocations() == null)) {
            rules.add("visit.location-count");
        }
        if (!visit.instruments().isEmpty()) {
            rules.add("visit.resolution-unshown");
        }
        addClock(rules);
        return rules;
    }

    /** Without the time zone of the site an instant cannot be compared with a local time or a date. */
    private void addClock(Set<String> rules) {
        List<ClockTime> times = times().toList();
        long instants = times.stream().filter(time -> time.offset() != null).count();
        if (instants > 0) {
            rules.addAll(instants == times.size() ? Set.of("data.clock") : CLOCK);
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
        if (!finding.rule().equals("report.missing")) {
            return Stream.of(finding);
        }
        String left = Arrays.stream(finding.observed().split(" "))
                .filter(item -> !ELSEWHERE.contains(item))
                .collect(Collectors.joining(" "));
        return left.isEmpty() ? Stream.empty() : Stream.of(observing(finding, left));
    }

    private static Finding observing(Finding finding, String observed) {
        return new Finding(
                finding.rule(),
                finding.effect(),
                finding.bias(),
                finding.where(),
                finding.subject(),
                observed,
                finding.allowed(),
                finding.message().replace(finding.observed(), observed),
                finding.remedy(),
                finding.basis());
    }
}
