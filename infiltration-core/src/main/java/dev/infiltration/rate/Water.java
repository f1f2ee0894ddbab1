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
 * <p>One set of formulas serves the whole range, so that nothing jumps at 40 °C, where the formula of the metrologists
 * (Tanaka et al. 2001, Metrologia 38, 301) ends: density after IAPWS SR6-08(2011), viscosity after IAPWS R12-08 at that
 * density. SR6-08 holds at 0.1 MPa; at 0.101325 MPa water is 0.0006 kg/m³ denser, which is left out. Density agrees with
 * Tanaka's table within 0.001 kg/m³; the releases state viscosity to about 1 %. Pure, air-free water: tap water is up to
 * some tenths of a kg/m³ denser (common practice).
 *
 * <pre>{@code
 * Water water = Water.at(20);
 * water.density();       // 998.2065… kg/m³
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

    private static final double ZERO_CELSIUS = 273.15;

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
        return Iapws.density(kelvin());
    }

    /** {@return the dynamic viscosity in Pa·s} */
    public double viscosity() {
        return Iapws.viscosity(kelvin(), density());
    }

    private double kelvin() {
        return celsius + ZERO_CELSIUS;
    }
}
