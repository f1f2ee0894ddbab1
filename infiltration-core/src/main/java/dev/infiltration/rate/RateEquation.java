// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.field.Pouring;
import dev.infiltration.field.Ring;
import dev.infiltration.field.WaterReading;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import dev.infiltration.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * Surface infiltration rate from one ring test: {@code I = K·M / (D²·t)}.
 *
 * <table>
 * <caption>Symbols</caption>
 * <tr><th>symbol</th><th>meaning</th><th>SI</th><th>inch-pound</th></tr>
 * <tr><td>I</td><td>infiltration rate</td><td>mm/h</td><td>in/h</td></tr>
 * <tr><td>M</td><td>mass of infiltrated water</td><td>kg</td><td>lb</td></tr>
 * <tr><td>D</td><td>inside diameter of the ring</td><td>mm</td><td>in</td></tr>
 * <tr><td>t</td><td>time to infiltrate</td><td>s</td><td>s</td></tr>
 * <tr><td>K</td><td>constant</td><td>4 583 666 000 (mm³·s)/(kg·h)</td><td>126 870 (in³·s)/(lb·h)</td></tr>
 * </table>
 *
 * <p>The inch-pound constant counts where diameter and water were both written in inch-pound units, else the SI one; the
 * two differ by 0.0043 %. The constants hold water to be about 1000 kg/m³; the method corrects for nothing else. Holds for
 * any positive M, D and t; a rate that is not finite is withheld.
 *
 * <p>Source: ASTM C1701/C1701M clause 9.1 (clause published, constants from memory; checked against 3600·4/(π·ρ) in
 * {@code RateEquationTest}).
 */
public final class RateEquation {

    /** The constant for kilograms, millimetres and seconds: (mm³·s)/(kg·h). */
    public static final double SI_CONSTANT = 4_583_666_000.0;

    /** The constant for pounds, inches and seconds: (in³·s)/(lb·h). */
    public static final double INCH_POUND_CONSTANT = 126_870.0;

    private static final double WATER_KILOGRAMS_PER_CUBIC_METRE = 1000.0;
    private static final double KILOGRAMS_PER_POUND = 0.45359237;
    private static final double MILLIMETRES_PER_INCH = 25.4;

    private static final RateEquation AS_PUBLISHED = new RateEquation();

    private RateEquation() {}

    /** {@return the equation with the constants as published} */
    public static RateEquation asPublished() {
        return AS_PUBLISHED;
    }

    /**
     * {@return the bare equation in SI}, in mm/h
     *
     * @param kilograms   mass of infiltrated water
     * @param millimetres inside diameter of the ring
     * @param seconds     time to infiltrate
     */
    public static double millimetresPerHour(double kilograms, double millimetres, double seconds) {
        return SI_CONSTANT * kilograms / (millimetres * millimetres * seconds);
    }

    /**
     * {@return the bare equation in inch-pound units}, in in/h
     *
     * @param pounds  mass of infiltrated water
     * @param inches  inside diameter of the ring
     * @param seconds time to infiltrate
     */
    public static double inchesPerHour(double pounds, double inches, double seconds) {
        return INCH_POUND_CONSTANT * pounds / (inches * inches * seconds);
    }

    /**
     * {@return what a prewetting or a run comes to with a ring}: a rate, a bound, or nothing with the reasons
     *
     * <p>A stopped one gives an upper bound for the water that went in: what was poured less what stood, where the depth left
     * was recorded. What happened meanwhile may bound the rate from one side, or leave none.
     *
     * @param ring    the ring; null when it is not known, which withholds the rate without a reason of this equation's
     * @param pouring the prewetting or run
     */
    public RateOutcome rate(@Nullable Ring ring, Pouring pouring) {
        Reasons reasons = Reasons.of(pouring);
        List<String> obstacles = new ArrayList<>();
        if (ring != null && !ring.isUsable()) {
            obstacles.add("ring.unusable");
        }
        if (pouring.isVoid()) {
            obstacles.add("run.void");
        } else if (!isUsable(pouring)) {
            obstacles.add(reasons.unusable());
        }
        return obstacles.isEmpty() && ring != null
                ? reasons.outcome(millimetresPerHour(ring, pouring))
                : new RateOutcome.Withheld(reasons.with(obstacles));
    }

    /**
     * {@return whether water and time of a prewetting or run are there and positive}
     *
     * @param pouring the prewetting or run
     */
    public static boolean isUsable(Pouring pouring) {
        return pouring.elapsed() != null
                && pouring.elapsed().isPositive()
                && pouring.pouredWater().filter(WaterReading::isPositive).isPresent();
    }

    private static double millimetresPerHour(Ring ring, Pouring pouring) {
        WaterReading water = pouring.pouredWater().orElseThrow();
        double diameter = meanDiameter(ring);
        double seconds = Objects.requireNonNull(pouring.elapsed()).in(FieldUnit.SECOND);
        double kilograms = infiltrated(water.kilograms(), diameter, pouring);
        if (isInchPound(ring, water)) {
            double inches = meanDiameter(ring, FieldUnit.INCH);
            return inchesPerHour(kilograms / KILOGRAMS_PER_POUND, inches, seconds) * MILLIMETRES_PER_INCH;
        }
        return millimetresPerHour(kilograms, diameter, seconds);
    }

    private static boolean isInchPound(Ring ring, WaterReading water) {
        return water.system() == UnitSystem.INCH_POUND
                && ring.diametersInUse().stream().allMatch(d -> d.unit().system() == UnitSystem.INCH_POUND);
    }

    /** What was poured less what was left standing, not below zero. */
    private static double infiltrated(double poured, double diameter, Pouring pouring) {
        @Nullable Reading<Length> depth = pouring.depthAtStop();
        if (!pouring.isStopped() || depth == null || !depth.isPositive()) {
            return poured;
        }
        double metres = diameter / 1000;
        double area = StrictMath.PI / 4 * metres * metres;
        return Math.max(0, poured - depth.in(FieldUnit.METRE) * area * WATER_KILOGRAMS_PER_CUBIC_METRE);
    }

    /**
     * {@return the mean inside diameter that a ring counts with, in mm}
     *
     * @param ring a usable ring
     */
    public static double meanDiameter(Ring ring) {
        return meanDiameter(ring, FieldUnit.MILLIMETRE);
    }

    private static double meanDiameter(Ring ring, FieldUnit<Length> unit) {
        List<Reading<Length>> diameters = ring.diametersInUse();
        double sum = 0;
        for (Reading<Length> diameter : diameters) {
            sum += diameter.in(unit);
        }
        return sum / diameters.size();
    }
}
