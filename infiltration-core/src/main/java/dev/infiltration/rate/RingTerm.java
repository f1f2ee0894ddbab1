// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import java.util.Locale;

/** What a term of a ring test's uncertainty is about, and how the rate goes with it. */
public enum RingTerm {
    /** Reading the balance, or the mark of a vessel; in kg. */
    MASS_READING(Goes.WITH_MASS, "kg"),
    /** The balance's own error: adjustment, tolerance; in kg. */
    MASS_ERROR(Goes.WITH_MASS, "kg"),
    /** Reading the diameter; in mm. */
    DIAMETER_READING(Goes.WITH_DIAMETER, "mm"),
    /** The tape's own error; in mm. */
    DIAMETER_ERROR(Goes.WITH_DIAMETER, "mm"),
    /** Diameters that differ across the ring; in mm. */
    ROUNDNESS(Goes.WITH_DIAMETER, "mm"),
    /** Reading the watch; in s. */
    WATCH_READING(Goes.WITH_TIME, "s"),
    /** The watch's own error; in s. */
    WATCH_ERROR(Goes.WITH_TIME, "s"),
    /** How late the watch is started and stopped; in s. */
    REACTION(Goes.WITH_TIME, "s"),
    /** Telling when no free water is left; in s. */
    END_POINT(Goes.WITH_TIME, "s"),
    /** The water's density, relative to 1000 kg/m³. */
    WATER_DENSITY(Goes.WITH_VOLUME, "");

    /** The four factors of the equation. */
    enum Goes {
        WITH_MASS(1),
        WITH_DIAMETER(-2),
        WITH_TIME(-1),
        WITH_VOLUME(1);

        private final int exponent;

        Goes(int exponent) {
            this.exponent = exponent;
        }
    }

    private final Goes goes;
    private final String unit;

    RingTerm(Goes goes, String unit) {
        this.goes = goes;
        this.unit = unit;
    }

    Goes goes() {
        return goes;
    }

    /** {@return the relative sensitivity: by how many per cent the rate changes for one per cent} */
    public int sensitivity() {
        return goes.exponent;
    }

    /** {@return the unit that its spread is in; empty for a ratio} */
    public String unit() {
        return unit;
    }

    /** {@return the name in words} */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
