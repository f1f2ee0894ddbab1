// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.units;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as text for people, the same in every locale. */
final class Decimals {

    /** The longest number that is written without an exponent. */
    private static final int PLAIN = 40;

    private Decimals() {}

    static String text(BigDecimal value) {
        boolean plain = value.scale() >= -PLAIN && value.scale() <= PLAIN && value.precision() <= PLAIN;
        return plain ? value.toPlainString() : value.toString();
    }

    /** {@return {@code value} to {@code digits} significant digits, {@code 2540} rather than {@code 2.54E+3}} */
    static String text(BigDecimal value, int digits) {
        BigDecimal rounded = value.round(new MathContext(digits));
        int missing = rounded.signum() == 0 ? 0 : digits - rounded.precision();
        return text(rounded.setScale(rounded.scale() + missing));
    }
}
