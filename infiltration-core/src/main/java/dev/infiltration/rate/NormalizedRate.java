// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;
import javax.measure.quantity.Speed;

/**
 * A rate normalized to another water temperature: a labelled extra, never the rate of the method.
 *
 * <p>{@code measured · (viscosity at the measured temperature / viscosity at the other)^exponent}, with dynamic viscosities
 * ({@link Water}). The exponent is 1 for laminar flow and 0 for inertial flow.
 * Flow through open pavement is between the two (Lederle et al. 2020, published), so 1 overcorrects there. There is no
 * default exponent: the user states it.
 *
 * @param measured the method's rate
 * @param from     water of the measurement
 * @param to       water to which the rate is normalized
 * @param exponent the laminar share, 0 to 1
 */
public record NormalizedRate(InfiltrationRate measured, Water from, Water to, double exponent) {

    /**
     * Checks that all is there and the exponent is in its range.
     *
     * @throws IllegalArgumentException if the exponent is not 0 to 1
     */
    public NormalizedRate {
        Objects.requireNonNull(measured, "measured");
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
        if (!(exponent >= 0 && exponent <= 1)) {
            throw new IllegalArgumentException("exponent: allowed 0 (inertial) to 1 (laminar), found " + exponent);
        }
    }

    /** {@return the factor of the measured rate} */
    public double factor() {
        return StrictMath.pow(from.viscosity() / to.viscosity(), exponent);
    }

    /** {@return the normalized rate in mm/h} */
    public double millimetresPerHour() {
        return measured.millimetresPerHour() * factor();
    }

    /**
     * {@return the normalized rate for people, with its inputs}
     *
     * @param unit the unit to print
     */
    public String text(FieldUnit<Speed> unit) {
        return "normalized from " + celsius(from) + " to " + celsius(to) + " with exponent " + exponent + ": "
                + new InfiltrationRate(millimetresPerHour()).text(unit) + " (not the method's rate, which is "
                + measured.text(unit) + ")";
    }

    private static String celsius(Water water) {
        return BigDecimal.valueOf(water.celsius())
                        .setScale(2, RoundingMode.HALF_UP)
                        .stripTrailingZeros()
                        .toPlainString()
                + " °C";
    }

    /** {@return the normalized rate for people in mm/h, with its inputs} */
    @Override
    public String toString() {
        return text(FieldUnit.MILLIMETRE_PER_HOUR);
    }
}
