// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The runs made at one location on one date with nothing done to the surface between them, and their prewettings, in order.
 *
 * <p>Runs stand in order of start; one without a start follows the one before it in the document. A prewetting that is not
 * void stands just before its test's first run, or without a run at its own start.
 */
public final class Series {

    private final List<PouringAt> records;
    private final List<PouringAt> runs;
    private final List<PouringAt> countingRuns;
    /** By number of runs less one; computed at the first call, as the visits of a day share the runs before them. */
    private @Nullable List<List<String>> reasonsOfFirst;

    private Series(List<PouringAt> records) {
        this.records = records;
        this.runs = records.stream().filter(PouringAt::isRun).toList();
        this.countingRuns = runs.stream().filter(run -> !run.pouring().isVoid()).toList();
        Before before = Before.NOTHING;
        for (PouringAt record : records) {
            record.stand(before);
            before = before.and(record);
        }
    }

    /**
     * What stands before a record in its series.
     *
     * @param run          the run before it, void or not; null for the first
     * @param countingRun  the last run before it that is not void
     * @param countingRuns how many such runs stand before it
     * @param preWet       the last prewetting before it that is not void
     * @param counting     the last record before it that is not void
     */
    record Before(
            @Nullable PouringAt run,
            @Nullable PouringAt countingRun,
            int countingRuns,
            @Nullable PouringAt preWet,
            @Nullable PouringAt counting) {

        static final Before NOTHING = new Before(null, null, 0, null, null);

        private Before and(PouringAt record) {
            if (!record.isRun()) {
                return new Before(run, countingRun, countingRuns, record, record);
            }
            return record.pouring().isVoid()
                    ? new Before(record, countingRun, countingRuns, preWet, counting)
                    : new Before(record, record, countingRuns + 1, preWet, record);
        }
    }

    /** {@return prewettings that are not void, and all runs, in order} */
    public List<PouringAt> records() {
        return records;
    }

    /** {@return the runs, void or not, in order} */
    public List<PouringAt> runs() {
        return runs;
    }

    /** {@return the runs that are not void, in order} */
    public List<PouringAt> countingRuns() {
        return countingRuns;
    }

    /** {@return the reasons of the outcomes of the first runs}, at least one, without repetition, in the order of the catalogue */
    List<String> reasonsOfFirst(int number) {
        List<List<String>> known = reasonsOfFirst;
        if (known == null) {
            known = cumulativeReasons();
            reasonsOfFirst = known;
        }
        return known.get(number - 1);
    }

    private List<List<String>> cumulativeReasons() {
        List<List<String>> upTo = new ArrayList<>(runs.size());
        Set<String> met = new LinkedHashSet<>();
        List<String> inOrder = List.of();
        for (PouringAt run : runs) {
            if (met.addAll(run.outcome().reasons())) {
                inOrder = met.stream().sorted(CheckedBook.catalogueOrder()).toList();
            }
            upTo.add(inOrder);
        }
        return upTo;
    }

    /** The tests of one location and date, cut where a maintenance lies between two records. */
    static List<Series> of(List<TestAt> tests) {
        List<PouringAt> ordered = withPreWettings(inOrder(runsOrLonePreWettings(tests)));
        follow(ordered);
        List<Series> series = new ArrayList<>();
        List<PouringAt> open = new ArrayList<>();
        @Nullable TimeRange before = null;
        for (PouringAt record : ordered) {
            if (!open.isEmpty() && isCut(before, record)) {
                series.add(new Series(List.copyOf(open)));
                open.clear();
            }
            open.add(record);
            before = record.start() == null ? before : record.start();
        }
        series.add(new Series(List.copyOf(open)));
        return series;
    }

    /** Tells each record whether a run that is not void follows it, a maintenance between them or not. */
    private static void follow(List<PouringAt> ordered) {
        boolean isFollowed = false;
        for (int i = ordered.size() - 1; i >= 0; i--) {
            PouringAt record = ordered.get(i);
            record.follow(isFollowed);
            isFollowed |= record.isRun() && !record.pouring().isVoid();
        }
    }

    private static List<PouringAt> runsOrLonePreWettings(List<TestAt> tests) {
        List<PouringAt> records = new ArrayList<>();
        for (TestAt test : tests) {
            PouringAt preWet = test.countingPreWet();
            if (test.runs().isEmpty() && preWet != null) {
                records.add(preWet);
            }
            records.addAll(test.runs());
        }
        return records;
    }

    /** Records in document order, put in order of start. */
    static List<PouringAt> inOrder(List<PouringAt> records) {
        if (records.size() < 2) {
            return records;
        }
        Map<PouringAt, TimeRange> keys = new HashMap<>();
        @Nullable TimeRange key = null;
        for (PouringAt record : records) {
            key = record.start() == null ? key : record.start();
            if (key != null) {
                keys.put(record, key);
            }
        }
        Comparator<TimeRange> order = TimeRange.order(keys.values());
        return records.stream()
                .sorted(Comparator.comparing(keys::get, Comparator.nullsFirst(order)))
                .toList();
    }

    private static List<PouringAt> withPreWettings(List<PouringAt> ordered) {
        List<PouringAt> all = new ArrayList<>();
        Set<TestAt> begun = new HashSet<>();
        for (PouringAt record : ordered) {
            PouringAt preWet = record.test().countingPreWet();
            if (begun.add(record.test()) && record.isRun() && preWet != null) {
                all.add(preWet);
            }
            all.add(record);
        }
        return all;
    }

    private static boolean isCut(@Nullable TimeRange before, PouringAt record) {
        TimeRange after = record.start();
        SurfaceAt surface = record.test().visit().surfaceOrNull();
        return before != null
                && after != null
                && surface != null
                && surface.isMaintained(record.test().test().location(), before, after);
    }
}
