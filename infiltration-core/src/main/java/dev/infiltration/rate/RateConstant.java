// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.field.JsonName;
import dev.infiltration.units.UnitSystem;
import java.util.Locale;
import java.util.Objects;

/**
 * The constant K of a rate: {@code I = K·M / (D²·t)}, and the density of water behind it.
 *
 * <p>Units: (mm³·s)/(kg·h) in SI, (in³·s)/(lb·h) in inch-pound units.
 *
 * @param value   the constant
 * @param system  the system of its units, {@code SI} or {@code INCH_POUND}
 * @param density the density of water in kg/m³; the nominal 1000 where the constant is the published one
 * @param source  source of the constant
 */
public record RateConstant(double value, UnitSystem system, double density, Source source) {

    private static final double SECONDS_PER_HOUR = 3600;
    private static final double KILOGRAMS_PER_POUND = 0.45359237;
    private static final double INCHES_PER_METRE = 1 / 0.0254;
    private static final double MILLIMETRES_PER_METRE = 1000;

    /** Source of a constant. */
    public enum Source implements JsonName {
        /** The method's own constant, as published. */
        PUBLISHED,
        /** {@code 3600·4/(π·ρ)}, with the density stated. */
        DENSITY,
        /** {@code 3600·4/(π·ρ)}, with the density of water at a temperature ({@link Water}). */
        WATER_TEMPERATURE
    }

    /** Checks that all parts are there. */
    public RateConstant {
        Objects.requireNonNull(system, "system");
        Objects.requireNonNull(source, "source");
    }

    /** The water in the ring is a cylinder: its depth is {@code M/(ρ·π·D²/4)}, and it infiltrates in time t. */
    static RateConstant ofGeometry(UnitSystem system, double density, Source source) {
        double metric = SECONDS_PER_HOUR * 4 / (StrictMath.PI * density);
        double lengths = system == UnitSystem.INCH_POUND ? INCHES_PER_METRE : MILLIMETRES_PER_METRE;
        double mass = system == UnitSystem.INCH_POUND ? KILOGRAMS_PER_POUND : 1;
        return new RateConstant(metric * mass * lengths * lengths * lengths, system, density, source);
    }

    /**
     * {@return the rate}, in mm/h or in/h
     *
     * @param mass     mass of infiltrated water, in kg or lb
     * @param diameter inside diameter of the ring, in mm or in
     * @param seconds  time to infiltrate
     */
    public double rate(double mass, double diameter, double seconds) {
        return value * mass / (diameter * diameter * seconds);
    }

    /** {@return the unit of the constant} */
    public String unit() {
        return system == UnitSystem.INCH_POUND ? "(in³·s)/(lb·h)" : "(mm³·s)/(kg·h)";
    }

    /** {@return the constant for people, with its density} */
    @Override
    public String toString() {
        String water = source == Source.PUBLISHED
                ? "as published, water about 1000 kg/m³"
                : String.format(Locale.ROOT, "from geometry, water of %.2f kg/m³", density);
        return String.format(Locale.ROOT, "K = %.0f %s, %s", value, unit(), water);
    }
}
