// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.field.Instrument.Kind;
import dev.infiltration.field.Pour;
import dev.infiltration.field.Pouring;
import dev.infiltration.field.Ring;
import dev.infiltration.field.WaterReading;
import dev.infiltration.method.Basis;
import dev.infiltration.rate.Instruments.Stated;
import dev.infiltration.rate.UncertaintyBudget.Line;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/** The uncertainty terms of one run, from its readings and instruments. */
final class InstrumentTerms {

    private final Instruments instruments;
    private final List<Line> lines = new ArrayList<>();
    private boolean isBeyondMeasure;
    private boolean hasBalanceError;

    InstrumentTerms(Instruments instruments) {
        this.instruments = instruments;
    }

    /** {@return the terms}; empty where a width is not finite */
    Optional<List<Line>> lines() {
        return isBeyondMeasure ? Optional.empty() : Optional.of(lines);
    }

    private void add(RingTerm kind, String name, double halfWidth, Basis basis) {
        if (Double.isFinite(halfWidth)) {
            lines.add(new Line(kind, new Term(name, 0, Distribution.rectangular(halfWidth), basis)));
        } else {
            isBeyondMeasure = true;
        }
    }

    /** The resolution that the reading states; else the coarser of the instrument's resolution and the last digit. */
    static <Q extends Quantity<Q>> Stated<Q> step(
            Optional<Reading<Q>> stated, @Nullable Stated<Q> instrument, Reading<Q> lastDigit) {
        if (stated.isPresent()) {
            return new Stated<>(stated.get(), "", ReadTerms.STATED);
        }
        return instrument == null || lastDigit.compareAmount(instrument.amount()) > 0
                ? new Stated<>(lastDigit, "", ReadTerms.WRITTEN)
                : instrument;
    }

    /** The water, or the mass of each vessel before and after where the water is a sum of pours, and the error of the balance. */
    void addWater(String name, Pouring pouring) {
        WaterReading water = pouring.water();
        if (water != null) {
            addMass(name + ", water", water);
        } else {
            addPours(name, pouring.pours());
        }
    }

    private void addPours(String name, List<Pour> pours) {
        for (int i = 0; i < pours.size(); i++) {
            WaterReading before = pours.get(i).before();
            WaterReading after = pours.get(i).after();
            if (before != null && after != null) {
                addMass(name + ", pour " + (i + 1) + " before", before);
                addMass(name + ", pour " + (i + 1) + " after", after);
            }
        }
    }

    private void addMass(String name, WaterReading water) {
        @Nullable Stated<Mass> balance = water.isVolume() ? null : instruments.resolution(Kind.BALANCE, Mass.class);
        Stated<Mass> step = step(water.mass().statedResolution(), balance, water.lastDigit());
        add(RingTerm.MASS_READING, name, step.amount().in(FieldUnit.KILOGRAM) / 2, step.basis());
        @Nullable Stated<Mass> error = water.isVolume() || hasBalanceError ? null : instruments.balanceError();
        if (error != null) {
            hasBalanceError = true;
            add(RingTerm.MASS_ERROR, error.whose(), error.amount().in(FieldUnit.KILOGRAM), error.basis());
        }
    }

    /** Each diameter that is used, the error of the tape, and the variation of the diameters. */
    void addDiameters(Ring ring) {
        String name = "ring " + ring.id();
        List<Reading<Length>> diameters = ring.diametersInUse();
        @Nullable Stated<Length> tape = instruments.resolution(Kind.TAPE, Length.class);
        for (int i = 0; i < diameters.size(); i++) {
            Reading<Length> diameter = diameters.get(i);
            Stated<Length> step = step(diameter.statedResolution(), tape, diameter.lastDigit());
            double halfWidth = step.amount().in(FieldUnit.MILLIMETRE) / 2 / diameters.size();
            add(RingTerm.DIAMETER_READING, name + ", diameter " + (i + 1), halfWidth, step.basis());
        }
        addError(RingTerm.DIAMETER_ERROR, instruments.tolerance(Kind.TAPE, Length.class), FieldUnit.MILLIMETRE);
        addRoundness(name, ring.insideDiameters());
    }

    private void addRoundness(String name, List<Reading<Length>> diameters) {
        if (diameters.size() < 2 || !diameters.stream().allMatch(Reading::isPositive)) {
            return;
        }
        double[] widths = ReadTerms.millimetres(diameters);
        if (Double.isFinite(ReadTerms.scatter(widths))) {
            lines.add(new Line(RingTerm.ROUNDNESS, ReadTerms.roundness(name, diameters)));
        } else {
            isBeyondMeasure = true;
        }
    }

    /** The reading of the watch, and the error of the watch. */
    void addElapsed(String name, Reading<Time> elapsed) {
        Stated<Time> step =
                step(elapsed.statedResolution(), instruments.resolution(Kind.WATCH, Time.class), elapsed.lastDigit());
        add(RingTerm.WATCH_READING, name + ", watch", step.amount().in(FieldUnit.SECOND) / 2, step.basis());
        addError(RingTerm.WATCH_ERROR, instruments.tolerance(Kind.WATCH, Time.class), FieldUnit.SECOND);
    }

    private <Q extends Quantity<Q>> void addError(RingTerm kind, @Nullable Stated<Q> tolerance, FieldUnit<Q> unit) {
        if (tolerance != null) {
            add(kind, tolerance.whose(), tolerance.amount().in(unit), tolerance.basis());
        }
    }
}
