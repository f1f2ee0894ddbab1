// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.util.Optional;
import javax.measure.quantity.Temperature;

/**
 * Liquid water at one atmosphere and a temperature of 0 to 60 °C: its density and viscosity.
 *
 * <p>Density up to 40 °C is the metrologists' (Tanaka et al. 2001, Metrologia 38, 301, the CIPM's table); above, where their
 * formula ends, that of IAPWS SR6-08(2011) at 0.1 MPa. The 0.0006 kg/m³ that the two differ by at 40 °C fade out up to 60 °C, so that
 * nothing jumps. Viscosity after IAPWS R12-08 at that density; the release states it to about 1 %. Pure, air-free water: tap
 * water is up to some tenths of a kg/m³ denser (common practice).
 *
 * <pre>{@code
 * Water water = Water.at(20);
 * water.density();       // 998.2067… kg/m³
 * water.viscosity();     // 0.0010016 Pa·s
 * Water.within(61);      // Optional.empty
 * }</pre>
 *
 * @param celsius the temperature in °C, 0 to 60
 */
public record Water(double celsius) {

    /** The lowest temperature, in °C. */
    public static final double COLDEST = 0;

    /** The highest temperature, in °C. */
    public static final double WARMEST = 60;

    /** Where the density comes from. */
    static final String SOURCE = "Tanaka et al. 2001, above 40 °C IAPWS SR6-08";

    private static final double ZERO_CELSIUS = 273.15;

    /** What joins the two formulas of density where the first ends. */
    private static final double STEP = Cipm.density(Cipm.WARMEST) - Iapws.density(Cipm.WARMEST + ZERO_CELSIUS);

    /**
     * Checks the temperature.
     *
     * @throws IllegalArgumentException outside 0 to 60 °C
     */
    public Water {
        if (!covers(celsius)) {
            throw new IllegalArgumentException("celsius: allowed 0 to 60 °C, found " + celsius);
        }
    }

    /**
     * {@return water at a temperature}
     *
     * @param celsius the temperature in °C
     * @throws IllegalArgumentException outside 0 to 60 °C
     */
    public static Water at(double celsius) {
        return new Water(celsius);
    }

    /**
     * {@return water at a temperature as it was read}
     *
     * @param temperature the temperature
     * @throws IllegalArgumentException outside 0 to 60 °C
     */
    public static Water at(Reading<Temperature> temperature) {
        return at(temperature.in(FieldUnit.CELSIUS));
    }

    /**
     * {@return water at a temperature, or empty outside 0 to 60 °C}
     *
     * @param celsius the temperature in °C
     */
    public static Optional<Water> within(double celsius) {
        return covers(celsius) ? Optional.of(at(celsius)) : Optional.empty();
    }

    private static boolean covers(double celsius) {
        return celsius >= COLDEST && celsius <= WARMEST;
    }

    /** {@return the density in kg/m³} */
    public double density() {
        double left = (WARMEST - celsius) / (WARMEST - Cipm.WARMEST);
        return left >= 1 ? Cipm.density(celsius) : Iapws.density(kelvin()) + left * STEP;
    }

    /** {@return the dynamic viscosity in Pa·s} */
    public double viscosity() {
        return Iapws.viscosity(kelvin(), density());
    }

    private double kelvin() {
        return celsius + ZERO_CELSIUS;
    }
}
