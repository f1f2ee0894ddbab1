// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.util.List;
import javax.measure.quantity.Speed;

/**
 * How much of a site's rain fell at which intensity.
 *
 * <p>Within a class rain is taken as spread evenly over the intensities. The share taken in counts, at every instant, the
 * rain up to what the surface can carry; what exceeds it runs off, nothing is stored on the surface.
 *
 * @param classes the classes of intensity
 */
public record RainHistogram(List<IntensityClass> classes) {

    /**
     * Copies the classes.
     *
     * @throws IllegalArgumentException if no rain fell in them, or their depths have no finite sum
     */
    public RainHistogram {
        classes = List.copyOf(classes);
        if (!(depth(classes) > 0) || Double.isInfinite(depth(classes))) {
            throw new IllegalArgumentException("classes: expected rain in one of them, and a finite depth in all");
        }
    }

    /**
     * Rain of one class of intensity.
     *
     * @param from  lowest intensity, 0 or more
     * @param to    highest intensity, not below {@code from}, above 0
     * @param depth how much fell, 0 or more, in one unit throughout or as a share
     */
    public record IntensityClass(Reading<Speed> from, Reading<Speed> to, double depth) {

        /**
         * Checks the bounds and the depth.
         *
         * @throws IllegalArgumentException if one is out of its range
         */
        public IntensityClass {
            if (from.value().signum() < 0 || !to.isPositive() || to.compareAmount(from) < 0) {
                throw new IllegalArgumentException("from, to: expected 0 or more ascending, got " + from + ", " + to);
            }
            double highest = to.in(FieldUnit.MILLIMETRE_PER_HOUR);
            if (!(highest > 0) || Double.isInfinite(highest)) {
                throw new IllegalArgumentException("to: expected a finite intensity above 0, got " + to);
            }
            if (!(depth >= 0) || Double.isInfinite(depth)) {
                throw new IllegalArgumentException("depth: expected a finite depth of 0 or more, got " + depth);
            }
        }

        /** {@return the mean over the class of the share of rain that a carried intensity takes in} */
        private double takenIn(double carried) {
            double low = from.in(FieldUnit.MILLIMETRE_PER_HOUR);
            double high = to.in(FieldUnit.MILLIMETRE_PER_HOUR);
            if (carried >= high || carried <= 0) {
                return carried > 0 ? 1 : 0;
            }
            double full = Math.max(0, carried - low);
            double partly = carried * (StrictMath.log(high) - StrictMath.log(Math.max(low, carried)));
            return high > low ? (full + partly) / (high - low) : carried / high;
        }
    }

    /**
     * {@return the share of all the rain that a surface takes in, 0 to 1}
     *
     * @param carried the intensity that it can carry, in mm/h
     * @throws IllegalArgumentException if {@code carried} is not a number
     */
    public double shareTakenIn(double carried) {
        if (Double.isNaN(carried)) {
            throw new IllegalArgumentException("carried: expected a number, got NaN");
        }
        return classes.stream()
                        .mapToDouble(part -> part.depth * part.takenIn(carried))
                        .sum()
                / depth(classes);
    }

    private static double depth(List<IntensityClass> classes) {
        return classes.stream().mapToDouble(IntensityClass::depth).sum();
    }
}
