// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import java.math.BigDecimal;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The numbers of one file, all with the same decimal mark.
 *
 * <p>If commas separate the cells, the mark is the point. Otherwise the first number with a mark decides, so that 1.850 is
 * never read as 1850 in one row and as 1.85 in another. A separator of thousands is not accepted.
 */
final class Numbers {

    private static final Pattern NUMBER =
            Pattern.compile("[+-]?+(?:[0-9]++(?:[.,][0-9]++)?+|[.,][0-9]++)(?:[eE][+-]?+[0-9]++)?+");
    private static final int LONGEST = 100;

    private char mark;

    Numbers(char separator) {
        this.mark = separator == ',' ? '.' : 0;
    }

    /** {@return the number, its digits kept; or null when it is not a number or does not have the decimal mark of the file} */
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

    /** {@return the expected form of a number} */
    String expected() {
        return mark == ',' ? "a number such as 18,05" : "a number such as 18.05";
    }
}
