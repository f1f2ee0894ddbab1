// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.field.JsonName;
import dev.infiltration.field.Ring;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.WaterReading;
import dev.infiltration.method.Basis;
import dev.infiltration.units.Reading;
import dev.infiltration.units.UnitSystem;
import java.math.BigDecimal;
import java.util.Objects;
import javax.measure.quantity.Speed;
import org.jspecify.annotations.Nullable;

/**
 * A run as recorded, and its result by a source outside the implementation that is checked.
 *
 * @param id        identifies the case among the others
 * @param ring      the ring of the run
 * @param run       the run
 * @param outcome   what kind of answer is right
 * @param rate      the rate or the bound of it, above or at zero; absent where none can be given
 * @param tolerance how far an answer may lie from {@code rate}, as a part of it, inclusive; zero where zero is expected
 * @param basis     source of the expected result, and the quality of that source
 */
public record ReferenceCase(
        String id,
        Ring ring,
        TestRun run,
        Outcome outcome,
        @Nullable Reading<Speed> rate,
        BigDecimal tolerance,
        Basis basis) {

    /** What kind of answer is right. */
    public enum Outcome implements JsonName {
        /** A rate. */
        MEASURED,
        /** A rate that is at most so much. */
        UPPER_BOUND,
        /** A rate that is at least so much. */
        LOWER_BOUND,
        /** No rate. */
        WITHHELD
    }

    /**
     * Checks that the parts are there and go together.
     *
     * @throws IllegalArgumentException if a rate is expected and none is given, or the other way round, or a number is negative
     */
    public ReferenceCase {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(ring, "ring");
        Objects.requireNonNull(run, "run");
        Objects.requireNonNull(outcome, "outcome");
        Objects.requireNonNull(tolerance, "tolerance");
        Objects.requireNonNull(basis, "basis");
        if ((rate == null) != (outcome == Outcome.WITHHELD)) {
            throw new IllegalArgumentException("rate: expected one unless withheld, got " + rate + " of " + outcome);
        }
        if (tolerance.signum() < 0 || (rate != null && rate.value().signum() < 0)) {
            throw new IllegalArgumentException("rate, tolerance: expected none below zero in " + id);
        }
    }

    /** Whether mass, diameter and time alone come to a rate. */
    boolean isBare() {
        return outcome == Outcome.MEASURED && ring.isUsable() && RateEquation.isUsable(run);
    }

    /** Whether all inputs of the rate are written in inch-pound units, which have another constant. */
    boolean isInchPound() {
        return run.pouredWater()
                        .map(WaterReading::system)
                        .filter(UnitSystem.INCH_POUND::equals)
                        .isPresent()
                && ring.diametersInUse().stream()
                        .allMatch(diameter -> diameter.unit().system() == UnitSystem.INCH_POUND);
    }
}
