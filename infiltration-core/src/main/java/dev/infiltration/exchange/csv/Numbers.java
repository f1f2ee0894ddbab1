// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import java.math.BigDecimal;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The numbers of one file, all with the same decimal mark.
 *
 * <p>Where commas part the cells the mark is the point. Elsewhere the first number that has a mark decides, so that 1.850 is
 * never taken for 1850 in one row and for 1.85 in another. Thousands are not separated.
 */
final class Numbers {

    private static final Pattern NUMBER =
            Pattern.compile("[+-]?+(?:[0-9]++(?:[.,][0-9]++)?+|[.,][0-9]++)(?:[eE][+-]?+[0-9]++)?+");
    private static final int LONGEST = 100;

    private char mark;

    Numbers(char separator) {
        this.mark = separator == ',' ? '.' : 0;
    }

    /** {@return the number, its digits kept; or null when it is none, or has another decimal mark than the file} */
    @Nullable
    BigDecimal parse(String text) {
        if (text.length() > LONGEST || !NUMBER.matcher(text).matches()) {
            return null;
        }
        char met = text.indexOf(',') >= 0 ? ',' : text.indexOf('.') >= 0 ? '.' : mark;
        if (mark != 0 && met != mark) {
            return null;
        }
        mark = met;
        return decimal(text.replace(',', '.'));
    }

    private static @Nullable BigDecimal decimal(String digits) {
        try {
            return new BigDecimal(digits);
        } catch (NumberFormatException exponentTooLarge) {
            return null;
        }
    }

    /** {@return what was expected where there is no number} */
    String expected() {
        return mark == ',' ? "a number such as 18,05" : "a number such as 18.05";
    }
}
