// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.field.Instrument;
import dev.infiltration.field.Pour;
import dev.infiltration.field.Pouring;
import dev.infiltration.field.WaterReading;
import dev.infiltration.method.Band;
import dev.infiltration.method.Limit;
import dev.infiltration.method.TestMethod;
import dev.infiltration.units.Reading;
import dev.infiltration.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/** {@code visit.resolution}: how finely water and time were read. What an amount states wins, else the instruments, else the digits. */
final class Resolutions {

    private final TestMethod method;
    private final @Nullable Reading<Mass> balance;
    private final @Nullable Reading<Time> watch;
    private final VisitAt at;
    private final Findings findings;

    private Resolutions(VisitAt at, TestMethod method, Findings findings) {
        this.at = at;
        this.method = method;
        this.findings = findings;
        List<Instrument> named = named(at).toList();
        this.balance = finest(named, Instrument.Kind.BALANCE, Mass.class);
        this.watch = finest(named, Instrument.Kind.WATCH, Time.class);
    }

    /** {@return the instruments that a visit names} */
    static Stream<Instrument> named(VisitAt visit) {
        return visit.visit().instruments().stream()
                .map(visit.book().register()::instrument)
                .filter(Objects::nonNull);
    }

    /** {@return the finest resolution of the instruments of a kind that have a positive one of that quantity} */
    static <Q extends Quantity<Q>> @Nullable Reading<Q> finest(
            List<Instrument> instruments, Instrument.Kind kind, Class<Q> quantity) {
        return instruments.stream()
                .filter(instrument -> instrument.kind() == kind)
                .map(Instrument::resolution)
                .filter(Objects::nonNull)
                .flatMap(resolution -> resolution.as(quantity).stream())
                .filter(Reading::isPositive)
                .min(Reading::compareAmount)
                .orElse(null);
    }

    static void judge(VisitAt at, Findings findings) {
        TestMethod method = at.methodOrNull();
        if (method == null) {
            return;
        }
        Resolutions resolutions = new Resolutions(at, method, findings);
        for (TestAt test : at.tests()) {
            for (PouringAt pouring : test.pourings()) {
                if (!pouring.pouring().isVoid()) {
                    resolutions.judge(pouring);
                }
            }
        }
    }

    private void judge(PouringAt pouring) {
        for (WaterReading water : readings(pouring.pouring())) {
            judge(water, pouring.subject());
        }
        Reading<Time> elapsed = pouring.pouring().elapsed();
        if (elapsed != null && elapsed.isPositive()) {
            judge(elapsed, pouring.subject());
        }
    }

    /** The water, or what the vessels held where it is the sum of pours; an amount that is not positive is no reading. */
    private static List<WaterReading> readings(Pouring pouring) {
        if (!PouringRules.isPouredPositive(pouring)) {
            return List.of();
        }
        if (pouring.water() != null) {
            return List.of(pouring.water());
        }
        List<WaterReading> readings = new ArrayList<>();
        for (Pour pour : pouring.pours()) {
            Stream.of(pour.before(), pour.after()).filter(Objects::nonNull).forEach(readings::add);
        }
        return readings;
    }

    private void judge(WaterReading water, String subject) {
        @Nullable Reading<Mass> stated = water.mass().statedResolution().orElse(null);
        @Nullable Reading<Mass> known = stated == null ? balance : stated;
        Reading<Mass> step = known == null ? water.lastDigit() : known;
        UnitSystem system =
                stated != null || known == null ? water.system() : step.unit().system();
        report(method.limit(Limit.MASS_RESOLUTION), step, system, known != null, "water " + water, subject);
    }

    private void judge(Reading<Time> elapsed, String subject) {
        @Nullable Reading<Time> known = elapsed.statedResolution().orElse(watch);
        Reading<Time> step = known == null ? elapsed.lastDigit() : known;
        report(
                method.limit(Limit.TIME_RESOLUTION),
                step,
                step.unit().system(),
                known != null,
                "elapsed " + elapsed,
                subject);
    }

    private <Q extends Quantity<Q>> void report(
            Band<Q> band, Reading<Q> step, UnitSystem system, boolean isKnown, String amount, String subject) {
        if (!band.in(system).contains(step)) {
            BuiltInRule entry = isKnown ? BuiltInRule.VISIT_RESOLUTION : BuiltInRule.VISIT_RESOLUTION_UNSHOWN;
            String observed = amount + " read to " + step + " (" + subject + ")";
            findings.add(
                    entry, at.place(), at.subject(), observed, band.in(system).toString(), band.basis());
        }
    }
}
