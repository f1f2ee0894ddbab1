// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.field.Place;
import dev.infiltration.field.Ring;
import dev.infiltration.method.Band;
import dev.infiltration.method.Basis;
import dev.infiltration.method.Limit;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/** Rules of rings: each is judged by the method of every visit that uses it. */
final class RingRules {

    private final BookIndex index;
    private final Findings findings;

    private RingRules(BookIndex index, Findings findings) {
        this.index = index;
        this.findings = findings;
    }

    static void judge(BookIndex index, UserLimits limits, Findings findings) {
        RingRules rules = new RingRules(index, findings);
        Map<String, Set<VisitAt>> users = rules.users();
        Set<String> met = new HashSet<>();
        List<Ring> rings = index.book().rings();
        for (int i = 0; i < rings.size(); i++) {
            Ring ring = rings.get(i);
            String id = SubjectText.given(ring.id());
            if (id == null || met.add(id)) {
                Place where = Place.BOOK.member("rings").entry(i);
                Set<VisitAt> usedBy = id == null ? Set.of() : users.getOrDefault(id, Set.of());
                rules.judge(ring, where, usedBy);
                if (!usedBy.isEmpty()) {
                    rules.outOfRound(ring, where, limits);
                }
            }
        }
    }

    /** By id of a ring, the visits that use it. */
    private Map<String, Set<VisitAt>> users() {
        Map<String, Set<VisitAt>> users = new HashMap<>();
        for (VisitAt visit : index.visits()) {
            for (TestAt test : visit.tests()) {
                String ring = test.test().ring();
                if (ring != null && !visit.isLaterDouble()) {
                    users.computeIfAbsent(ring, key -> new LinkedHashSet<>()).add(visit);
                }
            }
        }
        return users;
    }

    private void judge(Ring ring, Place where, Set<VisitAt> users) {
        Reading<Length> height = ring.height();
        if (height != null) {
            judge(BuiltInRule.RING_HEIGHT, Limit.RING_HEIGHT, height, ring, where, users);
        }
        if (ring.isUsable()) {
            judge(BuiltInRule.RING_INSIDE_DIAMETER, Limit.INSIDE_DIAMETER, meanDiameter(ring), ring, where, users);
            resolution(ring, where, users);
        }
    }

    private void judge(
            BuiltInRule entry,
            Limit<Length> limit,
            Reading<Length> reading,
            Ring ring,
            Place where,
            Set<VisitAt> users) {
        Set<Band<Length>> broken = bands(users, limit).stream()
                .filter(band -> !band.holds(reading))
                .collect(Collectors.toCollection(LinkedHashSet::new));
        report(entry, broken, reading, "", ring, where);
    }

    private void report(
            BuiltInRule entry, Set<Band<Length>> broken, Reading<Length> reading, String read, Ring ring, Place where) {
        if (!broken.isEmpty()) {
            String allowed = broken.stream()
                    .map(band -> band.in(reading.unit().system()).toString())
                    .distinct()
                    .collect(Collectors.joining("; "));
            Basis basis = broken.iterator().next().basis();
            findings.add(entry, where, "ring " + ring.id(), read + reading, allowed, basis);
        }
    }

    private static Set<Band<Length>> bands(Set<VisitAt> users, Limit<Length> limit) {
        Set<Band<Length>> bands = new LinkedHashSet<>();
        users.forEach(visit -> visit.method().map(method -> method.limit(limit)).ifPresent(bands::add));
        return bands;
    }

    /** The mean of the diameters in use, in the unit of the first; what is written in one unit stays exact. */
    static Reading<Length> meanDiameter(Ring ring) {
        List<Reading<Length>> diameters = ring.diametersInUse();
        if (diameters.size() == 1) {
            return diameters.get(0);
        }
        FieldUnit<Length> unit = diameters.get(0).unit();
        BigDecimal sum = BigDecimal.ZERO;
        for (Reading<Length> diameter : diameters) {
            sum = sum.add(diameter.exactIn(unit));
        }
        return Reading.of(sum.divide(BigDecimal.valueOf(diameters.size()), MathContext.DECIMAL128), unit);
    }

    /** What the diameter states wins, else the finest tape of a visit that uses the ring, else the digits. */
    private void resolution(Ring ring, Place where, Set<VisitAt> users) {
        @Nullable
        Reading<Length> tape = Resolutions.finest(
                users.stream().flatMap(visit -> Resolutions.named(visit)).toList(),
                dev.infiltration.field.Instrument.Kind.TAPE,
                Length.class);
        Set<Band<Length>> bands = bands(users, Limit.DIAMETER_RESOLUTION);
        for (Reading<Length> diameter : ring.diametersInUse()) {
            @Nullable Reading<Length> known = diameter.statedResolution().orElse(tape);
            Reading<Length> step = known == null ? diameter.lastDigit() : known;
            Set<Band<Length>> broken = bands.stream()
                    .filter(band -> !band.holds(step))
                    .collect(Collectors.toCollection(LinkedHashSet::new));
            report(
                    known == null ? BuiltInRule.RING_RESOLUTION_UNSHOWN : BuiltInRule.RING_RESOLUTION,
                    broken,
                    step,
                    diameter + " read to ",
                    ring,
                    where);
        }
    }

    private void outOfRound(Ring ring, Place where, UserLimits limits) {
        @Nullable Reading<Length> limit = limits.outOfRound();
        List<Reading<Length>> diameters =
                ring.insideDiameters().stream().filter(Reading::isPositive).toList();
        if (limit == null || diameters.size() < 2) {
            return;
        }
        List<BigDecimal> sorted = new ArrayList<>(diameters.stream()
                .map(d -> d.exactIn(limit.unit()))
                .sorted(Comparator.naturalOrder())
                .toList());
        Reading<Length> spread = Reading.of(sorted.get(sorted.size() - 1).subtract(sorted.get(0)), limit.unit());
        if (spread.compareAmount(limit) > 0) {
            findings.add(
                    BuiltInRule.RING_OUT_OF_ROUND,
                    where,
                    "ring " + ring.id(),
                    spread.toString(),
                    "at most " + limit,
                    RuleBases.USER);
        }
    }
}
