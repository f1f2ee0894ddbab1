// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.method.Limit;
import dev.infiltration.units.Reading;
import dev.infiltration.units.UnitSystem;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * {@code visit.spacing} and {@code visit.spacing-unknown}: whether locations of a surface tested close in time lie far enough
 * apart.
 *
 * <p>Tests with a start are compared with those that started within the method's time before them; where one has none, with
 * those of the same visit date. The later test gets the finding.
 */
final class SpacingRules {

    private final Findings findings;
    private final double reach;

    private SpacingRules(List<LocatedTest> tests, Findings findings) {
        this.findings = findings;
        this.reach = most(tests, LocatedTest::clear) + most(tests, LocatedTest::mostDiameter);
    }

    private static double most(List<LocatedTest> tests, ToDoubleFunction<LocatedTest> length) {
        return tests.stream().mapToDouble(length).max().orElse(0);
    }

    static void judge(BookIndex index, Findings findings) {
        Map<SurfaceAt, List<LocatedTest>> bySurface = new LinkedHashMap<>();
        for (VisitAt visit : index.visits()) {
            SurfaceAt surface = visit.surfaceOrNull();
            if (surface == null || visit.isLaterDouble()) {
                continue;
            }
            for (TestAt test : visit.tests()) {
                LocatedTest spaced = LocatedTest.of(test, surface);
                if (spaced != null) {
                    bySurface.computeIfAbsent(surface, key -> new ArrayList<>()).add(spaced);
                }
            }
        }
        bySurface.values().forEach(tests -> new SpacingRules(tests, findings).judge(tests));
    }

    private void judge(List<LocatedTest> tests) {
        List<LocatedTest> started = new ArrayList<>();
        Map<LocalDate, List<LocatedTest>> byDate = new HashMap<>();
        for (LocatedTest test : tests) {
            if (test.start() != null) {
                started.add(test);
            }
            if (test.date() != null) {
                byDate.computeIfAbsent(test.date(), key -> new ArrayList<>()).add(test);
            }
        }
        byStart(started);
        byDate.values().forEach(this::byDate);
    }

    private void byStart(List<LocatedTest> tests) {
        List<LocatedTest> ordered = inOrder(tests);
        Map<Object, Set<LocatedTest>> alike = new LinkedHashMap<>();
        for (LocatedTest test : ordered) {
            alike.computeIfAbsent(window(test), key -> Collections.newSetFromMap(new IdentityHashMap<>()))
                    .add(test);
        }
        alike.values().forEach(judged -> byStart(ordered, judged));
    }

    /** How far back a test looks from its start: what is out of one's sight is so for every later one that looks as far. */
    private static Object window(LocatedTest test) {
        TimeRange start = Objects.requireNonNull(test.start());
        return List.of(start.spread().stripTrailingZeros(), test.method().limit(Limit.SPACING_TIME));
    }

    /** A window slides over the starts. */
    private void byStart(List<LocatedTest> tests, Set<LocatedTest> judged) {
        Deque<LocatedTest> window = new ArrayDeque<>();
        Neighbours neighbours = new Neighbours(reach);
        for (LocatedTest test : tests) {
            if (judged.contains(test)) {
                while (!window.isEmpty() && !isClose(window.getFirst(), test)) {
                    neighbours.remove(window.removeFirst());
                }
                report(test, neighbours);
            }
            window.addLast(test);
            neighbours.add(test);
        }
    }

    private static List<LocatedTest> inOrder(List<LocatedTest> tests) {
        Comparator<TimeRange> order = TimeRange.order(
                tests.stream().map(LocatedTest::start).filter(Objects::nonNull).toList());
        return tests.stream()
                .sorted(Comparator.comparing(LocatedTest::start, Comparator.nullsFirst(order)))
                .toList();
    }

    /** Even read most kindly, less than the method's time lies between the starts. */
    private static boolean isClose(LocatedTest earlier, LocatedTest later) {
        @Nullable
        Reading<Time> apart =
                later.method().limit(Limit.SPACING_TIME).in(UnitSystem.NEITHER).lowest();
        TimeRange start = later.start();
        TimeRange before = earlier.start();
        if (apart == null || start == null || before == null) {
            return false;
        }
        BigDecimal between = start.mostAfter(before);
        return between.compareTo(TimeRange.seconds(apart)) < 0;
    }

    /** Pairs of one date of which at least one test has no start, in the order of the document. */
    private void byDate(List<LocatedTest> tests) {
        if (tests.stream().allMatch(test -> test.start() != null)) {
            return;
        }
        Neighbours all = new Neighbours(reach);
        Neighbours withoutStart = new Neighbours(reach);
        for (LocatedTest test : tests) {
            report(test, test.start() == null ? all : withoutStart);
            all.add(test);
            if (test.start() == null) {
                withoutStart.add(test);
            }
        }
    }

    private void report(LocatedTest test, Neighbours neighbours) {
        VisitAt visit = test.test().visit();
        if (visit.methodOrNull() == null) {
            return;
        }
        if (neighbours.isNear(test)) {
            Reading<?> taped = test.test().test().clearSpacing();
            String observed = taped == null ? "too near another location" : "taped " + taped;
            findings.add(
                    BuiltInRule.VISIT_SPACING,
                    test.place(),
                    test.test().subject(),
                    observed,
                    test.method().limit(Limit.CLEAR_SPACING).toString(),
                    test.method().limit(Limit.CLEAR_SPACING).basis());
        }
        if (neighbours.isUnknown(test)) {
            findings.add(
                    BuiltInRule.VISIT_SPACING_UNKNOWN,
                    visit.place(),
                    visit.subject(),
                    test.locationId() + " to another location",
                    test.method().limit(Limit.CLEAR_SPACING).toString(),
                    test.method().limit(Limit.CLEAR_SPACING).basis());
        }
    }
}
