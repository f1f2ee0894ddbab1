// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import java.util.OptionalDouble;
import javax.measure.quantity.Speed;
import org.jspecify.annotations.Nullable;

/**
 * What rain asks of a surface: {@code required rate = i·(1 + C·R)·f}.
 *
 * <table>
 * <caption>Symbols</caption>
 * <tr><th>symbol</th><th>meaning</th></tr>
 * <tr><td>i</td><td>intensity of the design rain</td></tr>
 * <tr><td>C</td><td>run-off coefficient of the area that drains onto the surface, 0 to 1</td></tr>
 * <tr><td>R</td><td>that area over the area of the surface</td></tr>
 * <tr><td>f</td><td>factors of safety, multiplied</td></tr>
 * </table>
 *
 * <p>Common practice. It speaks of the surface alone: the reservoir below and the subgrade fail separately. Local codes, the
 * limits they set to R, and the engineer of record govern.
 *
 * <pre>{@code
 * SurfaceDemand demand = SurfaceDemand.of(1.0, 2.0);
 * demand.required(Reading.of("2", FieldUnit.INCH_PER_HOUR));                       // 6 in/h
 * demand.carried(InfiltrationRate.of(10, FieldUnit.INCH_PER_HOUR)) / 25.4;         // 3.33 in/h of rain
 * }</pre>
 *
 * @param runOff    C, 0 to 1
 * @param areaRatio R, 0 or more
 * @param factor    f, above 0
 */
public record SurfaceDemand(double runOff, double areaRatio, double factor) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one is out of its range
     */
    public SurfaceDemand {
        require(runOff >= 0 && runOff <= 1, "runOff", runOff);
        require(areaRatio >= 0 && Double.isFinite(areaRatio), "areaRatio", areaRatio);
        require(factor > 0 && Double.isFinite(factor), "factor", factor);
    }

    /**
     * {@return the demand without a factor of safety}
     *
     * @param runOff    run-off coefficient of the contributing area, 0 to 1
     * @param areaRatio contributing area over area of the surface, 0 or more
     * @throws IllegalArgumentException if one is out of its range
     */
    public static SurfaceDemand of(double runOff, double areaRatio) {
        return new SurfaceDemand(runOff, areaRatio, 1);
    }

    /**
     * {@return this demand with one more factor}
     *
     * @param factor a factor of safety, above 0
     * @throws IllegalArgumentException if it is not above 0
     */
    public SurfaceDemand times(double factor) {
        return new SurfaceDemand(runOff, areaRatio, this.factor * factor);
    }

    /**
     * {@return the rate that the surface needs to take a rain in}
     *
     * @param intensity the intensity of the rain, 0 or more
     * @throws IllegalArgumentException if it is negative or too large to be a rate
     */
    public InfiltrationRate required(Reading<Speed> intensity) {
        return new InfiltrationRate(load() * intensity.in(FieldUnit.MILLIMETRE_PER_HOUR));
    }

    /**
     * {@return the intensity of rain that a surface can carry, in mm/h}
     *
     * @param rate the rate of the surface
     */
    public double carried(InfiltrationRate rate) {
        return rate.millimetresPerHour() / load();
    }

    /**
     * {@return the rate over the required rate}: above 1 the surface takes the rain in
     *
     * @param rate                the rate of the surface
     * @param relativeUncertainty its standard uncertainty over the rate, 0 or more; null when it is not known
     * @param intensity           the intensity of the rain, above 0
     * @throws IllegalArgumentException if the intensity is not above 0 or the uncertainty negative
     */
    public Reserve reserve(InfiltrationRate rate, @Nullable Double relativeUncertainty, Reading<Speed> intensity) {
        double required = required(intensity).millimetresPerHour();
        require(required > 0, "intensity", required);
        return new Reserve(rate.millimetresPerHour() / required, relativeUncertainty);
    }

    /**
     * {@return the share of a site's rain that the surface takes in, 0 to 1}
     *
     * @param rate the rate of the surface
     * @param rain the site's rain by intensity
     */
    public double shareTakenIn(InfiltrationRate rate, RainHistogram rain) {
        return rain.shareTakenIn(carried(rate));
    }

    private double load() {
        return (1 + runOff * areaRatio) * factor;
    }

    private static void require(boolean holds, String name, double found) {
        if (!holds) {
            throw new IllegalArgumentException(name + ": out of range, got " + found);
        }
    }

    /**
     * A rate over the rate required.
     *
     * @param ratio               the ratio
     * @param relativeUncertainty standard uncertainty of the rate, and so of the ratio, relative to it; null: not known
     */
    public record Reserve(double ratio, @Nullable Double relativeUncertainty) {

        /**
         * Checks the uncertainty.
         *
         * @throws IllegalArgumentException if it is negative or not finite
         */
        public Reserve {
            double uncertainty = relativeUncertainty == null ? 0 : relativeUncertainty;
            require(uncertainty >= 0 && Double.isFinite(uncertainty), "relativeUncertainty", uncertainty);
        }

        /**
         * {@return the ratio less so many standard uncertainties, at least 0}; empty where the uncertainty is not known
         *
         * @param coverage how many: 2 for about 95 % where errors are normal
         */
        public OptionalDouble lower(double coverage) {
            return relativeUncertainty == null
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(Math.max(0, ratio * (1 - coverage * relativeUncertainty)));
        }

        /**
         * {@return the ratio and so many standard uncertainties}; empty where the uncertainty is not known
         *
         * @param coverage how many: 2 for about 95 % where errors are normal
         */
        public OptionalDouble upper(double coverage) {
            return relativeUncertainty == null
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(ratio * (1 + coverage * relativeUncertainty));
        }
    }
}
