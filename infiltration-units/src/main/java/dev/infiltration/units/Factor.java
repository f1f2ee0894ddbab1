// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;

/** An exact linear scale to the reference unit of a kind: {@code reference = (value + offset) · numerator / denominator}. */
record Factor(BigDecimal numerator, BigDecimal denominator, BigDecimal offset) {

    /** More digits than any 34-digit reading needs to be rounded once to a double. */
    private static final MathContext QUOTIENT = new MathContext(70);

    /** A decimal exponent that no unit of the table brings back into the range of a double. */
    private static final int EXTREME = 1_000;

    /** Farther apart than any two numbers in memory can reach by their digits, and far from the end of an int. */
    private static final long FARTHEST = 1_000_000_000;

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
        BigDecimal over = fromZero(tamed(value)).multiply(numerator).multiply(target.denominator);
        BigDecimal under = denominator.multiply(target.numerator);
        BigDecimal result = quotient(over, under);
        return target.offset.signum() == 0 ? result : result.subtract(target.offset);
    }

    /** Most units of a kind are a power of ten apart, or one of them is exact in the other: that costs no division. */
    private static BigDecimal quotient(BigDecimal over, BigDecimal under) {
        boolean isPowerOfTen = under.precision() == 1 && under.unscaledValue().equals(BigInteger.ONE);
        return isPowerOfTen ? over.scaleByPowerOfTen(under.scale()) : over.divide(under, QUOTIENT);
    }

    /** Compares two values on their scales, exactly, however far apart their exponents. */
    int compare(BigDecimal value, BigDecimal other, Factor otherScale) {
        if (equals(otherScale)) {
            return value.compareTo(other);
        }
        BigDecimal left = fromZero(value);
        BigDecimal right = otherScale.fromZero(other);
        long apart = Math.max(-FARTHEST, Math.min(FARTHEST, (long) right.scale() - left.scale()));
        BigDecimal leftDigits = new BigDecimal(left.unscaledValue());
        BigDecimal rightDigits = new BigDecimal(right.unscaledValue(), (int) apart);
        return leftDigits
                .multiply(numerator)
                .multiply(otherScale.denominator)
                .compareTo(rightDigits.multiply(otherScale.numerator).multiply(denominator));
    }

    /** {@return {@code value} from the kind's own zero}: beside a huge value the offset is nothing, and would cost */
    private BigDecimal fromZero(BigDecimal value) {
        boolean asItIs = offset.signum() == 0 || exponent(value) > EXTREME;
        return asItIs ? value : tamed(value).add(offset);
    }

    /** Aligning digits of an extreme exponent costs time and memory, so the exponent is limited. */
    static BigDecimal tamed(BigDecimal value) {
        if (value.signum() == 0) {
            return BigDecimal.ZERO;
        }
        long exponent = exponent(value);
        if (Math.abs(exponent) <= EXTREME) {
            return value;
        }
        return BigDecimal.valueOf(value.signum(), exponent > 0 ? -EXTREME : EXTREME);
    }

    private static long exponent(BigDecimal value) {
        return value.signum() == 0 ? 0 : (long) value.precision() - value.scale();
    }
}
