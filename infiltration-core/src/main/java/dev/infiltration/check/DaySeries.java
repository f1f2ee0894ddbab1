// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The series of a location and date, and for each visit its records, found in one pass. */
final class DaySeries {

    static final DaySeries NONE = new DaySeries(List.of());

    private final List<Series> series;
    private final Map<VisitAt, Last> lastRuns = new HashMap<>();
    private final Map<VisitAt, Last> lastCountingRuns = new HashMap<>();
    private final Map<VisitAt, List<PouringAt>> preWettings = new HashMap<>();

    /** The last run of a visit in a series, by how many runs and how many that are not void there are up to it. */
    private record Last(Series series, int runs, int countingRuns) {}

    DaySeries(List<Series> series) {
        this.series = series;
        series.forEach(this::add);
    }

    private void add(Series one) {
        Map<VisitAt, Last> inThis = new HashMap<>();
        int runs = 0;
        int counting = 0;
        for (PouringAt record : one.records()) {
            VisitAt visit = record.test().visit();
            if (record.isRun()) {
                runs++;
                counting += record.pouring().isVoid() ? 0 : 1;
                inThis.put(visit, new Last(one, runs, counting));
            } else {
                preWettings.computeIfAbsent(visit, key -> new ArrayList<>()).add(record);
            }
        }
        lastRuns.putAll(inThis);
        for (PouringAt run : one.countingRuns()) {
            VisitAt visit = run.test().visit();
            lastCountingRuns.put(visit, inThis.get(visit));
        }
    }

    List<Series> series() {
        return series;
    }

    /**
     * {@return the first runs of a visit's last series with a run of that visit that is not void, up to the visit's last run}; of
     * a series with void runs alone, those
     */
    List<PouringAt> runsOf(VisitAt visit, int most) {
        Last last = lastRun(visit);
        if (last == null) {
            return List.of();
        }
        return last.countingRuns() > 0
                ? last.series().countingRuns().subList(0, Math.min(most, last.countingRuns()))
                : last.series().runs().subList(0, last.runs());
    }

    private @Nullable Last lastRun(VisitAt visit) {
        return lastCountingRuns.getOrDefault(visit, lastRuns.get(visit));
    }

    /** {@return why the runs of a visit have no rate where all of {@link #runsOf} are void}; none where one is not void */
    List<String> reasonsOfVoidRuns(VisitAt visit) {
        Last last = lastRun(visit);
        return last == null || last.countingRuns() > 0
                ? List.of()
                : last.series().reasonsOfFirst(last.runs());
    }

    /** {@return the prewettings of a visit that are not void, in order} */
    List<PouringAt> preWettingsOf(VisitAt visit) {
        return preWettings.getOrDefault(visit, List.of());
    }
}
