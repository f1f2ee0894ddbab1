// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.units;

import java.math.BigDecimal;
import java.math.MathContext;

/** An exact linear scale to the reference unit of a kind: {@code reference = (value + offset) · numerator / denominator}. */
record Factor(BigDecimal numerator, BigDecimal denominator, BigDecimal offset) {

    /** More digits than any 34-digit reading needs to be rounded once to a double. */
    private static final MathContext QUOTIENT = new MathContext(70);

    /** A decimal exponent that no unit of the table brings back into the range of a double. */
    private static final int EXTREME = 1_000;

    static Factor of(String exact) {
        return ratio(exact, "1");
    }

    static Factor ratio(String numerator, String denominator) {
        return new Factor(new BigDecimal(numerator), new BigDecimal(denominator), BigDecimal.ZERO);
    }

    Factor shifted(String offset) {
        return new Factor(numerator, denominator, new BigDecimal(offset));
    }

    /** {@return {@code value} of this scale on {@code target}'s: exact, or to 70 digits where it does not end} */
    BigDecimal convert(BigDecimal value, Factor target) {
        BigDecimal over = scaled(value).multiply(target.denominator);
        BigDecimal under = denominator.multiply(target.numerator);
        BigDecimal result = under.compareTo(BigDecimal.ONE) == 0 ? over : over.divide(under, QUOTIENT);
        return minus(result, target.offset);
    }

    /** Compares two values on their scales, exactly. */
    int compare(BigDecimal value, BigDecimal other, Factor otherScale) {
        if (equals(otherScale)) {
            return value.compareTo(other);
        }
        BigDecimal left = scaled(value).multiply(otherScale.denominator);
        return left.compareTo(otherScale.scaled(other).multiply(denominator));
    }

    private BigDecimal scaled(BigDecimal value) {
        return minus(tamed(value), offset.negate()).multiply(numerator);
    }

    private static BigDecimal minus(BigDecimal value, BigDecimal offset) {
        return offset.signum() == 0 ? value : value.subtract(offset);
    }

    /** An extreme exponent costs time and memory once digits are aligned: it is cut to one that is extreme enough. */
    static BigDecimal tamed(BigDecimal value) {
        long exponent = (long) value.precision() - value.scale();
        if (value.signum() == 0) {
            return BigDecimal.ZERO;
        }
        if (Math.abs(exponent) <= EXTREME) {
            return value;
        }
        return BigDecimal.valueOf(value.signum(), exponent > 0 ? -EXTREME : EXTREME);
    }
}
