// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.text;

import java.math.BigDecimal;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads numbers from their digits, independent of the locale; the exponent is checked before any arithmetic. */
public final class Digits {

    /** A number as JSON writes it, RFC 8259 section 6. */
    private static final Pattern NUMBER =
            Pattern.compile("-?+(?:0|[1-9][0-9]*+)(?:\\.[0-9]++)?+(?:[eE][+-]?+[0-9]++)?+");

    private static final int LONGEST = 1_000;
    private static final int MOST_DIGITS = 34;
    private static final int LARGEST_EXPONENT = 15;
    private static final BigDecimal LARGEST = BigDecimal.ONE.scaleByPowerOfTen(LARGEST_EXPONENT);

    private Digits() {}

    /** {@return a JSON number, or null when its exponent is too large for a decimal} */
    public static @Nullable BigDecimal decimal(String number) {
        try {
            return new BigDecimal(number);
        } catch (NumberFormatException exponentTooLarge) {
            return null;
        }
    }

    /** {@return the number of a string of digits, or null when it is not a JSON number} */
    public static @Nullable BigDecimal quoted(String text) {
        return text.length() <= LONGEST && NUMBER.matcher(text).matches() ? decimal(text) : null;
    }

    /** {@return the number, a zero with at most 34 places}: a larger exponent of zero has no meaning and costs time */
    public static BigDecimal held(BigDecimal value) {
        return value.signum() == 0
                ? value.setScale(Math.max(-MOST_DIGITS, Math.min(MOST_DIGITS, value.scale())))
                : value;
    }

    /** {@return the whole number in any notation: 3, 3.0, 3e0; or null when it is not whole or not in the range of an int} */
    public static @Nullable Integer whole(String number) {
        @Nullable BigDecimal decimal = decimal(number);
        try {
            return decimal == null ? null : decimal.intValueExact();
        } catch (ArithmeticException notWhole) {
            return null;
        }
    }

    /** {@return whether an amount may have this number}: zero, or at most 34 digits and a magnitude of 1e-15 to 1e15 */
    public static boolean isAmount(BigDecimal value) {
        if (value.signum() == 0) {
            return true;
        }
        long exponent = (long) value.precision() - value.scale() - 1;
        return value.precision() <= MOST_DIGITS
                && exponent >= -LARGEST_EXPONENT
                && exponent <= LARGEST_EXPONENT
                && value.abs().compareTo(LARGEST) <= 0;
    }
}
