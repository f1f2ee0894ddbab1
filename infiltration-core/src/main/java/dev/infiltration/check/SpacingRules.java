// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.units.Reading;
import dev.infiltration.units.UnitSystem;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
    private final double doubt;

    private SpacingRules(List<Spaced> tests, Findings findings) {
        this.findings = findings;
        this.reach = tests.stream()
                .mapToDouble(test -> 2 * Distance.needed(test, test))
                .max()
                .orElse(0);
        this.doubt = tests.stream()
                .filter(Spaced::hasPosition)
                .mapToDouble(Spaced::accuracy)
                .max()
                .orElse(0);
    }

    static void judge(BookIndex index, Findings findings) {
        Map<SurfaceAt, List<Spaced>> bySurface = new LinkedHashMap<>();
        for (VisitAt visit : index.visits()) {
            SurfaceAt surface = visit.surfaceOrNull();
            if (surface == null || visit.isLaterDouble()) {
                continue;
            }
            for (TestAt test : visit.tests()) {
                Spaced spaced = Spaced.of(test, surface);
                if (spaced != null) {
                    bySurface.computeIfAbsent(surface, key -> new ArrayList<>()).add(spaced);
                }
            }
        }
        bySurface.values().forEach(tests -> new SpacingRules(tests, findings).judge(tests));
    }

    private void judge(List<Spaced> tests) {
        List<Spaced> started = new ArrayList<>();
        Map<LocalDate, List<Spaced>> byDate = new HashMap<>();
        for (Spaced test : tests) {
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

    /** A window slides over the starts. */
    private void byStart(List<Spaced> tests) {
        Deque<Spaced> window = new ArrayDeque<>();
        Neighbours neighbours = new Neighbours(reach, doubt);
        for (Spaced test : inOrder(tests)) {
            while (!window.isEmpty() && !isClose(window.getFirst(), test)) {
                neighbours.remove(window.removeFirst());
            }
            report(test, neighbours);
            window.addLast(test);
            neighbours.add(test);
        }
    }

    private static List<Spaced> inOrder(List<Spaced> tests) {
        Comparator<Span> order = Span.order(tests.stream()
                .map(Spaced::start)
                .filter(java.util.Objects::nonNull)
                .toList());
        return tests.stream()
                .sorted(Comparator.comparing(Spaced::start, Comparator.nullsFirst(order)))
                .toList();
    }

    /** Even read most kindly, less than the method's time lies between the starts. */
    private static boolean isClose(Spaced earlier, Spaced later) {
        @Nullable
        Reading<Time> apart =
                later.method().spacingTime().in(UnitSystem.NEITHER).lowest();
        Span start = later.start();
        Span before = earlier.start();
        if (apart == null || start == null || before == null) {
            return false;
        }
        BigDecimal between = start.mostAfter(before);
        return between.compareTo(Span.seconds(apart)) < 0;
    }

    /** Pairs of one date of which at least one test has no start, in the order of the document. */
    private void byDate(List<Spaced> tests) {
        if (tests.stream().allMatch(test -> test.start() != null)) {
            return;
        }
        Neighbours all = new Neighbours(reach, doubt);
        Neighbours withoutStart = new Neighbours(reach, doubt);
        for (Spaced test : tests) {
            report(test, test.start() == null ? all : withoutStart);
            all.add(test);
            if (test.start() == null) {
                withoutStart.add(test);
            }
        }
    }

    private void report(Spaced test, Neighbours neighbours) {
        VisitAt visit = test.test().visit();
        if (visit.methodOrNull() == null) {
            return;
        }
        String allowed = test.method().clearSpacing().toString();
        if (neighbours.isNear(test)) {
            Reading<?> taped = test.test().test().clearSpacing();
            String observed = taped == null ? "too near another location" : "taped " + taped;
            findings.add(
                    Entry.VISIT_SPACING,
                    test.place(),
                    test.test().subject(),
                    observed,
                    allowed,
                    test.method().clearSpacing().basis());
        }
        if (neighbours.isUnknown(test)) {
            findings.add(
                    Entry.VISIT_SPACING_UNKNOWN,
                    visit.place(),
                    visit.subject(),
                    test.locationId() + " to another location",
                    allowed,
                    test.method().clearSpacing().basis());
        }
    }
}
