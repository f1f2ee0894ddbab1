// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.field.Instrument.Kind;
import dev.infiltration.rate.Instruments.Stated;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;

/** Between which temperatures water lies whose temperature was read. */
record Thermometer(Instruments instruments, Reading<Temperature> temperature) {

    Water coldest() {
        return water(-1);
    }

    Water warmest() {
        return water(1);
    }

    private Water water(int side) {
        double celsius = temperature.in(FieldUnit.CELSIUS) + side * halfWidth();
        return Water.at(Math.max(Water.COLDEST, Math.min(Water.WARMEST, celsius)));
    }

    private double halfWidth() {
        @Nullable Stated<Temperature> resolution = instruments.resolution(Kind.THERMOMETER, Temperature.class);
        @Nullable Stated<Temperature> tolerance = instruments.tolerance(Kind.THERMOMETER, Temperature.class);
        Reading<Temperature> written = temperature.lastDigit();
        Reading<Temperature> step = temperature
                .statedResolution()
                .orElse(
                        resolution == null || degrees(written) > degrees(resolution.amount())
                                ? written
                                : resolution.amount());
        return degrees(step) / 2 + (tolerance == null ? 0 : degrees(tolerance.amount()));
    }

    /** A difference of temperatures: 1.8 °F is 1 °C. */
    private static double degrees(Reading<Temperature> difference) {
        Reading<Temperature> none = Reading.of(BigDecimal.ZERO, difference.unit());
        return difference.in(FieldUnit.CELSIUS) - none.in(FieldUnit.CELSIUS);
    }
}
