// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as people read them: an uncertainty to two significant digits, its value to match (JCGM 100, 7.2.6). */
final class Rounding {

    private static final int DIGITS = 2;

    /** The longest number that is written without an exponent. */
    private static final int PLAIN = 20;

    private Rounding() {}

    /** {@return value and uncertainty: {@code 15280 ± 230}} */
    static String pair(double value, double uncertainty) {
        if (!Double.isFinite(value) || !Double.isFinite(uncertainty) || uncertainty == 0) {
            return value + " ± " + uncertainty;
        }
        BigDecimal rounded = significant(uncertainty, DIGITS);
        BigDecimal matched = BigDecimal.valueOf(value).setScale(rounded.scale(), RoundingMode.HALF_UP);
        return plain(matched) + " ± " + plain(rounded);
    }

    /** {@return {@code value} with the digits of its uncertainty, rounded down}: what it is at least */
    static String atLeast(double value, double uncertainty) {
        return Double.isFinite(value) && Double.isFinite(uncertainty) && uncertainty != 0
                ? plain(BigDecimal.valueOf(value)
                        .setScale(significant(uncertainty, DIGITS).scale(), RoundingMode.FLOOR))
                : Double.toString(value);
    }

    /** {@return {@code value} to a number of significant digits} */
    static String digits(double value, int digits) {
        return Double.isFinite(value) && value != 0 ? plain(significant(value, digits)) : Double.toString(value);
    }

    /** {@return a share in per cent, with all its digits}: 99.3 for 0.993 */
    static String percent(double share) {
        return BigDecimal.valueOf(share).movePointRight(2).stripTrailingZeros().toPlainString();
    }

    /** {@return one unit in the last of a number of significant digits}: 0.01 for 0.0755 and one digit; 0 for 0 */
    static double lastDigit(double value, int digits) {
        return value == 0 ? 0 : significant(value, digits).ulp().doubleValue();
    }

    private static BigDecimal significant(double value, int digits) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(digits, RoundingMode.HALF_UP));
        return rounded.setScale(rounded.scale() + digits - rounded.precision());
    }

    private static String plain(BigDecimal value) {
        return Math.abs(value.scale()) <= PLAIN ? value.toPlainString() : value.toString();
    }
}
