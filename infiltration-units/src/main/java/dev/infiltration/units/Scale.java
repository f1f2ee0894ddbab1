// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.units;

import java.math.BigDecimal;
import java.math.MathContext;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * The conversion from one unit to another, {@code target = value · ratio + shift}, in pairs of doubles.
 *
 * <p>A pair (a number and what its rounding missed) has about 106 bits. The result is rounded once, or it is NaN where 106
 * bits do not tell to which neighbour: then the exact way of {@link Factor} is the one to take.
 */
record Scale(double ratio, double ratioRest, double shift, double shiftRest) {

    /** Relative error of the whole conversion: below 2⁻¹⁰², taken sixteen times as large. */
    private static final double ERROR = 0x1p-98;

    /** Products of such numbers and the ratios of the table neither overflow nor lose bits at the lower end. */
    private static final double LARGEST = 1e200;

    private static final MathContext DIGITS = new MathContext(70);

    /** By index of the units; each is made at its first use. A record is safe to share without a lock. */
    private static final @Nullable Scale[][] TABLE =
            new @Nullable Scale[Spellings.UNITS.size()][Spellings.UNITS.size()];

    static <Q extends Quantity<Q>> Scale of(FieldUnit<Q> from, FieldUnit<Q> target) {
        @Nullable Scale[] row = TABLE[from.index()];
        @Nullable Scale known = row[target.index()];
        if (known == null) {
            known = of(from.factor(), target.factor());
            row[target.index()] = known;
        }
        return known;
    }

    private static Scale of(Factor from, Factor target) {
        BigDecimal ratio = from.numerator()
                .multiply(target.denominator())
                .divide(from.denominator().multiply(target.numerator()), DIGITS);
        BigDecimal shift = from.offset().multiply(ratio).subtract(target.offset());
        return new Scale(ratio.doubleValue(), rest(ratio), shift.doubleValue(), rest(shift));
    }

    private static double rest(BigDecimal number) {
        return number.subtract(new BigDecimal(number.doubleValue())).doubleValue();
    }

    /** {@return a number and its rest, converted and rounded once; NaN where the exact way is required} */
    double convert(double value, double rest) {
        double product = value * ratio;
        double productRest = Math.fma(value, ratio, -product) + (value * ratioRest + rest * ratio);
        double sum = product + shift;
        double shifted = sum - product;
        double sumRest = (product - (sum - shifted)) + (shift - shifted) + (productRest + shiftRest);
        double error = ERROR * (Math.abs(product) + Math.abs(shift));
        double above = sum + (sumRest + error);
        return above == sum + (sumRest - error) ? above : Double.NaN;
    }

    /** {@return a double converted and rounded once; NaN where the exact way is required} */
    double convert(double value) {
        double size = Math.abs(value);
        return value == 0 || (size < LARGEST && size > 1 / LARGEST) ? convert(value, 0) : Double.NaN;
    }
}
