// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Pouring;
import dev.infiltration.field.Ring;
import dev.infiltration.field.WaterReading;
import dev.infiltration.rate.RateConstant.Source;
import dev.infiltration.rule.RuleId;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import dev.infiltration.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
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
 * <p>The inch-pound constant is used if diameter and water are both written in inch-pound units, else the SI constant. The two
 * published constants differ by 0.0043 %. They assume about 1000 kg/m³ for water, and the method makes no correction: the
 * rate is 0.18 % low at 20 °C. A {@code with…} computes the constant from the geometry of the ring and another density:
 * {@code K = 3600·4/(π·ρ)}; a volume of water is then converted with that density too. Each result names its constant
 * ({@link #constant}). Valid for any positive M, D and t; a rate that is not finite is withheld.
 *
 * <p>Source: ASTM C1701/C1701M clause 9.1 (clause published, constants from memory; checked against 3600·4/(π·ρ) in
 * {@code RateEquationTest}).
 */
public final class RateEquation {

    /** The constant for kilograms, millimetres and seconds: (mm³·s)/(kg·h). */
    public static final double SI_CONSTANT = 4_583_666_000.0;

    /** The constant for pounds, inches and seconds: (in³·s)/(lb·h). */
    public static final double INCH_POUND_CONSTANT = 126_870.0;

    private static final double NOMINAL_DENSITY = 1000.0;
    private static final double LIGHTEST = 900.0;
    private static final double HEAVIEST = 1100.0;
    private static final double KILOGRAMS_PER_POUND = 0.45359237;
    private static final double MILLIMETRES_PER_INCH = 25.4;

    private static final RateEquation AS_PUBLISHED = new RateEquation(
            new RateConstant(SI_CONSTANT, UnitSystem.SI, NOMINAL_DENSITY, Source.PUBLISHED),
            new RateConstant(INCH_POUND_CONSTANT, UnitSystem.INCH_POUND, NOMINAL_DENSITY, Source.PUBLISHED));

    private final RateConstant si;
    private final RateConstant inchPound;

    private RateEquation(RateConstant si, RateConstant inchPound) {
        this.si = si;
        this.inchPound = inchPound;
    }

    /** {@return the equation with the constants as published} */
    public static RateEquation asPublished() {
        return AS_PUBLISHED;
    }

    /** {@return the equation with the constant of the ring's geometry, water of exactly 1000 kg/m³} */
    public static RateEquation fromGeometry() {
        return AS_PUBLISHED.withWaterDensity(NOMINAL_DENSITY);
    }

    /**
     * {@return the equation with the density of a test's water as its temperature was recorded}; empty where none was recorded
     * or it is outside 0 to 60 °C, because the caller who then uses the published constant must state it
     *
     * @param test the test
     */
    public static Optional<RateEquation> forWaterOf(LocationTest test) {
        return Optional.ofNullable(test.waterTemperature())
                .flatMap(recorded -> Water.within(recorded.in(FieldUnit.CELSIUS)))
                .map(AS_PUBLISHED::withWaterAt);
    }

    /**
     * {@return the equation with the constant of the ring's geometry and a density of water}
     *
     * @param kilogramsPerCubicMetre the density, 900 to 1100 kg/m³
     * @throws IllegalArgumentException outside that range: a density in another unit
     */
    public RateEquation withWaterDensity(double kilogramsPerCubicMetre) {
        if (!(kilogramsPerCubicMetre >= LIGHTEST && kilogramsPerCubicMetre <= HEAVIEST)) {
            throw new IllegalArgumentException(
                    "kilogramsPerCubicMetre: allowed 900 to 1100 kg/m³, found " + kilogramsPerCubicMetre);
        }
        return ofGeometry(kilogramsPerCubicMetre, Source.DENSITY);
    }

    /**
     * {@return the equation with the constant of the ring's geometry and the density of water at a temperature}
     *
     * @param water the water
     */
    public RateEquation withWaterAt(Water water) {
        return ofGeometry(water.density(), Source.WATER_TEMPERATURE);
    }

    /**
     * {@return the equation with the constant of the ring's geometry and the density of water at a temperature}
     *
     * @param temperature the temperature as it was read
     * @throws IllegalArgumentException outside 0 to 60 °C
     */
    public RateEquation withWaterAt(Reading<Temperature> temperature) {
        return withWaterAt(Water.at(temperature));
    }

    private static RateEquation ofGeometry(double density, Source source) {
        return new RateEquation(
                RateConstant.ofGeometry(UnitSystem.SI, density, source),
                RateConstant.ofGeometry(UnitSystem.INCH_POUND, density, source));
    }

    /**
     * {@return the constant for a system of units}
     *
     * @param system the system; the SI constant serves for units of neither
     */
    public RateConstant constant(UnitSystem system) {
        return system == UnitSystem.INCH_POUND ? inchPound : si;
    }

    /**
     * {@return the constant that counts for water through a ring}: the inch-pound one where diameter and water were both
     * written so
     *
     * @param ring    the ring
     * @param pouring the prewetting or run
     */
    public RateConstant constant(Ring ring, Pouring pouring) {
        return pouring.pouredWater().map(water -> constant(ring, water)).orElse(si);
    }

    private RateConstant constant(Ring ring, WaterReading water) {
        return isInchPound(ring, water) ? inchPound : si;
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
     * {@return the outcome of a prewetting or a run with a ring}: a rate, a bound, or the reasons for neither
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
            obstacles.add(RuleId.RING_UNUSABLE.id());
        }
        if (pouring.isVoid()) {
            obstacles.add(RuleId.RUN_VOID.id());
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

    private double millimetresPerHour(Ring ring, Pouring pouring) {
        WaterReading water = pouring.pouredWater().orElseThrow();
        double millimetres = meanDiameter(ring);
        double kilograms = infiltrated(water, millimetres, pouring);
        double seconds = Objects.requireNonNull(pouring.elapsed()).in(FieldUnit.SECOND);
        if (isInchPound(ring, water)) {
            double inches = meanDiameter(ring, FieldUnit.INCH);
            return inchPound.rate(kilograms / KILOGRAMS_PER_POUND, inches, seconds) * MILLIMETRES_PER_INCH;
        }
        return si.rate(kilograms, millimetres, seconds);
    }

    private static boolean isInchPound(Ring ring, WaterReading water) {
        return water.system() == UnitSystem.INCH_POUND
                && ring.diametersInUse().stream().allMatch(d -> d.unit().system() == UnitSystem.INCH_POUND);
    }

    /**
     * {@return the mass of water that went in, in kg}: what was poured less what was left standing, not below zero
     *
     * @param ring    a usable ring
     * @param pouring a prewetting or run that {@link #isUsable}
     */
    public double infiltrated(Ring ring, Pouring pouring) {
        return infiltrated(pouring.pouredWater().orElseThrow(), meanDiameter(ring), pouring);
    }

    private double infiltrated(WaterReading water, double millimetres, Pouring pouring) {
        double poured = water.isVolume() ? water.kilograms() * (si.density() / NOMINAL_DENSITY) : water.kilograms();
        @Nullable Reading<Length> depth = pouring.depthAtStop();
        if (!pouring.isStopped() || depth == null || !depth.isPositive()) {
            return poured;
        }
        double metres = millimetres / 1000;
        double area = StrictMath.PI / 4 * metres * metres;
        return Math.max(0, poured - depth.in(FieldUnit.METRE) * area * si.density());
    }

    /**
     * {@return the mean inside diameter that a ring counts with, in mm}
     *
     * @param ring a usable ring
     */
    public static double meanDiameter(Ring ring) {
        return meanDiameter(ring, FieldUnit.MILLIMETRE);
    }

    /** The mean in a unit. */
    static double meanDiameter(Ring ring, FieldUnit<Length> unit) {
        List<Reading<Length>> diameters = ring.diametersInUse();
        double sum = 0;
        for (Reading<Length> diameter : diameters) {
            sum += diameter.in(unit);
        }
        return sum / diameters.size();
    }

    /** {@return where its constants come from, for people} */
    @Override
    public String toString() {
        return si.source() == Source.PUBLISHED
                ? "K as published, water about 1000 kg/m³"
                : String.format(Locale.ROOT, "K = 3600·4/(π·ρ), water of %.2f kg/m³", si.density());
    }
}
