// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.field.Visit;
import dev.infiltration.method.TestMethod;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;

/** {@code visit.location-count} and {@code visit.area-unrecorded}: whether a campaign tested enough locations of a surface. */
final class CountRules {

    private static final Set<Visit.Purpose> SILENT =
            EnumSet.of(Visit.Purpose.COMPLAINT, Visit.Purpose.RESEARCH, Visit.Purpose.TRAINING);

    private CountRules() {}

    private record Campaign(Object surface, Object name) {}

    static void judge(BookIndex index, Findings findings) {
        Map<Campaign, List<VisitAt>> campaigns = new LinkedHashMap<>();
        for (VisitAt visit : index.visits()) {
            if (!visit.isLaterDouble()) {
                campaigns
                        .computeIfAbsent(campaign(visit), key -> new ArrayList<>())
                        .add(visit);
            }
        }
        campaigns.values().forEach(visits -> judge(visits, findings));
    }

    /** A visit without surface or campaign, or for training, is counted alone. */
    private static Campaign campaign(VisitAt at) {
        String surface = SubjectText.given(at.visit().surface());
        String name = SubjectText.given(at.visit().campaign());
        boolean isTraining = at.visit().purpose() == Visit.Purpose.TRAINING;
        return surface == null || name == null || isTraining
                ? new Campaign(at.index(), at.index())
                : new Campaign(surface, name);
    }

    private static void judge(List<VisitAt> visits, Findings findings) {
        VisitAt last = last(visits);
        TestMethod method = last.methodOrNull();
        if (method == null
                || (last.visit().purpose() != null
                        && SILENT.contains(last.visit().purpose()))) {
            return;
        }
        Integer requested = last.visit().requestedLocations();
        OptionalLong asked = requested == null
                ? method.locationCount()
                        .of(last.surface().map(s -> s.surface().area()).orElse(null))
                : OptionalLong.of(requested);
        if (asked.isEmpty()) {
            last.surface()
                    .ifPresent(surface -> findings.add(
                            BuiltInRule.VISIT_AREA_UNRECORDED,
                            surface.place(),
                            "surface " + surface.surface().id(),
                            "",
                            "",
                            method.locationCount().basis()));
            return;
        }
        long tested = locations(visits);
        if (tested < asked.getAsLong()) {
            findings.add(
                    BuiltInRule.VISIT_LOCATION_COUNT,
                    last.place(),
                    last.subject(),
                    count(tested),
                    "at least " + count(asked.getAsLong()),
                    method.locationCount().basis());
        }
    }

    private static String count(long locations) {
        return locations + (locations == 1 ? " location" : " locations");
    }

    /** By date, then by position in the document; a visit without a date comes first. */
    private static VisitAt last(List<VisitAt> visits) {
        Comparator<VisitAt> byDate =
                Comparator.comparing(visit -> visit.visit().date(), Comparator.nullsFirst(Comparator.naturalOrder()));
        return visits.stream().max(byDate.thenComparingInt(VisitAt::index)).orElseThrow();
    }

    /** Distinct locations with a run that is not void or a discontinued prewetting. */
    private static long locations(List<VisitAt> visits) {
        Set<String> locations = new HashSet<>();
        for (VisitAt visit : visits) {
            for (TestAt test : visit.tests()) {
                String location = SubjectText.given(test.test().location());
                if (location != null && counts(test)) {
                    locations.add(location);
                }
            }
        }
        return locations.size();
    }

    private static boolean counts(TestAt test) {
        PouringAt preWet = test.preWetOrNull();
        return (preWet != null && preWet.pouring().isStopped())
                || test.runs().stream().anyMatch(run -> !run.pouring().isVoid());
    }
}
