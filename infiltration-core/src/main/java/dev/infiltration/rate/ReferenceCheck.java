// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Speed;
import org.jspecify.annotations.Nullable;

/**
 * What an implementation answered to a case.
 *
 * @param reference the case
 * @param got       the answer
 */
public record ReferenceCheck(ReferenceCase reference, RateOutcome got) {

    /** Checks that both are there. */
    public ReferenceCheck {
        Objects.requireNonNull(reference, "reference");
        Objects.requireNonNull(got, "got");
    }

    /** {@return whether the result has the expected outcome and is within the tolerance} */
    public boolean isPassed() {
        return got.word().equals(reference.outcome().word())
                && (reference.rate() == null
                        || difference()
                                .filter(off -> off.abs().compareTo(allowed()) <= 0)
                                .isPresent());
    }

    /** {@return the answer less the expected rate in mm/h, exact to 30 digits; empty where either gives no rate} */
    public Optional<BigDecimal> difference() {
        return expected().flatMap(rate -> got.figure().map(figure -> difference(figure, rate)));
    }

    private static BigDecimal difference(InfiltrationRate figure, BigDecimal rate) {
        return new BigDecimal(figure.millimetresPerHour()).subtract(rate).round(new MathContext(30));
    }

    /** {@return the difference as a part of the expected rate; empty where that is zero or either gives none} */
    public Optional<BigDecimal> relativeDifference() {
        return expected()
                .filter(rate -> rate.signum() > 0)
                .flatMap(rate -> difference().map(off -> off.divide(rate, MathContext.DECIMAL64)));
    }

    private BigDecimal allowed() {
        return reference.tolerance().multiply(expected().orElse(BigDecimal.ZERO));
    }

    private Optional<BigDecimal> expected() {
        return Optional.ofNullable(reference.rate()).map(rate -> rate.exactIn(FieldUnit.MILLIMETRE_PER_HOUR));
    }

    /** {@return the answer beside what was expected, for people} */
    @Override
    public String toString() {
        return (isPassed() ? "passed " : "FAILED ") + reference.id() + ": expected "
                + reference.outcome().word()
                + text(reference.rate()) + ", got " + got.word()
                + got.figure().map(this::text).orElse("")
                + relativeDifference().map(this::offText).orElse("") + "; " + reference.basis();
    }

    private static String text(@Nullable Reading<Speed> rate) {
        return rate == null ? "" : " " + rate;
    }

    /** The answer in the unit of the expected rate. */
    private String text(InfiltrationRate figure) {
        FieldUnit<Speed> unit = reference.rate() == null
                ? FieldUnit.MILLIMETRE_PER_HOUR
                : reference.rate().unit();
        return " " + figure.in(unit) + " " + unit.symbol();
    }

    private String offText(BigDecimal relative) {
        return ", off by " + relative.round(new MathContext(2)).stripTrailingZeros() + ", allowed "
                + reference.tolerance();
    }
}
